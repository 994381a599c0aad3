/** An archive as it was at a commit, read without touching the folder. */
import type { ArchiveFiles, FolderListing } from "../reader/archive-files.ts";
import { isPicture } from "../reader/found-files.ts";
import { brokenLink, linkOutside, linkToFolder, notAFile } from "../reader/link-problems.ts";
import { isOfArchive, isPassedOver } from "../reader/passed-over.ts";
import type { Problem } from "../records/problem.ts";
import { largestLog } from "../terms/limits.ts";
import { listTree, readObjects, type Tree, type TreeEntry } from "./commit-tree.ts";
import type { Repository } from "./repository.ts";
import type { GitAnswer } from "./run-git.ts";

export type CommitFiles =
  | { readonly ok: true; readonly files: ArchiveFiles }
  /** `lacking`: the clone has not all that the commit holds. */
  | { readonly ok: false; readonly why: "lacking" | "missing" | "refused"; readonly said: string };

/**
 * The archive's files at a commit, its texts read in one go. A picture is listed and not read: asked
 * for its content, it counts as too large. Symbolic links are looked through but never followed
 * outside; a repository within the repository is no part of an archive.
 *
 * @throws MachineError where git could not be run
 */
export async function commitFiles(repository: Repository, commit: string): Promise<CommitFiles> {
  const listed = await listTree(repository, commit);
  if (!listed.ok) return refuse(listed);
  const { tree } = listed;
  const wanted = [...tree].filter(([file, entry]) => isWanted(file, entry));
  const read = await readObjects(
    repository,
    wanted.map(([, { object }]) => object),
  );
  if (!read.ok) return refuse(read);
  const { contents } = read;
  const lacking = wanted.find(([, { object }]) => !contents.has(object));
  if (lacking) return { ok: false, why: "lacking", said: lacking[0] };
  return { ok: true, files: filesOf(tree, contents) };
}

function refuse({ why, said }: Extract<GitAnswer, { ok: false }>): CommitFiles {
  return { ok: false, why, said };
}

/** What the reader may ask for; the rest of a repository is no concern of the archive's. */
function isWanted(file: string, { kind, size }: TreeEntry): boolean {
  if (kind === "repository" || size > largestLog) return false;
  return kind === "link" || (isOfArchive(file) && !isPicture(file));
}

function filesOf(tree: Tree, contents: ReadonlyMap<string, Uint8Array>): ArchiveFiles {
  const folders = listFolders(tree);
  const follow = linkFollower(tree, folders, contents);
  return {
    list: (folder) => {
      const found = folders.get(folder);
      return found ? listing(folder, found, tree, follow) : null;
    },
    read: (file, largest) => {
      const target = follow(file);
      const entry = typeof target === "string" ? tree.get(target) : undefined;
      const bytes = entry && contents.get(entry.object);
      if (bytes === undefined || bytes.length > largest) return { tooLarge: entry?.size ?? 0 };
      return { bytes };
    },
  };
}

/** What lies in every folder, the names of the folders in it among them. */
function listFolders(tree: Tree): ReadonlyMap<string, ReadonlySet<string>> {
  const folders = new Map<string, Set<string>>([["", new Set()]]);
  for (const path of tree.keys()) {
    const parts = path.split("/");
    for (const [depth, name] of parts.entries()) {
      const folder = parts.slice(0, depth).join("/");
      const names = folders.get(folder) ?? new Set();
      folders.set(folder, names.add(name));
    }
  }
  return folders;
}

function listing(
  folder: string,
  names: ReadonlySet<string>,
  tree: Tree,
  follow: Follow,
): FolderListing {
  const files: string[] = [];
  const folders: string[] = [];
  const problems: Problem[] = [];
  for (const name of [...names].sort()) {
    if (isPassedOver(name)) continue;
    const path = folder === "" ? name : `${folder}/${name}`;
    const entry = tree.get(path);
    const target = entry ? follow(path) : undefined;
    if (target === undefined) folders.push(name);
    else if (typeof target === "string") files.push(name);
    else problems.push(target);
  }
  return { files, folders, problems };
}

/** Where a file really lies, links followed; a problem where a link leads to none of the archive. */
type Follow = (file: string) => string | Problem;

/** So many links lead to one another at most: then it is a circle. */
const mostLinks = 20;

function linkFollower(
  tree: Tree,
  folders: ReadonlyMap<string, unknown>,
  contents: ReadonlyMap<string, Uint8Array>,
): Follow {
  const targetOf = (link: string) => {
    const object = tree.get(link)?.object ?? "";
    return new TextDecoder().decode(contents.get(object) ?? new Uint8Array());
  };
  return (file) => {
    let at = file;
    for (let links = 0; links < mostLinks; links += 1) {
      const link = firstLink(at, tree);
      if (link === undefined) return found(file, at, tree, folders);
      const target = resolve(link, targetOf(link));
      if (target === null) return linkOutside(file);
      at = target + at.slice(link.length);
    }
    return brokenLink(file);
  };
}

function found(
  file: string,
  at: string,
  tree: Tree,
  folders: ReadonlyMap<string, unknown>,
): string | Problem {
  const kind = tree.get(at)?.kind;
  if (kind === "repository") return notAFile(file);
  if (kind === undefined && !folders.has(at)) return brokenLink(file);
  if (at !== file && !isOfArchive(`${at}/`)) return linkOutside(file);
  return kind === undefined ? linkToFolder(file) : at;
}

/** The first part of a path that is a link: the path itself, or a folder that leads to it. */
function firstLink(path: string, tree: Tree): string | undefined {
  const parts = path.split("/");
  return parts
    .map((_, i) => parts.slice(0, i + 1).join("/"))
    .find((part) => tree.get(part)?.kind === "link");
}

/** Null for what lies above the archive, or anywhere on the machine. */
function resolve(link: string, target: string): string | null {
  if (target.startsWith("/")) return null;
  const parts = link.split("/").slice(0, -1);
  for (const part of target.split("/")) {
    if (part === "..") {
      if (parts.pop() === undefined) return null;
    } else if (part !== "" && part !== ".") parts.push(part);
  }
  return parts.join("/");
}
