/** The text of a log, taken apart into rows and cells. */
import { CsvError, parse } from "csv-parse/sync";
import { largestLog, mostLogCells, mostLogRows } from "../../terms/limits.ts";
import { LogFault } from "./note.ts";

export type Separator = "\t" | ";" | ",";

export interface Table {
  readonly separator: Separator;
  readonly rows: readonly (readonly string[])[];
  /** The line of the file, from 1, at which each row begins. */
  readonly lines: readonly number[];
}

const lineEnd = /\r\n|\n|\r/u;

/**
 * Takes a log apart. Cells are trimmed; empty lines are empty rows.
 *
 * @throws LogFault where the text is no table
 */
export function parseTable(text: string): Table {
  if (text.length > largestLog)
    throw new LogFault(
      "log-too-large",
      "The log is larger than 20 MB.",
      "Export it with a longer interval: a reading every ten seconds is plenty.",
    );
  if (isBinary(text))
    throw new LogFault(
      "log-not-text",
      "The log is not plain text.",
      "Export it from the logger or the spreadsheet as CSV, in UTF-8.",
    );
  const plain = text.startsWith("\uFEFF") ? text.slice(1) : text;
  const declared = /^sep=(.)(?:\r\n|\n|\r)/u.exec(plain);
  const body = declared ? plain.slice(declared[0].length) : plain;
  refuseTooMuch(body);
  const separator = findSeparator(body);
  const rows = splitRows(body, separator);
  return { separator, rows, lines: numberLines(rows, declared ? 2 : 1, body.includes('"')) };
}

/** Counts what would become rows and cells, before any are made. */
function refuseTooMuch(text: string): void {
  let [rows, separators] = [0, 0];
  for (let i = 0; i < text.length; i += 1) {
    const letter = text.charAt(i);
    if (letter === "\n" || letter === "\r") rows += 1;
    else if (letter === "," || letter === ";" || letter === "\t") separators += 1;
  }
  if (rows <= mostLogRows && rows + separators <= mostLogCells) return;
  throw new LogFault(
    "log-too-large",
    `The log has more than the ${mostLogRows / 1000},000 rows or ${mostLogCells / 1_000_000} million cells that are read.`,
    "Export it with a longer interval, with time and temperature alone: a reading every ten seconds is plenty.",
  );
}

/** The degree sign of an old encoding shows as U+FFFD; more than a few of them are no text. */
function isBinary(text: string): boolean {
  const head = text.slice(0, 4000);
  // biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is looked for
  const strange = head.match(/[\u0000-\u0008\u000E-\u001F\uFFFD]/gu)?.length ?? 0;
  return text.includes("\u0000") || strange > Math.max(4, head.length / 50);
}

function findSeparator(text: string): Separator {
  const lines = text
    .slice(0, 20_000)
    .split(lineEnd)
    .filter((line) => line.trim() !== "");
  const found = (["\t", ";", ","] as const).find(
    (separator) => lines.filter((line) => line.includes(separator)).length * 2 >= lines.length,
  );
  if (lines.length > 0 && found) return found;
  throw new LogFault(
    "log-one-column",
    lines.length === 0
      ? "The log is empty."
      : "The log has one column only: nothing parts time from temperature.",
    "Export time and temperature as two columns, separated by commas, semicolons or tabs.",
  );
}

function splitRows(text: string, separator: Separator): string[][] {
  try {
    return parse(text, {
      delimiter: separator,
      record_delimiter: ["\r\n", "\n", "\r"],
      relax_column_count: true,
      relax_quotes: true,
      trim: separator !== "\t",
      max_record_size: 100_000,
    });
  } catch (error) {
    if (!(error instanceof CsvError)) throw error;
    throw new LogFault(
      "log-broken-quotes",
      "The log cannot be taken apart into rows: a quotation mark is not closed, or a line has no end.",
      "Take the quotation marks out of the log, or export it again.",
    );
  }
}

function numberLines(rows: readonly string[][], first: number, quoted: boolean): number[] {
  if (!quoted) return rows.map((_, i) => first + i);
  let line = first;
  return rows.map((row) => {
    const begins = line;
    line += 1 + row.join("").split(lineEnd).length - 1;
    return begins;
  });
}
