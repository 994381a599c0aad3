/** What follows from what a glaze is mixed of: put together for its page. */
import type { Caution } from "../../chemistry/cautions/cautions.ts";
import type { Archive } from "../../records/archive.ts";
import { idKey } from "../../terms/ids.ts";
import { addTo } from "../../terms/index-by.ts";
import type { Findings } from "../findings.ts";
import type { CatalogueClay, CatalogueTile, Link } from "../types.ts";
import { batchFinder } from "./batches.ts";
import { findFits } from "./fits.ts";
import type { FindMaterialLink } from "./materials.ts";
import type { CatalogueBlend, GlazeMixing } from "./mixing-types.ts";

/** What is already known of the archive. */
export interface MixingContext {
  /** The cautions of every glaze, by `idKey`. */
  readonly hazards: ReadonlyMap<string, readonly Caution[]>;
  readonly clays: readonly CatalogueClay[];
  readonly blends: readonly CatalogueBlend[];
  readonly findLink: FindMaterialLink;
}

/** Gives all of it for the glaze of an id, with the tiles on which it is alone. */
export type FindMixing = (glaze: string, alone: readonly CatalogueTile[]) => GlazeMixing;

export function mixingFinder(
  archive: Archive,
  findings: Findings,
  { hazards, clays, blends, findLink }: MixingContext,
): FindMixing {
  const findBatch = batchFinder(archive, findLink);
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
