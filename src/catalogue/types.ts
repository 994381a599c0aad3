/**
 * The catalogue: everything that is published, linked, and frozen. It knows nothing of files,
 * pages' markup or privacy: what may not be shown was left out before it was made. Addresses
 * (`url`) are relative to the root of the site.
 */

import type { GlazeChemistry } from "../chemistry/glazes.ts";
import type { MeasuredColour } from "../colour/measure.ts";
import type { MakeUp } from "../likeness/make-up.ts";
import type { PictureRole } from "../records/archive.ts";
import type { CoatCount } from "../records/coat-stack.ts";
import type { BlendPart, GlazeRecord, Ingredient } from "../records/glaze.ts";
import type { LeachTest } from "../records/leach-test.ts";
import type { LaterLook, Result } from "../records/tile.ts";
import type {
  Again,
  Atmosphere,
  Effect,
  Fate,
  Fault,
  HeatSource,
  KindOfGlaze,
  KindOfSet,
  LabelClaim,
  Movement,
  Opacity,
  Shape,
  Stage,
  Surface,
  Tone,
} from "../terms/choices.ts";
import type { Cone, ConeRange } from "../terms/cones.ts";
import type { ColourPlate, GlazeColours } from "./colours/colour-types.ts";
import type {
  CatalogueControl,
  CatalogueFiring,
  CatalogueKiln,
  CatalogueStep,
} from "./kilns/firing-types.ts";
import type { Link } from "./link.ts";
import type { LoadFume, Minding } from "./minding.ts";
import type { Company } from "./mixing/company-types.ts";
import type { CarriedLine, CatalogueMaterial } from "./mixing/material-types.ts";
import type { CatalogueBlend, CatalogueMap, GlazeMixing, Overlap } from "./mixing/mixing-types.ts";

export type * from "./colours/colour-types.ts";
export type * from "./kilns/firing-types.ts";
export type * from "./mixing/company-types.ts";
export type * from "./mixing/material-types.ts";
export type * from "./mixing/mixing-types.ts";
export type { Link, LoadFume, MeasuredColour, Minding };

/** A maker's name or initials, and the page of those who let their name be shown. */
export interface MakerName {
  readonly name: string;
  readonly url: string | null;
}

/** A picture as published: the sizes that were made of it, smallest first. */
export interface Picture {
  readonly role: PictureRole;
  readonly alt: string;
  /** Of the largest size, in pixels. */
  readonly width: number;
  readonly height: number;
  /** The picture's mean colour as `#rrggbb`, shown until it has loaded. */
  readonly placeholder: string;
  readonly files: readonly PictureFile[];
}

export interface PictureFile {
  readonly url: string;
  readonly format: "webp" | "jpeg";
  readonly width: number;
  readonly height: number;
}

/** A practice note or a caution, as it stands on a page. */
export interface Note {
  readonly code: string;
  readonly severity: "error" | "warning";
  readonly message: string;
  readonly hint: string;
}

/** One glaze directly over another on a tile. */
export interface TilePair {
  readonly over: Link;
  readonly under: Link;
  readonly pair: string;
}

export interface CatalogueTile {
  readonly id: string;
  readonly url: string;
  readonly set: Link | null;
  /** The maker as `shown` allows; never the key. */
  readonly maker: MakerName | null;
  readonly formed: string | null;
  readonly glazed: string | null;
  readonly stage: Stage;
  readonly fate: Fate | null;
  readonly clay: Link | null;
  readonly clayBatch: string | null;
  readonly texture: string;
  readonly shape: Shape;
  readonly angle: number | null;
  /** What was done, the bottom first, with the firings in their places. */
  readonly steps: readonly CatalogueStep[];
  /** All that was done to it, facet by facet: who is like whom is asked of this alone. */
  readonly makeUp: MakeUp;
  /** The glazes of its steps by their ids: what a step's id leads to. */
  readonly glazes: Readonly<Record<string, Link>>;
  /** The glaze that lies on top, where there is one. */
  readonly top: Link | null;
  readonly pairs: readonly TilePair[];
  readonly coatCounts: readonly CoatCount[];
  /** Of the hottest firing that is no bisque. */
  readonly cone: Cone | null;
  readonly atmosphere: Atmosphere | null;
  readonly heatedBy: HeatSource | null;
  readonly results: readonly Result[];
  readonly later: readonly LaterLook[];
  /** What a laboratory found; it lifts no caution. */
  readonly leachTests: readonly LeachTest[];
  /** What the results say, taken together. */
  readonly surface: readonly Surface[];
  readonly effects: readonly Effect[];
  readonly faults: readonly Fault[];
  readonly again: Again | null;
  readonly notes: string;
  readonly formerly: readonly string[];
  /** The photograph of the result first, if there is one. */
  readonly pictures: readonly Picture[];
  readonly colour: MeasuredColour | null;
  /** What to mind with each of its glazes, in short. */
  readonly minding: readonly Minding[];
  /** Loud cautions of its glazes in full, and practice notes. */
  readonly cautions: readonly Note[];
}

/** What somebody wrote of a glaze and everyone may read. */
export interface GlazeFacts {
  readonly kind: KindOfGlaze;
  readonly cones: ConeRange | null;
  readonly surface: Surface | null;
  readonly cover: Opacity | null;
  readonly moves: Movement | null;
  readonly tone: Tone | null;
  /** What its label claims, for this glaze alone. */
  readonly label: readonly LabelClaim[];
  readonly stocked: boolean;
  readonly bought: GlazeRecord["bought"] | null;
  readonly ingredients: readonly Ingredient[] | null;
  readonly additions: readonly Ingredient[];
  readonly blend: readonly BlendPart[] | null;
  /** How a blend was measured. */
  readonly by: "volume" | "weight";
  readonly leachTests: readonly LeachTest[];
}

export interface CatalogueGlaze extends Link, GlazeFacts, GlazeMixing, GlazeColours {
  readonly notes: string;
  /** Every tile it is on, by id. */
  readonly tiles: readonly string[];
  /** Every tile on which it is the only glaze. */
  readonly alone: readonly string[];
  /** Glazes it lay over, and glazes that lay over it: the pairs' pages. */
  readonly over: readonly GlazePair[];
  readonly under: readonly GlazePair[];
  /** For a mixed glaze whose materials are known. */
  readonly chemistry: GlazeChemistry | null;
  /** Why a mixed glaze has none; null for a bought one, of which nobody expects it. */
  readonly whyNoChemistry: string | null;
  /** Links of the materials or glazes that it is made of. */
  readonly made: Readonly<Record<string, Link>>;
  readonly cautions: readonly Note[];
}

/** From a glaze's page to a pair's. */
export interface GlazePair {
  readonly glaze: Link;
  readonly pair: string;
  readonly tiles: number;
}

/** One glaze over another: `url` of the pair's page, the tiles it is on, and the reverse. */
export interface CataloguePair {
  readonly url: string;
  readonly over: Link;
  readonly under: Link;
  readonly tiles: readonly string[];
  /** The other way round, where some tile has it. */
  readonly reverse: string | null;
  /** What the two become together, where both are glazes mixed of known materials. */
  readonly overlap: Overlap | null;
}

export interface CatalogueClay extends Link {
  readonly cones: ConeRange | null;
  readonly colour: string | null;
  readonly expansion: {
    readonly mean: number;
    readonly between: readonly [number, number] | null;
  } | null;
  readonly absorption: number | null;
  readonly reclaim: boolean;
  readonly notes: string;
  readonly tiles: readonly string[];
}

export interface CatalogueSet extends Link {
  readonly kind: KindOfSet | null;
  readonly teacher: MakerName | null;
  readonly begins: string | null;
  readonly ends: string | null;
  readonly notes: string;
  readonly tiles: readonly string[];
  readonly control: string | null;
}

/** A maker who lets the whole name be shown. */
export interface CatalogueMaker {
  readonly name: string;
  readonly url: string;
  readonly tiles: readonly string[];
}

/** All that was fired at one cone. */
export interface CatalogueCone {
  readonly cone: Cone;
  readonly url: string;
  readonly tiles: readonly string[];
  readonly surfaces: readonly {
    readonly surface: Surface;
    readonly url: string;
    readonly tiles: readonly string[];
  }[];
}

/** How far colour differences can be trusted here. */
export interface ColourTrust {
  /** In CIEDE2000: in 19 cases of 20 two tiles made alike were measured no further apart. */
  readonly difference: number;
  /** How many tiles it rests on, and how many different things they are repeats of. */
  readonly tiles: number;
  readonly kinds: number;
}

export interface CatalogueStudio {
  readonly name: string;
  readonly address: string | null;
  readonly repository: string | null;
  readonly licence: string | null;
  readonly temperature: "celsius" | "fahrenheit";
  readonly handingIn: string | null;
  /** True for a site that is reached only by its link: no search engine may list it. */
  readonly unlisted: boolean;
}

export interface Catalogue {
  readonly studio: CatalogueStudio;
  /** In the order of their codes. */
  readonly tiles: readonly CatalogueTile[];
  readonly glazes: readonly CatalogueGlaze[];
  readonly pairs: readonly CataloguePair[];
  readonly clays: readonly CatalogueClay[];
  /** The newest first. */
  readonly firings: readonly CatalogueFiring[];
  /** In the order of their names. */
  readonly kilns: readonly CatalogueKiln[];
  readonly controls: readonly CatalogueControl[];
  readonly sets: readonly CatalogueSet[];
  readonly makers: readonly CatalogueMaker[];
  readonly materials: readonly CatalogueMaterial[];
  /** All that need no record, in their own order. */
  readonly carriedMaterials: readonly CarriedLine[];
  /** From cool to hot. */
  readonly cones: readonly CatalogueCone[];
  /** Line blends and triaxial blends, in the order of their names. */
  readonly blends: readonly CatalogueBlend[];
  /** From cool to hot. */
  readonly maps: readonly CatalogueMap[];
  /** From cool to hot. */
  readonly companies: readonly Company[];
  readonly plate: ColourPlate;
  /**
   * Codes of tiles with a result that were made and fired alike, two at least in a group. What
   * nobody wrote down of any of them may differ.
   */
  readonly replicates: readonly (readonly string[])[];
  /** Null where no tile was made twice. */
  readonly trust: ColourTrust | null;
  /** Tiles by `idKey`. */
  readonly tileById: ReadonlyMap<string, CatalogueTile>;
  readonly glazeById: ReadonlyMap<string, CatalogueGlaze>;
  /** Old codes, each leading on to the tile that has them now. */
  readonly moved: readonly { readonly from: string; readonly url: string; readonly to: Link }[];
}
