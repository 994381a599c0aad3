/** Line blends and triaxial blends with the tiles that show them. */

import { findBlendSeries } from "../../chemistry/blends.ts";
import { mixedGlazesOf } from "../../chemistry/from-records.ts";
import { type Archive, findById } from "../../records/archive.ts";
import { compareIds, idKey } from "../../terms/ids.ts";
import { indexBy } from "../../terms/index-by.ts";
import { blendUrl, glazeUrl, setUrl } from "../addresses.ts";
import { type Link, linkTo } from "../link.ts";
import type { CatalogueTile } from "../tiles.ts";

/** Blends of the same two or three glazes, with the tiles that show them. */
export interface CatalogueBlend extends Link {
  readonly kind: "line" | "triaxial";
  readonly by: "volume" | "weight";
  readonly ends: readonly Link[];
  /** The ends and all blends of them; `shares` of the ends, in their order, adding to 1. */
  readonly members: readonly { readonly glaze: Link; readonly shares: readonly number[] }[];
  readonly layouts: readonly BlendLayout[];
}

/** The tiles of one set that show a blend. */
export interface BlendLayout {
  /** Null for tiles that are in no set. */
  readonly set: Link | null;
  /** A tile for each member, null where the set has none. */
  readonly tiles: readonly (string | null)[];
}

/** Every series of blends, in the order of their names. */
export function listBlends(
  archive: Archive,
  tiles: readonly CatalogueTile[],
): readonly CatalogueBlend[] {
  const alone = tilesAlone(tiles);
  const link = (id: string): Link =>
    linkTo(findById(archive.glazes, id), glazeUrl) ?? { id, name: id, url: glazeUrl(id) };
  return findBlendSeries(mixedGlazesOf(archive))
    .map(({ kind, by, between, members }) => {
      const ends = between.map(link);
      const inOrder = between.toSorted(compareIds);
      return {
        id: inOrder.join("--"),
        name: nameOf(ends.map(({ name }) => name)),
        url: blendUrl(inOrder, by),
        kind,
        by,
        ends,
        members: members.map(({ glaze, shares }) => ({ glaze: link(glaze), shares })),
        layouts: findLayouts(
          members.map(({ glaze }) => alone.get(idKey(glaze)) ?? []),
          members.map(({ shares }) => shares.includes(1)),
          archive,
        ),
      };
    })
    .sort((a, b) => compareIds(a.name, b.name) || compareIds(a.url, b.url));
}

function nameOf(ends: readonly string[]): string {
  if (ends.length === 2) return ends.join(" to ");
  return `${ends.slice(0, -1).join(", ")} and ${ends.at(-1)}`;
}

/** The tiles that have one glaze and no other, by `idKey` of it. */
function tilesAlone(tiles: readonly CatalogueTile[]) {
  return indexBy(tiles, ({ glazes }) => {
    const [only, ...others] = Object.keys(glazes);
    return only === undefined || others.length > 0 ? [] : [idKey(only)];
  });
}

/** A layout for every set that has at least two of the members, one of them a blend. */
function findLayouts(
  tilesOfMembers: readonly (readonly CatalogueTile[])[],
  isEnd: readonly boolean[],
  archive: Archive,
): readonly BlendLayout[] {
  const sets = new Set(tilesOfMembers.flat().map((tile) => tile.set?.id ?? null));
  const firstInSet = tilesOfMembers.map(
    (tiles) => new Map(tiles.toReversed().map(({ id, set }) => [set?.id ?? null, id])),
  );
  return [...sets]
    .map((set) => ({
      set: linkTo(findById(archive.sets, set), setUrl),
      tiles: firstInSet.map((tiles) => tiles.get(set) ?? null),
    }))
    .filter(({ tiles }) => {
      const shown = tiles.flatMap((tile, i) => (tile === null ? [] : [isEnd[i]]));
      return shown.length > 1 && shown.includes(false);
    })
    .sort((a, b) => compareIds(a.set?.name ?? "", b.set?.name ?? ""));
}
