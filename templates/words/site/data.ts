/** What the page of the data says, and the queries that it gives to copy. */

import { count, listed } from "../english/numbers.ts";

/** What the page and the way to it are called. */
export const dataTitle = "The data";

/** How many of each there are, for the opening. */
export interface DataCounts {
  readonly tiles: number;
  readonly glazes: number;
  readonly firings: number;
}

export function dataSentence({ tiles, glazes, firings }: DataCounts): string {
  const things = [count(tiles, "tile"), count(glazes, "glaze"), count(firings, "firing")];
  return `The tests of this catalogue as tables to take away: ${listed(things)}. For a spreadsheet, for SQL, for a program of your own.`;
}

/** `Eelgate Pottery: Glaze tests of Eelgate Pottery. https://eelgate.example/tests/` */
export function citation(studio: string, title: string, address: string | null): string {
  return [`${studio}: ${title}.`, address].filter(Boolean).join(" ");
}

/** What a column holds. */
export function typeWords({
  type,
  nullable,
}: {
  readonly type: "date" | "integer" | "real" | "text" | "yes-no";
  readonly nullable: boolean;
}): string {
  return `${types[type]}${nullable ? ", or nothing" : ""}`;
}

const types = {
  date: "day",
  integer: "whole number",
  real: "number",
  text: "text",
  "yes-no": "yes or no",
} as const;

/** `812 bytes`, `12 kB`, `3.2 MB`. */
export function sizeWords(bytes: number): string {
  if (bytes < 1000) return count(bytes, "byte");
  const [much, unit] = bytes < 999_500 ? [bytes / 1e3, "kB"] : [bytes / 1e6, "MB"];
  return `${much < 9.95 ? Number(much.toFixed(1)) : Math.round(much)}\u00a0${unit}`;
}

/** What to know of the CSV files before a spreadsheet opens them. */
export const csvNotes: readonly string[] = [
  "A spreadsheet reads cone `06` as the number 6, which is some 220 °C hotter. So each cone is there in words as well, in the last columns, as in `cone 06`. Or tell the spreadsheet to take the column as text.",
  "Words that a spreadsheet would run as a formula have an apostrophe before the `=`, `+`, `-` or `@`. Take away one apostrophe there and you have what was written. Codes and ids never have one, so tables can be joined.",
  "Yes and no are written out, a day is written as in `2026-10-14`, and a cell with nothing in it is not known. The files are UTF-8 and say so in their first three bytes.",
  "A comma divides the columns and a point the decimals, as in `0.5`. Where your spreadsheet writes `0,5`, open the file with its import of text and say so there: else it may take 1.5 for the first of May.",
  "`tiles.csv` has all lists of a tile in one row, for reading. Some of its columns have older names: `set`, `L`, `a` and `b` are `set_id`, `lab_l`, `lab_a` and `lab_b` in the other files.",
];

/** What the query asks, in words. */
export const moversNote =
  "It asks for every tile at cone 6 on which a glaze moved more than 20 mm, with each pair of glazes that lie directly on each other there: the same tiles as under What runs. A tile with three layers has a row for each pair, and nobody can say which of them ran: `only_pair` tells where there are just two. Compare only tests of the same shape and angle.";

/** The question that the query answers, as a potter would ask it. */
export const moversQuestion = "Which pairs at cone 6 ran more than 20 mm?";

/**
 * The same tiles as the page of what runs has at cone 6, where two glazes or more lie on each other. A
 * test asks it of both.
 */
export const moversQuery = `SELECT p.over_glaze, p.under_glaze, t.id AS tile, t.run,
       t.shape, t.angle, t.clay, t.atmosphere, p.only_pair
FROM tile_pairs AS p
JOIN tiles AS t ON t.id = p.tile
WHERE t.cone = '6' AND t.run > 20
ORDER BY t.run DESC, t.id, p.over_glaze, p.under_glaze`;
