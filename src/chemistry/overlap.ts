/** Where two glazes lie over each other: the melt they would make together. */

import { fluxes, type OxideAmounts } from "../terms/oxides.ts";
import type { Analysis } from "./analysis.ts";
import { type FiredChemistry, findFiredChemistry } from "./fired-chemistry.ts";
import { mixAnalyses } from "./mix.ts";
import { sumOf } from "./oxide-sums.ts";
import { molesToUnity, weightsToMoles } from "./unity.ts";

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
  const upperShare = upperShareOf(lower, upper);
  return { ...meltAt(lower.raw, upper.raw, upperShare), isWeightAssumed };
}

/** The share of the upper glaze in the dry weight of both, from 0 to 1. */
export function upperShareOf(lower: Coating, upper: Coating): number {
  return weightOf(upper) / (weightOf(lower) + weightOf(upper));
}

function weightOf(coating: Coating): number {
  return coating.coats * (coating.weightPerCoat ?? 1);
}

/** A melt by its unity formula alone; null without a flux. */
export interface MeltFormula {
  readonly upperShare: number;
  readonly unity: OxideAmounts | null;
}

/** A point on the way from one glaze to another. */
export interface MeltPoint {
  readonly upperShare: number;
  /** Moles to one of flux. */
  readonly silica: number;
  readonly alumina: number;
}

/**
 * The way from the lower glaze alone to the upper alone, at every tenth; points without a flux,
 * which have no unity formula, are left out.
 */
export function meltPath(lower: Analysis, upper: Analysis): readonly MeltPoint[] {
  const [below, above] = [weightsToMoles(lower.oxides), weightsToMoles(upper.oxides)];
  const [fluxBelow, fluxAbove] = [sumOf(below, fluxes), sumOf(above, fluxes)];
  return tenths.flatMap((upperShare) => {
    const mix = (a = 0, b = 0) => a * (1 - upperShare) + b * upperShare;
    const flux = mix(fluxBelow, fluxAbove);
    if (!(flux > 0)) return [];
    const silica = mix(below.SiO2, above.SiO2) / flux;
    return [{ upperShare, silica, alumina: mix(below.Al2O3, above.Al2O3) / flux }];
  });
}

const tenths = Array.from({ length: 11 }, (_, tenth) => tenth / 10);

/** The formula of a melt of so much of the upper glaze, from 0 to 1. */
export function meltFormulaAt(lower: Analysis, upper: Analysis, upperShare: number): MeltFormula {
  const mixture = mixtureAt(lower, upper, upperShare);
  return { upperShare, unity: molesToUnity(weightsToMoles(mixture.oxides)) };
}

function meltAt(lower: Analysis, upper: Analysis, upperShare: number): Melt {
  const mixture = mixtureAt(lower, upper, upperShare);
  return { upperShare, chemistry: findFiredChemistry(mixture) ?? null };
}

function mixtureAt(lower: Analysis, upper: Analysis, upperShare: number): Analysis {
  return mixAnalyses([
    { analysis: lower, weight: 1 - upperShare },
    { analysis: upper, weight: upperShare },
  ]);
}
