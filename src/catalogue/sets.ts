/** Sets of tiles: courses, experiments, commissions. */

import { type Archive, findById } from "../records/archive.ts";
import type { KindOfSet } from "../terms/choices.ts";
import { compareIds } from "../terms/ids.ts";
import { indexBy } from "../terms/index-by.ts";
import { setUrl } from "./addresses.ts";
import type { Link } from "./link.ts";
import type { MakerName } from "./makers.ts";
import type { CatalogueTile } from "./tiles.ts";

export interface CatalogueSet extends Link {
  readonly kind: KindOfSet | null;
  readonly teacher: MakerName | null;
  readonly begins: string | null;
  readonly ends: string | null;
  readonly notes: string;
  readonly tiles: readonly string[];
  readonly control: string | null;
}

export function listSets(
  archive: Archive,
  tiles: readonly CatalogueTile[],
  names: ReadonlyMap<string, MakerName>,
): readonly CatalogueSet[] {
  const inSet = indexBy(tiles, ({ set }) => (set ? [set.id] : []));
  return [...archive.sets.values()]
    .map(({ id, record, notes }) => ({
      id,
      name: record.name,
      url: setUrl(id),
      kind: record.kind ?? null,
      teacher: names.get(record.teacher ?? "") ?? null,
      begins: record.begins ?? null,
      ends: record.ends ?? null,
      notes,
      tiles: (inSet.get(id) ?? []).map((tile) => tile.id),
      control: findById(archive.tiles, record.control ?? null)?.id ?? null,
    }))
    .sort((a, b) => compareIds(b.begins ?? "", a.begins ?? "") || compareIds(a.name, b.name));
}
