/** The column of time, turned into minutes. */
import { type ClockReading, findNumberStyle, parseClock, parseDay, parseNumber } from "./cells.ts";
import type { TimeKind } from "./columns.ts";
import { findDayOrder, minutesOfDay } from "./days.ts";
import { findClockForm, findTimeUnit, type TimeUnit } from "./labels.ts";
import { LogFault } from "./note.ts";

export interface Times {
  /** Minutes from some beginning, a row each; NaN where the row's time cannot be read. */
  readonly minutes: readonly number[];
  /** True where the times begin again at midnight. */
  readonly wrapsAtMidnight: boolean;
  /** What they were taken for, in words. */
  readonly words: string;
  /** True where that follows from the readings alone: nobody wrote it down. */
  readonly deduced: boolean;
}

/** What the times of a log are read from. */
export interface TimeSource {
  readonly kind: TimeKind;
  /** The cells of one column, or of the day's and the clock's. */
  readonly cells: readonly (readonly string[])[];
  readonly label: string;
  /** The temperatures of the same rows in °C, NaN where there is none. */
  readonly celsius: readonly number[];
}

/**
 * Reads the times of a log.
 *
 * @throws LogFault where the unit of time cannot be told
 */
export function readTimes(source: TimeSource): Times {
  const [cells = [], clocks = []] = source.cells;
  switch (source.kind) {
    case "moment":
      return readDays(cells.map(parseDay));
    case "day-and-clock":
      return readDays(
        cells.map((cell, i) => {
          const [day, clock] = [parseDay(cell), parseClock(clocks[i] ?? "")];
          return day && clock ? { ...day, clock } : undefined;
        }),
      );
    case "clock":
      return readClocks(cells.map(parseClock), source);
    case "number":
      return readNumbers(cells, source);
  }
}

function readDays(readings: readonly ReturnType<typeof parseDay>[]): Times {
  const { order, words, deduced } = findDayOrder(readings);
  return {
    minutes: readings.map((reading) =>
      reading?.clock
        ? minutesOfDay(reading, order) + minutesOfClock(reading.clock, 60) - (reading.offset ?? 0)
        : Number.NaN,
    ),
    wrapsAtMidnight: false,
    words: `date and time of day${words}`,
    deduced,
  };
}

/** Minutes of a clock whose first part counts so many minutes. */
function minutesOfClock({ parts }: ClockReading, firstPart: number): number {
  return parts.reduce((sum, part, i) => sum + (part * firstPart) / 60 ** i, 0);
}

function readClocks(
  readings: readonly (ClockReading | undefined)[],
  { label, celsius }: TimeSource,
): Times {
  const read = (firstPart: number) =>
    readings.map((reading) => (reading ? minutesOfClock(reading, firstPart) : Number.NaN));
  if (readings.some((reading) => reading?.parts.length === 3))
    return {
      minutes: readings.map(minutesOfLongClock),
      wrapsAtMidnight: true,
      words: "h:mm:ss",
      deduced: false,
    };
  const form = findClockForm(label);
  if (form) return clockTimes(read(form === "h:mm" ? 60 : 1), form);
  const hours = read(60);
  const [asHours, asMinutes] = [isLikely(hours, celsius, 1), isLikely(hours, celsius, 1 / 60)];
  if (asHours === asMinutes) throw unknownTimeUnit("Label the column “h:mm” or “mm:ss”.");
  return asHours
    ? clockTimes(hours, "h:mm", "since as mm:ss the kiln would have raced")
    : clockTimes(read(1), "mm:ss", "since as h:mm the kiln would have crept");
}

/** Among readings of h:mm:ss, one of two parts has left its hours out. */
function minutesOfLongClock(reading: ClockReading | undefined): number {
  return reading ? minutesOfClock(reading, reading.parts.length === 3 ? 60 : 1) : Number.NaN;
}

/** @param since why it must be this form, where no label says so */
function clockTimes(minutes: readonly number[], form: string, since?: string): Times {
  return {
    minutes,
    wrapsAtMidnight: form === "h:mm",
    words: `${form}, ${since ?? asLabelled}`,
    deduced: since !== undefined,
  };
}

const asLabelled = "as its label says";

const minutesPer: Readonly<Record<TimeUnit, number>> = {
  milliseconds: 1 / 60_000,
  seconds: 1 / 60,
  minutes: 1,
  hours: 60,
};

function readNumbers(cells: readonly string[], { label, celsius }: TimeSource): Times {
  const style = findNumberStyle(cells);
  const numbers = cells.map((cell) => parseNumber(cell, style));
  const { unit, why } = findUnitOfNumbers(numbers, label, celsius);
  return {
    minutes: numbers.map((number) => number * minutesPer[unit]),
    wrapsAtMidnight: false,
    words: `${unit}, ${why}`,
    deduced: why !== asLabelled,
  };
}

/** Seconds and milliseconds from 1970 are beyond these from 1973 on, and no firing lasts as long. */
const [epochSeconds, epochMilliseconds] = [1e8, 1e11];

function findUnitOfNumbers(
  numbers: readonly number[],
  label: string,
  celsius: readonly number[],
): { unit: TimeUnit; why: string } {
  const said = findTimeUnit(label);
  if (said) return { unit: said, why: asLabelled };
  const first = numbers.find((number) => !Number.isNaN(number)) ?? 0;
  if (first > epochMilliseconds) return { unit: "milliseconds", why: "counted from 1970" };
  if (first > epochSeconds) return { unit: "seconds", why: "counted from 1970" };
  const likely = (["seconds", "minutes", "hours"] as const).filter((unit) =>
    isLikely(numbers, celsius, minutesPer[unit]),
  );
  const [unit] = likely;
  if (!unit || likely.length > 1)
    throw unknownTimeUnit("Label the column in the first line: “seconds”, “minutes” or “hours”.");
  return { unit, why: "the only unit in which a kiln could have kept up" };
}

/** Between these, in °C an hour, lie the mean climbs of kilns: common practice, no source. */
const [slowestLikely, fastestLikely] = [15, 1500];

/** Whether a kiln could have gone from its coolest to its hottest in the time between. */
function isLikely(times: readonly number[], celsius: readonly number[], minutes: number): boolean {
  let [coolest, hottest] = [-1, -1];
  celsius.forEach((degrees, i) => {
    if (Number.isNaN(degrees) || Number.isNaN(times[i])) return;
    if (coolest < 0 || degrees < (celsius[coolest] ?? 0)) coolest = i;
    if (hottest < 0 || degrees > (celsius[hottest] ?? 0)) hottest = i;
  });
  const climb = (celsius[hottest] ?? 0) - (celsius[coolest] ?? 0);
  const hours = (Math.abs((times[hottest] ?? 0) - (times[coolest] ?? 0)) * minutes) / 60;
  return climb >= slowestLikely * hours && climb <= fastestLikely * hours;
}

function unknownTimeUnit(hint: string): LogFault {
  return new LogFault(
    "log-time-unit-unknown",
    "Nothing tells whether the log's time is in seconds, minutes or hours.",
    hint,
  );
}
