/** A spreadsheet's CSV, taken apart into rows. Every cell stays the text it was: `06` is `06`. */
import { CsvError, parse } from "csv-parse/sync";
import type { Contents } from "../reader/archive-files.ts";
import { decodeLog } from "../reader/decode-text.ts";
import { largestSpreadsheet, mostSheetColumns, mostSheetRows } from "../terms/limits.ts";

/** A row, and its number as a spreadsheet shows it: the names of the columns are in row 1. */
export interface SheetRow {
  readonly number: number;
  readonly cells: readonly string[];
}

export type SheetReading =
  | { readonly ok: true; readonly names: readonly string[]; readonly rows: readonly SheetRow[] }
  /** Whole sentences: what is wrong, and what to do. */
  | { readonly ok: false; readonly why: string };

/** Reads a spreadsheet: commas, semicolons or tabs, in the encoding that the program wrote. */
export function readSheet(contents: Contents): SheetReading {
  if ("tooLarge" in contents || contents.bytes.length > largestSpreadsheet)
    return refused("It is larger than any studio's spreadsheet. Export the rows of one class.");
  const decoded = decodeLog(contents);
  if (!decoded.ok) return refused(`${decoded.fault.message}. Export it anew as CSV, in UTF-8.`);
  const text = decoded.text.replace(/^\uFEFF/u, "");
  if (text.split("\n", mostSheetRows + 2).length > mostSheetRows + 1)
    return refused(`It has more than ${mostSheetRows} rows. Export the rows of one class.`);
  return splitSheet(text);
}

function refused(why: string): SheetReading {
  return { ok: false, why };
}

function splitSheet(text: string): SheetReading {
  try {
    const found: string[][] = parse(text, {
      delimiter: separatorOf(text),
      relax_column_count: true,
      skip_empty_lines: false,
      trim: true,
    });
    const [first = [], ...rows] = found;
    const widest = rows.reduce((most, { length }) => Math.max(most, length), 0);
    // What is in a cell under no name is told like any column that is not known.
    const names = Array.from({ length: Math.max(first.length, widest) }, (_, i) => first[i] ?? "");
    if (names.length > mostSheetColumns)
      return refused(`It has more than ${mostSheetColumns} columns. Take out what is no tile's.`);
    return { ok: true, names, rows: keepFilled(rows) };
  } catch (error) {
    if (!(error instanceof CsvError)) throw error;
    return refused(
      "Its quotes do not match, so nobody can say where a cell ends. Export it anew from the spreadsheet as CSV.",
    );
  }
}

function keepFilled(rows: readonly (readonly string[])[]): readonly SheetRow[] {
  return rows
    .map((cells, i) => ({ number: i + 2, cells: cells.map((cell) => cell.trim()) }))
    .filter(({ cells }) => cells.some((cell) => cell !== ""));
}

/** The one of the three that the first row has most of. */
function separatorOf(text: string): string {
  const [first = ""] = text.split("\n", 1);
  const count = (sign: string) => first.split(sign).length;
  return [",", ";", "\t"].reduce((best, sign) => (count(sign) > count(best) ? sign : best));
}
