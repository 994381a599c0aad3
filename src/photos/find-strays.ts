import { closeSync, type Dirent, openSync, readSync } from "node:fs";
import { readdir } from "node:fs/promises";
import { join } from "node:path";
import { hasCode } from "../disk/machine-error.ts";
import { sniffFormat } from "./format.ts";

/** Deeper folders than these are no archive's. */
const deepest = 16;

/** As many first bytes tell what a file is. */
const lookedAt = 64;

/**
 * Finds pictures and films that lie in an archive and are none of those that are known: in its own
 * folder, and at any depth in `tiles` and `recipes`, names with a full stop first and READMEs
 * included. They are told by their first bytes, or else by what their names end with.
 *
 * @param dir the archive's folder
 * @param known files that are looked at elsewhere, relative to the archive, with `/`
 * @returns files relative to the archive, with `/`, in the order of their names
 */
export async function findStrayPictures(
  dir: string,
  known: ReadonlySet<string>,
): Promise<string[]> {
  const files = (await listFiles(dir, "", 0)).filter((file) => !known.has(file));
  return files.filter((file) => isPicture(file, join(dir, file))).sort();
}

/** Links are not followed: they are told elsewhere. */
async function listFiles(dir: string, folder: string, depth: number): Promise<string[]> {
  const entries = await listIn(join(dir, folder));
  const found = entries.map(async (entry) => {
    const file = folder === "" ? entry.name : `${folder}/${entry.name}`;
    if (entry.isFile()) return [file];
    const isInside = depth > 0 || /^(?:tiles|recipes)$/iu.test(entry.name);
    return entry.isDirectory() && isInside && depth < deepest
      ? await listFiles(dir, file, depth + 1)
      : [];
  });
  return (await Promise.all(found)).flat();
}

const names =
  /\.(?:jpe?g|jpe|jfif|png|webp|avif|tiff?|hei[cf]|gif|bmp|jxl|jp2|psd|xcf|dng|cr[23w]|nef|nrw|arw|srf|sr2|orf|rw2|raf|pef|srw|3fr|iiq|rwl|x3f|mov|mp4|m4v|3gp|avi)$/iu;

function isPicture(name: string, path: string): boolean {
  return names.test(name) || beginsLikePicture(readHead(path));
}

/** What may not be read, or is gone meanwhile, is told elsewhere. */
function isTold(error: unknown): boolean {
  return hasCode(error, "EACCES", "ENOENT", "EPERM");
}

async function listIn(folder: string): Promise<readonly Dirent[]> {
  try {
    return await readdir(folder, { withFileTypes: true });
  } catch (error) {
    if (isTold(error)) return [];
    throw error;
  }
}

/** Waits for the disk, which for thousands of small files is quicker than to be called back. */
function readHead(path: string): Uint8Array {
  let file: number | undefined;
  try {
    file = openSync(path, "r");
    const head = Buffer.alloc(lookedAt);
    return head.subarray(0, readSync(file, head, 0, lookedAt, 0));
  } catch (error) {
    if (isTold(error)) return Buffer.alloc(0);
    throw error;
  } finally {
    if (file !== undefined) closeSync(file);
  }
}

/** What other pictures, cameras' raw files and films begin with, and at which byte. */
const signatures: readonly (readonly [at: number, bytes: string])[] = [
  [0, "GIF8"],
  [0, "IIRO"],
  [0, "IIRS"],
  [0, "IIU\0"],
  [0, "FUJIFILMCCD-RAW"],
  [0, "FOVb"],
  [0, "8BPS"],
  [0, "\xff\x0a"],
  [0, "\0\0\0\x0cJXL "],
  [0, "\0\0\0\x0cjP  "],
  [0, "II\x2b\0"],
  [0, "MM\0\x2b"],
  [4, "ftyp"],
];

function beginsLikePicture(head: Uint8Array): boolean {
  const text = Buffer.from(head).toString("latin1");
  const isBitmap = text.startsWith("BM") && text.slice(6, 10) === "\0\0\0\0";
  return (
    sniffFormat(head) !== undefined ||
    isBitmap ||
    signatures.some(([at, bytes]) => text.startsWith(bytes, at))
  );
}
