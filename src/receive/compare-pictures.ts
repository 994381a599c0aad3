/** Which photographs that were handed in a tile of the archive lacks. */
import type { NewFile } from "../archive/write-new.ts";
import type { PictureRole } from "../records/archive.ts";
import { idKey } from "../terms/ids.ts";
import { folderOf } from "./hand-in.ts";
import type { SettledPicture } from "./settled.ts";

/** A photograph of the archive's tile, with a sum of its bytes and of those without what it gives away. */
export interface ShownPicture {
  readonly role: PictureRole;
  readonly file: string;
  readonly sums: readonly string[];
}

export interface PictureDifferences {
  readonly added: readonly { readonly file: NewFile; readonly picture: SettledPicture }[];
  /** Why one is not taken: whole sentences. */
  readonly refused: readonly string[];
}

/**
 * @param tile its file in the archive, and what shows it there
 * @param taken whether a file of the archive has a name
 */
export function comparePictures(
  tile: { readonly id: string; readonly file: string; readonly pictures: readonly ShownPicture[] },
  handedIn: readonly SettledPicture[],
  takenBefore: (path: string) => boolean,
): PictureDifferences {
  const added: PictureDifferences["added"][number][] = [];
  const taken = (path: string) =>
    takenBefore(path) || added.some(({ file }) => idKey(file.path) === idKey(path));
  const refused: string[] = [];
  for (const picture of handedIn) {
    if (tile.pictures.some(({ sums }) => sums.some((sum) => picture.sums.includes(sum)))) continue;
    const shown = tile.pictures.find(({ role }) => role === picture.role);
    const path =
      shown && picture.role === "detail" ? freeDetail(tile, picture, taken) : pathOf(tile, picture);
    if ((shown && picture.role !== "detail") || taken(path))
      refused.push(tellOther(tile.id, picture, shown?.file ?? path));
    else added.push({ file: { path, content: picture.bytes }, picture });
  }
  return { added, refused };
}

/** Where a photograph of a tile goes. */
export function pathOf(
  { id, file }: { readonly id: string; readonly file: string },
  { suffix, name }: Pick<SettledPicture, "suffix" | "name">,
): string {
  return `${folderOf(file)}/${suffix === null ? name : `${id}${suffix}`}`;
}

function freeDetail(
  tile: { readonly id: string; readonly file: string },
  { name }: SettledPicture,
  taken: (path: string) => boolean,
): string {
  const ending = name.slice(name.lastIndexOf("."));
  for (let number = 2; ; number += 1) {
    const path = `${folderOf(tile.file)}/${tile.id}.detail-${number}${ending}`;
    if (!taken(path)) return path;
  }
}

function tellOther(id: string, { name }: SettledPicture, file: string): string {
  const ending = name.slice(name.lastIndexOf("."));
  return `${id} has another photograph already, ${file}, and keeps it. Hand ${name} in as ${id}.detail${ending}, or take that one out of the archive first.`;
}

/** Whether a file is among some, however their names are spelt. */
export function takenAmong(files: Iterable<string>): (path: string) => boolean {
  const keys = new Set([...files].map(idKey));
  return (path) => keys.has(idKey(path));
}
