/** What a kiln did, or was told to do, in a handful of numbers. */
import type { Cone } from "../terms/cones.ts";
import { type Curve, findLastClimb, findPeak, isTimed } from "./curve.ts";
import { findHeatRange, type HeatRange } from "./heat-range.ts";
import { type EquivalentCone, equivalentConeOf, placeOfEquivalentCone } from "./heat-work.ts";
import { withoutFreeFall } from "./holds.ts";
import { findConeAt } from "./place.ts";
import { findProfile, type Profile } from "./profile.ts";

export interface Heat extends Profile {
  readonly equivalentCone: EquivalentCone;
  /**
   * Where the equivalent cone lies on the line of cones (see place.ts); null where it is cooler
   * than every cone.
   */
  readonly place: number | null;
  /** All that it may have been: the doubt of the chart, and what is said of holds. */
  readonly range: HeatRange;
  /**
   * True where part of the last 100 °C has no known time, so that the cone reached is the least
   * it can have been.
   */
  readonly atLeast: boolean;
}

/** The heat of a curve; undefined for an empty one. */
export function findHeat(curve: Curve): Heat | undefined {
  const profile = findProfile(curve);
  if (!profile) return undefined;
  const counted = withoutFreeFall(curve);
  const equivalentCone = equivalentConeOf(counted);
  const atLeast = !isLastClimbTimed(curve);
  const range = findHeatRange(counted);
  return {
    equivalentCone,
    place: placeOfEquivalentCone(equivalentCone),
    range: atLeast ? { ...range, high: Number.POSITIVE_INFINITY } : range,
    atLeast,
    ...profile,
  };
}

/** A hold that leaves open less of a cone than this is within what the words tell anyway. */
const tellingHold = 0.5;

/** What a log or a programme works out at, as far as it can be told. */
export interface HeatReached {
  readonly equivalentCone: EquivalentCone;
  /** True where it may have been more: see `Heat`. */
  readonly atLeast: boolean;
  /** All that it may have been, where a hold leaves it open by half a cone or more; else null. */
  readonly openRange: OpenRange | null;
}

/** In half cones, its ends rounded outward; `to` is null where that end is open. */
export interface OpenRange {
  readonly from: Cone;
  readonly to: Cone | null;
}

/** What a firing works out at: its equivalent cone and, where a hold leaves it open, the range. */
export function heatReached(heat: Heat): HeatReached {
  const { equivalentCone, atLeast } = heat;
  return { equivalentCone, atLeast, openRange: isOpenByHold(heat) ? halfConesOf(heat) : null };
}

function halfConesOf({ range }: Heat): OpenRange | null {
  const from = findConeAt(Math.floor(range.low * 2) / 2);
  return from ? { from, to: findConeAt(Math.ceil(range.high * 2) / 2) ?? null } : null;
}

/** Whether a hold leaves the cone open by more than is told anyway. */
export function isOpenByHold({ range }: Heat): boolean {
  return range.openByHold >= tellingHold;
}

/**
 * Whether every step of the last 100 °C up to the peak has a known time. What happens below
 * changes the equivalent cone by less than its error.
 */
function isLastClimbTimed(curve: Curve): boolean {
  const peak = findPeak(curve);
  if (!peak) return true;
  const last = curve.indexOf(peak);
  const from = findLastClimb(curve, peak.celsius - 100, last);
  return isTimed(curve, from?.index ?? 0, last);
}
