/** One glaze over another. */

import { type Archive, findById } from "../records/archive.ts";
import { compareIds, idKey } from "../terms/ids.ts";
import { pairUrl } from "./addresses.ts";
import type { Findings } from "./findings.ts";
import type { Link } from "./link.ts";
import { findOverlap, type LappingGlaze, type Overlap } from "./mixing/overlaps.ts";
import type { CatalogueTile } from "./tiles.ts";

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

interface FoundPair extends Omit<CataloguePair, "overlap" | "tiles"> {
  readonly tiles: CatalogueTile[];
}

/** Every pair of glazes that some tile has, in the order of their names. */
export function listPairs(
  archive: Archive,
  chemistry: Findings["chemistry"],
  tiles: readonly CatalogueTile[],
): readonly CataloguePair[] {
  const pairs = new Map<string, FoundPair>();
  for (const tile of tiles) {
    for (const { over, under, pair } of tile.pairs) {
      const known = pairs.get(pair);
      if (known) known.tiles.push(tile);
      else pairs.set(pair, { url: pair, over, under, tiles: [tile], reverse: null });
    }
  }
  return [...pairs.values()]
    .map((pair) => {
      const reverse = pairUrl(pair.under.id, pair.over.id);
      const over = findLapping(archive, chemistry, pair.over.id);
      const under = findLapping(archive, chemistry, pair.under.id);
      return {
        ...pair,
        tiles: pair.tiles.map((tile) => tile.id),
        reverse: pairs.has(reverse) ? reverse : null,
        overlap: over && under ? findOverlap(over, under, pair.tiles) : null,
      };
    })
    .sort((a, b) => compareIds(a.over.name, b.over.name) || compareIds(a.under.name, b.under.name));
}

/** A glaze that melts and whose materials are known; slips and washes make no melt with it. */
function findLapping(
  archive: Archive,
  chemistry: Findings["chemistry"],
  id: string,
): LappingGlaze | undefined {
  const record = findById(archive.glazes, id)?.record;
  const found = chemistry.get(idKey(id));
  if (record?.kind !== "glaze" || !found?.ok) return undefined;
  return { id, chemistry: found.chemistry, weightPerCoat: record.weightPerCoat };
}
