/** Which codes new tiles can have: those of a set's block that are free, in their order. */
import { findIdFault, idKey } from "../terms/ids.ts";
import type { Archive, Filed } from "./archive.ts";
import { firstToReserve } from "./reserved-codes.ts";
import type { SetRecord } from "./set.ts";
import type { TileRecord } from "./tile.ts";

/** Why a new tile cannot have a code, as the end of a sentence; undefined where it can. */
export type WhyTaken = (code: string) => string | undefined;

/** Any record's file, one that could not be read too. */
interface RecordFile {
  readonly kind: string;
  readonly id: string;
  readonly file: string;
}

/** What of an archive says which codes are taken. */
export interface TilesAndSets extends Pick<Archive, "sets"> {
  readonly tiles: ReadonlyMap<string, Filed<TileRecord>>;
}

/**
 * Tells which codes are taken: on a tile, readable or not, on one before, or kept for another set.
 *
 * @param files every record's file, read or not
 * @param set the id of the set that the new tiles go into; null for none
 */
export function whyTaken(
  archive: TilesAndSets,
  files: readonly RecordFile[],
  set: string | null,
): WhyTaken {
  const current = new Map(
    files.filter(({ kind }) => kind === "tile").map(({ id, file }) => [idKey(id), file]),
  );
  const former = new Map(
    [...archive.tiles.values()].flatMap(({ id, record }) =>
      (record.formerly ?? []).map((code) => [idKey(code), id] as const),
    ),
  );
  const owners = firstToReserve(archive);
  return (code) => {
    const key = idKey(code);
    const owner = owners.get(key);
    if (current.has(key)) return `it is on ${current.get(key)}`;
    if (former.has(key)) return `it was on ${former.get(key)} before, and leads on to it`;
    if (!owner || (set !== null && idKey(owner.id) === idKey(set))) return undefined;
    return `it is kept for the set ${owner.id}`;
  };
}

/**
 * The codes of a set's block that new tiles can have, in the order in which they are reserved. That
 * of the set's control tile is nobody else's, whether the tile is there or not.
 *
 * @param taken as `whyTaken` tells for this set
 */
export function freeCodes(
  { codes = [], control }: Pick<SetRecord, "codes" | "control">,
  taken: WhyTaken,
): readonly string[] {
  const seen = new Set(control === undefined ? [] : [idKey(control)]);
  return codes.flat().filter((code) => {
    const key = idKey(code);
    if (seen.has(key)) return false;
    seen.add(key);
    return findIdFault(code) === undefined && taken(code) === undefined;
  });
}
