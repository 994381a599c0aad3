/** Puts a log's readings in the order of time. */
import { countOf, LogFault, type LogNote } from "./note.ts";

export interface Reading {
  readonly minutes: number;
  readonly celsius: number;
  /** The line of the file. */
  readonly line: number;
}

export interface Ordered {
  readonly readings: readonly Reading[];
  readonly notes: readonly LogNote[];
}

/**
 * Turns a log that was written newest first, carries a clock over midnight, and leaves out
 * readings that share their time with the one before or stand out of order.
 *
 * @throws LogFault where so many stand out of order that this is no one firing
 */
export function putInOrder(readings: readonly Reading[], wrapsAtMidnight: boolean): Ordered {
  const notes: LogNote[] = [];
  let forward = readings;
  if (runsBackwards(readings)) {
    forward = [...readings].reverse();
    notes.push({
      severity: "note",
      code: "log-reversed",
      message: "The log was written newest first, and was turned round.",
    });
  }
  const carried = wrapsAtMidnight ? carryOverMidnight(forward) : forward;
  const kept = keepRising(carried);
  return { readings: kept.readings, notes: [...notes, ...kept.notes] };
}

function runsBackwards(readings: readonly Reading[]): boolean {
  let balance = 0;
  readings.forEach(({ minutes }, i) => {
    const before = readings[i - 1];
    if (before) balance += Math.sign(minutes - before.minutes);
  });
  return balance < 0;
}

const [halfDay, wholeDay] = [720, 1440];

function carryOverMidnight(readings: readonly Reading[]): readonly Reading[] {
  let days = 0;
  return readings.map((reading, i) => {
    const before = readings[i - 1];
    if (before && before.minutes - reading.minutes > halfDay) days += 1;
    return days > 0 ? { ...reading, minutes: reading.minutes + days * wholeDay } : reading;
  });
}

/** Of two readings out of order, the later is kept where it fits what came before both. */
function keepRising(readings: readonly Reading[]): Ordered {
  const kept: Reading[] = [];
  const repeats: Reading[] = [];
  const astray: Reading[] = [];
  for (const reading of readings) {
    const last = kept.at(-1);
    if (last && reading.minutes === last.minutes) repeats.push(reading);
    else if (!last || reading.minutes > last.minutes) kept.push(reading);
    else if (reading.minutes > (kept.at(-2)?.minutes ?? Number.NEGATIVE_INFINITY)) {
      astray.push(last);
      kept[kept.length - 1] = reading;
    } else astray.push(reading);
  }
  const [first] = astray;
  if (first && astray.length > Math.max(3, readings.length / 20)) throw runsBack(first);
  const notes = [
    leftOut(repeats, "log-repeats", "note", "the same time as the one before"),
    leftOut(astray, "log-time-runs-back", "warning", "out of the order of time"),
  ];
  return { readings: kept, notes: notes.flat() };
}

function runsBack({ line }: Reading): LogFault {
  return new LogFault(
    "log-time-runs-back",
    "The log's time runs back, and goes on from there: two firings in one log, or a clock that was put back.",
    "Cut the log in two at this line, or put its times right.",
    line,
  );
}

function leftOut(
  readings: readonly Reading[],
  code: "log-repeats" | "log-time-runs-back",
  severity: "note" | "warning",
  why: string,
): readonly LogNote[] {
  const [first] = readings;
  if (!first) return [];
  const { line } = first;
  const message = `${countOf(readings.length, "reading")} left out: ${why}.`;
  return [{ severity, code, line, message }];
}
