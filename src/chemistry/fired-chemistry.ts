/** What an analysis says of the fired glaze: oxides, unity formula, ratios, expansion. */
import { alkalis, type OxideAmounts } from "../terms/oxides.ts";
import type { Analysis } from "./analysis.ts";
import { type Expansion, findExpansions } from "./expansion/expansion.ts";
import { sumOf, sumOfOxides } from "./oxide-sums.ts";
import { fluxesIn, molesToUnity, toPercent, weightsToMoles } from "./unity.ts";

export interface FiredChemistry {
  /** Fired oxides by weight, adding to 100. */
  readonly weightPercent: OxideAmounts;
  /** Fired oxides by moles, adding to 100. */
  readonly molePercent: OxideAmounts;
  /** Moles of each oxide for one mole of fluxes together; null without a flux, or with a trace of one. */
  readonly unity: OxideAmounts | null;
  /** Per cent of the raw weight, additions included. */
  readonly lossOnIgnition: number;
  /** Moles of silica for one of alumina; null without alumina. */
  readonly silicaToAlumina: number | null;
  /** The share of Li2O, Na2O and K2O among the fluxes, by moles, from 0 to 1; null without a flux, or with a trace of one. */
  readonly alkaliShare: number | null;
  /** Thermal expansion by each set of published factors that covers the glaze. */
  readonly expansion: readonly Expansion[];
}

/**
 * The chemistry of a glaze from the analysis of its raw mixture.
 *
 * @returns undefined where nothing at all would be left after the fire
 */
export function findFiredChemistry(raw: Analysis): FiredChemistry | undefined {
  if (!(sumOfOxides(raw.oxides) > 0)) return undefined;
  const moles = weightsToMoles(raw.oxides);
  const fluxMoles = fluxesIn(moles);
  const alumina = moles.Al2O3 ?? 0;
  const glass = { weightPercent: toPercent(raw.oxides), molePercent: toPercent(moles) };
  return {
    ...glass,
    unity: molesToUnity(moles),
    lossOnIgnition: raw.loss,
    silicaToAlumina: alumina > 0 ? (moles.SiO2 ?? 0) / alumina : null,
    alkaliShare: fluxMoles === null ? null : sumOf(moles, alkalis) / fluxMoles,
    expansion: findExpansions(glass),
  };
}
