/** What a material is good for, in a potter's words. */
import { type Oxide, presentOxides } from "../terms/oxides.ts";
import type { Analysis } from "./analysis.ts";
import { sumOfOxides } from "./oxide-sums.ts";
import { weightsToMoles } from "./unity.ts";

/** Of the moles that stay in the fire: below this share an oxide is an impurity. */
const impurity = 0.02;

/**
 * What a material brings that stays in the fire, the oxide it is sought for first: `brings calcium
 * and nothing else`, `brings sodium with alumina and silica`. Impurities are left out.
 *
 * @param soughtFor left out, what it holds most of comes first
 */
export function tellBrings(analysis: Analysis, soughtFor?: Oxide): string {
  const moles = weightsToMoles(analysis.oxides);
  const least = impurity * sumOfOxides(moles);
  const held = presentOxides(moles)
    .filter(([oxide, amount]) => amount >= least || oxide === soughtFor)
    .sort(([, a], [, b]) => b - a)
    .map(([oxide]) => oxide);
  const [first, ...others] = [...held].sort((a, b) => rank(a, soughtFor) - rank(b, soughtFor));
  if (first === undefined) return "brings nothing that stays in the fire";
  const rest = others.length === 0 ? "and nothing else" : `with ${list(others.map(nameOf))}`;
  return `brings ${nameOf(first)} ${rest}`;
}

function rank(oxide: Oxide, soughtFor: Oxide | undefined): number {
  if (oxide === soughtFor) return 0;
  if (oxide === "Al2O3") return 2;
  return oxide === "SiO2" ? 3 : 1;
}

function list(words: readonly string[]): string {
  const last = words.at(-1) ?? "";
  return words.length > 1 ? `${words.slice(0, -1).join(", ")} and ${last}` : last;
}

function nameOf(oxide: Oxide): string {
  return names[oxide];
}

/** As potters call what is in a glaze. */
const names: Readonly<Record<Oxide, string>> = {
  SiO2: "silica",
  Al2O3: "alumina",
  B2O3: "boron",
  Fe2O3: "iron",
  FeO: "iron",
  TiO2: "titanium",
  ZrO2: "zirconium",
  SnO2: "tin",
  P2O5: "phosphorus",
  Li2O: "lithium",
  Na2O: "sodium",
  K2O: "potassium",
  MgO: "magnesium",
  CaO: "calcium",
  SrO: "strontium",
  BaO: "barium",
  ZnO: "zinc",
  PbO: "lead",
  MnO: "manganese",
  CoO: "cobalt",
  NiO: "nickel",
  CuO: "copper",
  Cr2O3: "chromium",
  V2O5: "vanadium",
  MoO3: "molybdenum",
  CdO: "cadmium",
  Sb2O3: "antimony",
  Ag2O: "silver",
  Bi2O3: "bismuth",
  CeO2: "cerium",
  Pr2O3: "praseodymium",
  Nd2O3: "neodymium",
  Er2O3: "erbium",
};
