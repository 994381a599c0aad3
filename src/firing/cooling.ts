/** How a kiln came down through the heat in which glazes freeze and crystals grow. */
import { type Curve, findFirstFall, findPeak, isTimed } from "./curve.ts";
import { findScheduleFaults, type Schedule, type Segment, segmentsInCelsius } from "./schedule.ts";

/** "natural" is a kiln left to itself, "unknown" one of which nobody wrote anything down. */
export type Cooling = "natural" | "slowed" | "unknown";

/**
 * Crystals and mattness grow between these temperatures (°C), so cooling counts here and nowhere
 * else. Common practice, no source.
 */
export const coolingWindow = { from: 1100, to: 800 } as const;

/**
 * °C an hour. Most studio kilns left to themselves come down through the window faster than this,
 * and programmes that are meant to cool slowly ask for less. Common practice, no source.
 */
export const slowedBelow = 80;

/** A curve tells of cooling when it shows so many °C of the window, and so does a programme. */
const leastShown = 50;

/**
 * How a firing cooled: from the log where it shows the way down, else from the programme. A
 * programme that ends at its peak, or leaves the way down to the kiln, cools naturally.
 *
 * @param schedule undefined where the record has none
 * @param log what the pyrometer recorded; undefined where there is no log
 */
export function coolingOf(schedule: Schedule | undefined, log: Curve | undefined): Cooling {
  const recorded = log ? coolingOfCurve(log) : "unknown";
  return recorded === "unknown" && schedule ? coolingOfSchedule(schedule) : recorded;
}

function coolingOfCurve(curve: Curve): Cooling {
  const peak = findPeak(curve);
  if (!peak) return "unknown";
  const top = Math.min(coolingWindow.from, peak.celsius);
  const lastAbove = curve.findLastIndex(({ celsius }) => celsius >= top);
  const begin = findFirstFall(curve, top, lastAbove + 1);
  const bottom = Math.max(coolingWindow.to, curve.at(-1)?.celsius ?? top);
  const end = begin && findFirstFall(curve, bottom + 0.001, begin.index);
  if (!begin || !end || top - bottom < leastShown) return "unknown";
  if (!isTimed(curve, begin.index, end.index)) return "unknown";
  return isSlow(top - bottom, end.minutes - begin.minutes) ? "slowed" : "natural";
}

function coolingOfSchedule(schedule: Schedule): Cooling {
  if (findScheduleFaults(schedule).length > 0) return "unknown";
  const segments = segmentsInCelsius(schedule);
  const hottest = Math.max(...segments.map(({ to }) => to));
  const peak = segments.findLastIndex(({ to }) => to === hottest);
  const shown = segments.slice(peak + 1).map((segment, i) => {
    const from = segments[peak + i]?.to ?? hottest;
    return inWindow(from, segment);
  });
  const degrees = sumOf(shown.map((part) => part.degrees));
  const slow = degrees >= leastShown && isSlow(degrees, sumOf(shown.map((part) => part.minutes)));
  return slow ? "slowed" : "natural";
}

/** What a segment's own rate and hold ask of the window; a fall without a rate is left to the kiln. */
function inWindow(from: number, { to, rate, hold = 0 }: Segment) {
  const [top, bottom] = [coolingWindow.from, coolingWindow.to];
  const degrees = Math.max(0, Math.min(from, top) - Math.max(to, bottom));
  const held = to <= top && to >= bottom ? hold : 0;
  if (rate === undefined || rate === 0) return { degrees: 0, minutes: held };
  return { degrees, minutes: (degrees / Math.abs(rate)) * 60 + held };
}

function isSlow(degrees: number, minutes: number): boolean {
  return degrees / (minutes / 60) < slowedBelow;
}

function sumOf(numbers: readonly number[]): number {
  return numbers.reduce((sum, each) => sum + each, 0);
}
