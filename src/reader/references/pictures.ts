/** Which photograph shows which tile, and what of it, told by the names of the files. */
import type { PictureRole, TilePicture } from "../../records/archive.ts";
import type { Problem } from "../../records/problem.ts";
import { compareIds, idKey } from "../../terms/ids.ts";
import type { OtherFile, RecordFile } from "../finds.ts";
import { problemOfFile } from "../problem-of-file.ts";

export interface FollowedPictures {
  /** The pictures of each tile, by the tile's file: the result first. */
  readonly byTile: ReadonlyMap<string, readonly TilePicture[]>;
  readonly problems: readonly Problem[];
}

const roles: readonly PictureRole[] = ["result", "before", "detail", "back"];

/** Gives every picture to the tile of its name in the same folder. */
export function followPictures(
  pictures: readonly OtherFile[],
  tiles: readonly RecordFile[],
): FollowedPictures {
  const tileFiles = new Map(tiles.map((tile) => [placeKey(tile.folder, tile.id), tile.file]));
  const folders = new Map(tiles.map((tile) => [idKey(tile.id), tile.folder]));
  const byTile = new Map<string, TilePicture[]>();
  const problems: Problem[] = [];
  for (const picture of pictures) {
    const names = readingsOf(picture.name);
    const shown = names.find(({ id }) => tileFiles.has(placeKey(picture.folder, id)));
    const tile = shown && tileFiles.get(placeKey(picture.folder, shown.id));
    if (!shown || tile === undefined) {
      problems.push(ofNoTile(picture, names.map(({ id }) => folders.get(idKey(id))).find(Boolean)));
      continue;
    }
    byTile.set(tile, [...(byTile.get(tile) ?? []), { role: shown.role, file: picture.file }]);
  }
  for (const [tile, shown] of byTile) {
    shown.sort(
      (a, b) => roles.indexOf(a.role) - roles.indexOf(b.role) || compareIds(a.file, b.file),
    );
    problems.push(...severalResults(tile, shown));
  }
  return { byTile, problems };
}

function placeKey(folder: string, id: string): string {
  return `${folder}/${idKey(id)}`;
}

/** `TB-014.back.jpg` is the back of TB-014, unless there is a tile `TB-014.back`. */
function readingsOf(name: string): { id: string; role: PictureRole }[] {
  const stem = name.replace(/\.\w+$/u, "");
  const named = /^(.+)\.(before|detail|back)(?:(?<=detail)[^.]*)?$/iu.exec(stem);
  const whole = { id: stem, role: "result" as const };
  if (!named) return [whole];
  return [whole, { id: named[1] ?? "", role: (named[2] ?? "").toLowerCase() as PictureRole }];
}

function ofNoTile(picture: OtherFile, elsewhere: string | undefined): Problem {
  const fault = {
    code: "picture-of-no-tile",
    message: `“${picture.file}” belongs to no tile of its folder`,
    hint: elsewhere
      ? `The tile lies in ${elsewhere}/: put the picture there.`
      : "Name it after its tile, such as TB-014.jpg, or TB-014.before.jpg, .detail.jpg, .back.jpg.",
  };
  return problemOfFile(picture.file, fault, [], "warning");
}

/** Two pictures of the result: which one goes on the page would be a guess. */
function severalResults(tile: string, pictures: readonly TilePicture[]): Problem[] {
  const [first, ...more] = pictures.filter(({ role }) => role === "result");
  return more.map(({ file }) =>
    problemOfFile(file, {
      code: "two-results-shown",
      message: `“${first?.file}” and “${file}” both show the result of ${tile}`,
      hint: "Keep one, and name the other as a detail, such as TB-014.detail.jpg.",
    }),
  );
}
