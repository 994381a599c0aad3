/** What each column of a log holds, and which of them tell time and temperature. */
import { findNumberStyle, parseClock, parseDay, parseNumber } from "./cells.ts";
import { type LabelMeaning, meaningOf } from "./labels.ts";
import { LogFault } from "./note.ts";
import type { Table } from "./table.ts";

export type TimeKind = "clock" | "day-and-clock" | "moment" | "number";

export interface Column {
  readonly index: number;
  readonly label: string;
  readonly meaning: LabelMeaning;
  readonly content: "clock" | "day" | "empty" | "moment" | "number" | "words";
  /** A number that never falls, or never rises, over the sample. */
  readonly runsOneWay: boolean;
  /** A number that goes up by the same step from row to row. */
  readonly stepsEvenly: boolean;
  /** 1, 2, 3 and so on: it may be the rows' own numbers. */
  readonly countsRows: boolean;
}

/** Up to 200 of some rows, evenly spread. */
export function sampleOf<Row>(rows: readonly Row[]): readonly Row[] {
  const step = Math.ceil(rows.length / 200);
  return rows.filter((_, i) => i % step === 0);
}

/** Describes the columns of some rows of readings. */
export function describeColumns(
  data: Table["rows"],
  labels: readonly string[],
  width: number,
): readonly Column[] {
  const sample = sampleOf(data);
  return Array.from({ length: width }, (_, index) => {
    const cells = sample.map((row) => row[index]?.trim() ?? "").filter((cell) => cell !== "");
    const numbers = numbersOf(cells);
    const first = numbersOf(data.slice(0, 50).map((row) => row[index]?.trim() ?? ""));
    const label = labels[index] ?? "";
    return {
      index,
      label,
      meaning: meaningOf(label),
      content: contentOf(cells),
      runsOneWay: runsOneWay(numbers),
      stepsEvenly: stepsEvenly(first) && stepsEvenly(numbers),
      countsRows: first.length > 1 && first.every((n, i) => n === (first[0] ?? 0) + i),
    };
  });
}

function numbersOf(cells: readonly string[]): number[] {
  const style = findNumberStyle(cells);
  return cells.map((cell) => parseNumber(cell, style)).filter((n) => !Number.isNaN(n));
}

function contentOf(cells: readonly string[]): Column["content"] {
  const most = cells.length / 2;
  if (cells.length === 0) return "empty";
  const days = cells.map(parseDay).filter((reading) => reading !== undefined);
  if (days.length > most)
    return days.filter((reading) => reading.clock).length > most ? "moment" : "day";
  if (cells.filter(parseClock).length > most) return "clock";
  return numbersOf(cells).length > most ? "number" : "words";
}

function runsOneWay(numbers: readonly number[]): boolean {
  const steps = numbers.slice(1).map((n, i) => n - (numbers[i] ?? 0));
  const rising = steps.filter((step) => step >= 0).length;
  const falling = steps.filter((step) => step <= 0).length;
  const moves = steps.some((step) => step !== 0);
  return moves && Math.max(rising, falling) >= steps.length * 0.95;
}

/** Whether every step is upwards and nearly all of them are alike. */
function stepsEvenly(numbers: readonly number[]): boolean {
  const steps = numbers.slice(1).map((n, i) => n - (numbers[i] ?? 0));
  const usual = [...steps].sort((a, b) => a - b)[Math.floor(steps.length / 2)] ?? 0;
  const alike = steps.filter((step) => Math.abs(step - usual) <= usual / 100).length;
  return steps.every((step) => step > 0) && alike >= steps.length * 0.8;
}

/** The columns that tell the time: moments before clocks before numbers, labelled ones first. */
export function findTime(columns: readonly Column[]): {
  kind: TimeKind;
  columns: readonly number[];
} {
  const holding = (content: Column["content"]) => columns.find((one) => one.content === content);
  const [moment, day, clock] = [holding("moment"), holding("day"), holding("clock")];
  if (moment) return { kind: "moment", columns: [moment.index] };
  if (day && clock) return { kind: "day-and-clock", columns: [day.index, clock.index] };
  if (clock) return { kind: "clock", columns: [clock.index] };
  const numbers = columns.filter((one) => one.content === "number");
  const found = numbers.find((one) => one.meaning === "time") ?? findUnlabelledTime(numbers);
  if (found) return { kind: "number", columns: [found.index] };
  throw new LogFault(
    "log-no-time",
    "No column of the log can be told to hold the time.",
    "Label it in the first line: “seconds”, “minutes” or “h:mm:ss”.",
  );
}

/** The first column that runs one way; the second where the first seems to number the rows. */
function findUnlabelledTime(numbers: readonly Column[]): Column | undefined {
  const [first, second] = numbers.filter((one) => one.meaning === "unknown" && one.runsOneWay);
  return numbers.length > 2 && first?.countsRows && second?.stepsEvenly ? second : first;
}

/** The columns that may hold temperatures, the likeliest first. */
export function findTemperatures(columns: readonly Column[]): readonly number[] {
  const labelled = columns.filter((one) => one.meaning === "temperature");
  const unlabelled = columns.filter((one) => one.meaning === "unknown");
  const measured = unlabelled.filter((one) => !one.countsRows);
  const found = [labelled, measured, unlabelled].find((some) => some.length > 0) ?? [];
  return found.map((one) => one.index);
}
