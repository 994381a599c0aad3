/** The codes of an archive: which one a label's QR code means, and in which order tiles were photographed. */
import type { TileInOrder } from "../../loads/match-photographs.ts";
import { tilesOut } from "../../loads/unloading.ts";
import {
  type Archive,
  type Filed,
  type Firing,
  findById,
  type Tile,
} from "../../records/archive.ts";
import { listReservedCodes } from "../../records/reserved-codes.ts";
import type { SetRecord } from "../../records/set.ts";
import { compareIds, idKey } from "../../terms/ids.ts";
import { rememberFor } from "../../terms/remember.ts";

/** Every code that a label can bear, by its key, as it is written today. */
const knownCodes = rememberFor((archive: Pick<Archive, "sets" | "tiles">) => {
  const tiles = [...archive.tiles.values()];
  const former = tiles.flatMap(({ id, record }) =>
    (record.formerly ?? []).map((code) => [idKey(code), id] as const),
  );
  return new Map([
    ...listReservedCodes(archive).map(({ code }) => [idKey(code), code] as const),
    ...former,
    ...tiles.map(({ id }) => [idKey(id), id] as const),
  ]);
});

/**
 * The code that a label's QR code means: the last part of the address of a tile's page, on whatever
 * site, where a tile has it, had it, or a set keeps it. Anything else means none.
 */
export function codeOfLabel(
  text: string,
  archive: Pick<Archive, "sets" | "tiles">,
): string | undefined {
  const [folder, name = ""] = pathOf(text).split("/").slice(-2);
  if (folder !== "tiles" || !name.endsWith(".html")) return undefined;
  return knownCodes(archive).get(idKey(name.slice(0, -".html".length)));
}

function pathOf(text: string): string {
  try {
    return decodeURIComponent(new URL(text).pathname);
  } catch {
    // No address, or one that holds no letters that can be read.
    return "";
  }
}

/** What the order is taken from. */
export interface OrderOf {
  /** In words, such as `the load g-1`. */
  readonly words: string;
  readonly tiles: readonly TileInOrder[];
}

/** Before a set's id in an address: no id of a firing begins so. */
export const setMark = "set:";

/** @param of a firing's id, or `set:` and a set's; undefined where there is no such thing */
export function orderOf(archive: Archive, of: string): OrderOf | undefined {
  if (of.startsWith(setMark)) {
    const set = findById(archive.sets, of.slice(setMark.length));
    return set && { words: `the set ${set.record.name}`, tiles: tilesOfSet(archive, set) };
  }
  const firing = findById(archive.firings, of);
  return firing && { words: `the load ${firing.id}`, tiles: tilesOfLoad(archive, firing) };
}

/** One that is lost cannot be photographed; one without a record can, and has its place in the order. */
function tilesOfLoad(archive: Archive, firing: Firing): readonly TileInOrder[] {
  return tilesOut(archive, firing)
    .filter(({ tile }) => tile?.record.fate !== "lost")
    .map(({ code, tile }) => ({ code, isAwaited: !tile || lacksPhotograph(tile) }));
}

function tilesOfSet(archive: Archive, { id }: Filed<SetRecord>): readonly TileInOrder[] {
  return [...archive.tiles.values()]
    .filter(({ set, record }) => set !== null && idKey(set) === idKey(id) && record.fate !== "lost")
    .sort((a, b) => compareIds(a.id, b.id))
    .map((tile) => ({ code: tile.id, isAwaited: lacksPhotograph(tile) }));
}

/** Whatever did not come back whole needs none. */
export function lacksPhotograph({ record, pictures }: Tile): boolean {
  return record.fate === undefined && !pictures.some(({ role }) => role === "result");
}
