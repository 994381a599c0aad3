/** Writing into lists of records, and taking out: what was not meant stays, letter for letter. */
import { fc, test as propertyTest } from "@fast-check/vitest";
import { describe, expect, it } from "vitest";
import { parseText } from "../../src/archive/parse-text.ts";
import { commentsOf, type Fields, isLeftOf, write } from "./write-record.ts";

/** A tile of one layer with these lines, and its notes. */
const tile = (...lines: readonly string[]) =>
  ["---", "layers: [{glaze: soot}]", ...lines, "---", "Notes.", ""].join("\n");

/** What a tile's lines are after the fields were written. */
function written(lines: readonly string[], fields: Fields): readonly string[] | string {
  const { result, after } = write("tile", tile(...lines), fields);
  return result.ok ? after.split("\n").slice(2, -3) : result.because;
}

const second: Fields = [
  { path: ["result", 0, "after"], value: "g-1" },
  { path: ["result", 1, "after"], value: "g-2" },
  { path: ["result", 1, "surface"], value: "gloss" },
  { path: ["result", 1, "faults"], value: ["crazing", "running"] },
];
const secondWritten = "{after: g-2, surface: gloss, faults: [crazing, running]}";

describe("a second result", () => {
  it("stands behind the first, which stays as it was laid out", () => {
    expect(written(["result: {surface: satin} # well"], second)).toEqual([
      `result: [{surface: satin, after: g-1}, ${secondWritten}] # well`,
    ]);
    expect(
      written(
        [
          "result: # seen twice",
          "  surface: satin",
          "",
          "  # rim",
          "  next-time: |",
          "    thin",
          "fate: stuck",
        ],
        second,
      ),
    ).toEqual([
      "result: # seen twice",
      "  - surface: satin",
      "",
      "    # rim",
      "    next-time: |",
      "      thin",
      "    after: g-1",
      `  - ${secondWritten}`,
      "fate: stuck",
    ]);
  });

  it("stands behind those of a list, between brackets or in lines", () => {
    expect(written(["result: [{surface: satin}]"], second)).toEqual([
      `result: [{surface: satin, after: g-1}, ${secondWritten}]`,
    ]);
    expect(written(["result:", "  -  surface: satin # well", "later: []"], second)).toBe("faulty");
    expect(written(["result:", "  -  surface: satin # well"], second)).toEqual([
      "result:",
      "  -  surface: satin # well",
      "     after: g-1",
      `  - ${secondWritten}`,
    ]);
  });

  it("is the first where there was none yet", () => {
    const first: Fields = [
      { path: ["result", 0, "surface"], value: ["dry", "matte"] },
      { path: ["result", 0, "next-time"], value: 'rim: "thin", not # thick' },
    ];
    expect(written(["result:"], first)).toEqual([
      'result: {surface: [dry, matte], next-time: "rim: \\"thin\\", not # thick"}',
    ]);
  });
});

describe("what is taken out", () => {
  it("goes with its line or its comma, and the comments stay", () => {
    const out: Fields = [{ path: ["result", 0, "run"], value: null }];
    expect(written(["result: {run: 3, surface: satin}"], out)).toEqual([
      "result: {surface: satin}",
    ]);
    expect(written(["result: {surface: satin, run: 3 }"], out)).toEqual([
      "result: {surface: satin }",
    ]);
    expect(written(["result:", "  surface: satin", "  run: 3 # by the rim"], out)).toEqual([
      "result:",
      "  surface: satin",
      "  # by the rim",
    ]);
    expect(written(["result: {surface: satin, # why", "  run: 3}"], out)).toEqual([
      "result: {surface: satin, # why",
      "  }",
    ]);
  });

  it("changes nothing where it was not there", () => {
    const before = ["result: {surface: satin}"];
    expect(written(before, [{ path: ["result", "run"], value: null }])).toEqual(before);
    expect(written(before, [{ path: ["fate"], value: null }])).toEqual(before);
  });

  it("leaves the other entries of a list where they are", () => {
    const { after } = write(
      "firing",
      "---\nkind: glaze\ntiles:\n  top:\n    - A-1..A-3 # left\n    - B-1 # mine\n    - C-1\n  low: [D-1, D-2, D-3]\n---\n",
      [
        { path: ["tiles", "top"], value: [["A-1", "A-3"], [], []] },
        { path: ["tiles", "low"], value: [[], "D-2", []] },
        { path: ["tiles", "door"], value: ["E-1"] },
      ],
    );
    expect(after).toBe(
      "---\nkind: glaze\ntiles:\n  top:\n    - A-1\n    - A-3 # left\n    # mine\n  low: [D-2]\n  door: [E-1]\n---\n",
    );
  });
});

const gap = fc.constantFrom("", " # why", "\n  # a thought");
const words = fc.constantFrom(
  ...[
    "thin",
    "a: b",
    "no #2",
    "[x",
    "“so”",
    "it's",
    'say "no"',
    "- dash",
    "x,",
    "{y}",
    "~",
    "ünder",
    "a\\b",
  ],
);
const shapes = fc.constantFrom(
  "",
  "result:",
  "result: {surface: satin}",
  "result: { surface: satin, again: yes, }",
  "result:\n  surface: satin\n  again: 'yes'",
  "result:\n    next-time: >-\n      one\n      coat\n\n    surface: satin",
  "result: [{surface: satin, after: g-0}]",
  "result:\n- after: g-0\n  surface: satin\n- {after: g-9}",
  "result:\n  - after: g-0\n    next-time: |\n      one",
);

propertyTest.prop([shapes, gap, words, fc.constantFrom("\n", "\r\n"), fc.boolean()])(
  "whatever a result looks like, another stands behind it, and nothing else has changed",
  (shape, comment, text, end, isLast) => {
    const other = `later:${comment}\n  - on: 2027-01-11`;
    const lines = isLast ? [other, shape] : [shape, other];
    const before = tile(...lines.filter((each) => each !== "")).replaceAll("\n", end);
    const read = (from: string) => parseText(from.replaceAll("\r\n", "\n"), "markdown");
    const was = read(before);
    const old = [was.source?.result ?? []].flat();
    const { after, result } = write("tile", before, [
      { path: ["result", old.length, "after"], value: "g-2" },
      { path: ["result", old.length, "next-time"], value: text },
    ]);
    expect(result.ok).toBe(true);
    const is = read(after);
    const added = { after: "g-2", "next-time": text };
    expect([is.source?.result].flat()).toEqual([...old, added]);
    expect({ ...is.source, result: [] }).toEqual({ ...was.source, result: [] });
    expect(is.notes).toBe(was.notes);
    expect(isLeftOf(commentsOf(before), commentsOf(after))).toBe(true);
  },
);

const codes = ["A-1", "A-2", "B-1", "B-2", "C-1"];
const layouts = fc.constantFrom(
  (list: readonly string[]) => `[${list.join(", ")}]`,
  (list: readonly string[]) => `[ ${list.join(" ,\n    ")} ] # all`,
  (list: readonly string[]) => `[${list.map((code) => `${code}, # ${code}\n`).join("    ")}  ]`,
  (list: readonly string[]) => list.map((code) => `\n    - ${code} # ${code}`).join(""),
  (list: readonly string[]) => list.map((code) => `\n  - '${code}'\n  # under`).join(""),
);

propertyTest.prop([
  layouts,
  fc.subarray(codes, { minLength: 1 }),
  fc.array(fc.constantFrom("keep", "go", "two"), { minLength: 5, maxLength: 5 }),
])(
  "whatever a load list looks like, entries come and go, and no comment is lost",
  (layout, list, fates) => {
    const value = list.map((code, at) =>
      fates[at] === "go" ? [] : fates[at] === "two" ? [code, `${code}0`] : code,
    );
    fc.pre(value.flat().length > 0);
    const before = `---\nkind: glaze\ntiles:\n  top: ${layout(list)}\n  low: Z-1\n---\n`;
    const { after, result } = write("firing", before, [{ path: ["tiles", "top"], value }]);
    expect({ ok: result.ok, after, before }).toMatchObject({ ok: true });
    expect(parseText(after, "markdown").source?.tiles).toEqual({ top: value.flat(), low: "Z-1" });
    expect(isLeftOf(commentsOf(before), commentsOf(after))).toBe(true);
  },
);
