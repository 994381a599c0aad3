/** Reworking a recipe: the same unity formula, as nearly as other materials give it. */
import type { OxideAmounts } from "../terms/oxides.ts";
import type { Analysis } from "./analysis.ts";
import { findNonNegativeAmounts } from "./least-squares.ts";
import { mixAnalyses } from "./mix.ts";
import { sumOfOxides } from "./oxide-sums.ts";
import type { Portion } from "./recipe.ts";
import {
  comparedAmounts,
  distanceBetween,
  findUnreached,
  type Unreached,
} from "./rework-distance.ts";
import { molesToUnity, weightsToMoles } from "./unity.ts";

/** A material that may be used. */
export interface Candidate {
  readonly material: string;
  readonly analysis: Analysis;
}

/** So many parts of a candidate, in any unit. */
export interface Share extends Candidate {
  readonly parts: number;
}

export interface Rework {
  /** Parts by weight, adding to 100, most first. */
  readonly portions: readonly Portion[];
  /** The unity formula that these parts give. */
  readonly unity: OxideAmounts;
  /** The oxides that stay too far from what is wanted, the farthest first. */
  readonly unreached: readonly Unreached[];
  /** From what is wanted, by `distanceBetween`. */
  readonly distance: number;
}

/** Which reworks may be taken; the others count as impossible. */
export type Allows = (rework: Rework) => boolean;

/**
 * The recipe whose unity formula comes nearest to a given one, from some materials and no
 * others. Fluxes may stand in for each other, alkalis for alkalis first, and no colour for
 * anything; of recipes that come as near, the one with fewer materials is taken, and those named
 * first are kept before the rest.
 *
 * @param wanted a unity formula: moles to one of flux
 * @param candidates in order of preference
 * @returns undefined where the candidates hold no flux, or nothing allowed can be made of them
 */
export function findNearestRecipe(
  wanted: OxideAmounts,
  candidates: readonly Candidate[],
  allows: Allows = () => true,
): Rework | undefined {
  const usable = candidates.filter(({ analysis }) => sumOfOxides(analysis.oxides) > 0);
  const first = solve(wanted, usable);
  return first && allows(first) ? leaveOut(wanted, usable, first, allows) : undefined;
}

/** The nearest recipe of all the candidates, however little of some it takes. */
export function solve(wanted: OxideAmounts, candidates: readonly Candidate[]): Rework | undefined {
  if (candidates.length === 0) return undefined;
  const amounts = findNonNegativeAmounts(candidates.map(columnOf), comparedAmounts(wanted));
  if (!amounts) return undefined;
  const shares = candidates.map((candidate, i) => ({ ...candidate, parts: amounts[i] ?? 0 }));
  return describeRework(wanted, shares);
}

/** What a hundred grams of a material add to all that is compared. */
export function columnOf({ analysis }: Candidate): readonly number[] {
  return comparedAmounts(weightsToMoles(analysis.oxides));
}

/**
 * How much farther off a recipe may be for the sake of fewer materials, in moles of one oxide. It
 * is reckoned apart from what is off already, or a colourant would be spared where much else is.
 */
const worthFewerMaterials = 0.001;

/** Leaves out, one by one, the materials that can be spared, the least preferred first. */
function leaveOut(
  wanted: OxideAmounts,
  candidates: readonly Candidate[],
  first: Rework,
  allows: Allows,
): Rework {
  let best = first;
  const farthest = Math.hypot(first.distance, worthFewerMaterials);
  let kept = candidates.filter(({ material }) => partsIn(first, material) > 0);
  for (const candidate of kept.toReversed()) {
    const fewer = kept.filter((other) => other !== candidate);
    const without = solve(wanted, fewer);
    if (!without || without.distance > farthest || !allows(without)) continue;
    best = without;
    kept = fewer;
  }
  return best;
}

/** Parts in a hundred of a material; 0 where it is not in it. */
export function partsIn({ portions }: Rework, material: string): number {
  return portions.find((portion) => portion.material === material)?.parts ?? 0;
}

/** Parts in a hundred below which a material is left out: nobody weighs it. */
const leastParts = 0.01;

/** What some shares come to, in a hundred parts; undefined without a flux. */
export function describeRework(wanted: OxideAmounts, shares: readonly Share[]): Rework | undefined {
  const total = shares.reduce((sum, { parts }) => sum + parts, 0);
  const used = inAHundred(
    shares.filter(({ parts }) => parts > 0 && (100 * parts) / total >= leastParts),
  );
  if (used.length === 0) return undefined;
  const mixed = mixAnalyses(used.map(({ analysis, parts }) => ({ analysis, weight: parts })));
  const unity = molesToUnity(weightsToMoles(mixed.oxides));
  if (!unity) return undefined;
  return {
    portions: used
      .map(({ material, parts }) => ({ material, parts }))
      .sort((a, b) => b.parts - a.parts),
    unity,
    unreached: findUnreached(wanted, unity),
    distance: distanceBetween(wanted, unity),
  };
}

function inAHundred(shares: readonly Share[]): readonly Share[] {
  const total = shares.reduce((sum, { parts }) => sum + parts, 0);
  return shares.map((share) => ({ ...share, parts: (100 * share.parts) / total }));
}
