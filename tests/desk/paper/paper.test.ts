/** Typing up paper without a browser: what is looked at, what is written, what is refused. */
import { readFile } from "node:fs/promises";
import { join } from "node:path";
import { expect, test } from "vitest";
import { sumsOf } from "../../commands/site-files.ts";
import { writeInto } from "../../support/archive-folder.ts";
import { openSmallDesk } from "../desk-opened.ts";

const files = {
  "tiles/monday/set.md": "---\nname: Monday\ncodes: M-1..M-9\njars: {1: soot, 2: liner}\n---\n",
};
const row = {
  ...{ set: "monday", glazed: "", code: "M-1", maker: "m01", layers: "1 x2; lin top", notes: "" },
};

async function open() {
  const desk = await openSmallDesk(files);
  const post = async (action: string, body: unknown) => {
    const { status, text } = await desk.ask("POST", `/desk/paper/${action}`, { body });
    return status === 200 ? JSON.parse(text) : { status };
  };
  return { ...desk, post };
}

test("a row is told in the words of the site and drawn, and nothing is written by looking", async () => {
  const { post, archive } = await open();
  const before = await sumsOf(archive);
  expect(await post("look", row)).toEqual({
    words: ["Soot: 2 coats", "Liner: at the top"],
    drawing: expect.stringMatching(/^<svg class="layers"/u),
    makerName: "Wren Ashdown",
    faults: [],
  });
  expect(await post("look", { ...row, layers: "1 x2; 9", code: "EV-1" })).toMatchObject({
    words: ["Soot: 2 coats"],
    faults: [
      { field: "code", message: "“EV-1” is taken: it is on tiles/evening/EV-1.md" },
      { field: "layers", from: 6, to: 7, message: "There is no jar and no glaze “9”" },
    ],
  });
  expect(await sumsOf(archive)).toEqual(before);
});

test("a row is written into one file, once, and never over another", async () => {
  const { post, archive } = await open();
  const answer = await post("write", {
    ...row,
    glazed: "2026-10-14",
    notes: "# A *note* {{ it }}",
  });
  expect(answer.written).toMatchObject({ written: true, words: "Written: tiles/monday/M-1.md." });
  const text = await readFile(join(archive, "tiles/monday/M-1.md"), "utf8");
  expect(text).toBe(
    "---\nglazed: 2026-10-14\nmaker: m01\nlayers:\n  - {glaze: 1, coats: 2}\n  - {glaze: liner, where: top}\n---\n# A *note* {{ it }}\n",
  );
  const again = await post("write", row);
  expect(again.written).toBe(null);
  expect(again.faults).toMatchObject([{ field: "code" }]);
  expect(await readFile(join(archive, "tiles/monday/M-1.md"), "utf8")).toBe(text);
});

test("a row with any fault is not written, whatever stands in it", async () => {
  const { post, archive } = await open();
  const before = await sumsOf(archive);
  const faulty = [
    { layers: "" },
    { layers: "1; tpo" },
    { maker: "Wren" },
    { code: "../../x" },
    { code: "HID-1" },
    { glazed: "yesterday" },
    { notes: "turned \u202e around" },
    { notes: "no\u0000thing" },
  ];
  for (const wrong of faulty) {
    const { written, faults } = await post("write", { ...row, ...wrong });
    expect({ wrong, written, isTold: faults?.length > 0 }).toEqual({
      wrong,
      written: null,
      isTold: true,
    });
  }
  for (const wrong of [{ set: "../monday" }, { set: 7 }, { code: null }, { layers: ["1"] }])
    expect(await post("write", { ...row, ...wrong })).toEqual({ status: 400 });
  expect(await post("write", null)).toEqual({ status: 400 });
  expect(await sumsOf(archive)).toEqual(before);
});

test("the layers of another tile are taken over as a line, but neither its load nor another set's jars", async () => {
  const { post, archive, changed } = await open();
  await writeInto(archive, {
    "tiles/evening/EV-8.md":
      "---\nlayers: [{glaze: 7}, {fade: {from: 7, to: liner}}, {glaze: liner, over: 7}, {fired: g-1, shelf: top}]\n---\n",
    "tiles/monday/set.md": files["tiles/monday/set.md"].replace("1: soot", "7: liner, 1: soot"),
  });
  changed();
  expect(await post("like", { code: "EV-8", set: "monday" })).toEqual({
    line: "soot; soot to liner; liner over soot; fired glaze",
  });
  expect(await post("like", { code: "EV-8", set: "evening" })).toEqual({
    line: "7; 7 to liner; liner over 7; fired glaze",
  });
  expect(await post("like", { code: "ev-1", set: "evening" })).toEqual({
    line: "fired bisque; 7 x2 by brush; liner x1 by dip",
  });
  expect(await post("like", { code: "EV-77" })).toEqual({ fault: "There is no tile “EV-77”." });
});

test("its pages name the sets with their free codes, and a set's with its jars", async () => {
  const { ask } = await open();
  expect((await ask("GET", "/desk/paper")).text).toContain("9 codes without a record");
  const { text } = await ask("GET", "/desk/paper/monday");
  expect(text).toContain("M-9");
  expect(text).toContain('<span class="code">2</span> Liner');
  expect((await ask("GET", "/desk/paper/~")).status).toBe(200);
  expect((await ask("GET", "/desk/paper/tuesday")).status).toBe(404);
});
