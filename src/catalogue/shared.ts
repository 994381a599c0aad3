/**
 * A set as it is handed on alone: its tiles and what they use, and of the studio no more than a
 * letterhead. What families are given is less: see `forFamilies`.
 */
import { type Archive, type Filed, findById, type Tile } from "../records/archive.ts";
import type { SetRecord } from "../records/set.ts";
import type { Result } from "../records/tile.ts";
import { idKey } from "../terms/ids.ts";
import { unlistedUrl, withSlash } from "./addresses.ts";
import { onlySet } from "./select.ts";

/** For whom a set is shared: all of it, or what families are shown. */
export type SharedWith = "all" | "families";

/**
 * The archive that is shared of a set: without the studio's own pages, welcome, repository and how
 * to hand in, which are about all of its sets.
 *
 * @param archive the whole of it
 */
export function sharedPart(archive: Archive, set: Filed<SetRecord>, whom: SharedWith): Archive {
  const part = onlySet(whom === "families" ? forFamilies(archive, set.id) : archive, set.id);
  const { welcome, repository, handingIn, address, website, ...letterhead } = part.studio;
  const here = sharedAddress(address, set.record);
  const ways = {
    ...(here !== null && { address: here }),
    ...(website !== undefined && { website }),
  };
  return {
    ...part,
    studio: whom === "families" ? letterhead : { ...letterhead, ...ways },
    pages: new Map(),
    pageKeys: new Set(),
  };
}

/**
 * Where a set is on the studio's site: beneath its own link where it is unlisted.
 *
 * @returns null where the studio has no address
 */
export function sharedAddress(
  address: string | undefined,
  { listed, link }: Pick<SetRecord, "listed" | "link">,
): string | null {
  if (address === undefined) return null;
  if (listed !== false || link === undefined) return address;
  return `${withSlash(address)}${unlistedUrl(link)}/`;
}

/** The tiles of a set, all of them. */
export function tilesOfSet({ tiles }: Archive, set: string): readonly Tile[] {
  return [...tiles.values()].filter((tile) => tile.set !== null && idKey(tile.set) === idKey(set));
}

/** Whether families are shown a tile: it has a photograph, and nobody says that once was enough. */
export function isForFamilies({ pictures, record: { result = [] } }: Tile): boolean {
  const again = result.findLast((each) => each.again !== undefined)?.again;
  return pictures.length > 0 && again !== "no";
}

/**
 * The archive with what families are shown of one set: no tile without a photograph or with
 * “again: no”, no notes that are not marked with `show-notes`, no reserved codes, no notes of firings.
 */
function forFamilies(archive: Archive, id: string): Archive {
  const tiles = tilesOfSet(archive, id).filter(isForFamilies).map(withNotesAsMarked);
  const set = findById(archive.sets, id);
  const { codes, ...record } = set?.record ?? { name: id };
  return {
    ...archive,
    tiles: new Map(tiles.map((tile) => [idKey(tile.id), tile])),
    sets: new Map(set ? [[idKey(id), { ...set, record }]] : []),
    firings: new Map([...archive.firings].map(([key, firing]) => [key, { ...firing, notes: "" }])),
  };
}

function withNotesAsMarked(tile: Tile): Tile {
  if (tile.record.showNotes === true) return tile;
  const { result, ...record } = tile.record;
  const bare = result && { result: result.map(withoutNextTime) };
  return { ...tile, notes: "", record: { ...record, ...bare } };
}

function withoutNextTime({ nextTime, ...result }: Result): Result {
  return result;
}
