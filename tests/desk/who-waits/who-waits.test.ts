/** Who waits: by set and by maker, what for, and nothing that does not. */
import { expect, test } from "vitest";
import { openSmallDesk } from "../desk-opened.ts";

const files = {
  "tiles/monday/set.md": "---\nname: Monday <i>late</i>\ncodes: M-1..M-4\n---\n",
  "tiles/monday/M-1.md": "---\nmaker: m01\nlayers: [{glaze: soot}]\n---\n",
  "tiles/monday/M-2.md": "---\nmaker: m01\nlayers: [{glaze: soot}, {fired: g-1}]\n---\n",
  "tiles/monday/M-3.md": "---\nmaker: m03\nlayers: [{glaze: soot}]\nfate: broken\n---\n",
  "tiles/LOOSE.md": "---\nlayers: [{glaze: soot}]\n---\n",
};

/** The groups of a page, each with what waits in it. */
function groupsIn(text: string): readonly string[] {
  const words = (html: string) => html.replace(/<[^>]+>/gu, "").replaceAll("&lt;", "<");
  return [...text.matchAll(/<li><h3>(.+?)<\/h3><dl>(.*?)<\/dl>/gu)].map(
    ([, name = "", list = ""]) =>
      [
        words(name),
        ...[...list.matchAll(/<dt>(.+?)<\/dt><dd[^>]*>(.+?)<\/dd>/gu)].map(
          ([, what = "", codes = ""]) => `${words(what)} (${words(codes)})`,
        ),
      ].join("; "),
  );
}

test("every set and every maker with a tile that waits is listed, with what for, and no other", async () => {
  const { ask } = await openSmallDesk(files);
  const { text } = await ask("GET", "/desk/who-waits");
  expect(groupsIn(text)).toEqual([
    "Evening class; To be fired: 1 (EV-3)",
    "Monday <i>late</i>; To be fired: 1 (M-1); Without a photograph: 1 (M-2); Without a result: 1 (M-2); Codes without a record: 1 (M-4)",
    "In no set; To be fired: 1 (LOOSE)",
    "Wren Ashdown m01; To be fired: 1 (M-1); Without a photograph: 1 (M-2); Without a result: 1 (M-2)",
    "Hesper Lund m03; To be fired: 1 (EV-3)",
    "No maker is named; To be fired: 1 (LOOSE)",
  ]);
  expect(text).toContain('<a href="/tiles/ev-3.html">EV-3</a>');
});

test("a maker who has only a key is called by it, once", async () => {
  const { ask } = await openSmallDesk({
    "studio.yaml": "format: 1\nstudio: Eelgate Pottery\nmakers: {m01: {}, m02: {}, m03: {}}\n",
  });
  expect(groupsIn((await ask("GET", "/desk/who-waits")).text)).toContain(
    "m03; To be fired: 1 (EV-3)",
  );
});

test("one set has a list of its own, maker by maker", async () => {
  const { ask } = await openSmallDesk(files);
  const { text } = await ask("GET", "/desk/who-waits/monday");
  expect(groupsIn(text)).toEqual([
    "Wren Ashdown m01; To be fired: 1 (M-1); Without a photograph: 1 (M-2); Without a result: 1 (M-2)",
  ]);
  expect(text).toContain('1 code without a record</h2><p class="codes code">M-4</p>');
  expect((await ask("GET", "/desk/who-waits/hidden")).text).toContain(
    "No tile waits for anything.",
  );
  expect((await ask("GET", "/desk/who-waits/none")).status).toBe(404);
});

test("a tile of an unlisted set is named without a link that would lead nowhere", async () => {
  const { ask } = await openSmallDesk({
    "tiles/hidden/HID-2.md": "---\nmaker: m02\nlayers: [{glaze: soot}]\n---\n",
  });
  const { text } = await ask("GET", "/desk/who-waits/hidden");
  expect(text).toContain('<span class="code">HID-2</span>');
});
