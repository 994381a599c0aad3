/** A tile with its set's defaults filled in. */
import type { SetDefaults } from "../../records/set.ts";
import type { TileRecord } from "../../records/tile.ts";

/** What a tile says itself goes before what its set says; of `photo:` each part by itself. */
export function fillDefaults(tile: TileRecord, defaults: SetDefaults | undefined): TileRecord {
  if (!defaults) return tile;
  const filled = { ...defaults, ...tile };
  return defaults.photo && tile.photo
    ? { ...filled, photo: { ...defaults.photo, ...tile.photo } }
    : filled;
}
