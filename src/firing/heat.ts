/** What a kiln did, or was told to do, in a handful of numbers. */
import { type Curve, findLastClimb, findPeak, isTimed } from "./curve.ts";
import { chartDoubt, findHeatRange, type HeatRange } from "./heat-range.ts";
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

/** How far the reckoning of heat work is known to be off, and who decides instead. */
export const heatWorkCaveat = `The cone is worked out from time and temperature, with a model fitted to the cone chart of the Orton Ceramic Foundation for self-supporting cones. It is about ${chartDoubt.celsius} °C off at the chart's rates of climbing (15 to 150 °C an hour), and more the farther a climb is from them: ${chartDoubt.celsiusPerLogOfRate} °C more where it is almost three times slower or faster. Nobody knows well how much a hold counts for. To bring down the next cone takes 10 to 20 minutes by the model between cones 6 and 11, three quarters of an hour by the middle of the model over all cones, one to two hours by the maker of the cones, and half an hour as potters say (common practice, no source). So a firing that was held is told as a range that covers all of these. Cooling counts as far as it is slower than 200 °C an hour. Witness cones in the kiln have the last word.`;

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

/**
 * An equivalent cone in words, to the quarter of a cone that the reckoning is good for: `cone 6`,
 * `just over cone 6`, `halfway from cone 6 to cone 7`, `just under cone 7`.
 */
export function equivalentConeInWords({ cone, next, fraction }: EquivalentCone): string {
  if (!cone) return `cooler than cone ${next}`;
  if (!next) return `cone ${cone} or hotter`;
  const halfway = `halfway from cone ${cone} to cone ${next}`;
  const words = [`cone ${cone}`, `just over cone ${cone}`, halfway, `just under cone ${next}`];
  return words[Math.round(fraction * 4)] ?? `cone ${next}`;
}

/** A hold that leaves open less of a cone than this is within what the words tell anyway. */
const tellingHold = 0.5;

/**
 * What a firing works out at: its equivalent cone or, where a hold leaves it open by half a cone or
 * more, the range in half cones, its ends rounded outward: `cone 6½ to cone 9`.
 */
export function heatInWords(heat: Heat): string {
  const { equivalentCone, range, atLeast } = heat;
  const words = equivalentConeInWords(equivalentCone);
  if (atLeast) return `at least ${words}`;
  if (!isOpenByHold(heat)) return words;
  const from = findConeAt(Math.floor(range.low * 2) / 2);
  const to = findConeAt(Math.ceil(range.high * 2) / 2);
  if (!from) return words;
  return to ? `cone ${from} to cone ${to}` : `cone ${from} or hotter`;
}

/** Whether a hold leaves the cone open by more than the words can tell. */
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
