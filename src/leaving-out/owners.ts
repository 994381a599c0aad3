/** Whose fault it is: the records that an error makes unfit to be published. */
import type { RecordFile } from "../reader/found-files.ts";
import type { Problem } from "../records/problem.ts";
import { idKey } from "../terms/ids.ts";
import type { WholeArchive } from "./left-out.ts";

/** The record's kind and key: of two files with one id nobody knows which is meant. */
export function keyOf({ kind, id }: Pick<RecordFile, "kind" | "id">): string {
  return `${kind} ${idKey(id)}`;
}

/**
 * Makes the function that finds the records an error belongs to: the record of its file, the tile
 * of a picture, the firing of a log, all tiles of a folder without a set.
 *
 * @returns its keys; none for a file that belongs to no record
 */
export function ownerFinder(whole: WholeArchive): (problem: Problem) => string[] {
  const { archive, files } = whole;
  const byFile = new Map(files.map((file) => [file.file, file]));
  const owners = new Map<string, string>();
  for (const tile of archive.tiles.values())
    for (const picture of tile.pictures) owners.set(picture.file, `tile ${idKey(tile.id)}`);
  for (const { id, log } of archive.firings.values())
    if (log) owners.set(log.file, `firing ${idKey(id)}`);
  return ({ file, code }) => {
    const record = byFile.get(file);
    if (record)
      return [keyOf(record), ...(code === "duplicate-link" ? setsOfLink(whole, file) : [])];
    const inFolder = files.filter(({ kind, folder }) => kind === "tile" && folder === file);
    if (inFolder.length > 0) return inFolder.map(keyOf);
    const owner = owners.get(file) ?? ownerByName(files, file);
    return owner === undefined ? [] : [owner];
  };
}

/** Of sets with one link nobody knows which of them is meant by it: whoever has it sees neither. */
function setsOfLink({ archive, texts }: WholeArchive, file: string): string[] {
  const text = texts.get(file) ?? "";
  return [...archive.sets.values()].flatMap((set) => {
    const { link } = set.record;
    return set.file !== file && link !== undefined && idKey(text).includes(idKey(link))
      ? [keyOf({ kind: "set", id: set.id })]
      : [];
  });
}

/** The tile or firing in the same folder whose name a file's begins with, the longest first. */
function ownerByName(files: readonly RecordFile[], file: string): string | undefined {
  const at = file.lastIndexOf("/");
  const [folder, name] = [file.slice(0, at), idKey(file.slice(at + 1))];
  const owner = files
    .filter((record) => record.folder === folder && record.kind !== "set")
    .filter(({ id }) => name.startsWith(`${idKey(id)}.`))
    .sort((a, b) => b.id.length - a.id.length)[0];
  return owner && keyOf(owner);
}
