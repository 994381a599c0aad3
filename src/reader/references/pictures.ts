/** Which photograph shows which tile, and what of it: told by the records, else by the files' names. */
import type { PictureRole, TilePicture } from "../../records/archive.ts";
import type { Problem } from "../../records/problem.ts";
import { compareIds, idKey } from "../../terms/ids.ts";
import { addTo } from "../../terms/index-by.ts";
import type { OtherFile, RecordFile } from "../found-files.ts";
import { problemOfFile } from "../problem-of-file.ts";
import { readingsOf } from "./picture-names.ts";
import { makeStrayTeller } from "./stray-pictures.ts";

export interface FollowedPictures {
  /** The pictures of each tile, by the tile's file: the result first. */
  readonly byTile: ReadonlyMap<string, readonly TilePicture[]>;
  /** Files of the tiles of whose photograph it is told already what is wrong with its name. */
  readonly misnamed: ReadonlySet<string>;
  readonly problems: readonly Problem[];
}

/** A tile, and what its record says of its photograph. */
export interface PicturedTile extends RecordFile {
  /** The file that its record names for the result. */
  readonly names: string | undefined;
  /** False where nothing of its record could be read: it may name any file. */
  readonly isRead: boolean;
}

const roles: readonly PictureRole[] = ["result", "before", "detail", "back"];

/**
 * Gives every picture to the tile whose record names it, else to the tile of its name in its folder.
 *
 * @param unread files that were meant as records: a picture beside one may be its own
 */
export function followPictures(
  pictures: readonly OtherFile[],
  tiles: readonly PicturedTile[],
  unread: readonly string[],
): FollowedPictures {
  const byTile = new Map<string, TilePicture[]>();
  const give = (tile: string, role: PictureRole, { file }: OtherFile) =>
    addTo(byTile, tile, { role, file });
  const named = followNames(pictures, tiles);
  for (const [picture, tile] of named.byPicture) give(tile.file, "result", picture);
  const byPlace = new Map(tiles.map((tile) => [placeKey(tile.folder, tile.id), tile]));
  const stray: OtherFile[] = [];
  for (const picture of pictures) {
    const shown = readingsOf(picture.name)
      .map(({ id, role }) => ({ role, tile: byPlace.get(placeKey(picture.folder, id)) }))
      .find(({ tile }) => tile !== undefined);
    if (named.byPicture.has(picture)) continue;
    if (shown?.tile) give(shown.tile.file, shown.role, picture);
    else stray.push(picture);
  }
  const problems = [...named.problems];
  for (const [tile, shown] of byTile) {
    shown.sort(
      (a, b) => roles.indexOf(a.role) - roles.indexOf(b.role) || compareIds(a.file, b.file),
    );
    problems.push(...severalResults(tile, shown));
  }
  const told = stray.map(makeStrayTeller({ pictures, tiles, byTile, stray, unread }));
  const misnamed = [...named.problems.map(({ file }) => file), ...told.map(({ tile }) => tile)];
  return {
    byTile,
    misnamed: new Set(misnamed.filter((file) => file !== undefined)),
    problems: [...problems, ...told.flatMap((one) => one.problems)],
  };
}

function placeKey(folder: string, id: string): string {
  return `${folder}/${idKey(id)}`;
}

interface FollowedNames {
  readonly byPicture: ReadonlyMap<OtherFile, PicturedTile>;
  readonly problems: readonly Problem[];
}

/** Follows `photo: {file: …}` of every record that has it. */
function followNames(
  pictures: readonly OtherFile[],
  tiles: readonly PicturedTile[],
): FollowedNames {
  const files = new Map(pictures.map((file) => [placeKey(file.folder, file.name), file]));
  const ids = new Map(tiles.map((tile) => [placeKey(tile.folder, tile.id), tile]));
  const byPicture = new Map<OtherFile, PicturedTile>();
  const problems: Problem[] = [];
  for (const tile of tiles) {
    if (tile.names === undefined) continue;
    const picture = files.get(placeKey(tile.folder, tile.names));
    const owners = readingsOf(tile.names).map(({ id }) => ids.get(placeKey(tile.folder, id)));
    const other = picture && (byPicture.get(picture) ?? owners.find(Boolean));
    if (!picture) problems.push(missingPicture(tile, pictures));
    else if (other && other !== tile) problems.push(pictureOfTwo(tile, other));
    else byPicture.set(picture, tile);
  }
  return { byPicture, problems };
}

function missingPicture(tile: PicturedTile, pictures: readonly OtherFile[]): Problem {
  const elsewhere = pictures.find(({ name }) => idKey(name) === idKey(tile.names ?? ""));
  const fault = {
    code: "missing-picture",
    message: `There is no photograph “${tile.names}” beside this record`,
    hint: elsewhere
      ? `It is in ${elsewhere.folder}/: put it into ${tile.folder}/.`
      : `Put it into ${tile.folder}/, or correct its name; capitals do not matter, the ending does.`,
  };
  return problemOfFile(tile.file, fault, ["photo", "file"]);
}

function pictureOfTwo(tile: PicturedTile, other: PicturedTile): Problem {
  const fault = {
    code: "picture-of-two-tiles",
    message: `“${tile.names}” is the photograph of ${other.id} too`,
    hint: `Name the photograph of ${tile.id}, or take “file” out of the record that is wrong.`,
  };
  return problemOfFile(tile.file, fault, ["photo", "file"]);
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
