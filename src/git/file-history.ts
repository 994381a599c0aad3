/** When the files of an archive were committed, by whom, and what they held: one pass over its history. */
import { type Commit, logFormat, parseLog } from "./parse-log.ts";
import type { Repository } from "./repository.ts";
import { runGit } from "./run-git.ts";

export interface CommitLog {
  /** The newest first, no commit before one that rests on it; null in a clone without its history. */
  readonly commits: readonly Commit[] | null;
  /** What each file of the archive holds in the last commit, by its path from the top of the repository. */
  readonly held: ReadonlyMap<string, HeldFile>;
  /** What leads elsewhere, to another repository or by a link: git knows nothing of files there. */
  readonly elsewhere: readonly string[];
}

export interface HeldFile {
  /** Git's own id of what it holds. */
  readonly blob: string;
  /** In bytes. */
  readonly size: number;
}

/** Git refused, with such words. */
export interface NoLog {
  readonly refused: string;
}

/** What a person has set for a log is not heeded: it could hide a commit, or all of the first. */
const settings = ["-c", "log.showRoot=true", "-c", "log.follow=false", "-c", "diff.renames=true"];

/**
 * Renames are found by likeness as far as git looks for them in one commit. Of merges only those files
 * are told that are like in none of the branches.
 */
const logArgs = [
  ...[...settings, "log", "-z", "--raw", "--no-abbrev", "-c", "-M50%", "--topo-order"],
  ...["--full-history", "--no-ext-diff", "--no-textconv", "--no-color", "--no-decorate"],
  ...[
    "--no-notes",
    "--no-relative",
    "--encoding=UTF-8",
    `--format=${logFormat}`,
    "HEAD",
    "--",
    ".",
  ],
];

const treeArgs = ["ls-tree", "-r", "-z", "-l", "--full-name", "HEAD", "."];

/**
 * Reads the history of an archive's files.
 *
 * @returns null before the first commit
 * @throws MachineError where git could not be run
 */
export async function readCommitLog(repository: Repository): Promise<CommitLog | NoLog | null> {
  const { dir, head, isShallow } = repository;
  if (head === null) return null;
  const [log, tree] = await Promise.all([
    isShallow ? null : runGit(dir, logArgs),
    runGit(dir, treeArgs),
  ]);
  if (!tree.ok) return { refused: tree.said };
  const files = parseTree(tree.output);
  if (log === null) return { commits: null, ...files };
  return log.ok
    ? { commits: parseLog(log.output.toString("utf8")), ...files }
    : { refused: log.said };
}

/**
 * Lines such as `100644 blob b80271…     312⇥tiles/TB-014.md`, with zero bytes between them. Links are
 * blobs of the mode 120000, other repositories commits.
 */
function parseTree(output: Buffer): Pick<CommitLog, "elsewhere" | "held"> {
  const held = new Map<string, HeldFile>();
  const elsewhere: string[] = [];
  for (const line of output.toString("utf8").split("\0")) {
    const [, mode = "", blob = "", size = "", path = ""] =
      /^(\d+) [a-z]+ ([\da-f]+) +(\d+|-)\t(.*)$/su.exec(line) ?? [];
    if (mode.startsWith("100")) held.set(path, { blob, size: Number(size) });
    else if (mode !== "") elsewhere.push(path);
  }
  return { held, elsewhere };
}
