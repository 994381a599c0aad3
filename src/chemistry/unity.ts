/** Weights, moles and the unity formula. */
import { fluxes, makeUpOf, type OxideAmounts, oxideAmounts } from "../terms/oxides.ts";
import { sumOf, sumOfOxides } from "./oxide-sums.ts";

/** Grams to moles, or weight per cent to moles in 100 g. */
export function weightsToMoles(weights: OxideAmounts): OxideAmounts {
  return oxideAmounts((oxide) => (weights[oxide] ?? 0) / makeUpOf[oxide].molarMass);
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
 * @returns null where there is no flux but a trace: such a formula is all silica and alumina, in
 *   numbers that mean nothing
 */
export function molesToUnity(moles: OxideAmounts): OxideAmounts | null {
  const fluxMoles = fluxesIn(moles);
  if (fluxMoles === null) return null;
  return oxideAmounts((oxide) => (moles[oxide] ?? 0) / fluxMoles);
}

/**
 * Fluxes below this share of all moles are a trace, such as a washed silica holds: less than the
 * stiffest of Seger's cones with a flux (1 of flux, 20 of alumina, 200 of silica).
 */
const traceOfFlux = 0.003;

/** The moles of all fluxes together; null where they are none, or a trace. */
export function fluxesIn(moles: OxideAmounts): number | null {
  const fluxMoles = sumOf(moles, fluxes);
  return fluxMoles > 0 && fluxMoles >= traceOfFlux * sumOfOxides(moles) ? fluxMoles : null;
}
