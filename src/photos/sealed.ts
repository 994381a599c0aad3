import { lstat, readFile } from "node:fs/promises";
import { codeOf } from "../compiled/own-files.ts";
import { hasCode } from "../disk/machine-error.ts";
import { isSealed, sealOf } from "../disk/own-key.ts";
import { writeWhole } from "../disk/write-whole.ts";

/**
 * JSON that is remembered between builds. Its first line is a seal on the rest, on what it is about,
 * and on the code that made it, so that what was damaged, made by other code, moved from elsewhere in
 * the cache or made by somebody else is not believed.
 */
export type Remembered =
  | { readonly state: "absent" }
  | { readonly state: "damaged" }
  | { readonly state: "sound"; readonly value: unknown };

/** Reads what is remembered about something. */
export async function readSealed(path: string, about: string): Promise<Remembered> {
  try {
    // A named pipe would be waited for without end.
    if (!(await lstat(path)).isFile()) return { state: "damaged" };
    const text = await readFile(path, "utf8");
    const end = text.indexOf("\n");
    const content = text.slice(end + 1);
    if (end < 0 || !isSealed(sealedText(about, content), text.slice(0, end)))
      return { state: "damaged" };
    return { state: "sound", value: JSON.parse(content) };
  } catch (error) {
    if (hasCode(error, "ENOENT", "ENOTDIR")) return { state: "absent" };
    if (hasCode(error, ...notAllowed)) return { state: "damaged" };
    throw error;
  }
}

/**
 * Writes it, whole or not at all. Where nothing may be written it is not remembered, and found out
 * anew another time: whoever only looks at an archive need not be allowed to change it.
 */
export async function writeSealed(path: string, about: string, value: unknown): Promise<void> {
  try {
    writeWhole(path, seal(about, value));
  } catch (error) {
    if (!hasCode(error, ...notAllowed, ...notAFolder)) throw error;
  }
}

const notAllowed = ["EACCES", "EPERM", "EROFS"];

/** Something else is where a folder or a file should be. */
const notAFolder = ["EEXIST", "EISDIR", "ENOTDIR"];

/** What a file that is remembered holds. */
export function seal(about: string, value: unknown): string {
  const content = JSON.stringify(value);
  return `${sealOf(sealedText(about, content))}\n${content}`;
}

function sealedText(about: string, content: string): string {
  return JSON.stringify([codeOf(rooms), about, content]);
}

/** The rooms whose code decides what is remembered: a changed sentence or sum forgets what it made. */
const rooms = ["colour", "photos", "terms"];
