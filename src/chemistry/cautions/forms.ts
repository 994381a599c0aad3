/** In which compound an element is: the same metal harms in one and not in another. */
import type { ElementCounts } from "../formula-groups.ts";
import { wordFinder } from "./element-names.ts";
import type { Ingredient } from "./ingredients.ts";

/**
 * Whether an element comes free in the stomach: `bound` in a silicate, a phosphate, a glass or an
 * insoluble sulphate, `free` in a carbonate, an oxide or a salt. An analysis that holds silica
 * beside it may be of a mineral, a glass or a mixture: `unknown`.
 */
export type Form = "bound" | "free" | "unknown";

export function formOf({ contents, isGlass }: Ingredient, element: "Ba" | "Li"): Form {
  if (isGlass) return "bound";
  if (contents.formula) return formInFormula(contents.formula.atoms, element);
  if (contents.elements.size === 0) return "unknown";
  if (element === "Ba" && isBariumSulphate(contents.elements)) return "bound";
  return (contents.oxides.SiO2 ?? 0) > 0 ? "unknown" : "free";
}

function formInFormula({ Si, P, S, O, Ba = 0 }: ElementCounts, element: "Ba" | "Li"): Form {
  if (Si || P) return "bound";
  const isSulphate = S !== undefined && (O ?? 0) >= 4 * S;
  return element === "Ba" && isSulphate && S >= Ba ? "bound" : "free";
}

/** By the weights of SO3 and BaO in barite, 34.3 to 65.7 (molar masses 80.06 and 153.33). */
function isBariumSulphate(elements: ReadonlyMap<string, number | null>): boolean {
  const [barium, sulphur] = [elements.get("Ba") ?? 0, elements.get("S") ?? 0];
  return barium > 0 && sulphur / 80.06 >= (0.95 * barium) / 153.33;
}

/** Charges of what stands beside a metal in oxides and oxygen salts. Common chemistry. */
const charges: ElementCounts = {
  H: 1,
  Li: 1,
  Na: 1,
  K: 1,
  Mg: 2,
  Ca: 2,
  Sr: 2,
  Ba: 2,
  Zn: 2,
  Pb: 2,
  Fe: 2,
  Co: 2,
  Ni: 2,
  Cu: 2,
  Mn: 2,
  Cd: 2,
  Al: 3,
  Bi: 3,
  B: 3,
  Si: 4,
  Sn: 4,
  Ti: 4,
  C: 4,
  P: 5,
  S: 6,
  O: -2,
  F: -1,
  Cl: -1,
};

/**
 * The oxidation state of an element in a formula, by the charges of all others.
 *
 * @returns undefined where the formula holds none of it, or something of unknown charge beside it
 */
export function oxidationState(
  { contents: { formula } }: Ingredient,
  element: "Cr" | "Sb",
): number | undefined {
  const atoms = formula?.atoms ?? {};
  const { [element]: own, ...others } = atoms;
  if (!formula || !own) return undefined;
  const isAmmonium = formula.written.includes("NH4");
  let sum = 0;
  for (const [other, count] of Object.entries({ ...others })) {
    const charge = other === "N" ? (isAmmonium ? -3 : 5) : charges[other as keyof ElementCounts];
    if (charge === undefined) return undefined;
    sum += charge * count;
  }
  return -sum / own;
}

const isCalledChromate = wordFinder(["chromate", "dichromate", "bichromate"]);

/** Chromates and dichromates: by formula, by CrO3 in an analysis, or by a name alone. */
export function isHexavalent(ingredient: Ingredient): boolean {
  const { contents, id, name } = ingredient;
  if (contents.formula) return (oxidationState(ingredient, "Cr") ?? 0) > 5;
  if (contents.lines.some((line) => /^CrO3$/iu.test(line))) return true;
  const called = `${id} ${name}`;
  return contents.elements.size === 0 && isCalledChromate(called);
}
