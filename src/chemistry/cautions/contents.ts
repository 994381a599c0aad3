/**
 * What can be read of a material, whatever else of it cannot: hazards must not go silent because
 * one line of an analysis, or the formula as a whole, cannot be reckoned with.
 */
import { atomicWeights, type Element } from "../../terms/atomic-weights.ts";
import { type OxideAmounts, oxideAmounts } from "../../terms/oxides.ts";
import { analyseFormula } from "../analysis.ts";
import { parseFormula } from "../formula.ts";
import type { ElementCounts } from "../formula-groups.ts";
import { isLoss, readStatedAnalysis, type StatedAnalysis } from "../stated-analysis.ts";
import { elementsNamedIn } from "./element-names.ts";

export interface Contents {
  /**
   * Every element that is named, with the per cent of the raw weight that was written beside it or
   * follows from the formula; null where nobody knows how much.
   */
  readonly elements: ReadonlyMap<string, number | null>;
  /** The oxides that glazes are stated in, as far as they could be read: per cent of the raw weight. */
  readonly oxides: OxideAmounts;
  /** The formula as written, and its atoms; null where there is none that can be read. */
  readonly formula: { readonly written: string; readonly atoms: ElementCounts } | null;
  /** What the lines of an analysis are of, as written, the loss left out. */
  readonly lines: readonly string[];
  /** What was written and cannot be reckoned with: lines of an analysis, or a whole formula. */
  readonly unread: readonly string[];
  /** Whether all that was written could be read; false too where nothing was written. */
  readonly isWhole: boolean;
}

/** A material of which nobody wrote down what it is made of. */
export const unknownContents: Contents = {
  elements: new Map(),
  oxides: {},
  formula: null,
  lines: [],
  unread: [],
  isWhole: false,
};

export function contentsOfFormula(written: string): Contents {
  const parsed = parseFormula(written);
  if (!parsed.ok) {
    const elements = withoutAmounts(elementsNamedIn(written));
    return { ...unknownContents, elements, unread: [written] };
  }
  const { elements: atoms, molarMass } = parsed.formula;
  const analysed = analyseFormula(written);
  return {
    elements: new Map(Object.entries(weightPercents(atoms, molarMass))),
    oxides: analysed.ok ? analysed.analysis.oxides : {},
    formula: { written, atoms },
    lines: [],
    unread: analysed.ok ? [] : [written],
    isWhole: analysed.ok,
  };
}

/** Line by line, so that no line hides another. */
export function contentsOfAnalysis(stated: StatedAnalysis): Contents {
  const lines = Object.entries(stated).filter(([key]) => !isLoss(key));
  const elements = new Map<string, number>();
  for (const [key, amount] of lines)
    for (const element of elementsNamedIn(key))
      elements.set(element, (elements.get(element) ?? 0) + amount);
  const read = lines.map(([key, amount]) => ({
    key,
    reading: readStatedAnalysis({ [key]: amount, loss: 0 }),
  }));
  const analyses = read.flatMap(({ reading }) => (reading.ok ? [reading.analysis] : []));
  const unread = read.flatMap(({ key, reading }) => (reading.ok ? [] : [key]));
  return {
    elements,
    oxides: oxideAmounts((oxide) =>
      analyses.reduce((sum, { oxides }) => sum + (oxides[oxide] ?? 0), 0),
    ),
    formula: null,
    lines: lines.map(([key]) => key),
    unread,
    isWhole: unread.length === 0,
  };
}

function withoutAmounts(elements: readonly string[]): ReadonlyMap<string, null> {
  return new Map(elements.map((element) => [element, null]));
}

function weightPercents(atoms: ElementCounts, molarMass: number): Record<string, number> {
  return Object.fromEntries(
    (Object.entries(atoms) as [Element, number][]).map(([element, count]) => [
      element,
      (100 * count * atomicWeights[element].weight) / molarMass,
    ]),
  );
}
