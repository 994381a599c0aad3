/**
 * What one `git log` printed, taken apart. Names of authors and of files are data in it: what they hold
 * can end nothing but itself, since everything is found by its place between zero bytes.
 */

/** What a commit made of a file. */
export interface FileChange {
  /** The file, from the top of the repository. */
  readonly path: string;
  /** What it was called before, where git takes it for the same file. */
  readonly from: string | null;
  /** How much of it stayed the same over a change of its name, in per cent. */
  readonly likeness: number;
  /** What the file held afterwards, by git's own id; null where it was taken out. */
  readonly blob: string | null;
  /** What it held before: more than one where branches came together, none where it is new. */
  readonly before: readonly string[];
}

export interface Commit {
  /** The day in the author's own zone; null where the commit's clock told none. */
  readonly day: string | null;
  /** The author's name, as .mailmap has it. */
  readonly author: string;
  readonly changes: readonly FileChange[];
}

/** What `parseLog` reads: a commit begins with an empty field, since git has none for a name of a file. */
export const logFormat = "tformat:%x00%H%x00%at%x00%ct%x00%as%x00%cs%x00%aN%x00";

/** @param printed by `git log -z --raw --no-abbrev -c` in `logFormat` */
export function parseLog(printed: string): readonly Commit[] {
  const fields = printed.split("\0");
  const commits: Commit[] = [];
  let changes: FileChange[] = [];
  for (let at = 0; at < fields.length; ) {
    const field = fields[at] ?? "";
    if (/^\n?:/u.test(field)) {
      const { change, taken } = parseChange(fields, at);
      changes.push(change);
      at += taken;
    } else if (isHash(field)) {
      changes = [];
      commits.push(parseCommit(fields, at, changes));
      at += 6;
    } else {
      at += 1;
    }
  }
  return commits;
}

function isHash(field: string): boolean {
  return /^(?:[\da-f]{40}|[\da-f]{64})$/u.test(field);
}

function parseCommit(fields: readonly string[], at: number, changes: FileChange[]): Commit {
  const [authored = "", committed = "", authorDay = "", day = "", author = ""] = fields.slice(
    at + 1,
    at + 6,
  );
  // Nobody wrote a thing after it was committed: then the author's clock was wrong.
  const isSane = Number(authored) <= Number(committed);
  return { day: knownDay(isSane ? authorDay : day), author, changes };
}

/** Git gives the first day of its own reckoning where it cannot read a date. */
function knownDay(day: string): string | null {
  return /^\d{4}-\d\d-\d\d$/u.test(day) && day > "1970-01-02" ? day : null;
}

/**
 * A line such as `:100644 100644 67898c… 0ad53b… M` with the names that follow it; with as many colons,
 * modes and ids as the commit has parents.
 */
function parseChange(
  fields: readonly string[],
  at: number,
): { readonly change: FileChange; readonly taken: number } {
  const line = (fields[at] ?? "").trimStart();
  const parents = line.search(/[^:]/u);
  const words = line.slice(parents).split(" ");
  const before = words.slice(parents + 1, 2 * parents + 1).filter(isBlob);
  const blob = words[2 * parents + 1] ?? "";
  const status = words.at(-1) ?? "";
  const isRenamed = parents === 1 && /^[CR]/u.test(status);
  const from = isRenamed ? (fields[at + 1] ?? "") : null;
  return {
    change: {
      path: fields[at + (isRenamed ? 2 : 1)] ?? "",
      from,
      likeness: isRenamed ? Number(status.slice(1)) : 100,
      blob: isBlob(blob) ? blob : null,
      before,
    },
    taken: isRenamed ? 3 : 2,
  };
}

function isBlob(id: string): boolean {
  return /[^0]/u.test(id);
}
