/** Layers on one line: read as they were meant, or told, word for word. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { readShortForm } from "../../../src/reader/short-form/read-short-form.ts";
import { renderShortForm } from "../../../src/reader/short-form/render-short-form.ts";
import type { SourceMap } from "../../../src/records/read.ts";
import {
  areas,
  covers,
  dryings,
  kindsOfFiring,
  removals,
  resists,
  thicknesses,
  ways,
} from "../../../src/terms/choices.ts";
import { names } from "./names.ts";

function layersOf(line: string): readonly SourceMap[] {
  const { steps, faults } = readShortForm(line, names);
  expect(faults).toEqual([]);
  return steps.map(({ layer }) => layer);
}

/** What is told of a line, each with the words that it is told of. */
function told(line: string): readonly string[] {
  const { faults } = readShortForm(line, names);
  return faults.map(
    ({ from, to, message, hint }) => `${line.slice(from, to)}: ${message}. ${hint}`,
  );
}

describe("a line of layers", () => {
  test("is read as a maker writes it beside the tile", () => {
    const line =
      "7 x2; 3 x1 top; wax motif; 5 thin by dip; fired bisque; wipe raised; 4 over 7; remove all";
    expect(layersOf(line)).toEqual([
      { glaze: "7", coats: "2" },
      { glaze: "3", coats: "1", where: "top" },
      { resist: "wax", where: "motif" },
      { glaze: "5", thickness: "thin", by: "dip" },
      { fired: "bisque" },
      { remove: "wipe", where: "raised" },
      { glaze: "4", over: "7" },
      { remove: "all" },
    ]);
  });

  test.each([
    ["7 2x", { glaze: "7", coats: "2" }],
    ["7 ×2", { glaze: "7", coats: "2" }],
    ["7 x 2", { glaze: "7", coats: "2" }],
    ["7, 2 coats, brushed", { glaze: "7", coats: "2", by: "brush" }],
    ["7 1 coat on the rim and at the top", { glaze: "7", coats: "1", where: ["rim", "top"] }],
    ["SOOT Dip 3s", { glaze: "soot", by: "dip", seconds: "3" }],
    ["soot dip 2.5 seconds sg 1.45", { glaze: "soot", by: "dip", seconds: "2.5", gravity: "1.45" }],
    ["tide thick wet-on-wet", { glaze: "tidewrack", thickness: "thick", dried: "wet-on-wet" }],
    ["pale sky trail sparse", { glaze: "pale-sky", by: "trail", cover: "sparse" }],
    ["7b touch-up motif", { glaze: "7b", "touch-up": "yes", where: "motif" }],
    [
      'soot "two fingers, at the foot; ""low"""',
      { glaze: "soot", detail: 'two fingers, at the foot; "low"' },
    ],
    ["7 to 3 x2", { fade: { from: "7", to: "3" }, coats: "2" }],
    [
      'fade 7 to soot along "rim to centre"',
      { fade: { from: "7", to: "soot", along: "rim to centre" } },
    ],
    ["wax resist motif", { resist: "wax", where: "motif" }],
    ["resist tape", { resist: "tape" }],
    ["glaze tape", { glaze: "tape" }],
    ["scraped left and right", { remove: "scrape", where: ["left", "right"] }],
    ["fired G-1020 top shelf", { fired: "g-1020", shelf: "top" }],
    ['fired glaze shelf "by the door"', { fired: "glaze", shelf: "by the door" }],
    ["soot on top", { glaze: "soot", where: "top" }],
  ] as [string, SourceMap][])("“%s” is one layer", (line, layer) => {
    expect(layersOf(line)).toEqual([layer]);
  });

  test("may name several glazes that a layer laps over", () => {
    expect(layersOf("7; 3; soot x2; 4 over 7 and 3, soot, x2 top").at(-1)).toEqual({
      ...{ glaze: "4", over: ["7", "3", "soot"], coats: "2", where: "top" },
    });
  });

  test("says nothing where nothing stands, and a line may be broken instead of cut", () => {
    expect(readShortForm(" ;; \n", names)).toEqual({ steps: [], faults: [] });
    expect(layersOf("7\n3 x2")).toEqual([{ glaze: "7" }, { glaze: "3", coats: "2" }]);
  });

  test("means what the names in it lead to", () => {
    const { steps } = readShortForm("7; sonder x2 over 7; fired b-7", names);
    expect(steps.map(({ meant }) => meant)).toMatchObject([
      { step: "coat", glazes: ["liner"], where: ["all"], at: 0 },
      { step: "coat", glazes: ["sonder"], over: ["liner"], coats: 2, at: 1 },
      { step: "fired", kind: "bisque", firing: "b-7", at: 2 },
    ]);
  });
});

describe("what cannot be read is told, with its words and what is understood instead", () => {
  test.each([
    [
      "9 x2",
      "9: There is no jar and no glaze “9”. Write the number of a jar (3, 4, 5, 7, 7b), the glaze's id, or the first letters of its name.",
    ],
    ["tidewrak", "tidewrak: There is no jar and no glaze “tidewrak”. Did you mean “tidewrack”?"],
    [
      "so x2",
      "so: “so” may be one of 3 glazes: sonder, soot, topaz-2. Write more letters of it, or the number of its jar.",
    ],
    [
      "s",
      "s: There is no jar and no glaze “s”. Write the number of a jar (3, 4, 5, 7, 7b), the glaze's id, or the first letters of its name.",
    ],
    [
      "soot top",
      "soot: “soot top” may be topaz-2 or soot. Write the glaze's id, or the number of its jar; if a jar is called as another glaze is, give it another number in set.md.",
    ],
    ["7 tpo", "tpo: “tpo” is not understood here. Did you mean “top”?"],
    [
      "7 3",
      "3: “3” is not understood here. After a glaze come coats (x2), where (top), how (by dip), thin or thick, and own words between quotes. A semicolon begins the next layer.",
    ],
    ["7 x2 x3", "x3: The number of coats is said twice. Take one of them out."],
    [
      "wax x2",
      "x2: “x2” is not understood here. After a resist comes where it is (motif), and own words between quotes. A semicolon begins the next layer.",
    ],
    [
      "tape",
      "tape: “tape” may be the glaze tape or what is said of a tile. Write “glaze tape” for the glaze, and “resist tape” for the other.",
    ],
    [
      "all",
      "all: There is no jar and no glaze “all”. Write “remove all” where everything came off again.",
    ],
    ["fired g-1021", "fired g-1021: There is no firing “g-1021”. Did you mean “g-1020”?"],
    [
      "fired",
      "fired: There is no jar and no glaze “fired”. Write “fired” with the kind of firing behind it, as in “fired bisque”.",
    ],
    [
      "bisque",
      "bisque: There is no jar and no glaze “bisque”. Write “fired bisque” for that firing.",
    ],
    ["resist wx", "resist wx: “wx” is not understood after “resist”. Did you mean “wax”?"],
    [
      "fade 7 3",
      "fade 7: A fade has two glazes. Write both glazes with “to” between them, as in “fade 7 to 3”.",
    ],
    [
      "4 over 7",
      "4 over 7: Nothing of liner lies beneath this layer. Write the layers in the order they went on, the lowest first, with a semicolon between them.",
    ],
    ["7 x60", "7 x60: “60” is not a number of coats. Write a whole number from 1 to 50."],
    [
      '7 "unclosed',
      '": “"” is not understood here. After a glaze come coats (x2), where (top), how (by dip), thin or thick, and own words between quotes. A semicolon begins the next layer.',
    ],
  ])("“%s”", (line, first) => {
    expect(told(line)[0]).toBe(first);
  });

  test("beside all that can be read", () => {
    const { steps, faults } = readShortForm("7 x2 quik; sot; 3", names);
    expect(steps.map(({ layer }) => layer)).toEqual([{ glaze: "7", coats: "2" }, { glaze: "3" }]);
    expect(faults).toHaveLength(2);
  });

  test("and a line that was pasted by mistake, all at once", () => {
    expect(told("x".repeat(5001))[0]).toContain("This is longer than any line of layers");
    expect(told("7;".repeat(101))[0]).toContain("There are more than 100 steps here");
  });
});

const oneOf = (...words: readonly string[]) => fc.constantFrom(...words);
const several = (words: readonly string[]) => {
  const one = oneOf(...words);
  return fc.oneof(one, fc.uniqueArray(one, { minLength: 2, maxLength: 3 }));
};
const own = fc
  .string({ minLength: 1, maxLength: 12, unit: "grapheme" })
  .map((it) => it.replaceAll(/[\n\r]/gu, " "))
  .filter((it) => it.trim() === it && it !== "");
const place = { where: several(areas), detail: own };
const glaze = oneOf("3", "4", "7", "7b", "tape", "soot", "pale-sky");
const coating = {
  coats: fc.integer({ min: 1, max: 50 }).map(String),
  cover: oneOf(...covers),
  by: oneOf(...ways),
  ...place,
  thickness: oneOf(...thicknesses),
  seconds: fc.integer({ min: 1, max: 90 }).map((tenths) => String(tenths / 10)),
  gravity: oneOf("1.3", "1.45"),
  dried: oneOf(...dryings),
  "touch-up": oneOf("yes"),
};
const optional = { requiredKeys: [] as never[] };
const said = (model: object) => fc.record(model as Record<string, fc.Arbitrary<string>>, optional);
const layer: fc.Arbitrary<SourceMap> = fc.oneof(
  fc.tuple(glaze, said(coating)).map(([it, rest]) => ({ glaze: it, ...rest })),
  fc
    .tuple(glaze, glaze, fc.option(own, { nil: undefined }), said(coating))
    .map(([from, to, along, rest]) => ({
      fade: { from, to, ...(along !== undefined && { along }) },
      ...rest,
    })),
  fc.tuple(oneOf(...resists), said(place)).map(([resist, rest]) => ({ resist, ...rest })),
  fc.tuple(oneOf(...removals), said(place)).map(([remove, rest]) => ({ remove, ...rest })),
  fc
    .tuple(oneOf(...kindsOfFiring, "g-1020", "b-7"), said({ shelf: own }))
    .map(([fired, rest]) => ({ fired, ...rest })),
);
const stack = fc.array(layer, { minLength: 1, maxLength: 6 });

describe("whatever the layers are", () => {
  test("what is written in short form and read again is the same", () => {
    fc.assert(
      fc.property(stack, (layers) => {
        expect(layersOf(renderShortForm(layers))).toEqual(layers);
      }),
      { numRuns: 400 },
    );
  });

  test("a layer over others is the same again as well", () => {
    const layers = [
      { glaze: "7" },
      { glaze: "tape" },
      { glaze: "4", over: ["7", "tape"], by: "pour" },
    ];
    expect(layersOf(renderShortForm(layers))).toEqual(layers);
  });
});

/** Words that say nothing by themselves, or what holds anyway. */
const idle = new Set(["and", "on", "the", "by", "glaze", "remove", "resist", "fade"]);

describe("whatever is typed", () => {
  const words = oneOf(
    ...[
      "7",
      "3",
      "soot",
      "so",
      "so",
      "pale",
      "sky",
      "tape",
      "x2",
      "2x",
      "x",
      "2",
      "coats",
      "top",
      "rim",
    ],
    ...[
      "on",
      "and",
      "the",
      "by",
      "dip",
      "dipped",
      "thin",
      "over",
      "to",
      "wax",
      "resist",
      "wipe",
      "fired",
    ],
    ...[
      "bisque",
      "shelf",
      "3s",
      "sg",
      "1.45",
      '"low"',
      '"',
      ";",
      ",",
      "qwx",
      "glaze",
      "remove",
      "all",
      "fade",
    ],
  );
  const line = fc.array(words, { minLength: 1, maxLength: 9 }).map((all) => all.join(" "));

  test("every word is used or told: without it, the line would be read otherwise", () => {
    fc.assert(
      fc.property(line, (typed) => {
        const whole = readShortForm(typed, names);
        if (whole.faults.length > 0) return;
        for (const { 0: word, index } of typed.matchAll(/[^\s;,]+/gu)) {
          if (idle.has(word)) continue;
          const less = `${typed.slice(0, index)}${typed.slice(index + word.length)}`;
          const without = readShortForm(less, names);
          const same = JSON.stringify(without.steps.map(({ layer: it }) => it));
          expect([
            word,
            without.faults.length > 0 ||
              same !== JSON.stringify(whole.steps.map(({ layer: it }) => it)),
          ]).toEqual([word, true]);
        }
      }),
      { numRuns: 2000 },
    );
  });

  test("nothing makes it fail, and every fault has a place in the line", () => {
    const any = fc.oneof(
      line,
      fc.string({ unit: "grapheme", maxLength: 60 }),
      fc.string({ unit: "binary", maxLength: 60 }),
    );
    fc.assert(
      fc.property(any, (typed) => {
        const { steps, faults } = readShortForm(typed, names);
        for (const { from, to } of [...steps, ...faults]) {
          expect(from).toBeLessThan(to);
          expect(to).toBeLessThanOrEqual(typed.length);
        }
        if (typed.replaceAll(/[\s;,]/gu, "") !== "")
          expect(steps.length + faults.length).toBeGreaterThan(0);
      }),
      { numRuns: 2000 },
    );
  });
});
