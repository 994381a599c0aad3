/** An archive in a folder on disk: symbolic links are looked through but never followed outside. */
import fs from "node:fs";
import path from "node:path";
import { errorCode, hasCode, MachineError, onMachine } from "../disk/machine-error.ts";
import type { ArchiveFiles, Contents, FolderListing } from "../reader/archive-files.ts";
import { brokenLink, linkOutside, linkToFolder, notAFile } from "../reader/link-problems.ts";
import { isPassedOver } from "../reader/passed-over.ts";
import { problemOfFile } from "../reader/problem-of-file.ts";
import type { Problem } from "../records/problem.ts";

/**
 * The files of an archive in a folder.
 *
 * @param dir the folder that holds studio.yaml
 * @throws MachineError, when it is asked, where a folder or a file cannot be read
 */
export function folderFiles(dir: string): ArchiveFiles {
  const real = findRealPath(dir) ?? dir;
  const disk = { dir, inside: ["tiles", "recipes", "pages"].map((part) => path.join(real, part)) };
  return {
    list: (folder) => (isFolder(path.join(dir, folder)) ? listFolder(disk, folder) : null),
    read: (file, largest) => readBytes(path.join(dir, file), largest),
  };
}

function isFolder(dir: string): boolean {
  const real = findRealPath(dir);
  return real !== undefined && onMachine("look at", real, () => fs.statSync(real).isDirectory());
}

function readBytes(file: string, largest: number): Contents {
  const size = onMachine("read", file, () => fs.statSync(file).size);
  if (size > largest) return { tooLarge: size };
  return { bytes: onMachine("read", file, () => fs.readFileSync(file)) };
}

/** An archive on disk: where it lies, and the real folders that its links may lead into. */
interface ArchiveOnDisk {
  readonly dir: string;
  readonly inside: readonly string[];
}

type Entry = "file" | "folder" | Problem;

/**
 * Lists a folder. What is no part of an archive by its name is left out: see `isPassedOver`.
 *
 * @param folder relative to the archive, with `/`; empty for the archive itself
 * @throws MachineError where the folder cannot be read
 */
function listFolder(disk: ArchiveOnDisk, folder: string): FolderListing {
  const absolute = path.join(disk.dir, folder);
  const found = onMachine("list", absolute, () =>
    fs.readdirSync(absolute, { withFileTypes: true }),
  );
  const files: string[] = [];
  const folders: string[] = [];
  const problems: Problem[] = [];
  for (const entry of found.toSorted((a, b) => (a.name < b.name ? -1 : 1))) {
    if (isPassedOver(entry.name)) continue;
    const file = folder === "" ? entry.name : `${folder}/${entry.name}`;
    const kind = onlyReadable(disk, file, kindOf(disk, file, entry));
    if (kind === "file") files.push(entry.name);
    else if (kind === "folder") folders.push(entry.name);
    else problems.push(kind);
  }
  return { files, folders, problems };
}

/** What this computer does not let us read is told, and everything else is read all the same. */
function onlyReadable({ dir }: ArchiveOnDisk, file: string, kind: Entry): Entry {
  if (typeof kind !== "string") return kind;
  const { R_OK, X_OK } = fs.constants;
  try {
    fs.accessSync(path.join(dir, file), kind === "folder" ? R_OK | X_OK : R_OK);
    return kind;
  } catch (cause) {
    if (!hasCode(cause, "EACCES", "EPERM")) return kind;
    return problemOfFile(file, {
      code: "may-not-be-read",
      message: `“${file}” may not be read: this computer does not allow it`,
      hint: "Give yourself the permission to read it.",
    });
  }
}

function kindOf(disk: ArchiveOnDisk, file: string, entry: fs.Dirent): Entry {
  if (entry.isFile()) return "file";
  if (entry.isDirectory()) return "folder";
  if (entry.isSymbolicLink()) return kindOfLink(disk, file);
  return notAFile(file);
}

/**
 * A link may lead to a file of the same archive. One that leads elsewhere could publish what
 * lies outside, a checkout's own `.git` included.
 */
function kindOfLink(disk: ArchiveOnDisk, file: string): Entry {
  const target = findRealPath(path.join(disk.dir, file));
  if (target === undefined) return brokenLink(file);
  if (!disk.inside.some((folder) => `${target}${path.sep}`.startsWith(folder + path.sep)))
    return linkOutside(file);
  const isFile = onMachine("look at", target, () => fs.statSync(target)).isFile();
  return isFile ? "file" : linkToFolder(file);
}

/** Where a file really lies, links followed; undefined for a link that leads nowhere. */
function findRealPath(file: string): string | undefined {
  try {
    return fs.realpathSync(file);
  } catch (cause) {
    const code = errorCode(cause) ?? "";
    if (["ENOENT", "ENOTDIR", "ELOOP"].includes(code)) return undefined;
    throw new MachineError("look up", file, cause);
  }
}
