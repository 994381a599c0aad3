/**
 * What the quick reader of plain YAML gives is what the YAML parser gives, to the letter, with
 * nothing to tell; all else it leaves to the parser. `TILEBOOK_RECORDS=100000` tries as many records.
 */
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { yamlOf } from "../../src/archive/parse-text.ts";
import { parseAnyYaml } from "../../src/reader/parse-yaml.ts";
import { readPlainYaml } from "../../src/reader/plain-yaml.ts";
import { recordKinds } from "../../src/records/kinds.ts";
import { type MeantRecord, meant } from "./intended.ts";
import { type Hand, hand, type } from "./typed.ts";

const count = Number(process.env.TILEBOOK_RECORDS ?? 1500);
const perKind = Math.ceil(count / recordKinds.length);

/** Gives whether the quick reader read it; if so, as the parser does. */
function agrees(yaml: string): boolean {
  const source = readPlainYaml(yaml);
  if (source === undefined) return false;
  const told = { yaml, blanks: [], faults: [] };
  expect({ yaml, ...parseAnyYaml(yaml) }).toStrictEqual({ ...told, source });
  return true;
}

/** A hand that writes no comment, so that the quick reader is left something to read. */
function withoutComments(by: Hand): Hand {
  const isComment = (word: unknown) => typeof word === "string" && word.includes("#");
  return {
    ...by,
    next: (oneIn) => oneIn !== 30 && by.next(oneIn),
    pick: (of) => by.pick(of.filter((word) => !isComment(word))),
  };
}

/** Some fields of a record: the more there are, the likelier is one that is left to the parser. */
const someOf = (record: fc.Arbitrary<MeantRecord>) =>
  fc.tuple(record, fc.nat(), fc.integer({ min: 1, max: 4 })).map(([whole, from, many]) => {
    const fields = Object.entries(whole);
    const first = fields.length === 0 ? 0 : from % fields.length;
    return Object.fromEntries(fields.slice(first, first + many));
  });

describe.each(recordKinds)("a $name", ({ name }) => {
  const record = someOf(meant[name] ?? fc.constant({}));

  test("typed without a slip, or with many, is read as the YAML parser reads it, or not at all", () => {
    const anySlips = fc.constantFrom(0, 0, 60, 15).chain(hand).map(withoutComments);
    let quick = 0;
    fc.assert(
      fc.property(record, anySlips, (source, by) => {
        if (agrees(type(source, by))) quick += 1;
      }),
      { numRuns: perKind },
    );
    expect(quick / perKind).toBeGreaterThan(0.25);
  });

  test("of which any letters were struck, changed or put in, too", () => {
    let quick = 0;
    fc.assert(
      fc.property(record, hand(0).map(withoutComments), anyEdits, (source, by, edits) => {
        if (agrees(edits.reduce(carryOut, type(source, by)))) quick += 1;
      }),
      { numRuns: perKind },
    );
    expect(quick / perKind).toBeGreaterThan(0.03);
  });
});

/** What may mean something to YAML, or look like what does. */
const odd = fc.constantFrom(
  ..." \n\n\t:,-#\"'[]{}|>&*!%@`?;~\\.=<_0aé½’“”…–—\u00a0\u00ad\u200b\u2028\u0085：",
  ...["  ", ": ", " :", "- ", "\n- ", "\n  ", " #", ", ", "null", "---", "...", "<<: ", "? ", "''"],
);
const anyEdit = fc.record({ at: fc.nat(), gone: fc.nat({ max: 3 }), put: odd });
const anyEdits = fc.array(anyEdit, { minLength: 1, maxLength: 4 });

function carryOut(text: string, { at, gone, put }: { at: number; gone: number; put: string }) {
  const place = at % (text.length + 1);
  return text.slice(0, place) + put + text.slice(place + gone);
}

test("any lines made of what means something are read as the YAML parser reads them, or not at all", () => {
  const piece = fc.oneof(
    odd,
    fc.constantFrom("a", "b: ", "c:", "- ", "[d]", "{e: f}", "\n", "\n  "),
  );
  fc.assert(
    fc.property(fc.array(piece, { maxLength: 14 }), (pieces) => {
      agrees(pieces.join(""));
    }),
    { numRuns: 4 * count },
  );
});

const anyLine = fc
  .record({
    column: fc.constantFrom(0, 0, 0, 1, 2, 2, 2, 3, 4, 4),
    dash: fc.constantFrom("", "", "- ", "-  ", "- - ", "-"),
    name: fc.constantFrom("a: ", "b: ", "c :", "d:", "e:  ", "5: ", "", "null: "),
    value: fc.constantFrom(
      ...[
        "",
        "",
        "word",
        "two words",
        "-5",
        "null",
        "~",
        "'it''s'",
        "'a: b'",
        '"c, d"',
        "x,",
        "3,5",
      ],
      ...["[a, b]", "[a , 'b c',d]", "{k: v}", "{k: [1, 2], l: {m: n}}", "{k: v, k: w}", "[null]"],
      ...["{ k : v }", "[ ]", "{}", "[a, ]", "[a: b]", "{k:v}", "{k}", "[a] b", "'a' b", "a [b]"],
    ),
    end: fc.constantFrom("", "", "", " ", "\n"),
  })
  .map(({ column, dash, name, value, end }) => `${" ".repeat(column)}${dash}${name}${value}${end}`);

test("any lines in any columns are read as the YAML parser reads them, or not at all", () => {
  let quick = 0;
  fc.assert(
    fc.property(fc.array(anyLine, { minLength: 1, maxLength: 6 }), (lines) => {
      if (agrees(lines.join("\n"))) quick += 1;
    }),
    { numRuns: 4 * count },
  );
  expect(quick).toBeGreaterThan(count / 100);
});

test("nearly all records of the demonstration are read quickly", () => {
  const project = fileURLToPath(new URL("../..", import.meta.url));
  const files = ["tiles", "recipes"].flatMap((folder) =>
    readdirSync(join(project, folder), { recursive: true, encoding: "utf8" })
      .filter((file) => file.endsWith(".md"))
      .map((file) => readFileSync(join(project, folder, file), "utf8")),
  );
  const quick = files.filter((text) => agrees(yamlOf(text, "markdown") ?? ""));
  expect(files.length).toBeGreaterThan(200);
  expect(quick.length / files.length).toBeGreaterThan(0.9);
});
