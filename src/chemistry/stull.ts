/**
 * The old ratio lines near Stull's field of porcelain glazes: guidance for one kind of glaze at
 * one cone, drawn over a map to be looked at, and no rule.
 */
import type { Tag } from "../terms/atomic-weights.ts";
import type { OxideAmounts } from "../terms/oxides.ts";

export type RatioRegion = "bright" | "matte" | "semi-matte";

/** A straight line through the origin: so many moles of silica to one of alumina. */
export interface RatioLine {
  readonly silicaToAlumina: number;
  readonly between: readonly [RatioRegion, RatioRegion];
}

/**
 * Later texts sum Stull's curves up as straight lines at about 5 and about 6; some have 5 to 7.
 */
export const ratioLines: readonly RatioLine[] = [
  { silicaToAlumina: 5, between: ["matte", "semi-matte"] },
  { silicaToAlumina: 6, between: ["semi-matte", "bright"] },
];

/** What the lines were made for, and where they come from. */
export const ratioField: {
  readonly fluxes: OxideAmounts;
  readonly cone: string;
  readonly source: string;
  readonly tag: Tag;
  /** Others who found that the boundaries move. */
  readonly since: string;
} = {
  fluxes: { K2O: 0.3, CaO: 0.7 },
  cone: "about cone 11 of the scale of 1912",
  source:
    "R. T. Stull, Influences of variable silica and alumina on porcelain glazes of constant RO, Trans. Am. Ceram. Soc. 14 (1912) 62-70, as summed up in later texts",
  tag: "from memory",
  since:
    "H. H. Sortwell, High fire porcelain glazes, Technologic Papers of the Bureau of Standards no. 196 (1921)",
};

/** Where the lines put a ratio of silica to alumina, in moles. */
export function ratioRegion(silicaToAlumina: number): RatioRegion {
  const [first, second] = ratioLines;
  if (first && silicaToAlumina < first.silicaToAlumina) return "matte";
  return second && silicaToAlumina < second.silicaToAlumina ? "semi-matte" : "bright";
}
