/** A firing without its holds, and without the time in which a kiln falls by itself. */
import { type Curve, type CurvePoint, findPeak } from "./curve.ts";

/**
 * How fast a kiln that is switched off falls just below its peak, in °C an hour: common practice,
 * no source.
 */
const freeFall = 200;

/**
 * A curve in which the fall after the peak counts only as far as it is slower than that of a kiln
 * left to itself. The chart's cones were read on the way up and programmes seldom say how the kiln
 * cools, so that log and programme would else count a different cooling of one and the same load.
 * Where a log swings about its set point, each degree is taken to fall once.
 */
export function withoutFreeFall(curve: Curve): Curve {
  const top = findPeak(curve);
  if (!top) return curve;
  const peak = curve.indexOf(top);
  let lowest = top.celsius;
  return warp(curve, (from, to, i) => {
    const minutes = to.minutes - from.minutes;
    if (i <= peak) return minutes;
    const fallen = Math.max(0, lowest - to.celsius);
    lowest = Math.min(lowest, to.celsius);
    return Math.max(0, minutes - (fallen / freeFall) * 60);
  });
}

/** A climb without its holds. */
export interface BareClimb {
  readonly curve: Curve;
  /** °C an hour over the last 100 °C, holds left out; null where that is not known. */
  readonly ratePerHour: number | null;
}

/** The last climb to the peak is looked at in so many bands of so many °C. */
const [bands, bandHeight] = [10, 10];

/**
 * The climb up to the peak as if the kiln had held nowhere in its last 100 °C: what a band of
 * 10 °C took longer than the middle one of them is taken out. It ends when the peak is reached.
 */
export function withoutHolds(curve: Curve): BareClimb {
  const top = findPeak(curve);
  if (!top) return { curve, ratePerHour: null };
  const climb = curve.slice(0, curve.indexOf(top) + 1);
  const levels = Array.from(
    { length: bands + 1 },
    (_, i) => top.celsius - (bands - i) * bandHeight,
  );
  const split = splitAt(climb, levels);
  const reached = levels.map((celsius) => split.findIndex((point) => point.celsius >= celsius));
  const took = reached.slice(1).map((to, i) => minutesBetween(split, reached[i] ?? 0, to));
  const usual = middleOf(took.filter((minutes) => minutes > 0));
  const shares = took.map((minutes) => (minutes > usual ? usual / minutes : 1));
  const bare = warp(split, (from, to, i) => {
    const band = reached.findIndex((index) => index >= i) - 1;
    return (to.minutes - from.minutes) * (shares[band] ?? 1);
  });
  return { curve: bare, ratePerHour: usual > 0 ? (bandHeight / usual) * 60 : null };
}

/** The middle one, the smaller of two; 0 of none. */
function middleOf(values: readonly number[]): number {
  return [...values].sort((a, b) => a - b)[Math.floor((values.length - 1) / 2)] ?? 0;
}

function minutesBetween(curve: Curve, from: number, to: number): number {
  return (curve[to]?.minutes ?? 0) - (curve[from]?.minutes ?? 0);
}

/** The same curve with a point wherever it climbs to a level for the first time. */
function splitAt(curve: Curve, levels: readonly number[]): Curve {
  let left = [...levels];
  return curve.flatMap((to, i) => {
    const from = curve[i - 1];
    const passed = left.filter((celsius) => celsius <= to.celsius);
    left = left.filter((celsius) => celsius > to.celsius);
    if (!from) return [to];
    const inside = passed.filter((celsius) => celsius > from.celsius && celsius < to.celsius);
    return [...inside.map((celsius) => pointAt(from, to, celsius)), to];
  });
}

function pointAt(from: CurvePoint, to: CurvePoint, celsius: number): CurvePoint {
  const share = (celsius - from.celsius) / (to.celsius - from.celsius);
  return { ...to, celsius, minutes: from.minutes + share * (to.minutes - from.minutes) };
}

/** The same temperatures, with another length for each step. */
function warp(
  curve: Curve,
  minutesOf: (from: CurvePoint, to: CurvePoint, index: number) => number,
): Curve {
  let minutes = curve[0]?.minutes ?? 0;
  return curve.map((point, i) => {
    const from = curve[i - 1];
    if (from) minutes += minutesOf(from, point, i);
    return { ...point, minutes };
  });
}
