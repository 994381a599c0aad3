/** What one folder of the archive holds, symbolic links looked through but never followed outside. */
import fs from "node:fs";
import path from "node:path";
import type { Problem } from "../records/problem.ts";
import { errorCode, MachineError, onMachine } from "./machine-error.ts";
import { problemOfFile } from "./problem-of-file.ts";

export interface FolderListing {
  /** Names of its files, in an order that depends on neither locale nor file system. */
  readonly files: readonly string[];
  /** Names of the folders in it, in the same order. */
  readonly folders: readonly string[];
  readonly problems: readonly Problem[];
}

/** An archive on disk: where it lies, and the real folders that its links may lead into. */
export interface ArchiveOnDisk {
  readonly dir: string;
  readonly inside: readonly string[];
}

type Entry = "file" | "folder" | Problem;

/**
 * Lists a folder. Names that begin with a full stop, READMEs and licences are left out: they are
 * no part of the archive.
 *
 * @param folder relative to the archive, with `/`; empty for the archive itself
 * @throws MachineError where the folder cannot be read
 */
export function listFolder(disk: ArchiveOnDisk, folder: string): FolderListing {
  const absolute = path.join(disk.dir, folder);
  const found = onMachine("list", absolute, () =>
    fs.readdirSync(absolute, { withFileTypes: true }),
  );
  const files: string[] = [];
  const folders: string[] = [];
  const problems: Problem[] = [];
  for (const entry of found.toSorted((a, b) => (a.name < b.name ? -1 : 1))) {
    if (isNoPartOfArchive(entry.name)) continue;
    const kind = kindOf(disk, folder === "" ? entry.name : `${folder}/${entry.name}`, entry);
    if (kind === "file") files.push(entry.name);
    else if (kind === "folder") folders.push(entry.name);
    else problems.push(kind);
  }
  return { files, folders, problems };
}

function isNoPartOfArchive(name: string): boolean {
  return /^\.|^(readme|licen[cs]e)(\.\w+)?$/iu.test(name);
}

function kindOf(disk: ArchiveOnDisk, file: string, entry: fs.Dirent): Entry {
  if (entry.isFile()) return "file";
  if (entry.isDirectory()) return "folder";
  if (entry.isSymbolicLink()) return kindOfLink(disk, file);
  return problemOfFile(file, {
    code: "not-a-file",
    message: `“${file}” is neither a file nor a folder`,
    hint: "Take it out of the archive.",
  });
}

/**
 * A link may lead to a file of the same archive. One that leads elsewhere could publish what
 * lies outside, a checkout's own `.git` included.
 */
function kindOfLink(disk: ArchiveOnDisk, file: string): Entry {
  const target = findRealPath(path.join(disk.dir, file));
  if (target === undefined)
    return problemOfFile(file, {
      code: "broken-link",
      message: `“${file}” is a link to something that is not there`,
      hint: "Put the file itself in its place, or take the link away.",
    });
  if (!disk.inside.some((folder) => `${target}${path.sep}`.startsWith(folder + path.sep)))
    return problemOfFile(file, {
      code: "link-outside",
      message: `“${file}” is a link that leads out of the archive, so it was not followed`,
      hint: "Put the file itself in its place.",
    });
  if (onMachine("look at", target, () => fs.statSync(target)).isFile()) return "file";
  return problemOfFile(file, {
    code: "link-to-folder",
    message: `“${file}” is a link to a folder, and links to folders are not followed`,
    hint: "Put the folder itself in its place.",
  });
}

/** Where a file really lies, links followed; undefined for a link that leads nowhere. */
export function findRealPath(file: string): string | undefined {
  try {
    return fs.realpathSync(file);
  } catch (cause) {
    const code = errorCode(cause) ?? "";
    if (["ENOENT", "ENOTDIR", "ELOOP"].includes(code)) return undefined;
    throw new MachineError("look up", file, cause);
  }
}
