/**
 * The analysis of a raw material: what fired oxides its formula, or the analysis on its sheet,
 * comes to.
 */
import { atomicWeights, type Element, isElement } from "../terms/atomic-weights.ts";
import { makeUpOf, type Oxide, type OxideAmounts, oxideAmounts, oxides } from "../terms/oxides.ts";
import { parseFormula } from "./formula.ts";
import type { ElementCounts } from "./formula-groups.ts";
import { type FormulaProblem, formulaProblem } from "./formula-problem.ts";
import { sumOfOxides } from "./oxide-sums.ts";

/**
 * What 100 parts by weight of something raw come to in the fire: oxides, which stay, and the
 * loss, which goes. Iron is stated as Fe2O3, cobalt as CoO, manganese as MnO and so on; oxygen
 * taken up on the way makes the loss smaller, even negative. Sulphur trioxide is part of the
 * loss, though it leaves only at high temperature.
 */
export interface Analysis {
  /** Weight per cent of the raw material. */
  readonly oxides: OxideAmounts;
  /** Per cent of the raw weight: what is neither oxide nor fluorine. */
  readonly loss: number;
  /**
   * Fluorine, per cent of the raw weight, listed apart because some of it stays in the glaze.
   * The metals that it came with are counted as oxides all the same.
   */
  readonly fluorine: number;
}

export type AnalysisReading =
  | { readonly ok: true; readonly analysis: Analysis; readonly balanced: boolean }
  | { readonly ok: false; readonly problem: FormulaProblem };

/** What leaves as gas: water, carbon dioxide, sulphur dioxide, nitrogen oxides, chlorine. */
export const burnsOff: ReadonlySet<Element> = new Set(["H", "C", "N", "O", "S", "Cl"]);

/** The oxide that an element is stated as when fired; elements that no glaze is stated in have none. */
export const firedOxides: ReadonlyMap<Element, Oxide> = new Map<Element, Oxide>(
  oxides.filter((oxide) => oxide !== "FeO").map((oxide) => [makeUpOf[oxide].element, oxide]),
);

/**
 * The analysis that a formula stands for.
 *
 * @returns the analysis and whether the formula's charges balance, or what is wrong with it
 */
export function analyseFormula(written: string): AnalysisReading {
  const reading = parseFormula(written);
  if (!reading.ok) return reading;
  const { elements, molarMass, balanced } = reading.formula;
  const stranger = findElementWithoutOxide(elements);
  if (stranger) return { ok: false, problem: elementWithoutOxide(written, stranger) };
  return { ok: true, analysis: analyseElements(elements, molarMass), balanced };
}

/** The weight of the oxygen whose place some weight of fluorine takes: one O for two F. */
export function oxygenReplacedBy(fluorine: number): number {
  return (fluorine * atomicWeights.O.weight) / (2 * atomicWeights.F.weight);
}

function analyseElements(elements: ElementCounts, molarMass: number): Analysis {
  const perCent = (grams: number) => (100 * grams) / molarMass;
  const fired = oxideAmounts((oxide) => {
    const { element, atoms, molarMass: oxideMass } = makeUpOf[oxide];
    if (firedOxides.get(element) !== oxide) return 0;
    return perCent(((elements[element] ?? 0) / atoms) * oxideMass);
  });
  const fluorine = perCent((elements.F ?? 0) * atomicWeights.F.weight);
  const kept = sumOfOxides(fired) + fluorine - oxygenReplacedBy(fluorine);
  return { oxides: fired, loss: 100 - kept, fluorine };
}

function findElementWithoutOxide(elements: ElementCounts): Element | undefined {
  const found = Object.keys(elements).filter(isElement);
  return found.find((el) => el !== "F" && !burnsOff.has(el) && !firedOxides.has(el));
}

function elementWithoutOxide(written: string, element: Element): FormulaProblem {
  return formulaProblem(
    "element-without-oxide",
    Math.max(0, written.search(new RegExp(`${element}(?![a-z])`, "u"))),
    `Tilebook counts no oxide of ${element}`,
    "Leave it out and say so in the material's note, or leave the material without a formula.",
  );
}
