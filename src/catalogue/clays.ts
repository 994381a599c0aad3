/** Clays, with the tiles that are made of them. */

import type { Archive } from "../records/archive.ts";
import { type ShadeSaid, shadeOf } from "../records/clay-shade.ts";
import type { ConeRange } from "../terms/cones.ts";
import { compareIds } from "../terms/ids.ts";
import { indexBy } from "../terms/index-by.ts";
import { clayUrl } from "./addresses.ts";
import type { Link } from "./link.ts";
import type { CatalogueTile } from "./tiles.ts";

export interface CatalogueClay extends Link {
  readonly cones: ConeRange | null;
  readonly colour: string | null;
  /** Dark, buff or white when fired; null where its record does not say. */
  readonly shade: ShadeSaid | null;
  readonly expansion: {
    readonly mean: number;
    readonly between: readonly [number, number] | null;
  } | null;
  readonly absorption: number | null;
  readonly reclaim: boolean;
  readonly notes: string;
  readonly tiles: readonly string[];
}

export function listClays(
  archive: Archive,
  tiles: readonly CatalogueTile[],
): readonly CatalogueClay[] {
  const on = indexBy(tiles, ({ clay }) => (clay ? [clay.id] : []));
  return [...archive.clays.values()]
    .map(({ id, record, notes }) => ({
      id,
      name: record.name,
      url: clayUrl(id),
      cones: record.cones ?? null,
      colour: record.colour ?? null,
      shade: shadeOf(record),
      expansion: record.expansion
        ? { mean: record.expansion.mean, between: record.expansion.between ?? null }
        : null,
      absorption: record.absorption ?? null,
      reclaim: record.reclaim ?? false,
      notes,
      tiles: (on.get(id) ?? []).map((tile) => tile.id),
    }))
    .sort((a, b) => compareIds(a.name, b.name));
}
