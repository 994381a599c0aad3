import { createHash } from "node:crypto";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { matchColumns } from "../../src/receive/columns.ts";
import type { HandedFile } from "../../src/receive/hand-in.ts";
import { readSheet } from "../../src/receive/sheet.ts";
import { findSheetClaims } from "../../src/receive/sheet-claims.ts";
import { layersReader } from "../../src/receive/sheet-layers.ts";

const bytesOf = (text: string) => ({ bytes: new TextEncoder().encode(text) });
const file = (path: string, text = ""): HandedFile => ({ path, read: () => bytesOf(text) });

const sumOf = (text: string) => createHash("sha256").update(text).digest("hex");

const readLayers = layersReader((set) => ({
  jars: set === "autumn" ? [{ number: "7", glaze: "soot" }] : [],
  glazes: [{ id: "soot", name: "Soot" }],
  firings: [],
}));

function claimsOf(text: string, ...pictures: readonly string[]) {
  const sheet = file("class.csv", text);
  const handIn = { name: "", files: [sheet, ...pictures.map((path) => file(path))] };
  return findSheetClaims(handIn, sheet, { sumOf, readLayers });
}

describe("the columns of a spreadsheet", () => {
  test("are known by their names, however these are spelt", () => {
    const names = ["Tile code", "GLAZE_1", "coats 1", "Where 12", "Next time", "Mood", "", "tile"];
    expect(matchColumns(names)).toEqual([
      { holds: "field", field: "code" },
      { holds: "layer", part: "layer", nth: 1 },
      { holds: "layer", part: "coats", nth: 1 },
      { holds: "layer", part: "where", nth: 12 },
      { holds: "field", field: "next-time" },
      { holds: "nothing known" },
      { holds: "nothing known" },
      { holds: "the same again" },
    ]);
  });

  test("are none for words that only look like them", () => {
    const names = ["glaze", "layer 0", "codes of honour", "constructor", "toString 1", "by 123"];
    for (const column of matchColumns(names)) expect(column).toEqual({ holds: "nothing known" });
  });
});

describe("a spreadsheet", () => {
  test.each([",", ";", "\t"])("is read with %j between its cells", (sign) => {
    const text = [`code${sign}layer 1`, `06${sign}"a${sign}b"`, "", `7${sign}c`].join("\r\n");
    expect(readSheet(bytesOf(text))).toEqual({
      ok: true,
      names: ["code", "layer 1"],
      rows: [
        { number: 2, cells: ["06", `a${sign}b`] },
        { number: 4, cells: ["7", "c"] },
      ],
    });
  });

  test("leaves every cell the text it was", () => {
    const cell = fc
      .string({ unit: "grapheme", minLength: 1 })
      .filter((text) => !/\p{Cc}/u.test(text));
    fc.assert(
      fc.property(fc.array(cell, { minLength: 1, maxLength: 5 }), (cells) => {
        const row = cells.map((each) => `"${each.replaceAll('"', '""')}"`).join(",");
        const read = readSheet(bytesOf(`${cells.map((_, i) => `c${i}`).join(",")}\n${row}\n`));
        const expected = cells.map((each) => each.trim());
        const rows = expected.some((each) => each !== "") ? [{ number: 2, cells: expected }] : [];
        expect(read).toMatchObject({ ok: true, rows });
      }),
    );
  });

  test.each([
    ["has quotes that do not match", 'code,layer 1\n"TB-1,soot\n', /^Its quotes do not match/u],
    ["has more rows than are read", `code\n${"a\n".repeat(2001)}`, /^It has more than 2000 rows/u],
    ["has more columns than are read", ",".repeat(300), /^It has more than 200 columns/u],
    ["is no text", "code\n\0\n", /^There is a character here that nobody can see/u],
  ])("that %s is refused in words", (_, text, why) => {
    expect(readSheet(bytesOf(text))).toEqual({ ok: false, why: expect.stringMatching(why) });
  });

  test("that is larger than any is not read", () => {
    expect(readSheet({ tooLarge: 6_000_000 })).toMatchObject({ ok: false });
  });
});

describe("a row", () => {
  test("is a tile's record, with its layers in their order and what is no glaze told as what it is", () => {
    const { claims, refusals } = claimsOf(
      [
        "code,set,maker,glazed,clay,layer 2,coats 2,layer 1,coats 1,by 1,where 1,layer 3,where 3,faults,notes",
        'TB-06,autumn,m01,2026-11-02,buff,Wax,,7,2,brush,"rim, top",wipe,rim,"crawling, crazing","Look: {{ it }}"',
      ].join("\n"),
    );
    expect(refusals).toEqual([]);
    expect(claims).toEqual([
      {
        from: "class.csv, row 2",
        stem: "TB-06",
        set: "autumn",
        text: [
          "---",
          "glazed: 2026-11-02",
          "maker: m01",
          "clay: buff",
          "layers:",
          "  - {glaze: 7, coats: 2, by: brush, where: [rim, top]}",
          "  - {resist: wax}",
          "  - {remove: wipe, where: rim}",
          "result: {faults: [crawling, crazing]}",
          "---",
          "Look: {{ it }}",
          "",
        ].join("\n"),
        pictures: [],
      },
    ]);
  });

  test("may have its layers on one line, and its set's jars are meant there", () => {
    const { claims, refusals } = claimsOf(
      'code,set,Layers\nTB-1,autumn,"7 x2; wax motif; soot x1 top"\nTB-2,,7 x2\n',
    );
    expect(claims.map(({ text }) => text)).toEqual([
      "---\nlayers:\n  - {glaze: 7, coats: 2}\n  - {resist: wax, where: motif}\n  - {glaze: soot, coats: 1, where: top}\n---\n",
    ]);
    expect(refusals).toEqual([
      {
        what: "class.csv, row 3",
        why: expect.stringMatching(
          /^Its layers “7 x2” cannot be read\. “7”: There is no jar and no glaze “7”\./u,
        ),
      },
    ]);
  });

  test("with layers on one line and in columns of their own is refused, since they may differ", () => {
    const { claims, refusals } = claimsOf("code,layers,layer 1\nTB-1,soot,soot\n");
    expect([claims, refusals]).toEqual([
      [],
      [
        {
          what: "class.csv, row 2",
          why: "It has layers in one column and in columns with numbers. Leave one of the two empty.",
        },
      ],
    ]);
  });

  test("without a code is known by what is in it, and two alike are two tiles", () => {
    const stems = (text: string) => claimsOf(text).claims.map(({ stem }) => stem);
    const [a, b, c] = stems("code,layer 1\n,soot\n,soot\n,liner\n");
    expect(new Set([a, b, c]).size).toBe(3);
    expect(stems("code,layer 1\n,liner\n,soot\n,soot\n")).toEqual([c, a, b]);
    for (const stem of [a, b, c]) expect(stem).toMatch(/^no-code-/u);
  });

  test("has the photographs that it names, and those that are named after its code", () => {
    const { claims } = claimsOf(
      "code,layer 1,photo\nTB-1,soot,IMG_7.JPG\nTB-2,soot,\n",
      ...["TB-1.before.jpg", "img_7.jpg", "tb_2.JPG", "TB-2.detail.png", "other.jpg"],
    );
    const shown = claims.map(({ pictures }) =>
      pictures.map(({ role, suffix, file: { path } }) => [path, role, suffix]),
    );
    expect(shown).toEqual([
      [
        ["img_7.jpg", "result", ".jpg"],
        ["TB-1.before.jpg", "before", ".before.jpg"],
      ],
      [
        ["tb_2.JPG", "result", ".jpg"],
        ["TB-2.detail.png", "detail", ".detail.png"],
      ],
    ]);
  });

  test("that names a photograph which is not there is refused", () => {
    expect(claimsOf("code,layer 1,photo\nTB-1,soot,a.jpg\n").refusals).toEqual([
      {
        what: "class.csv, row 2",
        why: "There is no photograph “a.jpg” beside the spreadsheet. Put it there, or take its name out of the row.",
      },
    ]);
  });

  test("with a cell under no name has that told", () => {
    const { columns } = claimsOf("code,layer 1\nTB-1,soot,what?\n");
    expect(columns.at(-1)).toEqual({
      ...{ name: "", column: { holds: "nothing known" }, isFilled: true },
    });
  });
});
