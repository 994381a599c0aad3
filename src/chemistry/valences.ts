/** Whether a formula's charges can add to nothing. */
import type { Element } from "../terms/atomic-weights.ts";
import type { ElementCounts } from "./formula-groups.ts";

/**
 * The least and the greatest charge that an element usually has in minerals and in the chemicals
 * of the trade. Common chemistry, from memory: it serves to find slips, never to compute.
 */
const usualCharges: Readonly<Record<Element, readonly [least: number, greatest: number]>> = {
  H: [1, 1],
  Li: [1, 1],
  Be: [2, 2],
  B: [3, 3],
  C: [-4, 4],
  N: [-3, 5],
  O: [-2, -2],
  F: [-1, -1],
  Na: [1, 1],
  Mg: [2, 2],
  Al: [3, 3],
  Si: [4, 4],
  P: [5, 5],
  S: [-2, 6],
  Cl: [-1, -1],
  K: [1, 1],
  Ca: [2, 2],
  Ti: [4, 4],
  V: [3, 5],
  Cr: [3, 6],
  Mn: [2, 7],
  Fe: [2, 3],
  Co: [2, 3],
  Ni: [2, 3],
  Cu: [1, 2],
  Zn: [2, 2],
  As: [3, 5],
  Se: [-2, 6],
  Rb: [1, 1],
  Sr: [2, 2],
  Y: [3, 3],
  Zr: [4, 4],
  Nb: [5, 5],
  Mo: [4, 6],
  Ag: [1, 1],
  Cd: [2, 2],
  In: [3, 3],
  Sn: [2, 4],
  Sb: [3, 5],
  Cs: [1, 1],
  Ba: [2, 2],
  La: [3, 3],
  Ce: [3, 4],
  Pr: [3, 4],
  Nd: [3, 3],
  Sm: [3, 3],
  Ho: [3, 3],
  Er: [3, 3],
  Hf: [4, 4],
  W: [4, 6],
  Au: [1, 3],
  Pb: [2, 4],
  Bi: [3, 5],
  U: [4, 6],
};

/** Formulas of natural minerals are rounded to two decimals or so. */
const tolerance = 0.05;

/**
 * Whether some usual charges of the elements add to nothing, as they do in every whole formula.
 * An element by itself is a metal or the like, and balances.
 */
export function chargesBalance(elements: ElementCounts): boolean {
  const entries = Object.entries(elements) as [Element, number][];
  if (entries.length === 1) return true;
  const least = entries.reduce((sum, [el, n]) => sum + n * usualCharges[el][0], 0);
  const greatest = entries.reduce((sum, [el, n]) => sum + n * usualCharges[el][1], 0);
  return least <= tolerance && greatest >= -tolerance;
}
