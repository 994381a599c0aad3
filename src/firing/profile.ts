/** What can be read off a curve without any model: its peak, its rates, its hold. */
import {
  type Crossing,
  type Curve,
  type CurvePoint,
  findFirstFall,
  findLastClimb,
  findPeak,
  isTimed,
} from "./curve.ts";

export interface Profile {
  /** The hottest temperature, in °C. */
  readonly peak: number;
  /** Minutes above 1000 °C, as far as they are known. */
  readonly timeAbove1000: number;
  /** °C an hour over the last 100 °C before the peak; null where that is not known. */
  readonly lastRate: number | null;
  /** Minutes kept at the peak, within 10 °C below it. */
  readonly hold: number;
  /** °C an hour of cooling from 1100 to 900 °C, above 0; null where that is not known. */
  readonly coolingRate: number | null;
}

/**
 * How far below its peak a firing still counts as held, in °C: wider than a controller swings
 * about its set point.
 */
const holdBand = 10;

/** Describes a curve; undefined for an empty one. */
export function findProfile(curve: Curve): Profile | undefined {
  const peak = findPeak(curve);
  if (!peak) return undefined;
  const top = findTop(curve, peak);
  return {
    peak: peak.celsius,
    timeAbove1000: minutesAbove(curve, 1000),
    lastRate: findLastRate(curve, peak, top),
    hold: Math.max(0, top.end - top.begin - (top.climb ?? 0) - (top.fall ?? 0)),
    coolingRate: findCoolingRate(curve),
  };
}

/** The stretch around the peak that lies within the band of a hold. */
interface Top {
  /** Minutes at which the curve enters and leaves the band. */
  readonly begin: number;
  readonly end: number;
  readonly enters: Crossing | undefined;
  /**
   * Minutes that climbing and falling through the band take by themselves, as through as many
   * degrees below it; undefined where the curve does not show them.
   */
  readonly climb: number | undefined;
  readonly fall: number | undefined;
}

function findTop(curve: Curve, peak: CurvePoint): Top {
  const floor = peak.celsius - holdBand;
  const peakIndex = curve.indexOf(peak);
  const enters = findLastClimb(curve, floor, peakIndex);
  const leaves = findFirstFall(curve, floor, peakIndex + 1);
  const before = enters && findLastClimb(curve, floor - holdBand, enters.index);
  const after = leaves && findFirstFall(curve, floor - holdBand, leaves.index);
  return {
    begin: enters?.minutes ?? curve[0]?.minutes ?? 0,
    end: leaves?.minutes ?? curve.at(-1)?.minutes ?? 0,
    enters,
    climb: enters && before && enters.minutes - before.minutes,
    fall: leaves && after && after.minutes - leaves.minutes,
  };
}

function findLastRate(curve: Curve, peak: CurvePoint, top: Top): number | null {
  const from = top.enters && findLastClimb(curve, peak.celsius - 100, top.enters.index);
  if (!from || top.climb === undefined) return null;
  if (!isTimed(curve, from.index, curve.indexOf(peak))) return null;
  const minutes = top.begin + top.climb - from.minutes;
  return minutes > 0 ? (100 / minutes) * 60 : null;
}

function findCoolingRate(curve: Curve): number | null {
  const lastAbove = curve.findLastIndex((point) => point.celsius >= 1100);
  if (lastAbove < 0) return null;
  const from = findFirstFall(curve, 1100, lastAbove + 1);
  const to = from && findFirstFall(curve, 900, from.index);
  if (!to || !isTimed(curve, from.index, to.index)) return null;
  const minutes = to.minutes - from.minutes;
  return minutes > 0 ? (200 / minutes) * 60 : null;
}

function minutesAbove(curve: Curve, celsius: number): number {
  let minutes = 0;
  for (let i = 1; i < curve.length; i += 1) {
    const [from, to] = [curve[i - 1], curve[i]];
    if (from && to) minutes += (to.minutes - from.minutes) * shareAbove(from, to, celsius);
  }
  return minutes;
}

function shareAbove(from: CurvePoint, to: CurvePoint, celsius: number): number {
  const low = Math.min(from.celsius, to.celsius);
  const high = Math.max(from.celsius, to.celsius);
  if (low >= celsius) return 1;
  return high <= celsius ? 0 : (high - celsius) / (high - low);
}
