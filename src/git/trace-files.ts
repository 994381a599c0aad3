/** From commits to the versions that each file had. */
import type { HeldFile } from "./file-history.ts";
import type { Commit, FileChange } from "./parse-log.ts";

/** What a file held from a commit on. */
export interface FileVersion {
  /** Null where the commit's clock told none. */
  readonly day: string | null;
  readonly author: string;
  readonly blob: string;
  /** What it was made from: none where it was new, more than one where branches came together. */
  readonly before: readonly string[];
}

/**
 * Whether a file is the record of another name: told both, from the top of the repository. Files that
 * git takes for the same by their content alone may be two tiles that were made alike.
 */
export type IsSameRecord = (now: string, before: string) => boolean;

/** A file of the last commit, and what an older commit must have made of it to be a part of its story. */
interface Trace {
  readonly versions: FileVersion[];
  readonly awaited: Set<string>;
}

/**
 * Follows every file back from what the last commit holds, by what it held: so a change that a merge
 * threw away, and another file that had its name before, are no part of it.
 *
 * @param commits the newest first, no commit before one that rests on it
 * @param held what each file holds in the last commit, by its path
 * @returns by the same paths, the oldest first, in the order of their days
 */
export function traceFiles(
  commits: readonly Commit[],
  held: ReadonlyMap<string, HeldFile>,
  isSame: IsSameRecord,
): ReadonlyMap<string, readonly FileVersion[]> {
  const traced = new Map<string, FileVersion[]>();
  const traces = new Map<string, Trace[]>();
  for (const [path, { blob }] of held) {
    const versions: FileVersion[] = [];
    traced.set(path, versions);
    traces.set(path, [{ versions, awaited: new Set([blob]) }]);
  }
  for (const commit of commits)
    for (const change of commit.changes) followChange(commit, change, traces, isSame);
  for (const versions of traced.values())
    versions.reverse().sort((a, b) => compareDays(a.day, b.day));
  return traced;
}

function followChange(
  { day, author }: Commit,
  change: FileChange,
  traces: Map<string, Trace[]>,
  isSame: IsSameRecord,
): void {
  const { path, blob } = change;
  if (blob === null) return;
  for (const { versions, awaited } of traces.get(path) ?? []) {
    if (!awaited.has(blob)) continue;
    const before = isFollowed(change, isSame) ? change.before : [];
    versions.push({ day, author, blob, before });
    if (change.from === null) for (const old of before) awaited.add(old);
    else if (before.length > 0)
      awaitAs(change.from, { versions, awaited: new Set(before) }, traces);
  }
}

/** Whether what a file held before is a part of its story. */
function isFollowed({ path, from, likeness }: FileChange, isSame: IsSameRecord): boolean {
  return from === null || likeness === 100 || isSame(path, from);
}

function awaitAs(path: string, trace: Trace, traces: Map<string, Trace[]>): void {
  traces.set(path, [...(traces.get(path) ?? []), trace]);
}

function compareDays(a: string | null, b: string | null): number {
  if (a === b || a === null || b === null) return 0;
  return a < b ? -1 : 1;
}
