/** What lies on the copy stand: the photographs of results, and the frames that hold for each. */

import { defaultCrop } from "../colour/region.ts";
import type { ReadArchive } from "../reader/read-archive-files.ts";
import { type Archive, findById, type Tile } from "../records/archive.ts";
import type { Box } from "../records/fields.ts";
import type { CopyStand } from "../records/tile.ts";
import { compareIds, idKey } from "../terms/ids.ts";
import type { Edges, Frames, Scope, ShownTile, StandView } from "./types.ts";

export type Opened = ReadArchive & { readonly archive: Archive };

/** The photograph of a tile's result, relative to the archive. */
export function findPhotograph(tile: Tile | undefined): string | undefined {
  return tile?.pictures.find(({ role }) => role === "result")?.file;
}

/** Tiles whose photographs can be shown, in the order of their codes. */
export function listPhotographed({ tiles }: Archive): readonly Tile[] {
  return [...tiles.values()]
    .filter((tile) => findPhotograph(tile) !== undefined)
    .sort((a, b) => compareIds(a.id, b.id));
}

/**
 * What the page shows of an archive.
 *
 * @param ids keys of the tiles to show; all that are photographed where it is null
 */
export function viewStand(
  opened: Opened,
  ids: ReadonlySet<string> | null,
  scope: Scope,
): StandView {
  const tiles = listPhotographed(opened.archive).filter(({ id }) => ids?.has(idKey(id)) ?? true);
  return {
    studioFile: opened.studioFile ?? "studio.yaml",
    tiles: tiles.map((tile) => showTile(opened, tile)),
    scope,
  };
}

function showTile(opened: Opened, tile: Tile): ShownTile {
  const set = findById(opened.archive.sets, tile.set);
  return {
    id: tile.id,
    file: tile.file,
    set: set ? { id: set.id, name: set.record.name, file: set.file } : null,
    frames: framesOf(tile.record.photo),
    from: { crop: whoSays(opened, tile, "crop"), grey: whoSays(opened, tile, "grey") },
  };
}

/** For what the frame that holds for a tile was written down. */
export function whoSays(opened: Opened, tile: Tile, part: "crop" | "grey"): Scope | null {
  if (tile.record.photo?.[part] === undefined) return null;
  const { file } = opened.placeOf({ file: tile.file, path: ["photo", part] });
  if (file === tile.file) return "tile";
  return file === opened.studioFile ? "studio" : "set";
}

/** The frames that hold where these settings do. */
export function framesOf(photo: CopyStand | undefined): Frames {
  return {
    crop: photo?.crop ? edgesOf(photo.crop) : defaultCrop,
    grey: photo?.grey ? edgesOf(photo.grey) : null,
  };
}

function edgesOf({ left, top, right, bottom }: Box): Edges {
  return [left, top, right, bottom];
}
