/** What a scale shows while a batch is weighed into one bucket. All that is shown adds up. */
import { groupThousands, placesOnScale } from "../terms/figures.ts";

/** What is weighed in, in the order it goes in; additions come last. */
export interface Portion {
  readonly grams: number;
  readonly isAddition: boolean;
}

export interface ScaleReading {
  /** What the scale shows once it is in, the bucket's own weight included. */
  readonly reading: string;
  /** What it adds to the reading before it; `< 0.01` where the batch is too small to weigh it. */
  readonly amount: string;
}

/**
 * Readings of one scale for one batch, all to the same step: as fine as the smallest portion asks,
 * and no finer than any of them needs. Each amount is rounded by itself; what that leaves of the
 * ingredients' sum is put right on the heaviest of them, where nobody can taste it.
 *
 * @param bucket grams that the scale shows before anything is in
 */
export function scaleReadings(portions: readonly Portion[], bucket = 0): readonly ScaleReading[] {
  const places = Math.max(0, ...portions.map(({ grams }) => placesOnScale(grams)));
  const unit = 10 ** places;
  const amounts = roundedAmounts(portions, unit);
  const start = Math.round(bucket * unit);
  const sums = amounts.map((_, i) => sumOf(amounts.slice(0, i + 1)));
  const trimmed = placesNeeded([start, ...amounts], places);
  const asShown = (steps: number) => groupThousands((steps / unit).toFixed(trimmed));
  return amounts.map((amount, i) => ({
    reading: asShown(start + (sums[i] ?? 0)),
    amount: amount === 0 ? `< ${1 / unit}` : asShown(amount),
  }));
}

/**
 * Whether a portion is so little of what is in the bucket with it that a large scale hardly moves:
 * under a hundredth (common practice, no source).
 */
export function isSlight(parts: readonly number[], at: number): boolean {
  return at > 0 && (parts[at] ?? 0) < sumOf(parts.slice(0, at + 1)) / 100;
}

/** In whole steps of the scale. */
function roundedAmounts(portions: readonly Portion[], unit: number): readonly number[] {
  const amounts = portions.map(({ grams }) => Math.round(grams * unit));
  const base = portions.flatMap(({ isAddition }, i) => (isAddition ? [] : [i]));
  const heaviest = [...base].sort((a, b) => (amounts[b] ?? 0) - (amounts[a] ?? 0));
  const meant = Math.round(sumOf(base.map((i) => portions[i]?.grams ?? 0)) * unit);
  const missing = meant - sumOf(base.map((i) => amounts[i] ?? 0));
  for (let step = 0; step < Math.abs(missing); step++) {
    const at = heaviest[step % heaviest.length] ?? 0;
    amounts[at] = (amounts[at] ?? 0) + Math.sign(missing);
  }
  return amounts;
}

/** Decimals that are not all nothing. */
function placesNeeded(steps: readonly number[], places: number): number {
  for (let fewer = 0; fewer < places; fewer++)
    if (steps.every((value) => value % 10 ** (places - fewer) === 0)) return fewer;
  return places;
}

function sumOf(numbers: readonly number[]): number {
  return numbers.reduce((sum, number) => sum + number, 0);
}
