/**
 * Elements that harm: raw, as dust, as fume, or in food from the fired glaze. What is said of them
 * orients; the product's label and safety sheet, local rules and a laboratory decide.
 */
import type { Oxide } from "../../terms/oxides.ts";
import {
  antimony,
  barium,
  cobalt,
  type HazardStatement,
  highlyToxic,
  hurtsSkin,
  lithium,
} from "./compounds.ts";
import { cancer, checked, practised } from "./statement.ts";

export interface Substance {
  /** What a potter calls it. */
  readonly name: string;
  readonly element: string;
  /** The oxide that its amounts are told in; null where no glaze is stated in one. */
  readonly oxide: Oxide | null;
  readonly statements: readonly HazardStatement[];
  /** Whether it is told loudly as soon as some material holds more than a trace of it. */
  readonly isPoison: boolean;
  /**
   * Weight per cent of the fired glaze from which a glaze often cannot hold it against acids; null
   * where amount makes no difference. Common practice, no source.
   */
  readonly leachesFrom: number | null;
}

const group1 = cancer("is carcinogenic (group 1)", "100C");

/** Told loudly however little of it a glaze holds, unless every material holds but a trace. */
function poison(
  name: string,
  element: string,
  oxide: Oxide | null,
  statements: readonly HazardStatement[],
): Substance {
  return { name, element, oxide, statements, isPoison: true, leachesFrom: null };
}

/** Told loudly where a glaze holds much of it, by itself or together with its like. */
function metal(
  name: string,
  element: string,
  oxide: Oxide,
  leachesFrom: number | null,
  statements: readonly HazardStatement[],
): Substance {
  return { name, element, oxide, statements, isPoison: false, leachesFrom };
}

export const substances: readonly Substance[] = [
  poison("arsenic", "As", null, [highlyToxic, group1]),
  poison("beryllium", "Be", null, [highlyToxic, group1]),
  poison("cadmium", "Cd", "CdO", [highlyToxic, group1]),
  poison("lead", "Pb", "PbO", [
    highlyToxic,
    cancer("is probably carcinogenic in its inorganic compounds (group 2A)", "87"),
  ]),
  poison("selenium", "Se", null, [
    checked(
      "harms the nerves and the gut when it is taken in again and again, and irritates the throat as dust",
      "International Chemical Safety Card 0072",
    ),
  ]),
  poison("thallium", "Tl", null, [
    checked(
      "has killed people who swallowed it, and harms the nerves of those who breathe it in for years",
      "ATSDR, ToxFAQs for thallium",
    ),
  ]),
  poison("uranium", "U", null, [
    highlyToxic,
    checked("is a radioactive heavy metal", "ATSDR, Toxicological profile for uranium"),
    checked("harms the kidneys", "Vicente-Vicente et al., Toxicol. Sci. 118 (2010) 324"),
  ]),
  metal("antimony", "Sb", "Sb2O3", 1.5, antimony),
  metal("barium", "Ba", "BaO", 8, barium),
  metal("chromium", "Cr", "Cr2O3", 1.5, [highlyToxic, hurtsSkin]),
  metal("cobalt", "Co", "CoO", 1.5, cobalt),
  metal("copper", "Cu", "CuO", 3, [
    checked(
      "irritates nose and throat as fume, and can bring a fever",
      "NIOSH, IDLH documentation for copper fume (1994)",
    ),
    practised("leaches into food from glazes that hold much of it"),
  ]),
  metal("lithium", "Li", "Li2O", null, lithium),
  metal("manganese", "Mn", "MnO", 3, [
    highlyToxic,
    checked(
      "harms the nerves and the lungs, as dust and as fume from the kiln",
      "NIOSH, 1988 OSHA PEL project, manganese fume",
    ),
  ]),
  metal("nickel", "Ni", "NiO", 1.5, [
    highlyToxic,
    hurtsSkin,
    cancer("is carcinogenic in its compounds (group 1)", "100C"),
  ]),
  metal("vanadium", "V", "V2O5", 1.5, [
    highlyToxic,
    cancer("is possibly carcinogenic as pentoxide (group 2B)", "86"),
  ]),
];
