/** What a kiln did, or was told to do, in a handful of numbers. */
import { type Curve, findLastClimb, findPeak, isTimed } from "./curve.ts";
import { type EquivalentCone, equivalentConeOf, placeOfEquivalentCone } from "./heat-work.ts";
import { findProfile, type Profile } from "./profile.ts";

export interface Heat extends Profile {
  readonly equivalentCone: EquivalentCone;
  /**
   * Where the equivalent cone lies on the line of cones (see place.ts); null where it is cooler
   * than every cone.
   */
  readonly place: number | null;
  /**
   * True where part of the last 100 °C has no known time, so that the cone reached is the least
   * it can have been.
   */
  readonly atLeast: boolean;
}

/**
 * How far the reckoning of heat work is known to be off, as the chart's own values show when the
 * model has to predict those of one rate from the other two (°C, root mean square; the checks
 * work them out again).
 */
export const heatWorkError = {
  celsiusInsideChart: 3,
  celsiusAtChartEnds: [5, 7],
  /** The same in cones, where neighbours lie some 20 °C apart. */
  cones: 0.25,
  words:
    "The cone reached is reckoned from time and temperature with a model fitted to the published cone chart. It is about 3 °C off at ordinary rates of climbing, and 5 to 7 °C at very slow or fast ones. It counts a long hold for more than the published rule does: a hold that by the rule takes an hour or two to bring down the next cone takes it about three quarters of an hour. Witness cones in the kiln have the last word.",
} as const;

/** The heat of a curve; undefined for an empty one. */
export function findHeat(curve: Curve): Heat | undefined {
  const profile = findProfile(curve);
  if (!profile) return undefined;
  const equivalentCone = equivalentConeOf(curve);
  return {
    equivalentCone,
    place: placeOfEquivalentCone(equivalentCone),
    atLeast: !isLastClimbTimed(curve),
    ...profile,
  };
}

/**
 * An equivalent cone in words, to the quarter of a cone that the reckoning is good for: `cone 6`,
 * `just past cone 6`, `halfway from cone 6 to cone 7`, `just short of cone 7`.
 */
export function equivalentConeInWords({ cone, next, fraction }: EquivalentCone): string {
  if (!cone) return `cooler than cone ${next}`;
  if (!next) return `cone ${cone} or hotter`;
  const halfway = `halfway from cone ${cone} to cone ${next}`;
  const words = [`cone ${cone}`, `just past cone ${cone}`, halfway, `just short of cone ${next}`];
  return words[Math.round(fraction * 4)] ?? `cone ${next}`;
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
