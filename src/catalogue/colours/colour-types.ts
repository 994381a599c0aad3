/** The part of the catalogue that tells of colours: of a glaze alone, and of all tiles together. */
import type { MeasuredColour } from "../../colour/measure.ts";
import type { ColourName } from "../../colour/name.ts";
import type { Cooling } from "../../firing/cooling.ts";
import type { Aspect, MakeUp } from "../../likeness/make-up.ts";
import type { Area, Atmosphere, Cover, Fault, HeatSource, Way } from "../../terms/choices.ts";
import type { Cone } from "../../terms/cones.ts";
import type { Link } from "../link.ts";

export type { ColourName };

/** What of the fire lands on a glaze or goes into it, beside heat and air. */
export type FireOnGlaze = Extract<HeatSource, "pit" | "saggar" | "salt" | "soda" | "wood"> | "raku";

/**
 * How a glaze lies on its tile: "even" all over in the same number of coats, "uneven" all over and
 * thicker in places, "in part" where some of the clay may show.
 */
export type Lie = "even" | "uneven" | "in part";

/** The measured colour of a tile that has one glaze alone, and what it depends on. */
export interface MeasuredAlone {
  readonly tile: Link;
  readonly colour: MeasuredColour;
  readonly clay: Link | null;
  readonly cone: Cone | null;
  readonly atmosphere: Atmosphere | null;
  readonly fire: FireOnGlaze | null;
  /** Null where nobody counted them, and where the glaze does not lie evenly. */
  readonly coats: number | null;
  readonly lie: Lie;
  readonly cover: Cover | null;
  readonly where: readonly Area[];
  /** The ways it was put on, in alphabetical order. */
  readonly ways: readonly Way[];
  readonly texture: string;
  readonly faults: readonly Fault[];
  /** Whether the tile has been in more than one glaze firing. */
  readonly firedAgain: boolean;
  readonly cooling: Cooling;
  readonly makeUp: MakeUp;
}

/** A glaze alone on one clay in one kind of fire. */
export interface GlazeOnClay {
  readonly clay: Link | null;
  readonly atmosphere: Atmosphere | null;
  readonly fire: FireOnGlaze | null;
  /** By cone from cool to hot, then from few coats to many; what is not known stands last. */
  readonly measured: readonly MeasuredAlone[];
}

/** What a glaze alone measured, on every clay. */
export interface GlazeColours {
  /** By clay, in the order of their names, and by fire. */
  readonly onClays: readonly GlazeOnClay[];
  /** What those measurements say when one thing is changed: for each clay its widest difference. */
  readonly colourFindings: readonly ColourFinding[];
  /** The one tile that speaks for the glaze where it is one of many; null where none is measured. */
  readonly shownAs: MeasuredAlone | null;
}

/** Two measurements of a glaze alone that differ in one thing, or in nothing that is recorded here. */
export interface ColourFinding {
  readonly along: "atmosphere" | "clay" | "coats" | "cone" | "cooling" | "nothing";
  readonly from: MeasuredAlone;
  readonly to: MeasuredAlone;
  /** CIEDE2000. */
  readonly difference: number;
  /** How many such pairs there are, of which this is the widest that means something, if any does. */
  readonly pairs: number;
  /**
   * "apart" where the difference means something; "alike" where it is no more than tiles made alike
   * differ here; "scattered" where tiles that should be the same differ as much; "unjudged" where
   * nobody knows how much tiles made alike differ.
   */
  readonly verdict: "alike" | "apart" | "scattered" | "unjudged";
  /** What changes most from the one to the other. */
  readonly change: ColourChange;
  /** What nobody wrote down of either, so that it may have made the difference. */
  readonly unknown: readonly Aspect[];
}

export type ColourChange = "darker" | "greyer" | "hue" | "lighter" | "stronger";

/** All measured tiles by hue and lightness. */
export interface ColourPlate {
  /** The hues in their order, then what has none; only those that some tile has. */
  readonly rows: readonly PlateRow[];
  /** Names that no tile has. */
  readonly absent: readonly ColourName[];
  readonly measured: number;
  readonly unmeasured: number;
}

export interface PlateRow {
  /** One hue, or white, grey and black together, each with its number of tiles. */
  readonly names: readonly { readonly name: ColourName; readonly tiles: number }[];
  /** One for each band of lightness, the lightest first. */
  readonly cells: readonly PlateCell[];
}

export interface PlateCell {
  /** How many tiles stand in it. */
  readonly tiles: number;
  /** The codes of those that are shown, by hue: all, or as many as there is room for. */
  readonly shown: readonly string[];
  /** The mean of all its colours, as `#rrggbb`; null where it is empty. */
  readonly centre: string | null;
}
