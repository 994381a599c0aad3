/**
 * Tables as CSV, for spreadsheets. A file begins with the mark of UTF-8: without it a spreadsheet reads
 * `5½` and every letter with an accent as something else, and says nothing.
 */
import { stringify } from "csv-stringify/sync";
import type { DataRows } from "./data-rows.ts";
import { harmless } from "./harmless.ts";
import type { Cell, Table } from "./tables/table.ts";
import { type CsvShape, tilesInCsv } from "./tiles-in-csv.ts";

/** A table as the text of a CSV file. */
export function toCsv(table: Table, data: DataRows): string {
  const { header, rows } = csvShapeOf(table);
  let text = `\ufeff${stringify([header], options)}`;
  let chunk: (number | string | null)[][] = [];
  const write = () => {
    text += stringify(chunk, options);
    chunk = [];
  };
  for (const row of rows(data)) {
    chunk.push(row.map(toCsvCell));
    if (chunk.length === chunkRows) write();
  }
  write();
  return text;
}

/** Every text in quotes, so that an empty one is not taken for nothing. */
const options = { quoted_string: true };

/** So many rows are written at once. */
const chunkRows = 1000;

/** Those of the table, and behind them each cone in words, since a spreadsheet reads `06` as 6. */
export function csvShapeOf(table: Table): CsvShape {
  const { header, rows } = table.name === "tiles" ? tilesInCsv(table) : plainly(table);
  const cones = table.columns.flatMap(({ isCone }, at) => (isCone ? [at] : []));
  if (cones.length === 0) return { header, rows };
  return {
    header: [...header, ...cones.map((at) => inWords(table.columns[at]?.name ?? ""))],
    *rows(data) {
      const cells = table.cells(data)[Symbol.iterator]();
      for (const row of rows(data)) {
        const of = cells.next().value ?? [];
        yield [...row, ...cones.map((at) => coneInWords(of[at] ?? null))];
      }
    },
  };
}

function plainly(table: Table): CsvShape {
  return { header: table.columns.map(({ name }) => name), rows: table.cells };
}

/** The name of the column that tells a cone in words: `cone 06`. */
function inWords(column: string): string {
  return `${column}_in_words`;
}

function coneInWords(cone: Cell): string | null {
  return cone === null ? null : `cone ${cone}`;
}

function toCsvCell(cell: Cell): number | string | null {
  if (typeof cell === "boolean") return cell ? "yes" : "no";
  return typeof cell === "string" ? harmless(cell) : cell;
}
