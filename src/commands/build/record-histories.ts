/** What git knows of each record of an archive, put together with what lies in the folder. */
import { statSync } from "node:fs";
import { join } from "node:path";
import type { RecordHistory, WrittenVersions } from "../../catalogue/findings.ts";
import type { RecordVersion } from "../../catalogue/history/entries.ts";
import { isTextOf } from "../../git/blob-id.ts";
import type { HeldFile } from "../../git/file-history.ts";
import type { Repository } from "../../git/repository.ts";
import { type FileVersion, traceFiles } from "../../git/trace-files.ts";
import type { ReadArchive } from "../../reader/read-archive-files.ts";
import type { Archive, Filed } from "../../records/archive.ts";
import { glazeSchema } from "../../records/glaze.ts";
import { readAs } from "../../records/read.ts";
import { tileSchema } from "../../records/tile.ts";
import { idKey } from "../../terms/ids.ts";
import { indexBy } from "../../terms/index-by.ts";
import { mostVersions } from "../../terms/limits.ts";
import type { GitSaid } from "./git-said.ts";
import { versionReader } from "./old-versions.ts";

/**
 * What git knows of each record, by the record's file; empty where it knows nothing.
 *
 * @param dir the archive's folder
 */
export function recordHistories(
  said: GitSaid,
  { texts }: Pick<ReadArchive, "texts">,
  archive: Archive,
  dir: string,
): ReadonlyMap<string, RecordHistory> {
  if (said === null || "refused" in said) return new Map();
  const { commits, held, elsewhere, repository } = said;
  const traced = commits && traceFiles(commits, held, sameRecord(archive, repository.prefix));
  const isElsewhere = ({ file }: { readonly file: string }) =>
    elsewhere.some((path) => `${pathOf(repository, file)}/`.startsWith(`${path}/`));
  const records = recordsOf(archive).filter((record) => !isElsewhere(record));
  const histories = records.map(({ file, parts }): readonly [string, RecordHistory] => {
    const [path, ...others] = [file, ...parts].map((each) => pathOf(repository, each));
    const all = [path ?? "", ...others].map((each) => held.get(each));
    const isAsCommitted =
      all[0] !== undefined &&
      isTextOf(all[0].blob, texts.get(file) ?? "") &&
      parts.every((part, i) => isPartOf(all[i + 1], join(dir, part)));
    const versionsOf = (each: string) => traced?.get(each) ?? [];
    return [
      file,
      {
        path: all[0] && path !== undefined ? path : null,
        state: all[0] ? (isAsCommitted ? "as-committed" : "changed") : "new",
        ...daysOf(versionsOf(path ?? ""), others.flatMap(versionsOf)),
        authors: [...new Set(versionsOf(path ?? "").map(({ author }) => author))],
        versions: knownVersions(versionsOf(path ?? "")).slice(-mostVersions),
        photographs: others.flatMap((each) => knownVersions(versionsOf(each)).map(toPhotograph)),
      },
    ];
  });
  return new Map(histories);
}

function pathOf({ prefix }: Repository, file: string): string {
  return (prefix + file).normalize("NFC");
}

/** When a record was first committed, and when it or what belongs to it last was. */
function daysOf(own: readonly FileVersion[], others: readonly FileVersion[]) {
  const all = [...own, ...others];
  const days = all.flatMap(({ day }) => day ?? []).sort();
  const [first = null] = own.map(({ day }) => day);
  const isKnown = own.length > 0 && days.length === all.length;
  return isKnown ? { first, last: days.at(-1) ?? null } : { first: null, last: null };
}

/** Versions with their days; none where one of the days is not known, since then no order of them is. */
function knownVersions(versions: readonly FileVersion[]): readonly RecordVersion[] {
  const known = versions.flatMap(({ day, blob, before }) =>
    day === null ? [] : [{ day, blob, before }],
  );
  return known.length === versions.length ? known : [];
}

function toPhotograph({ day, before }: RecordVersion): RecordHistory["photographs"][number] {
  return { day, change: before.length === 0 ? "added" : "changed" };
}

const readGlazeVersions = versionReader((source) => readAs(glazeSchema, source));
const readTileVersions = versionReader((source) => readAs(tileSchema, source));

/**
 * Reads what the records that changed held in their versions.
 *
 * @param dir the archive's folder
 */
export async function readWritten(
  dir: string,
  histories: ReadonlyMap<string, RecordHistory>,
  { tiles, glazes }: Archive,
): Promise<WrittenVersions> {
  return {
    tiles: await readTileVersions(dir, blobsOf(tiles.values(), histories)),
    glazes: await readGlazeVersions(dir, blobsOf(glazes.values(), histories)),
  };
}

/** Git's ids of all versions of the records that have a story. */
function blobsOf(
  records: Iterable<Filed<unknown>>,
  histories: ReadonlyMap<string, RecordHistory>,
): ReadonlySet<string> {
  const changed = [...records].flatMap(({ file }) => {
    const known = histories.get(file);
    if (!known) return [];
    const { versions, photographs, state } = known;
    return versions.length + photographs.length > 1 || state === "changed" ? versions : [];
  });
  return new Set(changed.flatMap(({ blob, before }) => [blob, ...before]));
}

/** A record's file, and the files that belong to it: photographs of a tile, the log of a firing. */
function recordsOf(archive: Archive) {
  const { tiles, firings, glazes, clays, materials, sets } = archive;
  const alone = [...glazes.values(), ...clays.values(), ...materials.values(), ...sets.values()];
  return [
    ...[...tiles.values()].map(({ file, pictures }) => ({
      file,
      parts: pictures.map((picture) => picture.file),
    })),
    ...[...firings.values()].map(({ file, log }) => ({ file, parts: log ? [log.file] : [] })),
    ...alone.map(({ file }) => ({ file, parts: [] as string[] })),
  ];
}

/** What git keeps in the place of a large file that lies elsewhere is shorter than any photograph. */
const shortest = 1024;

/**
 * Whether a photograph or a log is still the one that was committed. Its length tells, as all of them
 * would have to be read otherwise.
 */
function isPartOf(held: HeldFile | undefined, file: string): boolean {
  if (!held) return false;
  const size = statSync(file, { throwIfNoEntry: false })?.size;
  return size === held.size || held.size < shortest;
}

/** Whether a file that changed with its name is the same record: a tile says which codes it had before. */
function sameRecord({ tiles }: Archive, prefix: string) {
  const before = indexBy(tiles.values(), ({ file }) => [(prefix + file).normalize("NFC")]);
  return (now: string, then: string): boolean => {
    const [stem, old] = [stemOf(now), stemOf(then)];
    if (stem === old && stem !== "set") return true;
    return (before.get(now) ?? []).some(({ record }) =>
      record.formerly?.some((code) => idKey(code) === old),
    );
  };
}

function stemOf(path: string): string {
  return idKey(path.replace(/^.*\//u, "").replace(/\.[^.]*$/u, ""));
}
