/** Reworking a recipe: the same unity formula, as nearly as other materials give it. */
import { alkalis, fluxes, type Oxide, type OxideAmounts, oxides } from "../terms/oxides.ts";
import type { Analysis } from "./analysis.ts";
import { findNonNegativeAmounts } from "./least-squares.ts";
import { mixAnalyses } from "./mix.ts";
import { sumOf, sumOfOxides } from "./oxide-sums.ts";
import type { Portion } from "./recipe.ts";
import { molesToUnity, weightsToMoles } from "./unity.ts";

/** A material that may be used. */
export interface Candidate {
  readonly material: string;
  readonly analysis: Analysis;
  /** Whether nobody asked for it and the recipe never held it: only few of these come in. */
  readonly isNew?: boolean;
}

export interface Rework {
  /** Parts by weight, adding to 100, most first. */
  readonly portions: readonly Portion[];
  /** The unity formula that these parts give. */
  readonly unity: OxideAmounts;
  /** The oxides that stay too far from what is wanted, the farthest first. */
  readonly unreached: readonly Unreached[];
  /**
   * The square root of the summed squares of all differences, in moles to one of flux, those of
   * colouring oxides taken tenfold.
   */
  readonly distance: number;
}

export interface Unreached {
  readonly oxide: Oxide;
  /** Moles to one of flux. */
  readonly wanted: number;
  readonly reached: number;
}

/**
 * The recipe whose unity formula comes nearest to a given one, from some materials and no
 * others. Fluxes may stand in for each other, alkalis for alkalis first, and no colour for
 * anything; of recipes that come as near, the one with fewer materials is taken, and those named
 * first are kept before the rest. Of materials that are new no more than two come in, and half a
 * part of each at least.
 *
 * @param wanted a unity formula: moles to one of flux
 * @param candidates in order of preference: the rest of the old recipe, then what is in stock
 * @returns undefined where the candidates hold no flux
 */
export function findNearestRecipe(
  wanted: OxideAmounts,
  candidates: readonly Candidate[],
): Rework | undefined {
  const usable = candidates.filter(({ analysis }) => sumOfOxides(analysis.oxides) > 0);
  const chosen = chooseNew(wanted, usable);
  const first = solve(wanted, chosen);
  return first && prune(wanted, chosen, first);
}

/** What a potter will still buy or open for one glaze. Common practice, no source. */
const mostNew = 2;

/** Parts in a hundred below which a new material is not worth opening. */
const leastNewParts = 0.5;

/**
 * The old materials with the new ones that bring the recipe nearest, each chosen beside those that
 * were chosen before.
 */
function chooseNew(wanted: OxideAmounts, usable: readonly Candidate[]): readonly Candidate[] {
  let chosen: readonly Candidate[] = usable.filter(({ isNew }) => !isNew);
  for (let n = 0; n < mostNew; n += 1) {
    const better = findBestNew(wanted, usable, chosen);
    if (!better) break;
    chosen = [...chosen, better];
  }
  return chosen;
}

function findBestNew(
  wanted: OxideAmounts,
  usable: readonly Candidate[],
  chosen: readonly Candidate[],
): Candidate | undefined {
  let best: Candidate | undefined;
  let nearest = solve(wanted, chosen)?.distance ?? Number.POSITIVE_INFINITY;
  for (const candidate of usable) {
    if (chosen.includes(candidate)) continue;
    const found = solve(wanted, [...chosen, candidate]);
    const parts = found?.portions.find(({ material }) => material === candidate.material)?.parts;
    if (!found || (parts ?? 0) < leastNewParts) continue;
    if (found.distance >= nearest - worthFewerMaterials) continue;
    best = candidate;
    nearest = found.distance;
  }
  return best;
}

/**
 * How much farther off a recipe may be for the sake of fewer materials, in moles of one oxide. It
 * is reckoned apart from what is off already, or a colourant would be spared where much else is.
 */
const worthFewerMaterials = 0.001;

/** Leaves out, one by one, the materials that can be spared, the least preferred first. */
function prune(wanted: OxideAmounts, candidates: readonly Candidate[], first: Rework): Rework {
  let best = first;
  const allowed = Math.hypot(first.distance, worthFewerMaterials);
  let kept = candidates.filter(({ material }) => isUsed(first, material));
  for (const candidate of kept.toReversed()) {
    const fewer = kept.filter((other) => other !== candidate);
    const without = solve(wanted, fewer);
    if (!without || without.distance > allowed) continue;
    best = without;
    kept = fewer;
  }
  return best;
}

function isUsed(rework: Rework, material: string): boolean {
  return rework.portions.some((portion) => portion.material === material);
}

/** Binds the fluxes to their sum of 1 far more tightly than any one oxide to its share. */
const fluxSumWeight = 30;

/** Lets an alkali that is lacking be made good by another rather than by an earth. */
const alkaliSumWeight = 3;

/** A little of these changes a glaze as much as a lot of another oxide. */
const colouring: ReadonlySet<Oxide> = new Set<Oxide>([
  "Fe2O3",
  "MnO",
  "CoO",
  "NiO",
  "CuO",
  "Cr2O3",
  "V2O5",
]);

/** Keeps a red clay out of a white glaze, and the last tenth of a per cent of cobalt in a blue one. */
const colourWeight = 10;

function weighed(moles: OxideAmounts): readonly number[] {
  return oxides.map((oxide) => (colouring.has(oxide) ? colourWeight : 1) * (moles[oxide] ?? 0));
}

/** What is compared: every oxide, the alkalis together, and the fluxes together. */
function comparedAmounts(moles: OxideAmounts): readonly number[] {
  return [
    ...weighed(moles),
    alkaliSumWeight * sumOf(moles, alkalis),
    fluxSumWeight * sumOf(moles, fluxes),
  ];
}

function solve(wanted: OxideAmounts, candidates: readonly Candidate[]): Rework | undefined {
  if (candidates.length === 0) return undefined;
  const columns = candidates.map(({ analysis }) =>
    comparedAmounts(weightsToMoles(analysis.oxides)),
  );
  const amounts = findNonNegativeAmounts(columns, comparedAmounts(wanted));
  return amounts && describe(wanted, candidates, amounts);
}

/** Parts in a hundred below which a material is left out: nobody weighs it. */
const leastParts = 0.01;

function describe(
  wanted: OxideAmounts,
  candidates: readonly Candidate[],
  amounts: readonly number[],
): Rework | undefined {
  const total = amounts.reduce((sum, amount) => sum + amount, 0);
  const used = candidates
    .map((candidate, i) => ({ ...candidate, parts: (100 * (amounts[i] ?? 0)) / total }))
    .filter(({ parts }) => parts >= leastParts);
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
    distance: findDistance(weighed(wanted), weighed(unity)),
  };
}

function findDistance(a: readonly number[], b: readonly number[]): number {
  return Math.hypot(...a.map((amount, i) => amount - (b[i] ?? 0)));
}

/** An oxide is reached within this many moles and this share of what is wanted. */
const near = { moles: 0.005, share: 0.01 };

function findUnreached(wanted: OxideAmounts, unity: OxideAmounts): readonly Unreached[] {
  return oxides
    .map((oxide) => ({ oxide, wanted: wanted[oxide] ?? 0, reached: unity[oxide] ?? 0 }))
    .filter((it) => Math.abs(it.reached - it.wanted) > near.moles + near.share * it.wanted)
    .sort((a, b) => Math.abs(b.reached - b.wanted) - Math.abs(a.reached - a.wanted));
}

/** The oxide in which two unity formulas lie farthest apart, and by how many moles. */
export function findLargestDifference(
  wanted: OxideAmounts,
  reached: OxideAmounts,
): { readonly oxide: Oxide; readonly difference: number } {
  const differences = oxides.map((oxide) => ({
    oxide,
    difference: (reached[oxide] ?? 0) - (wanted[oxide] ?? 0),
  }));
  return differences.reduce((a, b) => (Math.abs(b.difference) > Math.abs(a.difference) ? b : a));
}
