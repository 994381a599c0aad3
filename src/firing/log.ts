/**
 * A firing's log, as pyrometers and controllers export it: from text to a curve, with every
 * choice that was made on the way told in words. What cannot be known is asked, not guessed.
 */
import type { Curve } from "./curve.ts";
import { findGaps, leaveOutLeaps, usualStep } from "./log/jumps.ts";
import { findLayout, type Layout } from "./log/layout.ts";
import { countOf, LogFault, type LogNote } from "./log/note.ts";
import { putInOrder, type Reading } from "./log/order.ts";
import { parseTable, type Table } from "./log/table.ts";
import { readTemperatures } from "./log/temperatures.ts";
import { readTimes, type Times } from "./log/times.ts";
import type { TemperatureUnit } from "./units.ts";
import { minutesInWords } from "./units.ts";

export type { LogCode, LogNote, LogSeverity } from "./log/note.ts";

export interface LogReading {
  /** In minutes from the first reading; empty where the log cannot be used. */
  readonly curve: Curve;
  /** What was taken for what, a sentence each. */
  readonly taken: readonly string[];
  /** Those of them that follow from the readings alone: neither log nor record says so. */
  readonly deduced: readonly string[];
  /** Errors (then there is no curve), warnings and notes. */
  readonly notes: readonly LogNote[];
}

/**
 * Reads a log.
 *
 * @param text the file's text
 * @param unit the unit that the firing's record gives, if it does
 */
export function parseLog(text: string, unit?: TemperatureUnit): LogReading {
  try {
    return readTable(parseTable(text), unit);
  } catch (error) {
    if (error instanceof LogFault)
      return { curve: [], taken: [], deduced: [], notes: [error.note] };
    throw error;
  }
}

function readTable(table: Table, unit: TemperatureUnit | undefined): LogReading {
  const layout = findLayout(table);
  const { rows, lines } = rowsOfReadings(table, layout);
  const cellsOf = (column: number) => rows.map((row) => row[column]?.trim() ?? "");
  const temperatures = readTemperatures({
    cells: cellsOf(layout.temperatureColumn),
    label: layout.labels[layout.temperatureColumn] ?? "",
    beside: rows[0] ?? [],
    above: headOf(table, layout),
    unit,
    lines,
  });
  const times = readTimes({
    kind: layout.timeKind,
    cells: layout.timeColumns.map(cellsOf),
    label: layout.labels[layout.timeColumns.at(-1) ?? 0] ?? "",
    celsius: temperatures.celsius,
  });
  const joined = join(times.minutes, temperatures.celsius, lines);
  const ordered = putInOrder(joined.readings, times.wrapsAtMidnight);
  const steady = leaveOutLeaps(ordered.readings);
  refuseTooFew(steady.readings);
  const words = layoutInWords(table, layout, times.words, temperatures.words);
  return {
    curve: curveOf(steady.readings),
    taken: [words.columns, words.time, words.temperature, extentInWords(steady.readings)],
    deduced: deducedOf(words, layout, times),
    notes: [
      ...otherTemperatures(layout),
      ...joined.notes,
      ...temperatures.notes,
      ...ordered.notes,
      ...steady.notes,
      ...findGaps(steady.readings),
    ],
  };
}

/** What stands above the readings, as far as a head may reach. */
function headOf({ rows }: Table, { firstRow }: Layout): string {
  const cells = rows.slice(Math.max(0, firstRow - 50), firstRow).flat();
  return cells.map((cell) => cell.slice(0, 80)).join("\n");
}

function rowsOfReadings(table: Table, { firstRow }: Layout) {
  const rows: (readonly string[])[] = [];
  const lines: number[] = [];
  for (let i = firstRow; i < table.rows.length; i += 1) {
    const row = table.rows[i];
    if (!row?.some((cell) => cell !== "")) continue;
    rows.push(row);
    lines.push(table.lines[i] ?? 0);
  }
  return { rows, lines };
}

/** Rows that have both a time and a temperature; rows without a time are counted. */
function join(
  minutes: readonly number[],
  celsius: readonly number[],
  lines: readonly number[],
): { readings: readonly Reading[]; notes: readonly LogNote[] } {
  const readings: Reading[] = [];
  const untold: number[] = [];
  lines.forEach((line, i) => {
    const [when = Number.NaN, degrees = Number.NaN] = [minutes[i], celsius[i]];
    if (Number.isNaN(when)) untold.push(line);
    else if (!Number.isNaN(degrees)) readings.push({ minutes: when, celsius: degrees, line });
  });
  const [first] = untold;
  if (first === undefined) return { readings, notes: [] };
  return {
    readings,
    notes: [
      {
        severity: untold.length > lines.length / 10 ? "warning" : "note",
        code: "log-unreadable-rows",
        line: first,
        message: `${countOf(untold.length, "row")} whose time cannot be read ${untold.length === 1 ? "was" : "were"} left out.`,
      },
    ],
  };
}

function refuseTooFew(readings: readonly Reading[]): void {
  if (readings.length >= 2) return;
  throw new LogFault(
    "log-too-few-readings",
    "The log holds no two readings of time and temperature that can be used.",
    "Export it again with a line for each reading, such as 0:10:00,125.",
  );
}

function curveOf(readings: readonly Reading[]): Curve {
  const begin = readings[0]?.minutes ?? 0;
  return readings.map(({ minutes, celsius }) => ({ minutes: minutes - begin, celsius }));
}

function otherTemperatures({ labels, temperatureColumn, otherTemperatures }: Layout): LogNote[] {
  if (otherTemperatures.length === 0) return [];
  const others = otherTemperatures.map((column) => nameOf(column, labels)).join(", ");
  return [
    {
      severity: "warning",
      code: "log-several-temperatures",
      message: `Several columns may hold the kiln's temperature: ${nameOf(temperatureColumn, labels)} was taken, not ${others}.`,
      hint: "Leave only the wanted column in the log if this is the wrong one.",
    },
  ];
}

interface LayoutWords {
  readonly columns: string;
  readonly time: string;
  readonly temperature: string;
}

const separatorWords = { "\t": "tabs", ";": "semicolons", ",": "commas" } as const;

function layoutInWords(
  { separator, lines }: Table,
  { headerRow, firstRow, labels, timeColumns, temperatureColumn }: Layout,
  timeWords: string,
  temperatureWords: string,
): LayoutWords {
  const head =
    headerRow === undefined ? "No line of labels" : `Labels in line ${lines[headerRow] ?? 0}`;
  const times = timeColumns.map((column) => nameOf(column, labels)).join(" and ");
  return {
    columns: `Columns are separated by ${separatorWords[separator]}. ${head}, readings from line ${lines[firstRow] ?? 0} on.`,
    time: `Time: ${times}, taken as ${timeWords}.`,
    temperature: `Temperature: ${nameOf(temperatureColumn, labels)}, taken as ${temperatureWords}.`,
  };
}

/** Without labels, which column holds what is told by what stands in it. */
function deducedOf(words: LayoutWords, layout: Layout, times: Times): readonly string[] {
  if (layout.headerRow === undefined) return [words.time, words.temperature];
  return times.deduced ? [words.time] : [];
}

function extentInWords(readings: readonly Reading[]): string {
  const length = (readings.at(-1)?.minutes ?? 0) - (readings[0]?.minutes ?? 0);
  const step = Math.round(usualStep(readings) * 60);
  const every = step < 120 ? countOf(step, "second") : minutesInWords(step / 60);
  return `${countOf(readings.length, "reading")} over ${minutesInWords(length)}, one every ${every}.`;
}

function nameOf(column: number, labels: readonly string[]): string {
  const label = labels[column];
  return label ? `column ${column + 1} “${label.slice(0, 40)}”` : `column ${column + 1}`;
}
