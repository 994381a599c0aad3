/** Writes new files into an archive, and over none that is there. */
import fs from "node:fs";
import path from "node:path";
import { liesOutside } from "../disk/give-name.ts";
import { errorCode, onMachine } from "../disk/machine-error.ts";
import { writeWholeAnew } from "../disk/write-whole.ts";

/** A file to be written: its path in the archive, with `/`, and what it holds. */
export interface NewFile {
  readonly path: string;
  readonly content: string | Uint8Array;
}

/** Why nothing was written: a file of that name is there already, or a link leads out of the archive. */
export interface NotWrittenAnew {
  readonly because: "outside" | "taken";
  readonly file: string;
}

/**
 * Writes all of the files, or none: where one of them is there already nothing is written, and where
 * writing one fails those before it are taken away again, with the folders that were made for them.
 *
 * @param dir the archive
 * @returns what was in the way, where nothing was written
 * @throws MachineError where the disk or a permission fails
 */
export function writeNew(dir: string, files: readonly NewFile[]): NotWrittenAnew | undefined {
  const there = files.find((file) => isThere(path.join(dir, file.path)));
  if (there) return { because: "taken", file: there.path };
  const made: string[] = [];
  let isWritten = false;
  try {
    for (const file of files) {
      const because = writeOne(dir, file, made);
      if (because) return { because, file: file.path };
    }
    isWritten = true;
    return undefined;
  } finally {
    if (!isWritten) for (const each of made.toReversed()) takeAway(each);
  }
}

/** Takes back files that `writeNew` has just written, where what belongs to them could not be. */
export function takeBack(dir: string, files: readonly NewFile[]): void {
  for (const file of files) takeAway(path.join(dir, file.path));
}

function isThere(place: string): boolean {
  return fs.lstatSync(place, { throwIfNoEntry: false }) !== undefined;
}

/**
 * Writes a file that is not there yet, and its folder.
 *
 * @param made gains what came into being, the folder before the file
 */
function writeOne(
  dir: string,
  file: NewFile,
  made: string[],
): NotWrittenAnew["because"] | undefined {
  const place = path.join(dir, file.path);
  return onMachine("write", place, () => {
    if (!makeFolder(dir, path.dirname(place), made)) return "outside" as const;
    try {
      writeWholeAnew(place, file.content);
    } catch (cause) {
      // Another program has put it there in the meantime: that is not ours to take away.
      if (errorCode(cause) === "EEXIST") return "taken" as const;
      throw cause;
    }
    made.push(place);
    return undefined;
  });
}

/** Makes the folders that are not there; false where one of them leads out of the archive. */
function makeFolder(dir: string, folder: string, made: string[]): boolean {
  if (isThere(folder)) return !liesOutside(dir, path.join(folder, "any"));
  if (!makeFolder(dir, path.dirname(folder), made)) return false;
  fs.mkdirSync(folder);
  made.push(folder);
  return true;
}

/** A folder goes only where nothing else has come into it meanwhile. */
function takeAway(file: string): void {
  try {
    if (fs.lstatSync(file).isDirectory()) fs.rmdirSync(file);
    else fs.unlinkSync(file);
  } catch (cause) {
    if (!["ENOENT", "ENOTEMPTY", "EEXIST"].includes(errorCode(cause) ?? "")) throw cause;
  }
}
