/** Weights, moles and the unity formula. */
import { fluxes, makeUpOf, type OxideAmounts, oxideAmounts } from "../terms/oxides.ts";
import { sumOf, sumOfOxides } from "./oxide-sums.ts";

/** Grams to moles, or weight per cent to moles in 100 g. */
export function weightsToMoles(weights: OxideAmounts): OxideAmounts {
  return oxideAmounts((oxide) => (weights[oxide] ?? 0) / makeUpOf[oxide].molarMass);
}

/** Moles to grams. */
export function molesToWeights(moles: OxideAmounts): OxideAmounts {
  return oxideAmounts((oxide) => (moles[oxide] ?? 0) * makeUpOf[oxide].molarMass);
}

/** Amounts scaled to add to 100; there must be some. */
export function toPercent(amounts: OxideAmounts): OxideAmounts {
  const total = sumOfOxides(amounts);
  return oxideAmounts((oxide) => (100 * (amounts[oxide] ?? 0)) / total);
}

/**
 * The unity formula, after Seger: moles scaled so that the fluxes add to 1. Colouring oxides are
 * stated relative to them but not counted among them.
 *
 * @returns null without a flux
 */
export function molesToUnity(moles: OxideAmounts): OxideAmounts | null {
  const fluxMoles = sumOf(moles, fluxes);
  if (!(fluxMoles > 0)) return null;
  return oxideAmounts((oxide) => (moles[oxide] ?? 0) / fluxMoles);
}
