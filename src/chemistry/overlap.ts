/** Where two glazes lie over each other: the melt they would make together. */
import type { Analysis } from "./analysis.ts";
import { type FiredChemistry, findFiredChemistry } from "./fired-chemistry.ts";
import { mixAnalyses } from "./mix.ts";

/** A glaze as it was laid on. */
export interface Coating {
  readonly raw: Analysis;
  readonly coats: number;
  /** Dry weight that one coat leaves, relative to other glazes; 1 where nobody knows it. */
  readonly weightPerCoat?: number | undefined;
}

/** The melt of two glazes mixed through, as they never quite are. */
export interface Melt {
  /** The share of the upper glaze, by raw dry weight, from 0 to 1. */
  readonly upperShare: number;
  /** Null where nothing would be left after the fire. */
  readonly chemistry: FiredChemistry | null;
}

/**
 * The melt that two coatings make together, weighted by coats and by weight per coat.
 *
 * @returns the melt, and whether a weight per coat had to be taken as 1
 */
export function meltTogether(
  lower: Coating,
  upper: Coating,
): Melt & { readonly isWeightAssumed: boolean } {
  const isWeightAssumed = [lower, upper].some((coating) => coating.weightPerCoat === undefined);
  const upperShare = weightOf(upper) / (weightOf(lower) + weightOf(upper));
  return { ...meltAt(lower.raw, upper.raw, upperShare), isWeightAssumed };
}

function weightOf(coating: Coating): number {
  return coating.coats * (coating.weightPerCoat ?? 1);
}

/** The melts on the way from the lower glaze alone to the upper alone, at every tenth. */
export function meltPath(lower: Analysis, upper: Analysis): readonly Melt[] {
  return Array.from({ length: 11 }, (_, tenth) => meltAt(lower, upper, tenth / 10));
}

function meltAt(lower: Analysis, upper: Analysis, upperShare: number): Melt {
  const mixture = mixAnalyses([
    { analysis: lower, weight: 1 - upperShare },
    { analysis: upper, weight: upperShare },
  ]);
  return { upperShare, chemistry: findFiredChemistry(mixture) ?? null };
}
