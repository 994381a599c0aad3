import { fc, test as propertyTest } from "@fast-check/vitest";
import { describe, expect, test } from "vitest";
import { alignSteps, distanceOf, joinTables } from "../../../src/browser/beside/differences.ts";
import { differenceSentences, tellColour } from "../../../src/browser/beside/words.ts";
import type { Subject, SubjectStep, SubjectTable } from "../../../src/publish/beside-file.ts";

const coat = (what: string, coats: string | null, way: string | null = "brush"): SubjectStep => ({
  words: `${what} ${coats}`,
  facets: [
    ["what", what],
    ["coats", coats],
    ["way", way],
  ],
});
const fired = (cone: string | null): SubjectStep => ({
  words: `fired ${cone}`,
  facets: [
    ["what", "glaze firing"],
    ["cone", cone],
  ],
});

function subject(id: string, steps: readonly SubjectStep[], clay: string | null = "Buff"): Subject {
  const lines = clay === null ? [] : ([["Clay", clay]] as const);
  const tables = [{ title: "The piece", kind: "facts" as const, lines }];
  const bare = { picture: null, stage: "", colour: null, curves: [], glazes: [] };
  return { id, name: id, url: `tiles/${id}.html`, steps, tables, ...bare };
}

function sentences(...subjects: readonly Subject[]): readonly string[] {
  const ids = subjects.map(({ id }) => id);
  return differenceSentences(ids, alignSteps(subjects), joinTables(subjects));
}

describe("what differs, in words", () => {
  const one = subject("A-1", [coat("chalk", "2"), fired("6")]);

  test("is one thing where it is one", () => {
    expect(sentences(one, subject("A-2", [coat("chalk", "3"), fired("6")]))).toEqual([
      "They differ in one thing: how many coats (step 1).",
    ]);
    expect(sentences(one, subject("A-2", one.steps, "White"))).toEqual([
      "They differ in one thing: the clay.",
    ]);
  });

  test("names who lacks a step", () => {
    const more = subject("A-2", [coat("chalk", "2"), coat("soot", "1"), fired("6")]);
    expect(sentences(one, more, { ...one, id: "A-3" })).toEqual([
      "They differ in one thing: step 2, which is not on A-1 and A-3.",
    ]);
  });

  test("is never surer than what was written down", () => {
    expect(sentences(one, subject("A-2", [coat("chalk", null), fired(null)], null))).toEqual([
      "Nothing that was written down of how they were made differs.",
      "This may differ too: it is written down of some and not of others. The clay; how many coats (step 1); the cone (step 2).",
    ]);
  });

  test("is counted where it would be a list", () => {
    const other = [coat("soot", "1", "dip"), coat("mist", "1"), coat("kelp", "1"), fired("8")];
    expect(sentences(one, subject("A-2", [...other, fired("06")], "White"))[0]).toMatch(
      /^They differ in (?:[7-9]|\d\d) things, each marked below\.$/u,
    );
  });
});

const anyStep = fc.oneof(
  fc
    .tuple(fc.constantFrom("chalk", "soot"), fc.option(fc.constantFrom("1", "2")))
    .map(([what, coats]) => coat(what, coats)),
  fc.option(fc.constantFrom("6", "06")).map(fired),
);

propertyTest.prop([anyStep, anyStep])("steps are as far apart from either side", (a, b) => {
  expect(distanceOf(a, b)).toBe(distanceOf(b, a));
  expect(distanceOf(a, a)).toBe(0);
});

propertyTest.prop([fc.array(fc.array(anyStep, { maxLength: 4 }), { minLength: 1, maxLength: 4 })])(
  "what is not known of one is never told as a difference",
  (columns) => {
    const subjects = columns.map((steps, i) => subject(`A-${i}`, steps));
    for (const { row, differing, open } of alignSteps(subjects)) {
      const valuesOf = (aspect: string) =>
        row.flatMap((at, i) =>
          at === null
            ? []
            : [new Map<string, string | null>(columns[i]?.[at]?.facets).get(aspect) ?? null],
        );
      for (const aspect of differing)
        expect(new Set(valuesOf(aspect).filter((value) => value !== null)).size).toBeGreaterThan(1);
      for (const aspect of open) expect(valuesOf(aspect)).toContain(null);
    }
  },
);

const anyTable = fc.uniqueArray(
  fc.tuple(fc.constantFrom("Run", "Again", "Surface"), fc.string({ minLength: 1 })),
  {
    selector: ([label]) => label,
  },
);

propertyTest.prop([fc.array(anyTable, { minLength: 1, maxLength: 4 })])(
  "no line of a table is lost, and it is marked where it is not the same on all",
  (all) => {
    const tables = all.map((lines): { tables: SubjectTable[] } => ({
      tables: [{ title: "What came out", kind: "facts", lines }],
    }));
    const [joined] = joinTables(tables);
    for (const [i, lines] of all.entries())
      for (const [label, words] of lines)
        expect(joined?.rows.find((row) => row.label === label)?.words[i]).toBe(words);
    for (const { words, differs } of joined?.rows ?? []) {
      const known = new Set(words.filter((each) => each !== undefined));
      expect(differs === "yes").toBe(known.size > 1);
      expect(differs === "maybe").toBe(known.size === 1 && words.includes(undefined));
    }
  },
);

test("what is in a glaze without a recipe is not known, and never none", () => {
  const recipe = (lines: readonly (readonly [string, string])[]) => ({
    tables: [{ title: "Parts by weight", kind: "parts" as const, lines }],
  });
  const [first, second] = [recipe([["Whiting", "20"]]), recipe([["Silica", "30"]])];
  const rowsOf = (...all: Parameters<typeof joinTables>[0]) => joinTables(all)[0]?.rows;
  expect(rowsOf(first, second)).toEqual([
    { label: "Whiting", words: ["20", "none"], differs: "yes" },
    { label: "Silica", words: ["none", "30"], differs: "yes" },
  ]);
  expect(rowsOf(first, { tables: [] })).toEqual([
    { label: "Whiting", words: ["20", undefined], differs: "maybe" },
  ]);
});

// By hand, for greys: 20 / (1 + 0.015 · 30² / √(20 + 30²)) is 13.8, and 1 / 1.56 is 0.6.
test("a colour is told against how far like tiles differ", () => {
  const [white, grey] = [
    { called: "A-1", colour: { hex: "#ffffff", name: "white", lab: [90, 0, 0] as const } },
    { called: "A-2", colour: { hex: "#eeeeee", name: "white", lab: [70, 0, 0] as const } },
  ];
  const near = {
    called: "A-3",
    colour: { hex: "#fefefe", name: "white", lab: [89, 0, 0] as const },
  };
  expect(tellColour(grey, white, 4)).toBe(
    "14 apart from A-1: more than tiles made alike differ here (up to 4).",
  );
  expect(tellColour(near, white, 4)).toBe(
    "less than 1 apart from A-1: tiles made alike differ as much here (up to 4).",
  );
  expect(tellColour(near, white, null)).toContain("is not known yet.");
  expect(tellColour({ colour: null }, white, 4)).toBe("");
});
