/** Where in a log the readings stand: from which row on, and in which columns. */
import { parseClock, parseDay, parseNumber } from "./cells.ts";
import { describeColumns, findTemperatures, findTime, sampleOf, type TimeKind } from "./columns.ts";
import { LogFault } from "./note.ts";
import type { Table } from "./table.ts";

export interface Layout {
  /** The index of the row of labels; undefined where the log has none. */
  readonly headerRow: number | undefined;
  /** Labels by column; empty texts where there is no header. */
  readonly labels: readonly string[];
  /** The index of the first row of readings. */
  readonly firstRow: number;
  /** How time is written, and in which column; a day and a clock stand in two. */
  readonly timeKind: TimeKind;
  readonly timeColumns: readonly number[];
  readonly temperatureColumn: number;
  /** Other columns that might hold temperatures just as well. */
  readonly otherTemperatures: readonly number[];
}

/**
 * Finds header, readings and columns.
 *
 * @throws LogFault where there are no readings, or no column for time or temperature
 */
export function findLayout({ rows, separator }: Table): Layout {
  const firstRow = findFirstRow(rows);
  const width = rows[firstRow]?.length ?? 0;
  const { headerRow, labels } = findLabels(rows, firstRow, width);
  const data = rows.slice(firstRow);
  refuseSplitDecimals(data, separator, headerRow === undefined ? undefined : labels.length, width);
  const columns = describeColumns(data, labels, width);
  const time = findTime(columns);
  const rest = columns.filter(
    (column) => column.content === "number" && !time.columns.includes(column.index),
  );
  const [temperatureColumn = -1, ...otherTemperatures] = findTemperatures(rest);
  if (temperatureColumn < 0)
    throw new LogFault(
      "log-no-temperature",
      "No column of the log can be told to hold the kiln's temperature.",
      "Label it in the first line: “°C” or “°F”.",
    );
  return {
    headerRow,
    labels,
    firstRow,
    timeKind: time.kind,
    timeColumns: time.columns,
    temperatureColumn,
    otherTemperatures,
  };
}

/** The first row of readings: two cells that hold values, and another such row below it. */
function findFirstRow(rows: Table["rows"]): number {
  const first = rows.findIndex((row, i) => {
    const next = rows[i + 1];
    return isReading(row) && next && isReading(next) && next.length === row.length;
  });
  if (first >= 0) return first;
  throw new LogFault(
    "log-too-few-readings",
    "The log holds no two readings of time and temperature.",
    "Export it again with a line for each reading, such as 0:10:00,125.",
  );
}

const anyStyle = { decimal: ",", thousands: "." } as const;

function isValue(cell: string): boolean {
  return (
    !Number.isNaN(parseNumber(cell, { decimal: "." })) ||
    !Number.isNaN(parseNumber(cell, anyStyle)) ||
    parseClock(cell) !== undefined ||
    parseDay(cell) !== undefined
  );
}

function isReading(row: readonly string[]): boolean {
  return row.filter((cell) => isValue(cell.trim())).length >= 2;
}

/** Longer labels are cut short. */
const longestLabel = 80;

const labelOf = (cell: string) => cell.trim().replace(/^#\s*/u, "").slice(0, longestLabel);

const unitCell = /^(?:s|sec|min|h|°?c|°?f|%|\uFFFD[cf]|h?h:mm(?::ss)?|)$/iu;

/** The row of labels above the readings; a row of units between them is joined to it. */
function findLabels(rows: Table["rows"], firstRow: number, width: number) {
  const above = rows
    .slice(0, firstRow)
    .map((row, index) => ({ row: row.map(labelOf), index }))
    .filter(({ row }) => row.filter((cell) => cell !== "" && !isValue(cell)).length > 0);
  const last = above.at(-1);
  const before = above.at(-2);
  const none = { headerRow: undefined, labels: Array.from({ length: width }, () => "") };
  if (!last || last.row.length < 2) return none;
  const isUnits = last.row.every((cell) => unitCell.test(cell));
  if (isUnits && before && before.row.length === last.row.length)
    return {
      headerRow: before.index,
      labels: before.row.map((label, i) => `${label} ${last.row[i] ?? ""}`.trim()),
    };
  return { headerRow: last.index, labels: last.row };
}

/** Decimal commas between commas take a number apart: nothing can be made of such a log. */
function refuseSplitDecimals(
  data: Table["rows"],
  separator: Table["separator"],
  labelled: number | undefined,
  width: number,
): void {
  if (separator !== ",") return;
  const sample = sampleOf(data.filter((row) => row.some((cell) => cell !== "")));
  const hasPoint = sample.some((row) => row.some((cell) => cell.includes(".")));
  const uneven = sample.filter((row) => row.length !== width).length > sample.length / 20;
  const wider = labelled !== undefined && labelled < width;
  const lone = Array.from({ length: width }, (_, i) => sample.map((row) => row[i] ?? "")).some(
    (cells, i) => i > 0 && cells.every((cell) => /^\d$/u.test(cell)) && new Set(cells).size > 3,
  );
  if (hasPoint || !(uneven || wider || (labelled === undefined && lone))) return;
  throw new LogFault(
    "log-columns-differ",
    "The log parts its columns with commas, and seems to write its decimals with commas too: what belongs together cannot be told.",
    "Export it with semicolons between the columns, or with decimal points.",
  );
}
