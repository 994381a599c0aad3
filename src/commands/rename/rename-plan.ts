/** What it takes to give a tile another code: its files, its record, and every record that names it. */
import type { FieldToWrite } from "../../archive/write-fields.ts";
import type { Archive, Tile } from "../../records/archive.ts";
import type { RecordKind } from "../../records/kinds.ts";
import type { Renaming } from "../../records/mend.ts";
import type { SourceMap } from "../../records/read.ts";
import { findCodes, idKey } from "../../terms/ids.ts";

/** The fields of one record that name the tile. */
export interface RecordChange {
  /** As the record will be called. */
  readonly file: string;
  /** As it is called now. */
  readonly asNow: string;
  readonly kind: RecordKind["name"];
  readonly fields: readonly FieldToWrite[];
}

export interface RenamePlan {
  readonly renamings: readonly Renaming[];
  /** The tile's own record first. */
  readonly changes: readonly RecordChange[];
  /** Files whose notes speak of the old code: what somebody wrote is left to people. */
  readonly notes: readonly string[];
}

/**
 * Plans the renaming of a tile.
 *
 * @param sourceOf what a record's front matter says as it was written, by its file
 */
export function planRenaming(
  archive: Archive,
  tile: Tile,
  code: string,
  sourceOf: (file: string) => SourceMap,
): RenamePlan {
  const renamings = [tile.file, ...tile.pictures.map(({ file }) => file)].map((from) => ({
    from,
    to: renamed(from, tile.id, code),
  }));
  return {
    renamings,
    changes: [
      formerly(tile, code),
      ...controls(archive, tile.id, code),
      ...loads(archive, tile.id, code, sourceOf),
    ],
    notes: findNotes(archive, tile.id).map((file) =>
      file === tile.file ? renamed(file, tile.id, code) : file,
    ),
  };
}

/** `tiles/evening/EV-1.detail.jpg` as `tiles/evening/EV-9.detail.jpg`, however the code is spelt there. */
function renamed(file: string, old: string, code: string): string {
  const begin = file.lastIndexOf("/") + 1;
  let end = begin + 1;
  while (end < file.length && idKey(file.slice(begin, end)) !== idKey(old)) end += 1;
  return file.slice(0, begin) + code + file.slice(end);
}

/** Where the tile had the new code once, it is an old one no longer. */
function formerly(tile: Tile, code: string): RecordChange {
  const before = tile.record.formerly ?? [];
  const kept = before.filter((each) => idKey(each) !== idKey(code));
  const last = kept.at(-1);
  const value =
    kept.length === before.length && last !== undefined
      ? [...kept.slice(0, -1), [last, tile.id]]
      : [...kept, tile.id];
  return {
    file: renamed(tile.file, tile.id, code),
    asNow: tile.file,
    kind: "tile",
    fields: [{ path: ["formerly"], value }],
  };
}

function controls({ sets }: Archive, old: string, code: string): readonly RecordChange[] {
  return [...sets.values()]
    .filter(({ record }) => record.control !== undefined && idKey(record.control) === idKey(old))
    .map(({ file }) => ({
      file,
      asNow: file,
      kind: "set",
      fields: [{ path: ["control"], value: code }],
    }));
}

function loads(
  { firings }: Archive,
  old: string,
  code: string,
  sourceOf: (file: string) => SourceMap,
): readonly RecordChange[] {
  return [...firings.values()].flatMap(({ file, record }) => {
    const shelves = Object.entries(record.tiles ?? {}).filter(([, entries]) =>
      entries.flat().some((each) => idKey(each) === idKey(old)),
    );
    const fields = shelves.map(([shelf]) => ({
      path: ["tiles", shelf],
      value: renamedOn(writtenOn(shelf, sourceOf(file)), old, code),
    }));
    return fields.length > 0 ? [{ file, asNow: file, kind: "firing" as const, fields }] : [];
  });
}

/** What lies on a shelf, as it was written: one entry, or a list of them. */
function writtenOn(shelf: string, { tiles }: SourceMap): string | readonly string[] {
  return (tiles as SourceMap)[shelf] as string | readonly string[];
}

function renamedOn(
  written: string | readonly string[],
  old: string,
  code: string,
): FieldToWrite["value"] {
  if (typeof written === "string") return renamedEntry(written, old, code);
  return written.map((entry) => renamedEntry(entry, old, code));
}

/** A range that held the old code goes round it: `A-1..A-5` as `A-1..A-2`, the new code, `A-4..A-5`. */
function renamedEntry(entry: string, old: string, code: string): string | readonly string[] {
  const codes = findCodes(entry) ?? [];
  const at = codes.findIndex((each) => idKey(each) === idKey(old));
  if (at < 0) return entry;
  const parts = [...asRange(codes.slice(0, at)), code, ...asRange(codes.slice(at + 1))];
  return parts.length === 1 ? code : parts;
}

function asRange(codes: readonly string[]): readonly string[] {
  const [first, last] = [codes[0], codes.at(-1)];
  if (first === undefined || last === undefined) return [];
  return first === last ? [first] : [`${first}..${last}`];
}

function findNotes(archive: Archive, code: string): readonly string[] {
  const { sets, tiles, firings, glazes, clays, materials } = archive;
  return [sets, tiles, firings, glazes, clays, materials]
    .flatMap((records) => [...records.values()])
    .filter(({ notes }) => speaksOf(notes, code))
    .map(({ file }) => file);
}

/** Whether a text has the code as a word of its own: `EV-1` is not in `EV-10`. */
export function speaksOf(text: string, code: string): boolean {
  const [whole, word] = [idKey(text), idKey(code)];
  for (let at = whole.indexOf(word); at >= 0; at = whole.indexOf(word, at + 1)) {
    const around = [whole.charAt(at - 1), whole.charAt(at + word.length)];
    if (!around.some((letter) => /[\p{L}\p{N}]/u.test(letter))) return true;
  }
  return false;
}
