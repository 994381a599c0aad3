/** What a raw material holds that leaves the kiln as a harmful gas. */
import type { Analysis } from "./analysis.ts";
import { parseFormula } from "./formula.ts";

export const fumeElements = ["C", "Cl", "F", "S"] as const;
export type FumeElement = (typeof fumeElements)[number];

/** @param formula null where only an analysis is known: then nobody knows what its loss consists of */
export function findFumeElements(
  formula: string | null,
  analysis: Analysis,
): readonly FumeElement[] {
  const reading = formula === null ? undefined : parseFormula(formula);
  return fumeElements.filter((element) => {
    if (element === "F" && analysis.fluorine > 0) return true;
    return reading?.ok === true && (reading.formula.elements[element] ?? 0) > 0;
  });
}
