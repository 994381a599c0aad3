/** Mixing by weight: what materials come to in a recipe, and glazes in a blend. */
import { oxideAmounts } from "../terms/oxides.ts";
import type { Analysis } from "./analysis.ts";

/** So much of something raw, in any unit of weight. */
export interface Weighed {
  readonly analysis: Analysis;
  readonly weight: number;
}

/**
 * The analysis of a dry mixture, per 100 parts of its raw weight.
 *
 * @param parts at least one, weights above zero
 */
export function mixAnalyses(parts: readonly Weighed[]): Analysis {
  const total = parts.reduce((sum, part) => sum + part.weight, 0);
  const mean = (amountOf: (analysis: Analysis) => number) =>
    parts.reduce((sum, part) => sum + part.weight * amountOf(part.analysis), 0) / total;
  return {
    oxides: oxideAmounts((oxide) => mean((analysis) => analysis.oxides[oxide] ?? 0)),
    loss: mean((analysis) => analysis.loss),
    fluorine: mean((analysis) => analysis.fluorine),
  };
}
