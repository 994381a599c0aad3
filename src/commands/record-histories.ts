/** What git knows of each record of an archive: asked while the archive is read, put together after. */
import { statSync } from "node:fs";
import { join } from "node:path";
import type { RecordHistory } from "../catalogue/findings.ts";
import { isTextOf } from "../git/blob-id.ts";
import { type CommitLog, type HeldFile, readCommitLog } from "../git/file-history.ts";
import { findRepository, type Repository } from "../git/repository.ts";
import { type FileVersion, traceFiles } from "../git/trace-files.ts";
import type { ReadArchive } from "../reader/read-archive-files.ts";
import type { Archive } from "../records/archive.ts";
import { idKey } from "../terms/ids.ts";
import { indexBy } from "../terms/index-by.ts";

/** What git said of an archive; null where it lies in no repository, or nothing was committed yet. */
export type GitSaid =
  | (CommitLog & { readonly repository: Repository })
  | { readonly refused: string }
  | null;

/** The last answer for each folder: a commit never changes, so only another one is asked for again. */
const known = new Map<string, { readonly head: string | null; readonly said: GitSaid }>();

/**
 * Asks git for the history of an archive.
 *
 * @throws MachineError where git could not be run
 */
export async function askGit(dir: string): Promise<GitSaid> {
  const repository = await findRepository(dir);
  if (!repository) return null;
  const before = known.get(dir);
  if (before && before.head === repository.head) return before.said;
  const log = await readCommitLog(repository);
  const said = log === null || "refused" in log ? log : { ...log, repository };
  known.clear();
  known.set(dir, { head: repository.head, said });
  return said;
}

/** Why the pages of a site say no dates, and how to mend it; null where they do, or nothing was committed. */
export function whyNoDates(said: GitSaid): string | null {
  if (said === null) return null;
  if ("refused" in said)
    return `Pages do not say when a record changed: git could not tell (${said.refused}).`;
  return said.commits === null
    ? "Pages do not say when a record changed: this copy of the repository was fetched without its history (a shallow clone), and a date taken from it would be wrong. Fetch all of it: “git fetch --unshallow”, or “fetch-depth: 0” where a workflow checks the repository out."
    : null;
}

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
  const { commits, held, repository } = said;
  const traced = commits && traceFiles(commits, held, sameRecord(archive, repository.prefix));
  const histories = recordsOf(archive).map(({ file, parts }): readonly [string, RecordHistory] => {
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
