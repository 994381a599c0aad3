/**
 * Chemical formulas as potters and mineralogists write them: `K2O·Al2O3·6SiO2`,
 * `Na2B4O5(OH)4·8H2O`, `0.75Na2O·0.25K2O·1.11Al2O3·4.65SiO2`.
 */
import { atomicWeights, type Element } from "../terms/atomic-weights.ts";
import { type ElementCounts, type GroupsReading, readGroups } from "./formula-groups.ts";
import { type FormulaProblem, formulaProblem } from "./formula-problem.ts";
import { chargesBalance } from "./valences.ts";

export interface Formula {
  readonly elements: ElementCounts;
  /** g/mol of the formula as written. */
  readonly molarMass: number;
  /** Whether the usual charges of the elements can add to nothing: false hints at a slip. */
  readonly balanced: boolean;
}

export type FormulaReading =
  | { readonly ok: true; readonly formula: Formula }
  | { readonly ok: false; readonly problem: FormulaProblem };

const longestFormula = 200;

/**
 * Reads a formula. Groups are joined by `·` or `*`; a `.` is always a decimal point, and a
 * formula that balances only if a `.` joins groups is a problem that says so.
 *
 * @param written what the potter wrote; Unicode subscripts are read as digits
 * @returns the elements it holds, or what is wrong and where; never throws
 */
export function parseFormula(written: string): FormulaReading {
  if (written.length > longestFormula) return { ok: false, problem: tooLong };
  const reading = describe(readGroups(written));
  if (reading.ok && reading.formula.balanced) return reading;
  const meant = findBalancedReading(written);
  if (meant === undefined) return reading;
  return { ok: false, problem: pointBetweenGroups(written, meant) };
}

const tooLong = formulaProblem(
  "formula-too-long",
  longestFormula,
  `This formula has more than ${longestFormula} characters`,
  "Give the material by its analysis instead.",
);

function describe(reading: GroupsReading): FormulaReading {
  if (!reading.ok) return reading;
  const { elements } = reading;
  const entries = Object.entries(elements) as [Element, number][];
  const molarMass = entries.reduce((sum, [el, n]) => sum + n * atomicWeights[el].weight, 0);
  return { ok: true, formula: { elements, molarMass, balanced: chargesBalance(elements) } };
}

function pointBetweenGroups(written: string, meant: string): FormulaProblem {
  const at = [...written].findIndex((character, i) => character !== meant[i]);
  return formulaProblem(
    "point-between-groups",
    at,
    "A “.” in a formula is a decimal point, and read so this one does not hold together",
    `Write · or * between groups: ${meant}.`,
  );
}

/** Two to this power readings are tried at most. */
const mostPointsTried = 8;

/** The formula with some of its points turned into `·`, the fewest first, if that balances. */
function findBalancedReading(written: string): string | undefined {
  const points = [...written.matchAll(/\./gu)].map((match) => match.index);
  if (points.length > mostPointsTried) return undefined;
  const choices = Array.from({ length: 2 ** points.length - 1 }, (_, i) => i + 1);
  choices.sort((a, b) => countBits(a) - countBits(b));
  return choices
    .map((choice) => withDots(written, new Set(points.filter((_, i) => (choice >> i) & 1))))
    .find((candidate) => {
      const reading = describe(readGroups(candidate));
      return reading.ok && reading.formula.balanced;
    });
}

function countBits(n: number): number {
  return n === 0 ? 0 : (n & 1) + countBits(n >> 1);
}

function withDots(written: string, places: ReadonlySet<number>): string {
  return Array.from({ length: written.length }, (_, i) =>
    places.has(i) ? "·" : written.charAt(i),
  ).join("");
}
