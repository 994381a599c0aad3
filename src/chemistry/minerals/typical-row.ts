import type { CarriedMaterial } from "./mineral.ts";

/** A typical material as its file states it: what is left out is empty. */
export type TypicalRow = Omit<
  CarriedMaterial,
  "analysis" | "basis" | "formula" | "mineral" | "tradeNames"
> &
  Partial<Pick<CarriedMaterial, "analysis" | "formula" | "mineral">>;

/** A source whose certificate gives an analysis that many laboratories agreed on. */
export const reference = (name: string) =>
  `certificate of a reference material for laboratories: ${name}`;
