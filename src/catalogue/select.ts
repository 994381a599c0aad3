/**
 * What a site may show: chosen before the catalogue is made, so that nothing later has to think
 * of it. An unlisted set is absent from everyone else's evidence and has a site of its own.
 */
import type { Archive, Tile } from "../records/archive.ts";
import { findById } from "../records/archive.ts";
import { idKey } from "../terms/ids.ts";

/** The archive without the sets that are reached only by their link. */
export function withoutUnlistedSets(archive: Archive): Archive {
  const unlisted = new Set(unlistedSets(archive).map(idKey));
  return keepTiles(archive, (tile) => tile.set === null || !unlisted.has(idKey(tile.set)));
}

/** The archive with the tiles of one set alone. */
export function onlySet(archive: Archive, set: string): Archive {
  return keepTiles(archive, (tile) => tile.set !== null && idKey(tile.set) === idKey(set));
}

/** Ids of the sets with `listed: no`, in the order of the archive. */
export function unlistedSets(archive: Archive): readonly string[] {
  return [...archive.sets.values()]
    .filter((set) => set.record.listed === false)
    .map((set) => set.id);
}

function keepTiles(archive: Archive, keep: (tile: Tile) => boolean): Archive {
  const tiles = new Map([...archive.tiles].filter(([, tile]) => keep(tile)));
  const setsLeft = new Set(
    [...tiles.values()].flatMap((tile) => (tile.set ? [idKey(tile.set)] : [])),
  );
  const sets = new Map(
    [...archive.sets].filter(([key, set]) => setsLeft.has(key) || set.record.listed !== false),
  );
  const firings = new Map(
    [...archive.firings].map(([key, firing]) => [
      key,
      { ...firing, load: firing.load.filter(({ tile }) => findById(tiles, tile)) },
    ]),
  );
  return { ...archive, tiles, sets, firings };
}
