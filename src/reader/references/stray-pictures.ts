/** What is told of a photograph that leads to no tile, and the name that it was meant to have. */
import type { TilePicture } from "../../records/archive.ts";
import type { Mend } from "../../records/mend.ts";
import type { Problem } from "../../records/problem.ts";
import { idKey } from "../../terms/ids.ts";
import type { OtherFile, RecordFile } from "../found-files.ts";
import { looseKey } from "../meant-names.ts";
import { problemOfFile } from "../problem-of-file.ts";
import { type MeantName, meantBy, readingsOf } from "./picture-names.ts";

export interface Beside {
  readonly pictures: readonly OtherFile[];
  readonly tiles: readonly (RecordFile & { readonly isRead: boolean })[];
  /** The pictures that were given to tiles, by the tile's file. */
  readonly byTile: ReadonlyMap<string, readonly TilePicture[]>;
  readonly stray: readonly OtherFile[];
  /** Files that were meant as records and are not read. */
  readonly unread: readonly string[];
}

/** A tile that a stray picture was probably meant for. */
interface Meant {
  readonly tile: RecordFile;
  readonly as: MeantName;
}

/** What is told of a stray picture, and the file of the tile that it was meant for. */
export interface StrayTold {
  readonly problems: readonly Problem[];
  readonly tile: string | undefined;
}

/** Makes the function that tells of a stray picture; nothing where a record that cannot be read may name it. */
export function makeStrayTeller(beside: Beside): (picture: OtherFile) => StrayTold {
  const taken = new Set(beside.pictures.map(({ file }) => idKey(file)));
  const meantFor = makeFinder(beside.tiles);
  const rivals = countBy(beside.stray.flatMap((picture) => meantFor(picture)?.tile.file ?? []));
  const byId = new Map(beside.tiles.map((tile) => [idKey(tile.id), tile]));
  const unread = new Set([
    ...beside.tiles.filter((tile) => !tile.isRead).map(({ folder }) => folder),
    ...beside.unread.map((file) => file.slice(0, file.lastIndexOf("/"))),
  ]);
  return (picture) => {
    const meant = meantFor(picture);
    if (meant) {
      const target = `${picture.folder}/${meant.as.nameFor(meant.tile.id)}`;
      const isOnly = meant.as.role !== "result" || (rivals.get(meant.tile.file) ?? 0) < 2;
      const shown = beside.byTile.get(meant.tile.file) ?? [];
      const isShown = meant.as.role === "result" && shown.some(({ role }) => role === "result");
      const problem =
        isShown || !isOnly || taken.has(idKey(target))
          ? anotherOf(picture, meant.tile)
          : misnamed(picture, target, meant.tile);
      return { problems: [problem], tile: meant.tile.file };
    }
    const home = readingsOf(picture.name).flatMap(({ id }) => byId.get(idKey(id)) ?? [])[0];
    if (home) return { problems: [inOtherFolder(picture, home, taken)], tile: home.file };
    return { problems: unread.has(picture.folder) ? [] : [ofNoTile(picture)], tile: undefined };
  };
}

/** Finds the one tile of its folder that a picture's name may be read as; two are none. */
function makeFinder(tiles: readonly RecordFile[]): (picture: OtherFile) => Meant | undefined {
  const byKey = new Map<string, RecordFile[]>();
  for (const tile of tiles) {
    const key = `${tile.folder}/${looseKey(tile.id)}`;
    byKey.set(key, [...(byKey.get(key) ?? []), tile]);
  }
  return ({ folder, name }) => {
    for (const as of meantBy(name)) {
      const [tile, ...others] = byKey.get(`${folder}/${as.key}`) ?? [];
      if (tile && others.length === 0) return { tile, as };
    }
    return undefined;
  };
}

function countBy(keys: readonly string[]): ReadonlyMap<string, number> {
  const counts = new Map<string, number>();
  for (const key of keys) counts.set(key, (counts.get(key) ?? 0) + 1);
  return counts;
}

const code = "picture-of-no-tile";

function misnamed(picture: OtherFile, target: string, tile: RecordFile): Problem {
  const problem = problemOfFile(picture.file, {
    code,
    message: `“${picture.name}” is not named as ${tile.id} is, so it shows no tile`,
    hint: `Rename it to “${nameOf(target)}”.`,
  });
  return { ...problem, mend: rename(picture.file, target) };
}

function anotherOf(picture: OtherFile, tile: RecordFile): Problem {
  return problemOfFile(picture.file, {
    code,
    message: `“${picture.name}” looks like one more photograph of ${tile.id}, and shows no tile`,
    hint: `Keep one for the result, name another as a detail, such as “${tile.id}.detail.jpg”, and take out what is not needed.`,
  });
}

function inOtherFolder(picture: OtherFile, tile: RecordFile, taken: ReadonlySet<string>): Problem {
  const target = `${tile.folder}/${picture.name}`;
  const problem = problemOfFile(picture.file, {
    code,
    message: `“${picture.file}” belongs to no tile of its folder`,
    hint: `The tile is in ${tile.folder}/: put the picture there.`,
  });
  return taken.has(idKey(target)) ? problem : { ...problem, mend: rename(picture.file, target) };
}

function ofNoTile(picture: OtherFile): Problem {
  return problemOfFile(picture.file, {
    code,
    message: `“${picture.file}” belongs to no tile of its folder`,
    hint: `Name it after its tile, such as TB-014.jpg, or TB-014.before.jpg, .detail.jpg, .back.jpg; or write “photo: {file: ${picture.name}}” into the tile's record.`,
  });
}

function rename(from: string, to: string): Mend {
  return { does: "rename", renamings: [{ from, to }] };
}

function nameOf(file: string): string {
  return file.slice(file.lastIndexOf("/") + 1);
}
