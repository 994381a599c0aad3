/** What a folder of a repository held at a commit: names, kinds and sizes, and the content on demand. */
import { fields } from "./changed-files.ts";
import type { Repository } from "./repository.ts";
import { type GitAnswer, runGit } from "./run-git.ts";

export interface TreeEntry {
  readonly kind: "file" | "link" | "repository";
  /** Git's own name of the content. */
  readonly object: string;
  /** In bytes; nought for a repository within the repository. */
  readonly size: number;
}

/** By the path relative to the archive, with `/`. */
export type Tree = ReadonlyMap<string, TreeEntry>;

type Refused = Extract<GitAnswer, { readonly ok: false }>;

/** Lists everything that lay in the archive's folder at a commit. */
export async function listTree(
  { dir, prefix }: Repository,
  commit: string,
): Promise<{ readonly ok: true; readonly tree: Tree } | Refused> {
  const within = prefix === "" ? [] : ["--", prefix];
  const listed = await runGit(dir, [
    ...["ls-tree", "-r", "-z", "--long", "--full-tree", "--end-of-options", commit],
    ...within,
  ]);
  if (!listed.ok) return listed;
  return {
    ok: true,
    tree: new Map(fields(listed.output).flatMap((line) => readEntry(line, prefix))),
  };
}

const kinds: Readonly<Record<string, TreeEntry["kind"]>> = { 120000: "link", 160000: "repository" };

/** `100644 blob 6b584e8… 1234<TAB>tiles/TB-014.md` */
function readEntry(line: string, prefix: string): readonly (readonly [string, TreeEntry])[] {
  const tab = line.indexOf("\t");
  const [mode = "", , object = "", size] = line.slice(0, tab).split(/ +/u);
  const path = line.slice(tab + 1);
  if (!path.startsWith(prefix)) return [];
  const entry = { kind: kinds[mode] ?? "file", object, size: Number(size) || 0 };
  return [[path.slice(prefix.length), entry]];
}

/**
 * Reads the content of many objects in one go, by their names; one that this clone does not have is
 * not among them.
 */
export async function readObjects(
  { dir }: Repository,
  objects: Iterable<string>,
): Promise<{ readonly ok: true; readonly contents: ReadonlyMap<string, Uint8Array> } | Refused> {
  const wanted = [...new Set(objects)];
  if (wanted.length === 0) return { ok: true, contents: new Map() };
  const answer = await runGit(dir, ["cat-file", "--batch"], `${wanted.join("\n")}\n`);
  return answer.ok ? { ok: true, contents: readBatch(answer.output) } : answer;
}

const lineFeed = 0x0a;

/** `NAME blob SIZE`, a line feed, so many bytes and a line feed; or `NAME missing`. */
function readBatch(output: Buffer): ReadonlyMap<string, Uint8Array> {
  const contents = new Map<string, Uint8Array>();
  for (let at = 0; at < output.length; ) {
    const end = output.indexOf(lineFeed, at);
    if (end < 0) break;
    const [object = "", kind, size] = output.toString("latin1", at, end).split(" ");
    const length = kind === "missing" ? -1 : Number(size);
    if (length >= 0) contents.set(object, output.subarray(end + 1, end + 1 + length));
    at = end + 1 + length + 1;
  }
  return contents;
}
