/** From what cone to what cone a firing may have come: the doubt of the chart, and of a hold. */
import type { Curve } from "./curve.ts";
import { celsiusAtPlace, placeAtCelsius } from "./degrees.ts";
import { equivalentConeOf, minutesAtPeak, placeOfEquivalentCone } from "./heat-work.ts";
import { holdRules } from "./hold-rules.ts";
import { withoutHolds } from "./holds.ts";
import type { Stretch } from "./witness.ts";

/** Places on the line of cones (see place.ts); an end that is open is infinite. */
export interface HeatRange extends Stretch {
  /** The same by the model alone, with the doubt of the chart. */
  readonly modelled: Stretch;
  /** The same, had the kiln held nowhere on its last climb. */
  readonly unheld: Stretch;
  /** The hold, in minutes at the peak that would do as much by the model. */
  readonly heldMinutes: number;
  /** How much of a cone the hold alone leaves open. */
  readonly openByHold: number;
}

/** The chart's slowest and fastest rates for cones that stand by themselves, in °C an hour. */
const [slowest, fastest] = [15, 150];

/**
 * How far the chart and the model are off, in °C: within the chart's rates, and for every e-fold
 * that a climb is slower or faster. Both are what predicting the chart's values from one another
 * shows: 2.8 °C at its middle rate, 6.7 °C at the slowest (1.4 e-folds from its neighbour) and
 * 4.7 °C at the fastest (0.9 e-folds); the checks work them out again.
 */
export const chartDoubt = { celsius: 3, celsiusPerLogOfRate: 5 } as const;

/**
 * The doubt in °C of a climb, growing with its distance from the chart's rates; that of a climb
 * which nobody knows is that of the chart's ends.
 *
 * @param ratePerHour °C an hour over the last 100 °C, holds left out
 */
export function chartDoubtAt(ratePerHour: number | null): number {
  const { celsius, celsiusPerLogOfRate } = chartDoubt;
  if (ratePerHour === null) return celsius + celsiusPerLogOfRate;
  const beyond = Math.max(0, Math.log(ratePerHour / fastest), Math.log(slowest / ratePerHour));
  return celsius + celsiusPerLogOfRate * beyond;
}

/**
 * The range of a firing, free fall left out already (see holds.ts). Without a hold it is the
 * doubt of the chart alone.
 */
export function findHeatRange(curve: Curve): HeatRange {
  const bare = withoutHolds(curve);
  const [bottom, place] = [placeOf(bare.curve), placeOf(curve)];
  const heldMinutes = minutesAtPeak(curve, bare.curve);
  const answers = Number.isFinite(bottom)
    ? [place, ...holdRules.map((rule) => bottom + rule.conesAfter(heldMinutes))]
    : [place];
  const doubt = chartDoubtAt(bare.ratePerHour);
  const [low, high] = [Math.min(...answers), Math.max(...answers)];
  return {
    ...widen(low, high, doubt),
    modelled: widen(place, place, doubt),
    unheld: widen(bottom, bottom, doubt),
    heldMinutes,
    openByHold: high > low ? high - low : 0,
  };
}

/** A place; below every cone and above them all there is no end. */
function placeOf(curve: Curve): number {
  const found = equivalentConeOf(curve);
  return placeOfEquivalentCone(found) ?? Number.NEGATIVE_INFINITY;
}

const hottest = 13;

function widen(low: number, high: number, celsius: number): Stretch {
  const up = placeAtCelsius(celsiusAtPlace(high) + celsius);
  return {
    low: placeAtCelsius(celsiusAtPlace(low) - celsius),
    high: up >= hottest ? Number.POSITIVE_INFINITY : up,
  };
}
