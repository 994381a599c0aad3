import fs from "node:fs";
import path from "node:path";
import { describe, expect, it } from "vitest";
import { findIdFault } from "../../src/terms/ids.ts";
import {
  least,
  read,
  readWith,
  record,
  sound,
  tell,
  temporaryFolder,
  writeFiles,
} from "./archives.ts";

describe("an archive with faults of every kind", () => {
  it("is told of all of them at once, each at its line", async () => {
    expect(tell(await read("tests/archives/faulty"))).toMatchInlineSnapshot(`
      "
      recipes/glazes/soot.md:5:8 error: There is no cone “05-66” [unknown-cone]
        5 | cones: 05-66
          |        ^
        The nearest are 13 and 14; mind that 06 is far cooler than 6.

      recipes/glazes/tidewrack.md:5:16 warning: There is no material “potash-felspar” [unknown-material]
        5 |   - {material: potash-felspar, parts: 40}
          |                ^
        Did you mean “potash-feldspar”? Otherwise write a record of it in recipes/materials, with its formula or the analysis from its supplier's sheet. Until then this glaze has no chemistry, and nobody is warned of what this material holds.

      recipes/glazes/tidewrack.md:6:31 error: “forty” is not a number of parts [parts-not-positive]
        6 |   - {material: silica, parts: forty}
          |                               ^
        Parts by weight are a number above 0; take the line out where there is none of it.

      tiles/evening/set.md:3:20 error: There is no glaze “tidewrak” [unknown-glaze]
        3 | jars: {1: soot, 2: tidewrak}
          |                    ^
        Did you mean “tidewrack”?

      tiles/evening/set.md:5:9 error: There is no clay “bufff” [unknown-clay]
        5 |   clay: bufff
          |         ^
        Did you mean “buff”?

      tiles/evening/WL-101.md:2:8 error: There is no maker “m02” [unknown-maker]
        2 | maker: m02
          |        ^
        Add the code under “makers:” in studio.yaml, as in “m07: {}”.

      tiles/evening/WL-101.md:5:5 error: This step has none of glaze, fade, resist, remove, fired, so it does not say what was done [step-without-key]
        5 |   - {glase: 2, coats: 2}
          |     ^
        Did you mean “glaze”?

      tiles/evening/WL-102.jpg:1:1 error: “tiles/evening/WL-102.jpg” belongs to no tile of its folder [picture-of-no-tile]
        Name it after its tile, such as TB-014.jpg, or TB-014.before.jpg, .detail.jpg, .back.jpg; or write “photo: {file: WL-102.jpg}” into the tile's record.

      tiles/firings/g-1101.md:4:7 error: There is no cone “6.5” [unknown-cone]
        4 | cone: 6.5
          |       ^
        The nearest are 6 and 7; mind that 06 is far cooler than 6.

      tiles/firings/g-1101.md:5:23 error: There are no tiles “WL-102”, “WL-103” and 6 more up to “WL-110” [unknown-tile]
        5 | tiles: {top: [WL-001, WL-101..WL-110]}
          |                       ^
        Correct the code, write the tile's record, or reserve the code with “codes:” in a set.md.

      tiles/WL-001.md:6:4 error: This line begins 1 space too far to the left, so it is not clear what it belongs to [bad-indent]
        6 |    by: brush
          |    ^
        Put 1 space more before it, so that it begins right under “coats”.
      "
    `);
  });

  it("is still an archive of all that could be read", async () => {
    const { archive } = await read("tests/archives/faulty");
    expect([...(archive?.tiles.keys() ?? [])]).toEqual([]);
    expect([...(archive?.clays.keys() ?? [])]).toEqual(["buff"]);
  });
});

describe("the same archive", () => {
  it("gives the same, in whatever order its files were written", async () => {
    const dirs = [temporaryFolder(), temporaryFolder()] as const;
    const files = Object.entries({
      ...least,
      ...Object.fromEntries(
        ["b", "A", "é", "10", "9"].map((id) => [`tiles/${id}.md`, least["tiles/WL-001.md"] ?? ""]),
      ),
      "tiles/z/set.md": record("name: Z\njars: {2: soot}"),
      "tiles/Y/set.md": record("name: Y"),
      "tiles/z/q.md": record("layers: [{glaze: 2}]"),
    });
    writeFiles(dirs[0], Object.fromEntries(files));
    writeFiles(dirs[1], Object.fromEntries(files.toReversed()));
    const [first, second] = [await read(dirs[0]), await read(dirs[1])];
    expect(second.archive).toEqual(first.archive);
    expect([...sound(first).tiles.values()].map(({ id }) => id)).toEqual([
      "9",
      "10",
      "A",
      "b",
      "é",
      "q",
      "WL-001",
    ]);
  });

  it("may be spelt in capitals, as a file system that knows no case may have it", async () => {
    const dir = temporaryFolder();
    writeFiles(dir, {
      "Studio.YAML": least["studio.yaml"] ?? "",
      "Recipes/Glazes/Soot.MD": least["recipes/glazes/soot.md"] ?? "",
      "Tiles/Evening/SET.md": record("name: Evening"),
      "Tiles/Evening/wl-1.Md": record("layers: [{glaze: soot}, {fired: G-1}]"),
      "Tiles/Evening/WL-1.JPEG": "",
      "Tiles/Firings/g-1.md": record("kind: glaze\nlog: G-1.csv"),
      "Tiles/Firings/g-1.CSV": "0,20\n",
    });
    const archive = sound(await read(dir));
    expect(archive.tiles.get("wl-1")).toMatchObject({
      set: "Evening",
      pictures: [{ role: "result", file: "Tiles/Evening/WL-1.JPEG" }],
      steps: [{ glazes: ["Soot"] }, { firing: "g-1" }],
    });
    expect(archive.firings.get("g-1")?.log?.text).toBe("0,20\n");
  });

  it("is not touched by reading it", async () => {
    const dir = temporaryFolder();
    writeFiles(dir, least);
    const before = fs.readdirSync(dir, { recursive: true }).sort();
    await read(dir);
    expect(fs.readdirSync(dir, { recursive: true }).sort()).toEqual(before);
  });
});

describe("words that have broken other programs", () => {
  const words = [
    "__proto__",
    "constructor",
    "toString",
    "hasOwnProperty",
    "undefined",
    "NaN",
    "-0",
    "0x10",
    "1e3",
    "no",
    "<b>",
    "'; --",
    "../soot",
    "%2e%2e",
    "👾",
    "\u202eabc",
  ];

  it.each(words)("%o names no glaze, no jar, no maker and no firing by accident", async (word) => {
    const found = await readWith({
      "tiles/evening/set.md": record("name: Evening\njars: {1: soot}"),
      "tiles/evening/WL-101.md": record(
        `maker: ${JSON.stringify(word)}\nclay: ${JSON.stringify(word)}\nlayers:\n  - glaze: ${JSON.stringify(word)}\n  - fired: ${JSON.stringify(word)}`,
      ),
      "tiles/firings/g.md": record(
        `kind: glaze\nlog: x.csv\ntiles: {${JSON.stringify(word)}: WL-001}`,
      ),
      "tiles/firings/x.csv": "",
    });
    expect(found.problems.map(({ code }) => code)).toEqual([
      ...(word.startsWith("\u202e") ? ["turned-letters", "turned-letters"] : []),
      ...(word === "__proto__" ? ["unusable-name"] : []),
      "unknown-clay",
      "unknown-maker",
      "unknown-glaze",
      "unknown-firing",
    ]);
    expect(found.archive?.firings.get("g")?.load).toEqual(
      word === "__proto__" ? undefined : [{ tile: "WL-001", shelf: word }],
    );
  });

  it.each(words.filter((word) => findIdFault(word) === undefined))(
    "%o may be the name of a glaze, a jar and a maker",
    async (word) => {
      const dir = temporaryFolder();
      const quoted = JSON.stringify(word);
      writeFiles(dir, {
        ...least,
        "studio.yaml": `format: 1\nstudio: Weir Lane\nmakers: {${quoted}: {}}\n`,
        [path.join("recipes/glazes", `${word}.md`)]: least["recipes/glazes/soot.md"] ?? "",
        "tiles/evening/set.md": record(
          `name: Evening\njars: {${JSON.stringify(`${word}1`)}: ${quoted}}`,
        ),
        "tiles/evening/WL-101.md": record(
          `maker: ${quoted}\nlayers: [{glaze: ${quoted}}, {glaze: ${JSON.stringify(`${word}1`)}}]`,
        ),
      });
      expect(sound(await read(dir)).tiles.get("wl-101")).toMatchObject({
        maker: word,
        steps: [{ glazes: [word] }, { glazes: [word] }],
      });
    },
  );
});
