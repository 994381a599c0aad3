/** Writing a file whole or not at all: whoever puts a file in the place of another does it here. */
import { randomBytes } from "node:crypto";
import fs from "node:fs";
import path from "node:path";
import { giveName } from "./give-name.ts";

/** How a file is written. */
export interface Writing {
  /** Its permissions; those of any new file where left out. */
  readonly mode?: number;
  /** Whether it must be on the disk before what was there is let go: for what somebody wrote. */
  readonly isPrecious?: boolean;
}

/**
 * Writes a file, and the folder it lies in. It is written beside its place and then renamed into it:
 * a program killed meanwhile, or a disk that is full, leaves what was there, and no half of the new.
 *
 * @throws what the system says where it cannot be written; what was begun is taken away
 */
export function writeWhole(
  place: string,
  content: string | Uint8Array,
  writing: Writing = {},
): void {
  fs.mkdirSync(path.dirname(place), { recursive: true });
  const beside = nameBeside(place);
  try {
    writeNew(beside, content, writing);
    fs.renameSync(beside, place);
  } catch (cause) {
    fs.rmSync(beside, { force: true });
    throw cause;
  }
}

/**
 * Writes a file that is not there yet, whole and on the disk before it has its name; its folder is
 * there.
 *
 * @throws what the system says where it cannot be written, `EEXIST` where the name is taken
 */
export function writeWholeAnew(place: string, content: string | Uint8Array): void {
  const beside = nameBeside(place);
  try {
    writeNew(beside, content, { isPrecious: true });
    giveName(beside, place);
  } finally {
    fs.rmSync(beside, { force: true });
  }
}

function nameBeside(place: string): string {
  const random = randomBytes(6).toString("hex");
  return path.join(path.dirname(place), `.${path.basename(place)}.${random}.tmp`);
}

function writeNew(file: string, content: string | Uint8Array, writing: Writing): void {
  const opened = fs.openSync(file, "wx", writing.mode);
  try {
    // What a process may not give to new files, it may give to this one.
    if (writing.mode !== undefined) fs.fchmodSync(opened, writing.mode);
    fs.writeFileSync(opened, content);
    if (writing.isPrecious) fs.fsyncSync(opened);
  } finally {
    fs.closeSync(opened);
  }
}

/**
 * Puts content in the place of a file that somebody wrote. It keeps its permissions; where the path
 * is a link, what it leads to is replaced. It is on the disk before the old content is let go.
 *
 * @throws what the system says where it cannot be written; the old file is still there then
 */
export function replaceWhole(file: string, content: string | Uint8Array): void {
  const place = fs.realpathSync(file);
  writeWhole(place, content, { mode: fs.statSync(place).mode & 0o7777, isPrecious: true });
}
