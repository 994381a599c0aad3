/** What the catalogue holds for a glaze mixer: fit, overlap, blends, the map, what to weigh out. */
import type { Caution } from "../../chemistry/cautions/cautions.ts";
import type { DryDensity } from "../../chemistry/dry-density.ts";
import type { Fit } from "../../chemistry/fit.ts";
import type { Melt, MeltFormula, MeltPoint } from "../../chemistry/overlap.ts";
import type { RatioRegion } from "../../chemistry/stull.ts";
import type { Surface } from "../../terms/choices.ts";
import type { Cone } from "../../terms/cones.ts";
import type { Link } from "../link.ts";

export type { Caution, DryDensity, Fit, Melt, MeltFormula, MeltPoint, RatioRegion };

/** A line of a weighing sheet. */
export interface WeighedPart {
  readonly id: string;
  readonly name: string;
  /** The material's page; null where nothing is known of it. */
  readonly url: string | null;
  /** Parts by weight; additions are spelt out in the same parts. */
  readonly parts: number;
  readonly isAddition: boolean;
  /** What a kilogram costs, in the studio's currency; null where it is not known. */
  readonly price: number | null;
}

/** The faults that tell of fit. */
export type FitFault = "crazing" | "dunting" | "shivering";

/** A tile on which a fault was seen, and the day of the later look that first showed it. */
export interface SeenFault {
  readonly tile: string;
  /** Null where the first result told it. */
  readonly later: string | null;
}

/** What the archive's tiles of one glaze alone on one clay did. */
export interface SeenTogether {
  /** The tiles with a result, by their codes. */
  readonly tiles: readonly string[];
  /** The faults of fit that some of them show, in alphabetical order. */
  readonly faults: readonly { readonly fault: FitFault; readonly tiles: readonly SeenFault[] }[];
  /** Tiles on which somebody looked for faults and saw none of these. */
  readonly without: readonly string[];
}

/** A glaze on a clay whose expansion is known. */
export interface ClayFit {
  readonly clay: Link;
  /** Of the clay, in 10⁻⁶ per kelvin. */
  readonly mean: number;
  readonly between: readonly [from: number, to: number] | null;
  /** By each set of factors that covers the glaze, the one nearest to measured glasses first. */
  readonly fits: readonly Fit[];
  readonly seen: SeenTogether;
}

/** All that follows from what a glaze is mixed of. */
export interface GlazeMixing {
  /** Cautions for the recipe, the loud ones first; none for a bought glaze. */
  readonly hazards: readonly Caution[];
  /** What it is weighed out of, down to raw materials; null where that is not known. */
  readonly batch: readonly WeighedPart[] | null;
  /** Of the dry batch, its unknown materials by their names; null where there is no batch. */
  readonly dryDensity: DryDensity | null;
  /** Clays of known expansion: those with tiles of this glaze first. */
  readonly fits: readonly ClayFit[];
  /** Clays of known expansion that no cone of this glaze suits, so that nobody compares them. */
  readonly apart: readonly Link[];
  /** The pages of the blends that it is part of. */
  readonly blends: readonly Link[];
}

/** The melt of so many coats over so many. */
export interface MeltedCoats {
  readonly over: number;
  readonly under: number;
  readonly tiles: readonly string[];
  readonly melt: Melt;
  /**
   * The melt if a coat of the upper glaze weighed a third of one of the lower, and if it weighed
   * three times as much; null where both weights are known.
   */
  readonly range: readonly [MeltFormula, MeltFormula] | null;
}

/** What two mixed glazes become where one lies over the other. */
export interface Overlap {
  /** From the lower glaze alone to the upper alone, at every tenth. */
  readonly path: readonly MeltPoint[];
  /** Every number of coats that some tile has. */
  readonly coats: readonly MeltedCoats[];
  /** Tiles whose coats nobody wrote down. */
  readonly unknown: readonly string[];
}

/** Blends of the same two or three glazes, with the tiles that show them. */
export interface CatalogueBlend extends Link {
  readonly kind: "line" | "triaxial";
  readonly by: "volume" | "weight";
  readonly ends: readonly Link[];
  /** The ends and all blends of them; `shares` of the ends, in their order, adding to 1. */
  readonly members: readonly { readonly glaze: Link; readonly shares: readonly number[] }[];
  readonly layouts: readonly BlendLayout[];
}

/** The tiles of one set that show a blend. */
export interface BlendLayout {
  /** Null for tiles that are in no set. */
  readonly set: Link | null;
  /** A tile for each member, null where the set has none. */
  readonly tiles: readonly (string | null)[];
}

/** Mixed glazes fired alone to one cone, by the silica and alumina of their unity formulas. */
export interface CatalogueMap {
  readonly cone: Cone;
  readonly url: string;
  /** In the order of their names. */
  readonly marks: readonly MapMark[];
}

export interface MapMark {
  readonly glaze: Link;
  /** Moles to one of flux. */
  readonly silica: number;
  readonly alumina: number;
  /** Its tiles alone at this cone. */
  readonly tiles: readonly string[];
  /** The one whose photograph stands on the map. */
  readonly shown: string | null;
  /** The surfaces that came out. */
  readonly surface: readonly Surface[];
  /** What the old ratio lines would have of it; null without alumina. */
  readonly region: RatioRegion | null;
  /** Whether a surface that came out is another than the lines would have. */
  readonly disagrees: boolean;
}
