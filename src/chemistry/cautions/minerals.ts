/** Minerals that harm by their shape, which no list of oxides tells. */
import { wordFinder } from "./element-names.ts";
import type { Ingredient } from "./ingredients.ts";
import { cancer, checked, type Statement } from "./statement.ts";

export interface MineralHazard {
  /** What a list says. */
  readonly inShort: string;
  /** How the sentence begins, of some materials by name. */
  readonly subject: (names: string) => string;
  readonly isLoud: boolean;
  readonly statements: readonly Statement[];
  readonly isIn: (ingredient: Ingredient) => boolean;
}

const namesAsbestos = wordFinder([
  "asbestos",
  "actinolite",
  "amosite",
  "anthophyllite",
  "chrysotile",
  "crocidolite",
  "tremolite",
]);
const namesTalc = wordFinder(["talc", "soapstone", "steatite", "french chalk"]);
const namesSerpentine = wordFinder(["serpentine", "serpentinite"]);

function calledOf({ id, name }: Ingredient): string {
  return `${id.replaceAll("-", " ")} ${name}`;
}

/** Three of magnesium to four of silicon, with its water: Mg3Si4O10(OH)2. */
function isTalc(ingredient: Ingredient): boolean {
  const { formula, oxides } = ingredient.contents;
  const { Mg = 0, Si = 0, H = 0, Al = 0, Ca = 0 } = formula?.atoms ?? {};
  if (Mg > 0 && H > 0 && Al === 0 && Ca === 0 && Math.abs(Mg / Si - 0.75) < 0.03) return true;
  if (namesTalc(calledOf(ingredient))) return true;
  const { MgO = 0, SiO2 = 0 } = oxides;
  // 31.9 MgO and 63.4 SiO2 in the pure mineral; what is sold holds carbonate and chlorite too.
  return !ingredient.isGlass && MgO >= 24 && MgO <= 36 && SiO2 >= 45 && SiO2 / MgO < 2.6;
}

/** Mg3Si2O5(OH)4, of which chrysotile is the fibrous kind. */
function isSerpentine(ingredient: Ingredient): boolean {
  const { Mg = 0, Si = 0, H = 0 } = ingredient.contents.formula?.atoms ?? {};
  const byFormula = Si > 0 && H > 0 && Math.abs(Mg / Si - 1.5) < 0.05;
  return byFormula || namesSerpentine(calledOf(ingredient));
}

export const mineralHazards: readonly MineralHazard[] = [
  {
    inShort: "named after asbestos",
    subject: (names) => names,
    isLoud: true,
    statements: [
      cancer("is named after a kind of asbestos, which is carcinogenic (group 1)", "100C"),
    ],
    isIn: (ingredient) => namesAsbestos(calledOf(ingredient)),
  },
  {
    inShort: "talc dust",
    subject: (names) => `Dust of talc (from ${names})`,
    isLoud: false,
    statements: [
      cancer("is probably carcinogenic to breathe in (group 2A)", "136"),
      checked(
        "can hold asbestos, depending on its deposit: ask for an assay",
        "Princeton EHS, ceramics",
      ),
    ],
    isIn: isTalc,
  },
  {
    inShort: "serpentine dust",
    subject: (names) => `Dust of serpentine (from ${names})`,
    isLoud: false,
    statements: [
      cancer(
        "can hold its fibrous kind, the asbestos chrysotile, which is carcinogenic (group 1): ask for an assay",
        "100C",
      ),
    ],
    isIn: isSerpentine,
  },
];
