/** Gaps in a log, and readings that no kiln can have given. */

import { countOf, type LogNote } from "./note.ts";
import type { Ordered, Reading } from "./order.ts";

/**
 * A probe that fails may give a wrong number for a while instead of none. Readings are left out
 * where the temperature leaps by more than `leap` faster than `swift` and is back where it was
 * within `spell`: neither a kiln nor a thermocouple can do that.
 */
const leap = 60;
/** °C a minute: faster than a small kiln, slower than a thermocouple in the open. */
const swift = 30;
/** °C a minute that a kiln may have moved by while the probe was wrong. */
const drift = 10;
/** Minutes, and readings, after which a leap is taken for what truly happened. */
const spell = 30;
const spellReadings = 2000;

/** Leaves out readings that leap away and come back, and notes leaps that do not. */
export function leaveOutLeaps(readings: readonly Reading[]): Ordered {
  const kept: Reading[] = [];
  const lost: Reading[] = [];
  const notes: LogNote[] = [];
  for (let i = 0; i < readings.length; i += 1) {
    const reading = readings[i];
    const last = kept.at(-1);
    if (!reading) break;
    if (last && isLeap(last, reading)) {
      const back = findReturn(readings, i, last);
      if (back < 0) notes.push(suddenChange(last, reading));
      else {
        lost.push(...readings.slice(i, back));
        i = back;
      }
    }
    kept.push(readings[i] ?? reading);
  }
  return { readings: kept, notes: [...summary(lost), ...firstOf(notes, "log-sudden-change")] };
}

function isLeap(from: Reading, to: Reading): boolean {
  const degrees = Math.abs(to.celsius - from.celsius);
  return degrees > leap && degrees > swift * (to.minutes - from.minutes);
}

/** The index of the first reading that is back where the last good one was; −1 if none is. */
function findReturn(readings: readonly Reading[], from: number, last: Reading): number {
  const most = Math.min(readings.length, from + spellReadings);
  for (let i = from + 1; i < most; i += 1) {
    const reading = readings[i];
    if (!reading || reading.minutes - last.minutes > spell) return -1;
    const allowed = leap / 2 + drift * (reading.minutes - last.minutes);
    if (Math.abs(reading.celsius - last.celsius) <= allowed) return i;
  }
  return -1;
}

function summary(lost: readonly Reading[]): readonly LogNote[] {
  const [first] = lost;
  if (!first) return [];
  return [
    {
      severity: "warning",
      code: "log-dropouts",
      line: first.line,
      message: `${countOf(lost.length, "reading")} that leapt away and came back (${Math.round(first.celsius)} °C the first) ${lost.length === 1 ? "was" : "were"} taken for a failing probe and left out.`,
    },
  ];
}

function suddenChange(from: Reading, to: Reading): LogNote {
  const way = to.celsius > from.celsius ? "rises" : "falls";
  return {
    severity: "warning",
    code: "log-sudden-change",
    line: to.line,
    message: `The temperature ${way} from ${Math.round(from.celsius)} to ${Math.round(to.celsius)} °C at once, and does not come back: taken for what happened.`,
  };
}

/** How many times as long as usual a step must be to count as a gap, and at least, in minutes. */
const [timesUsual, leastGap] = [5, 10];

/** Notes every gap: across it, the curve is taken to run straight. */
export function findGaps(readings: readonly Reading[]): readonly LogNote[] {
  const least = Math.max(leastGap, timesUsual * usualStep(readings));
  const gaps = readings.flatMap((to, i) => {
    const from = readings[i - 1];
    return from && to.minutes - from.minutes > least ? [gapNote(from, to)] : [];
  });
  return firstOf(gaps, "log-gap");
}

/** The step in minutes than which half of the steps are shorter. */
export function usualStep(readings: readonly Reading[]): number {
  const steps = new Float64Array(Math.max(0, readings.length - 1));
  for (let i = 0; i < steps.length; i += 1)
    steps[i] = (readings[i + 1]?.minutes ?? 0) - (readings[i]?.minutes ?? 0);
  return steps.sort()[Math.floor(steps.length / 2)] ?? 0;
}

function gapNote(from: Reading, to: Reading): LogNote {
  const minutes = Math.round(to.minutes - from.minutes);
  return {
    severity: "warning",
    code: "log-gap",
    line: to.line,
    message: `Nothing was recorded for ${countOf(minutes, "minute")}, from ${Math.round(from.celsius)} to ${Math.round(to.celsius)} °C: the curve is taken to run straight across.`,
  };
}

const mostNotes = 5;

/** The first few of some notes, and how many more there are. */
function firstOf(notes: readonly LogNote[], code: LogNote["code"]): readonly LogNote[] {
  if (notes.length <= mostNotes) return notes;
  const more = notes.length - mostNotes;
  const message = `${countOf(more, "more place")} like these ${more === 1 ? "follows" : "follow"}.`;
  return [...notes.slice(0, mostNotes), { severity: "warning", code, message }];
}
