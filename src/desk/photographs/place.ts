/** Where a photograph of a tile goes, and why it cannot. */
import { findById, type PictureRole, type Tile } from "../../records/archive.ts";
import { firstToReserve } from "../../records/reserved-codes.ts";
import { idKey } from "../../terms/ids.ts";
import type { DeskArchive } from "../types.ts";

/** In a sentence or two; undefined where it can be written. */
export function whyNotWritten(
  { archive, recordFiles }: Pick<DeskArchive, "archive" | "recordFiles">,
  code: string,
  role: PictureRole,
): string | undefined {
  const tile = findById(archive.tiles, code);
  if (tile) {
    const known = tile.pictures.find((picture) => picture.role === role);
    return known && `${known.file} is there already, and nothing is written over it.`;
  }
  const key = idKey(code);
  const faulty = recordFiles.find(({ kind, id }) => kind === "tile" && idKey(id) === key);
  if (faulty)
    return `${faulty.file} has errors, so it cannot be read. Mend it first: the command “check” tells them.`;
  if (firstToReserve(archive).has(key)) return `${code} has no record yet. Write its record first.`;
  return `There is no tile “${code}”.`;
}

/** `tiles/evening/EV-1.jpg`, `tiles/evening/EV-1.before.jpg` */
export function placeOf({ id, file }: Tile, role: PictureRole, ending: string): string {
  const folder = file.slice(0, file.lastIndexOf("/") + 1);
  return `${folder}${id}${role === "result" ? "" : `.${role}`}.${ending}`;
}
