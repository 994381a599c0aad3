/** What has happened to a tile, and what is still to happen. */
import { type Archive, findById, type Tile } from "../records/archive.ts";
import { isFiring, isGlazeFiring } from "./steps.ts";

/**
 * Whether a firing is history for a tile: the tile has a fate, or a result that describes this
 * firing or a later one. What is history may be told; what is still to come may be stopped.
 *
 * @param index which of the tile's steps the firing is
 */
export function isHistory(archive: Archive, tile: Tile, index: number): boolean {
  return tile.record.fate !== undefined || index <= lastDescribed(archive, tile);
}

/** The index of the last step that a result describes; −1 where there is no result. */
function lastDescribed(archive: Archive, tile: Tile): number {
  const results = tile.record.result ?? [];
  const described = results.map(({ after }) =>
    after === undefined
      ? lastThatMayHaveBeen(archive, tile)
      : tile.steps.findLastIndex((step) => isFiring(step, after)),
  );
  return Math.max(-1, ...described);
}

/**
 * A result that names no firing describes the last one, but not one that has no day where an
 * earlier glaze firing may be meant: a firing without a day is still to come.
 */
function lastThatMayHaveBeen(archive: Archive, tile: Tile): number {
  const glazeFirings = tile.steps.filter(isGlazeFiring);
  const lit = glazeFirings.filter(
    ({ firing }) => findById(archive.firings, firing)?.record.on !== undefined,
  );
  const described = lit.at(-1) ?? glazeFirings[0];
  const isLast = described === undefined || described === glazeFirings.at(-1);
  return isLast ? tile.steps.length - 1 : tile.steps.indexOf(described);
}
