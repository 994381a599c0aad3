/**
 * The catalogue: everything that is published, linked, and frozen. It knows nothing of files,
 * pages' markup or privacy: what may not be shown was left out before it was made. Addresses
 * (`url`) are relative to the root of the site.
 */

import type { CatalogueClay } from "./clays.ts";
import type { ColourPlate } from "./colours/colour-plate.ts";
import type { ColourTrust } from "./colours/trust.ts";
import type { CatalogueCone } from "./cones.ts";
import type { CatalogueGlaze } from "./glazes.ts";
import type { CatalogueControl } from "./kilns/control.ts";
import type { CatalogueFiring } from "./kilns/firings.ts";
import type { CatalogueKiln } from "./kilns/kilns.ts";
import type { Link } from "./link.ts";
import type { CatalogueMaker } from "./makers.ts";
import type { CatalogueBlend } from "./mixing/blends.ts";
import type { Company } from "./mixing/companies.ts";
import type { CatalogueMap } from "./mixing/maps.ts";
import type { CarriedLine, CatalogueMaterial } from "./mixing/materials.ts";
import type { StudioOwn } from "./own.ts";
import type { CataloguePair } from "./pairs.ts";
import type { ToldByGit } from "./record-facts.ts";
import type { CatalogueSet } from "./sets.ts";
import type { CatalogueStudio } from "./studio.ts";
import type { CatalogueTile } from "./tiles.ts";

export interface Catalogue extends ToldByGit {
  readonly studio: CatalogueStudio;
  readonly own: StudioOwn;
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
