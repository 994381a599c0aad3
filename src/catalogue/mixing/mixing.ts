/** What follows from what a glaze is mixed of: put together for its page. */
import type { Caution } from "../../chemistry/cautions/cautions.ts";
import type { DryDensity } from "../../chemistry/dry-density.ts";
import type { Archive } from "../../records/archive.ts";
import { idKey } from "../../terms/ids.ts";
import { addTo } from "../../terms/index-by.ts";
import type { CatalogueClay } from "../clays.ts";
import type { Findings } from "../findings.ts";
import type { Link } from "../link.ts";
import type { CatalogueTile } from "../tiles.ts";
import type { FindBatch, WeighedPart } from "./batches.ts";
import type { CatalogueBlend } from "./blends.ts";
import { type ClayFit, findFits } from "./fits.ts";

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

/** What is already known of the archive. */
export interface MixingContext {
  /** The cautions of every glaze, by `idKey`. */
  readonly hazards: ReadonlyMap<string, readonly Caution[]>;
  readonly findBatch: FindBatch;
  readonly clays: readonly CatalogueClay[];
  readonly blends: readonly CatalogueBlend[];
}

/** Gives all of it for the glaze of an id, with the tiles on which it is alone. */
export type FindMixing = (glaze: string, alone: readonly CatalogueTile[]) => GlazeMixing;

export function mixingFinder(
  archive: Archive,
  findings: Findings,
  { hazards, findBatch, clays, blends }: MixingContext,
): FindMixing {
  const blendsOf = blendsByGlaze(blends);
  return (glaze, alone) => {
    const key = idKey(glaze);
    const record = archive.glazes.get(key)?.record;
    const found = findings.chemistry.get(key);
    const cones = record?.cones ?? null;
    // What never melts to a glass, as a slip, has no expansion that factors could tell.
    const expansion = record?.kind === "glaze" && found?.ok ? found.chemistry.expansion : [];
    return {
      hazards: hazards.get(key) ?? [],
      ...findBatch(glaze),
      ...findFits({ cones, expansion, alone }, clays),
      blends: blendsOf.get(key) ?? [],
    };
  };
}

function blendsByGlaze(blends: readonly CatalogueBlend[]): ReadonlyMap<string, readonly Link[]> {
  const byGlaze = new Map<string, Link[]>();
  for (const { id, name, url, members } of blends) {
    for (const { glaze } of members) {
      const key = idKey(glaze.id);
      addTo(byGlaze, key, { id, name, url });
    }
  }
  return byGlaze;
}
