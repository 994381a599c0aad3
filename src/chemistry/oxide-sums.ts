import { type Oxide, type OxideAmounts, oxides } from "../terms/oxides.ts";

/** The sum of all oxides, in the unit they are given in. */
export function sumOfOxides(amounts: OxideAmounts): number {
  return sumOf(amounts, oxides);
}

/** The sum of some of the oxides. */
export function sumOf(amounts: OxideAmounts, some: readonly Oxide[]): number {
  let sum = 0;
  for (const oxide of some) sum += amounts[oxide] ?? 0;
  return sum;
}
