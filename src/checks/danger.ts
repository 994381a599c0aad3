/** Heat so far over a range that what was fired may melt. */
import type { Archive, Tile } from "../records/archive.ts";
import { findTooHot, type Heat } from "./heat.ts";
import { isHistory } from "./history.ts";

/**
 * So many °C over its range, a clay or glaze may melt: three cones of the chart's mean step of
 * 20 °C at 60 °C an hour. Common practice, no published source. Told in degrees, since the steps
 * are unequal: three cones are some 25 °C from cone 1 to 4, and some 90 from 06 to 03.
 */
export const dangerousDegrees = 60;

export function isDangerous(heat: Heat): boolean {
  return heat.outside > 0 && heat.degrees >= dangerousDegrees;
}

/** The dangerous firings of a tile that are still to come. */
export function findDangersToCome(archive: Archive, tile: Tile): readonly Heat[] {
  return findTooHot(archive, tile).filter(
    (heat) => isDangerous(heat) && !isHistory(archive, tile, heat.index),
  );
}

/** The dangerous firings that a tile has been through. */
export function findDangersPast(archive: Archive, tile: Tile): readonly Heat[] {
  return findTooHot(archive, tile).filter(
    (heat) => isDangerous(heat) && isHistory(archive, tile, heat.index),
  );
}
