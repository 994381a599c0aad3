/** Sets of tiles: courses, experiments, commissions. */

import { type Archive, findById } from "../records/archive.ts";
import type { KindOfSet } from "../terms/choices.ts";
import { compareIds, idKey } from "../terms/ids.ts";
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
  /** Every code that a sheet can be printed for: its tiles' and those it reserves, in their order. */
  readonly codes: readonly string[];
  readonly jars: readonly { readonly jar: string; readonly glaze: string }[];
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
      codes: codesOf(
        (inSet.get(id) ?? []).map((tile) => tile.id),
        (record.codes ?? []).flat(),
      ),
      jars: Object.entries(record.jars ?? {})
        .map(([jar, glaze]) => ({
          jar,
          glaze: findById(archive.glazes, glaze)?.record.name ?? glaze,
        }))
        .sort((a, b) => compareIds(a.jar, b.jar)),
    }))
    .sort((a, b) => compareIds(b.begins ?? "", a.begins ?? "") || compareIds(a.name, b.name));
}

/** A code that is reserved and in use is one code, as its tile writes it. */
function codesOf(used: readonly string[], reserved: readonly string[]): readonly string[] {
  const byKey = new Map([...reserved, ...used].map((code) => [idKey(code), code]));
  return [...byKey.values()].sort(compareIds);
}
