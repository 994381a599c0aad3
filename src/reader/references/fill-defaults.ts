/** A tile with what its set and its studio say for it filled in. */
import type { SetDefaults } from "../../records/set.ts";
import type { CopyStand, TileRecord } from "../../records/tile.ts";

/**
 * What a tile says itself goes before what its set says, and that before what holds for the
 * studio's copy stand; of `photo:` each part by itself.
 */
export function fillDefaults(
  tile: TileRecord,
  defaults: SetDefaults | undefined,
  copyStand: CopyStand | undefined,
): TileRecord {
  const photos = [copyStand, defaults?.photo, tile.photo].filter((photo) => photo !== undefined);
  return {
    ...defaults,
    ...tile,
    ...(photos.length > 0 && { photo: Object.assign({}, ...photos) }),
  };
}
