/**
 * Leaves out of an archive what is faulty, and with it whatever rests on that: what is left says
 * nothing that the whole, mended, would not say. What it no longer says is told beside it.
 */
import type { RecordFile } from "../reader/found-files.ts";
import type { Archive } from "../records/archive.ts";
import type { Problem } from "../records/problem.ts";
import { compareIds, idKey, idSlug } from "../terms/ids.ts";
import { findCodesInText } from "./codes-in-text.ts";
import { groundsOfGlaze, groundsOfReclaim, groundsOfTile, withoutRecords } from "./grounds.ts";
import type { Ground, LeftOut, WholeArchive } from "./left-out.ts";
import { keyOf, ownerFinder } from "./owners.ts";

export interface Sound {
  readonly archive: Archive;
  /** By file. */
  readonly leftOut: readonly LeftOut[];
}

/**
 * Leaves out the records that errors belong to, and those that rest on them.
 *
 * @param errors all that is known of
 * @returns undefined where an error is in what every page rests on, `studio.yaml`
 */
export function leaveOut(whole: WholeArchive, errors: readonly Problem[]): Sound | undefined {
  if (errors.some(({ file }) => isOfStudio(file, whole))) return undefined;
  const ownersOf = ownerFinder(whole);
  const own = new Map<string, Problem[]>();
  const strays = new Map<string, Problem[]>();
  for (const error of errors) {
    const owners = ownersOf(error);
    for (const key of owners) own.set(key, [...(own.get(key) ?? []), error]);
    if (owners.length === 0) strays.set(error.file, [...(strays.get(error.file) ?? []), error]);
  }
  // Tiles of a set that could not be read, say: without a fault of their own, but not in the archive.
  const unread = whole.files.filter((record) => !isSound(record, whole.archive)).map(keyOf);
  const out = new Set([...own.keys(), ...unread]);
  const because = followGrounds(whole, out, own);
  const isOut = (key: string) => out.has(key) || because.has(key);
  return {
    archive: withoutRecords(whole.archive, isOut),
    leftOut: [
      ...whole.files
        .filter((record) => isOut(keyOf(record)))
        .map((record) => describe(record, own.get(keyOf(record)) ?? [], because)),
      ...[...strays].map(([file, faults]) => describeStray(file, faults)),
    ].sort((a, b) => compareIds(a.file, b.file)),
  };
}

function isOfStudio(file: string, { studioFile }: WholeArchive): boolean {
  return (
    file === studioFile || ["studio.yaml", "tiles", "recipes", "pages", ""].includes(idKey(file))
  );
}

/** Whether a record is in the archive, from this very file. */
function isSound({ kind, id, file }: RecordFile, archive: Archive): boolean {
  const records: Readonly<Record<typeof kind, ReadonlyMap<string, { readonly file: string }>>> = {
    set: archive.sets,
    tile: archive.tiles,
    firing: archive.firings,
    glaze: archive.glazes,
    clay: archive.clays,
    material: archive.materials,
    page: archive.pages,
  };
  return records[kind].get(idKey(id))?.file === file;
}

function describe(
  record: RecordFile,
  faults: readonly Problem[],
  because: ReadonlyMap<string, Ground>,
): LeftOut {
  const { kind, id, file, folder } = record;
  return { kind, id, file, folder, faults, because: because.get(keyOf(record)) ?? null };
}

function describeStray(file: string, faults: readonly Problem[]): LeftOut {
  const at = file.lastIndexOf("/");
  const [folder, id] = [file.slice(0, at), file.slice(at + 1)];
  return { kind: "file", id, file, folder, faults, because: null };
}

/**
 * Everything that rests on what is left out, each with the first ground that it loses.
 *
 * @param first what is left out to begin with
 * @param faulty what has errors of its own, and needs no other reason
 */
function followGrounds(
  whole: WholeArchive,
  first: ReadonlySet<string>,
  faulty: ReadonlyMap<string, unknown>,
): ReadonlyMap<string, Ground> {
  const resting = listGrounds(whole);
  const out = new Set(first);
  const because = new Map<string, Ground>();
  const loads = loadReader(whole);
  for (let before = -1; before < out.size + because.size; ) {
    before = out.size + because.size;
    for (const [key, ground] of [...resting, ...loads(out)]) {
      if (!out.has(keyOf(ground)) || faulty.has(key) || because.has(key)) continue;
      because.set(key, ground);
      out.add(key);
    }
  }
  return because;
}

type Resting = readonly [key: string, on: Ground];

function listGrounds({ archive, files }: WholeArchive): readonly Resting[] {
  const tileFiles = files.filter(({ kind }) => kind === "tile");
  const slugs = new Map(tileFiles.map(({ id }) => [idSlug(id), id]));
  const clays = files.filter(({ kind }) => kind === "clay").map(({ id }) => id);
  return [
    ...tilesOfSets(files),
    ...[...archive.tiles].flatMap(([key, tile]) =>
      groundsOfTile(tile, slugs).map((on) => [`tile ${key}`, on] as const),
    ),
    ...[...archive.glazes].flatMap(([key, glaze]) =>
      groundsOfGlaze(glaze).map((on) => [`glaze ${key}`, on] as const),
    ),
    ...[...archive.clays].flatMap(([key, { record }]) =>
      record.reclaim === true
        ? groundsOfReclaim(clays).map((on) => [`clay ${key}`, on] as const)
        : [],
    ),
  ];
}

/** A tile lies in its set's folder, though neither could be read. */
function tilesOfSets(files: readonly RecordFile[]): readonly Resting[] {
  const sets = new Map(files.filter(({ kind }) => kind === "set").map((set) => [set.folder, set]));
  return files.flatMap((tile) => {
    const set = sets.get(tile.folder);
    const ground: Ground | undefined = set && { kind: "set", id: set.id, path: [] };
    return tile.kind === "tile" && ground ? [[keyOf(tile), ground] as const] : [];
  });
}

/** Reads, once, which tiles the files of the firings that are left out speak of. */
function loadReader({ files, texts }: WholeArchive) {
  const tiles = new Map(
    files.filter(({ kind }) => kind === "tile").map((tile) => [idKey(tile.id), tile]),
  );
  const read = new Map<string, readonly Resting[]>();
  return (out: ReadonlySet<string>): readonly Resting[] => {
    for (const firing of files) {
      if (firing.kind !== "firing" || !out.has(keyOf(firing)) || read.has(firing.file)) continue;
      const ground: Ground = { kind: "firing", id: firing.id, path: [] };
      const codes = findCodesInText(texts.get(firing.file) ?? "", tiles);
      read.set(
        firing.file,
        [...codes].map((key) => [`tile ${key}`, ground] as const),
      );
    }
    return [...read.values()].flat();
  };
}
