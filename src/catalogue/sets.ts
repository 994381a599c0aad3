/** Sets of tiles: courses, experiments, commissions. */

import { type Archive, findById } from "../records/archive.ts";
import type { SetRecord } from "../records/set.ts";
import type { KindOfSet, Shape } from "../terms/choices.ts";
import { compareIds, idKey } from "../terms/ids.ts";
import { indexBy } from "../terms/index-by.ts";
import { clayUrl, setUrl } from "./addresses.ts";
import { type Link, linkTo } from "./link.ts";
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
  /** The codes that it reserves, in use or not. */
  readonly reserved: readonly string[];
  readonly jars: readonly SetJar[];
  readonly gives: GivenBySet;
}

/** A numbered jar: `id` is its glaze's, `glaze` what the glaze is called. */
export interface SetJar {
  readonly jar: string;
  readonly id: string;
  readonly glaze: string;
}

/** What a set gives to each tile that does not say otherwise; null where it gives nothing. */
export interface GivenBySet {
  readonly formed: string | null;
  readonly glazed: string | null;
  readonly clay: Link | null;
  readonly clayBatch: string | null;
  readonly texture: string | null;
  readonly shape: Shape | null;
  readonly angle: number | null;
  /** Whether it names the maker, whose key is never published. */
  readonly maker: boolean;
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
      reserved: (record.codes ?? []).flat(),
      jars: jarsOf(record, archive),
      gives: givenBy(record, archive),
    }))
    .sort((a, b) => compareIds(b.begins ?? "", a.begins ?? "") || compareIds(a.name, b.name));
}

function jarsOf({ jars = {} }: SetRecord, { glazes }: Archive): readonly SetJar[] {
  return Object.entries(jars)
    .map(([jar, written]) => {
      const glaze = findById(glazes, written);
      return { jar, id: glaze?.id ?? written, glaze: glaze?.record.name ?? written };
    })
    .sort((a, b) => compareIds(a.jar, b.jar));
}

function givenBy({ defaults }: SetRecord, { clays }: Archive): GivenBySet {
  return {
    formed: defaults?.formed ?? null,
    glazed: defaults?.glazed ?? null,
    clay: linkTo(findById(clays, defaults?.clay ?? null), clayUrl),
    clayBatch: defaults?.clayBatch ?? null,
    texture: defaults?.texture ?? null,
    shape: defaults?.shape ?? null,
    angle: defaults?.angle ?? null,
    maker: defaults?.maker !== undefined,
  };
}

/** A code that is reserved and in use is one code, as its tile writes it. */
function codesOf(used: readonly string[], reserved: readonly string[]): readonly string[] {
  const byKey = new Map([...reserved, ...used].map((code) => [idKey(code), code]));
  return [...byKey.values()].sort(compareIds);
}
