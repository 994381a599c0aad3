/** Who waits for what: the tiles of each maker, or of each set, and codes that nobody wrote a record for. */
import { findById, type Tile } from "../../records/archive.ts";
import { compareIds, idKey } from "../../terms/ids.ts";
import { indexBy } from "../../terms/index-by.ts";
import { needsBySet, needsOf } from "../needs.ts";
import type { DeskArchive } from "../types.ts";

/** A tile that waits for something. */
export interface WaitingTile {
  readonly code: string;
  /** Its page on the site; null where it is reached by its set's link alone. */
  readonly page: string | null;
}

export interface WaitingGroup {
  /** The maker's key, or the set's id; empty for tiles that name no maker, or lie in no set. */
  readonly id: string;
  /** Empty for a maker who has only a key. */
  readonly name: string;
  readonly firing: readonly WaitingTile[];
  readonly photograph: readonly WaitingTile[];
  readonly result: readonly WaitingTile[];
  /** Of a set: codes that are kept for it and have no record. */
  readonly withoutRecord: readonly string[];
}

/** Every set in which anything waits, in the order of their ids. */
export function waitingBySet(archive: DeskArchive): readonly WaitingGroup[] {
  return needsBySet(archive)
    .map(({ set, tiles, withoutRecord }) => ({
      id: set?.id ?? "",
      name: set?.record.name ?? "In no set",
      ...needing(archive, tiles),
      withoutRecord,
    }))
    .filter(isWaiting);
}

/**
 * Every maker for whose tiles anything waits, in the order of their keys, and tiles without a maker last.
 *
 * @param tiles those that are asked about
 */
export function waitingByMaker(
  archive: DeskArchive,
  tiles: readonly Tile[],
): readonly WaitingGroup[] {
  const makers = Object.entries(archive.archive.studio.makers ?? {});
  const names = new Map(makers.map(([key, { name }]) => [idKey(key), name]));
  const byMaker = indexBy(tiles, ({ maker }) => [maker ?? ""]);
  return [...byMaker]
    .map(([id, own]) => ({
      id,
      name: id === "" ? "No maker is named" : (names.get(idKey(id)) ?? ""),
      ...needing(archive, own),
      withoutRecord: [],
    }))
    .filter(isWaiting)
    .sort((a, b) => Number(a.id === "") - Number(b.id === "") || compareIds(a.id, b.id));
}

function needing({ archive }: DeskArchive, tiles: readonly Tile[]) {
  const sorted = [...tiles].sort((a, b) => compareIds(a.id, b.id));
  const that = (need: "firing" | "photograph" | "result") =>
    sorted
      .filter((tile) => needsOf(tile)[need])
      .map(({ id, set }) => {
        const isListed = findById(archive.sets, set)?.record.listed !== false;
        return { code: id, page: isListed ? `/tiles/${encodeURIComponent(idKey(id))}.html` : null };
      });
  return { firing: that("firing"), photograph: that("photograph"), result: that("result") };
}

function isWaiting({ firing, photograph, result, withoutRecord }: WaitingGroup): boolean {
  return firing.length + photograph.length + result.length + withoutRecord.length > 0;
}
