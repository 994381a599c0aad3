/** A name for a file where no other has it yet. */
import fs from "node:fs";
import path from "node:path";
import { errorCode } from "./machine-error.ts";

/**
 * Gives a file a second name: unlike a renaming, this fails where the name is taken.
 *
 * @throws what the system says where it cannot be given, `EEXIST` where it is taken
 */
export function giveName(source: string, target: string): void {
  try {
    fs.linkSync(source, target);
  } catch (cause) {
    if (errorCode(cause) === "EEXIST") throw cause;
    // A memory card or a network share may know no second names: there the file is copied.
    const { atime, mtime } = fs.statSync(source);
    fs.copyFileSync(source, target, fs.constants.COPYFILE_EXCL);
    fs.utimesSync(target, atime, mtime);
  }
}

/**
 * Whether a link leads the folder of a file out of the archive.
 *
 * @param dir the archive
 * @param file whole, in a folder that is there
 */
export function liesOutside(dir: string, file: string): boolean {
  const [root, folder] = [fs.realpathSync(dir), fs.realpathSync(path.dirname(file))];
  return folder !== root && !folder.startsWith(root + path.sep);
}

/** @throws where a file lies outside of the archive: see `liesOutside` */
export function refuseOutside(dir: string, file: string): void {
  if (liesOutside(dir, file)) throw new Error("it lies outside of the archive");
}
