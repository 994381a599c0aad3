/** What an analysis says of the fired glaze: weight and mole per cent, unity formula, ratios. */
import { alkalis, fluxes, makeUpOf, type OxideAmounts, oxideAmounts } from "../terms/oxides.ts";
import type { Analysis } from "./analysis.ts";
import { sumOf, sumOfOxides } from "./oxide-sums.ts";

export interface FiredChemistry {
  /** Fired oxides by weight, adding to 100. */
  readonly weightPercent: OxideAmounts;
  /** Fired oxides by moles, adding to 100. */
  readonly molePercent: OxideAmounts;
  /** Moles of each oxide for one mole of fluxes together; null without a flux. */
  readonly unity: OxideAmounts | null;
  /** Per cent of the raw weight, additions included. */
  readonly lossOnIgnition: number;
  /** Moles of silica for one of alumina; null without alumina. */
  readonly silicaToAlumina: number | null;
  /** The share of Li2O, Na2O and K2O among the fluxes, by moles, from 0 to 1; null without a flux. */
  readonly alkaliShare: number | null;
}

/**
 * The chemistry of a glaze from the analysis of its raw mixture.
 *
 * @returns undefined where nothing at all would be left after the fire
 */
export function findFiredChemistry(raw: Analysis): FiredChemistry | undefined {
  if (!(sumOfOxides(raw.oxides) > 0)) return undefined;
  const moles = weightsToMoles(raw.oxides);
  const fluxMoles = sumOf(moles, fluxes);
  const alumina = moles.Al2O3 ?? 0;
  return {
    weightPercent: toPercent(raw.oxides),
    molePercent: toPercent(moles),
    unity: molesToUnity(moles),
    lossOnIgnition: raw.loss,
    silicaToAlumina: alumina > 0 ? (moles.SiO2 ?? 0) / alumina : null,
    alkaliShare: fluxMoles > 0 ? sumOf(moles, alkalis) / fluxMoles : null,
  };
}

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
