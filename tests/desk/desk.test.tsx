/** Who is answered at the desk, what nobody can make it do, and that what it shows is what there is. */
import { readFile, rm, symlink, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import type { DeskPage } from "../../src/desk/page.ts";
import { type DeskWork, sumOf } from "../../src/desk/work.ts";
import { sumsOf } from "../commands/site-files.ts";
import { writeInto } from "../support/archive-folder.ts";
import { openSmallDesk } from "./desk-opened.ts";

type Posted = { readonly path?: string; readonly seen?: string; readonly value?: string };

/** A page that writes what it is told to. */
const scribe: DeskPage = {
  name: "scribe",
  title: "Scribe",
  purpose: "Writes <b>what</b> it is told to.",
  render: (archive, of) =>
    of === "nothing" ? undefined : <p>{`${archive.archive.tiles.size} tiles, of ${of}`}</p>,
  actions: {
    new: (body, work: DeskWork) =>
      work.writeNew([
        { path: (body as Posted).path ?? "", content: "---\nlayers: [{glaze: soot}]\n---\n" },
      ]),
    field: (body, work) => {
      const { path: file = "", seen = "", value = "" } = body as Posted;
      return work.writeFields({ file, kind: "tile", seen }, [{ path: ["maker"], value }]);
    },
  },
};

const open = (more = {}) => openSmallDesk(more, [scribe]);
const written = { body: { path: "tiles/evening/EV-9.md" } };

describe("whoever asks", () => {
  test("as its own page does is answered, and told which lines of which file were written", async () => {
    const { ask, archive } = await open();
    const { status, text } = await ask("POST", "/desk/scribe/new", written);
    expect(status).toBe(200);
    expect(JSON.parse(text)).toEqual({
      written: true,
      words: "Written: tiles/evening/EV-9.md.",
      files: [
        {
          file: "tiles/evening/EV-9.md",
          lines: [
            { line: 1, text: "---" },
            { line: 2, text: "layers: [{glaze: soot}]" },
            { line: 3, text: "---" },
          ],
        },
      ],
    });
    expect(await readFile(join(archive, "tiles/evening/EV-9.md"), "utf8")).toContain("soot");
  });

  test("from another page, by another name, without the token or in another form makes it write nothing", async () => {
    const { ask, archive, port } = await open();
    const before = await sumsOf(archive);
    const wrong: readonly (readonly [Record<string, string>, number])[] = [
      [{ origin: "https://evil.example" }, 403],
      [{ origin: "null" }, 403],
      [{ origin: "http://localhost:1" }, 403],
      [{ host: `evil.example:${port}` }, 403],
      [{ host: "localhost:1" }, 403],
      [{ "x-tilebook-token": "" }, 403],
      [{ "x-tilebook-token": "x".repeat(32) }, 403],
      [{ "content-type": "text/plain" }, 415],
      [{ "content-type": "application/x-www-form-urlencoded" }, 415],
    ];
    for (const [headers, status] of wrong) {
      const answer = await ask("POST", "/desk/scribe/new", { ...written, headers });
      expect({ headers, status: answer.status }).toEqual({ headers, status });
    }
    for (const method of ["PUT", "DELETE", "OPTIONS"])
      expect((await ask(method, "/desk/scribe/new")).status).toBe(405);
    expect(await sumsOf(archive)).toEqual(before);
  });

  test("for more than a page sends, for no JSON or for what is not there gets nothing", async () => {
    const { ask, archive } = await open();
    const before = await sumsOf(archive);
    const post = async (path: string, body: unknown) => (await ask("POST", path, { body })).status;
    expect(await post("/desk/scribe/new", { more: "x".repeat(60_000) })).toBe(413);
    expect(await post("/desk/scribe/new", "{")).toBe(400);
    for (const path of [
      ...["/", "/desk/", "/desk/scribe", "/desk/scribe/", "/desk/scribe/old", "/desk/other/new"],
      ...[
        "/desk/scribe/constructor",
        "/desk/scribe/__proto__",
        "/desk/scribe/new/new",
        "/tiles/new",
      ],
    ])
      expect({ path, status: await post(path, {}) }).toEqual({ path, status: 404 });
    for (const path of [
      ...[
        "/desk",
        "/desk/other",
        "/desk/scribe/nothing",
        "/desk/scribe/a/b",
        "/desk/assets/none.js",
      ],
      ...["/desk/assets/../desk.css", "/desk/assets/..%2f..%2fpackage.json", "/desk/%2e%2e/x"],
    ])
      expect([404, 503], path).toContain((await ask("GET", path)).status);
    expect(await sumsOf(archive)).toEqual(before);
  });

  test("shows its pages to no other page, and lets them load nothing from elsewhere", async () => {
    const { ask } = await open();
    for (const path of ["/desk/", "/desk/scribe", "/desk/assets/desk.css"]) {
      const { status, headers } = await ask("GET", path);
      expect(status, path).toBe(200);
      expect(headers).toMatchObject({
        "cache-control": "no-store",
        "content-security-policy": expect.stringContaining("default-src 'none'"),
        "cross-origin-resource-policy": "same-origin",
        "x-frame-options": "DENY",
      });
    }
  });
});

describe("what it shows", () => {
  test("its first page counts in every set what waits for a firing, a photograph, a result, a record", async () => {
    const { ask, failures } = await open({
      "tiles/evening/EV-4.md": "---\nlayers: [{glaze: soot}, {fired: g-1}]\n---\n",
      "tiles/evening/EV-5.md": "---\nlayers: [{glaze: soot}]\nfate: broken\n---\n",
      "tiles/LOOSE.md": "---\nlayers: [{glaze: soot}]\n---\n",
      "tiles/monday/set.md": "---\nname: Monday\ncodes: M-1..M-3\n---\n",
      "tiles/monday/M-2.md": "---\nlayers: [{glaze: soot}]\n---\n",
    });
    const { text } = await ask("GET", "/desk/");
    expect(failures).toEqual([]);
    expect(text).toContain(
      "<h1>3 tiles to be fired, 1 tile to be photographed and 1 result to be written down.</h1>",
    );
    const rows = [...text.matchAll(/<tr><th scope="row">(.+?)<\/th>(.+?)<\/tr>/gu)].map(
      ([, name, cells = ""]) => [
        name,
        ...[...cells.matchAll(/>(\d+)</gu)].map(([, n]) => Number(n)),
      ],
    );
    expect(rows).toEqual([
      ["Evening class", 5, 1, 1, 1, 0],
      ["Quiet class", 1, 0, 0, 0, 0],
      ["Monday", 1, 1, 0, 0, 2],
      ["In no set", 1, 1, 0, 0, 0],
    ]);
  });

  test("words of records stand on it as words", async () => {
    const { ask } = await open({
      "tiles/monday/set.md": "---\nname: <script>alert(1)</script>\n---\n",
    });
    const { text } = await ask("GET", "/desk/");
    expect(text).toContain("&lt;script>alert(1)&lt;/script>");
    expect(text).toContain("Writes &lt;b>what&lt;/b> it is told to.");
    expect(text).not.toContain("<script>");
  });

  test("is never from before: not after a file was changed, and not after it wrote one itself", async () => {
    const { ask, archive, changed } = await open();
    const shown = async () => (await ask("GET", "/desk/scribe/x")).text;
    expect(await shown()).toContain("<p>4 tiles, of x</p>");
    await ask("POST", "/desk/scribe/new", written);
    expect(await shown()).toContain("<p>5 tiles, of x</p>");
    await rm(join(archive, "tiles/evening/EV-9.md"));
    changed();
    expect(await shown()).toContain("<p>4 tiles, of x</p>");
  });

  test("tells what it could not read, and nothing at all where there is no studio", async () => {
    const { ask, archive, changed } = await open({
      "tiles/evening/EV-7.md": "---\nlayers: []\n---\n",
    });
    expect((await ask("GET", "/desk/")).text).toContain(
      "Not on this page, because of errors in them: 1 tile. The command “check” tells them.",
    );
    await writeFile(join(archive, "studio.yaml"), "studio: [");
    changed();
    const { status, text } = await ask("GET", "/desk/");
    expect(status).toBe(409);
    expect(text).toContain("studio.yaml is missing or has errors");
  });
});

describe("writing", () => {
  const post = async (ask: Awaited<ReturnType<typeof open>>["ask"], action: string, body: Posted) =>
    JSON.parse((await ask("POST", `/desk/scribe/${action}`, { body })).text);

  test("writes a field where the record is as the page showed it, and tells the line", async () => {
    const { ask, archive } = await open();
    const path = "tiles/evening/EV-3.md";
    const seen = sumOf(await readFile(join(archive, path), "utf8"));
    expect(await post(ask, "field", { path, seen, value: "m02" })).toEqual({
      written: true,
      words: "Written into tiles/evening/EV-3.md, line 2.",
      files: [{ file: path, lines: [{ line: 2, text: "maker: m02" }] }],
    });
    expect(await post(ask, "field", { path, seen, value: "m01" })).toEqual({
      written: false,
      words:
        "tiles/evening/EV-3.md was changed after this page read it, so nothing was written. Load this page again, look at what is there now, and write once more.",
      files: [],
    });
  });

  test("writes nothing into a record that was changed meanwhile, even where nobody was told yet", async () => {
    const { ask, archive } = await open();
    const path = "tiles/evening/EV-3.md";
    const text = await readFile(join(archive, path), "utf8");
    await ask("GET", "/desk/scribe");
    await writeInto(archive, { [path]: text.replace("m03", "m01") });
    const answer = await post(ask, "field", { path, seen: sumOf(text), value: "m02" });
    expect(answer).toMatchObject({ written: false, files: [] });
    expect(await readFile(join(archive, path), "utf8")).toContain("m01");
  });

  test("puts no file over one that is there, nor through a link that leads out of the archive", async () => {
    const { ask, archive } = await open();
    const before = await sumsOf(archive);
    expect(await post(ask, "new", { path: "tiles/evening/EV-1.md" })).toEqual({
      written: false,
      words:
        "tiles/evening/EV-1.md is there already, so nothing was written. Take another code, or open that file.",
      files: [],
    });
    expect(await sumsOf(archive)).toEqual(before);
    await symlink("/", join(archive, "tiles/out"));
    expect(await post(ask, "new", { path: "tiles/out/EV-1.md" })).toMatchObject({
      written: false,
      words:
        "The folder of tiles/out/EV-1.md is a link that leads out of the archive, so nothing was written.",
    });
  });
});
