/** The published cases of tests/reference, as the tests of chemistry read them. */
import { readFileSync } from "node:fs";
import { parse } from "csv-parse/sync";
import { isOxide, type OxideAmounts, oxideAmounts, oxides } from "../../src/terms/oxides.ts";

export type Row = Readonly<Record<string, string>>;

/** Every row keeps its `source` and `tag` columns, so that a failing test can name them. */
export function readReference(name: string): readonly Row[] {
  const file = new URL(`../reference/${name}.csv`, import.meta.url);
  return parse(readFileSync(file, "utf8"), { columns: true }) as Row[];
}

/** The number in a cell, 0 where it is empty. */
export function cell(row: Row, heading: string): number {
  const text = row[heading];
  if (text === undefined) throw new Error(`There is no column ${heading}`);
  return Number(text);
}

/** The oxides of a row, from columns named after them with an ending. */
export function oxidesOf(row: Row, ending: string): OxideAmounts {
  return oxideAmounts((oxide) => Number(row[`${oxide}${ending}`] ?? 0));
}

/** `K2O 0.3003; CaO 0.6997`: what stands for oxides, and for anything else. */
export function parseAmounts(text: string): {
  readonly oxides: OxideAmounts;
  readonly others: Readonly<Record<string, number>>;
} {
  const pairs = text.split(";").map((pair) => {
    const [, name = "", amount = ""] = /^\s*(.+?)\s+(-?[\d.]+)/u.exec(pair) ?? [];
    return [name, Number(amount)] as const;
  });
  return {
    oxides: Object.fromEntries(pairs.filter(([name]) => isOxide(name))),
    others: Object.fromEntries(pairs.filter(([name]) => !isOxide(name))),
  };
}

/** The largest distance between two sets of amounts, over all oxides. */
export function largestDifference(a: OxideAmounts, b: OxideAmounts): number {
  return Math.max(...oxides.map((oxide) => Math.abs((a[oxide] ?? 0) - (b[oxide] ?? 0))));
}
