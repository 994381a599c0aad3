import { readFileSync } from "node:fs";
import { join } from "node:path";
import { parse } from "csv-parse/sync";
import type { Lab } from "../../src/colour/cielab.ts";

const rows: Record<string, string>[] = parse(
  readFileSync(join(import.meta.dirname, "../reference/colour.csv")),
  { columns: true },
);

function numbers(row: Record<string, string>, ...columns: string[]): Lab {
  const [x, y, z] = columns.map((column) => Number(row[column]));
  return [x ?? Number.NaN, y ?? Number.NaN, z ?? Number.NaN];
}

/** Pairs of colours and the difference published for each. */
export const PUBLISHED_PAIRS = rows
  .filter((row) => row.kind === "CIEDE2000 pair")
  .map((row) => ({
    id: row.id,
    one: numbers(row, "L1", "a1", "b1"),
    other: numbers(row, "L2", "a2", "b2"),
    difference: Number(row.published_deltaE00),
  }));

/** Colours of sRGB as `space` has them. */
export function publishedColours(space: string): { hex: string; colour: Lab }[] {
  return rows
    .filter((row) => row.kind === `sRGB -> ${space}`)
    .map((row) => ({ hex: row.id ?? "", colour: numbers(row, "out_L", "out_a", "out_b") }));
}
