/** Dates as loggers write them, and in which order day and month stand. */
import type { DayReading } from "./cells.ts";

export type DayOrder = "day-first" | "month-first";

/**
 * In which order some dates name day and month. Where the dates themselves leave it open, the
 * order in which they lie closer together, which is deduced; the words say what was taken, where
 * it matters.
 */
export function findDayOrder(readings: readonly (DayReading | undefined)[]): {
  order: DayOrder;
  words: string;
  deduced: boolean;
} {
  const open = readings.filter(
    (reading): reading is DayReading => reading?.order === "year-last" && !reading.dotted,
  );
  if (open.length === 0) return nothingToTell;
  const dayFirst = { order: "day-first", words: ", day before month", deduced: false } as const;
  const monthFirst = { order: "month-first", words: ", month before day", deduced: false } as const;
  if (open.some(({ numbers }) => numbers[0] > 12)) return dayFirst;
  if (open.some(({ numbers }) => numbers[1] > 12)) return monthFirst;
  const [byDay, byMonth] = [spanOf(open, "day-first"), spanOf(open, "month-first")];
  if (byDay === 0 && byMonth === 0) return nothingToTell;
  const chosen = byDay <= byMonth ? dayFirst : monthFirst;
  const words = `${chosen.words}, which makes the shorter log`;
  return { order: chosen.order, words, deduced: true };
}

const nothingToTell = { order: "day-first", words: "", deduced: false } as const;

/** Minutes from 1970 to the beginning of a day; NaN where there is no such day. */
export function minutesOfDay({ numbers, order, dotted }: DayReading, open: DayOrder): number {
  const [first, second, third] = numbers;
  if (order === "year-first") return minutesTo(first, second, third);
  const year = third < 100 ? 2000 + third : third;
  return dotted || open === "day-first"
    ? minutesTo(year, second, first)
    : minutesTo(year, first, second);
}

function minutesTo(year: number, month: number, day: number): number {
  const begins = new Date(Date.UTC(year, month - 1, day));
  const exists = begins.getUTCMonth() === month - 1 && begins.getUTCDate() === day;
  return exists ? begins.getTime() / 60_000 : Number.NaN;
}

function spanOf(readings: readonly DayReading[], order: DayOrder): number {
  let [earliest, latest] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (const reading of readings) {
    const minutes = minutesOfDay(reading, order);
    earliest = Math.min(earliest, minutes);
    latest = Math.max(latest, minutes);
  }
  return latest - earliest;
}
