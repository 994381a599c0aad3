/** The part of the catalogue that tells of kilns: what was meant, what happened, what shows it. */

import type { MeasuredColour } from "../../colour/measure.ts";
import type { Comparison } from "../../firing/comparisons.ts";
import type { Curve } from "../../firing/curve.ts";
import type { Heat } from "../../firing/heat.ts";
import type { EquivalentCone } from "../../firing/heat-work.ts";
import type { LikelyReading } from "../../firing/readings.ts";
import type { Aspect } from "../../likeness/make-up.ts";
import type { FiredStep, TileStep } from "../../records/archive.ts";
import type { Segment, Witness } from "../../records/firing.ts";
import type {
  Again,
  Atmosphere,
  Effect,
  Fault,
  HeatSource,
  KindOfFiring,
  Surface,
} from "../../terms/choices.ts";
import type { Cone } from "../../terms/cones.ts";
import type { Link } from "../link.ts";

export type { Curve, CurvePoint } from "../../firing/curve.ts";
export type { LikelyReading } from "../../firing/readings.ts";

/** A step of a tile: what was put on or taken off as it was written, a firing with what it was. */
export type CatalogueStep = Exclude<TileStep, FiredStep> | TileFiring;

/** One firing as one tile had it. */
export interface TileFiring extends FiredStep {
  /** The firing's own page; null where only its kind is known. */
  readonly page: Link | null;
  readonly on: string | null;
  /** The cone at the tile's shelf: the witness where one was read there, else the aim. */
  readonly cone: Cone | null;
  /** The cone that was aimed at. */
  readonly aim: Cone | null;
  readonly atmosphere: Atmosphere | null;
  readonly heatedBy: HeatSource | null;
  readonly kiln: string | null;
  /** What the witness cones on its own shelf showed, in words; null where none were read there. */
  readonly witness: string | null;
  /** What the log works out at or, without one, the programme; null where there is neither. */
  readonly reached: Reached | null;
  readonly agreement: Agreement;
  /** Of the same log or programme: no more than some sixty points. */
  readonly curve: Curve | null;
}

/** The heat work of a log or a programme in words: `just over cone 6`. */
export interface Reached {
  readonly from: HeatFrom;
  readonly words: string;
}

export type HeatFrom = "log" | "programme";

/** "unknown" where there are no two accounts to compare. */
export type Agreement = "agrees" | "differs" | "unknown";

/** What somebody wrote of a firing and everyone may read: its load list names tiles that are not for everyone. */
export interface FiringFacts {
  readonly on: string | null;
  readonly kind: KindOfFiring;
  /** The kiln as it was written here. */
  readonly kilnName: string | null;
  readonly heatedBy: HeatSource | null;
  readonly atmosphere: Atmosphere | null;
  /** The cone that was aimed at. */
  readonly cone: Cone | null;
  /** What the witness cones showed, by shelf. */
  readonly witnessed: Readonly<Record<string, Witness>>;
  readonly unit: "C" | "F" | null;
  readonly schedule: readonly Segment[] | null;
}

export interface CatalogueFiring extends FiringFacts {
  readonly id: string;
  readonly url: string;
  readonly notes: string;
  readonly kiln: Link | null;
  /** The cone that was reached, by shelf; null where the bends tell of none. */
  readonly witness: Readonly<Record<string, Cone | null>>;
  /** Its tiles by shelf, top first; `null` where a tile does not say. */
  readonly shelves: readonly { readonly shelf: string | null; readonly tiles: readonly string[] }[];
  /** From the log or, without one that can be used, from the programme; null without either. */
  readonly heat: CatalogueHeat | null;
  /** Null without a schedule. */
  readonly programme: Programme | null;
  /** Null without a log that can be used. */
  readonly log: FiringLogRead | null;
  /** What the cones stand for beside the curves. */
  readonly coneScale: ConeScale;
  readonly story: FiringStory;
}

export interface CatalogueHeat extends Heat {
  readonly from: HeatFrom;
  /** The equivalent cone in words, or its range where a hold leaves it open. */
  readonly reached: string;
  /** The ends of its range as cones; `high` is null where that end is open. */
  readonly rangeInCones: { readonly low: EquivalentCone; readonly high: EquivalentCone | null };
}

export interface Programme {
  readonly curve: Curve;
  /** A sentence a segment, without full stops, in the studio's own unit. */
  readonly sentences: readonly string[];
  /** The same in the other unit. */
  readonly inOtherUnit: readonly string[];
  /** What it leaves open, a sentence each. */
  readonly open: readonly string[];
}

export interface FiringLogRead {
  readonly curve: Curve;
  /** What was taken for what, and what was made of its faults: a sentence each. */
  readonly taken: readonly string[];
}

/** The temperatures at which cones are down, at one rate of climbing. */
export interface ConeScale {
  /** °C an hour over the last 100 °C. */
  readonly ratePerHour: number;
  /** Coolest first, °C. */
  readonly steps: readonly { readonly cone: Cone; readonly celsius: number }[];
}

export interface FiringStory {
  readonly agreement: Agreement;
  /** In the order in which they are told: aim, programme, log, then the shelves from the top. */
  readonly accounts: readonly FiringAccount[];
  /** What may be behind a difference, the likeliest first. */
  readonly readings: readonly LikelyReading[];
  /** What a hold leaves open, in words; null where nothing is, or where accounts differ. */
  readonly leftOpen: string | null;
  /** Every two accounts that do not agree, the furthest apart first; empty where the story holds. */
  readonly differences: readonly AccountsApart[];
  /** Shelves whose witness cones contradict themselves, a sentence each. */
  readonly contradictions: readonly string[];
}

/** Two accounts of a firing that lie more than a cone apart. */
export interface AccountsApart {
  readonly between: Comparison["between"];
  readonly words: string;
}

/** What one account says, as a stretch of the line of cones. */
export interface FiringAccount {
  readonly of: "aim" | "programme" | "log" | "shelf";
  /** The shelf's name, of a shelf. */
  readonly shelf: string | null;
  /** Places on the line of cones: 1 at 0, 01 at −1. Infinite where that end is open. */
  readonly low: number;
  readonly high: number;
  /** Of a log or a programme: the place that the model alone gives, within its range. */
  readonly modelled: number | null;
  readonly words: string;
}

/** One kiln and all that was fired in it. */
export interface CatalogueKiln extends Link {
  readonly heatedBy: readonly HeatSource[];
  /** Its firings in the order of their days; what is still to come stands last. */
  readonly firings: readonly KilnFiring[];
  /** Its shelves, top first, as far as witness cones were read on them and an aim is known. */
  readonly shelves: readonly KilnShelf[];
  /** The two shelves that differ most, over all firings in which both were read. */
  readonly tilt: KilnTilt | null;
}

/** A firing of a kiln against its aim. */
export interface KilnFiring {
  readonly firing: Link;
  readonly on: string | null;
  readonly kind: KindOfFiring;
  readonly aim: Cone | null;
  /** By shelf, top first: how many cones hotter than the aim; null where no aim is known. */
  readonly shelves: readonly {
    readonly shelf: string;
    readonly words: string;
    readonly off: Off | null;
  }[];
  /** The same of the log or, without one, the programme. */
  readonly heat: { readonly from: HeatFrom; readonly off: Off } | null;
  readonly agreement: Agreement;
}

/** From so many cones hotter to so many; infinite where that end is open. */
export interface Off {
  readonly low: number;
  readonly high: number;
}

export interface KilnShelf {
  readonly shelf: string;
  /** How many firings its witness cones were read in. */
  readonly firings: number;
  /** How many cones hotter than the aim: in the middle of all, at the least and at the most. */
  readonly median: number;
  readonly coolest: number;
  readonly hottest: number;
}

export interface KilnTilt {
  readonly hotter: string;
  readonly cooler: string;
  /** In how many firings both were read, and in how many of them the one was hotter. */
  readonly firings: number;
  readonly times: number;
  /** By how many cones at the most. */
  readonly most: number;
}

/** A control tile, whose twins stand in many loads and tell the kiln from the glaze. */
export interface CatalogueControl {
  /** The tile that sets name. */
  readonly tile: string;
  readonly sets: readonly Link[];
  /** The tile itself and its twins, a load each, in the order of the loads' days. */
  readonly twins: readonly ControlTwin[];
  /** What nobody wrote down of how they were made, so that twins may differ in it. */
  readonly unknown: readonly Aspect[];
}

/** How a control tile or its twin came out of one load. */
export interface ControlTwin {
  readonly tile: string;
  readonly firing: Link;
  readonly on: string | null;
  readonly kiln: Link | null;
  readonly shelf: string | null;
  /** At its own shelf, where a witness was read there; else the cone aimed at. */
  readonly cone: Cone | null;
  readonly atmosphere: Atmosphere | null;
  readonly surface: readonly Surface[];
  readonly effects: readonly Effect[];
  readonly faults: readonly Fault[];
  /** Millimetres that it moved. */
  readonly run: number | null;
  readonly again: Again | null;
  /** True where it was not fired again: what its photograph shows. */
  readonly pictured: boolean;
  /** Null where it was not measured, or was measured only after a later firing. */
  readonly colour: MeasuredColour | null;
  /** Colour difference from the control tile itself, ΔE00. */
  readonly difference: number | null;
  /** In what it differs from the control tile itself, a phrase each; empty where it is like it. */
  readonly unlike: readonly string[];
  /** How many cones hotter its shelf was than the control tile's; null where one is not known. */
  readonly hotter: number | null;
}
