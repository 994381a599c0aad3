/** Heat so far over a range that what was fired may melt. */
import type { Archive, Tile } from "../records/archive.ts";
import { findHeats, type Heat } from "./heat.ts";
import { isHistory } from "./history.ts";

/** So many cones over its range, a clay or glaze may melt: common practice, no published source. */
const dangerousCones = 3;

export function isDangerous(heat: Heat): boolean {
  return heat.outside >= dangerousCones;
}

/** The dangerous firings of a tile that are still to come. */
export function findDangersToCome(archive: Archive, tile: Tile): readonly Heat[] {
  return findHeats(archive, tile).filter(
    (heat) => isDangerous(heat) && !isHistory(archive, tile, heat.index),
  );
}

/** The dangerous firings that a tile has been through. */
export function findDangersPast(archive: Archive, tile: Tile): readonly Heat[] {
  return findHeats(archive, tile).filter(
    (heat) => isDangerous(heat) && isHistory(archive, tile, heat.index),
  );
}
