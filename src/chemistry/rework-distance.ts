/** How far two unity formulas lie apart, as a glaze feels it. */
import { alkalis, fluxes, type Oxide, type OxideAmounts, oxides } from "../terms/oxides.ts";
import { sumOf } from "./oxide-sums.ts";

export interface Unreached {
  readonly oxide: Oxide;
  /** Moles to one of flux. */
  readonly wanted: number;
  readonly reached: number;
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
const colourWeight = 20;

/** What is compared: every oxide, the alkalis together, and the fluxes together. */
export function comparedAmounts(moles: OxideAmounts): readonly number[] {
  return [
    ...oxides.map((oxide) => (colouring.has(oxide) ? colourWeight : 1) * (moles[oxide] ?? 0)),
    alkaliSumWeight * sumOf(moles, alkalis),
    fluxSumWeight * sumOf(moles, fluxes),
  ];
}

/** The square root of the summed squares of all that is compared, in moles to one of flux. */
export function distanceBetween(wanted: OxideAmounts, unity: OxideAmounts): number {
  const reached = comparedAmounts(unity);
  return Math.hypot(...comparedAmounts(wanted).map((amount, i) => amount - (reached[i] ?? 0)));
}

/** Moles of one oxide that no test tile shows: recipes that differ by no more are as near. */
export const asNear = 0.005;

/** An oxide is reached within `asNear` and this share of what is wanted. */
const nearShare = 0.01;

/** The oxides that stay too far from what is wanted, the farthest first. */
export function findUnreached(wanted: OxideAmounts, unity: OxideAmounts): readonly Unreached[] {
  return oxides
    .map((oxide) => ({ oxide, wanted: wanted[oxide] ?? 0, reached: unity[oxide] ?? 0 }))
    .filter((it) => Math.abs(it.reached - it.wanted) > asNear + nearShare * it.wanted)
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
