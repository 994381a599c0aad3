import { randomBytes } from "node:crypto";
import { mkdir, readFile, rename, rm, stat, utimes, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { hasCode } from "../disk/machine-error.ts";
import type { Derived } from "./derive.ts";
import type { PictureFault } from "./fault.ts";
import { hashOf } from "./hash.ts";
import type { PictureWarning } from "./quality.ts";
import { type OutputFormat, outputs } from "./recipe.ts";
import { readSealed, seal, writeSealed } from "./sealed.ts";

/**
 * What is remembered of one source under one recipe: a folder named after both, holding the
 * pictures made, `record.json` about them, and a `reading-*.json` for each measurement. Names of
 * files are made here and never read; what bears no seal of this user and this code is not believed.
 */
export type StoredEntry = StoredPictures | { readonly fault: PictureFault };

export interface StoredPictures {
  readonly placeholder: string;
  readonly warnings: readonly PictureWarning[];
  readonly files: readonly StoredFile[];
}

export interface StoredFile {
  readonly format: OutputFormat;
  readonly width: number;
  readonly height: number;
  readonly size: number;
  /** When it was written, in milliseconds: a file written to since is looked at again. */
  readonly modified: number;
  readonly sha256: string;
}

const day = 24 * 60 * 60 * 1000;

export function entryFolder(cacheDir: string, name: string): string {
  return join(entriesFolder(cacheDir), name.slice(0, 2), name);
}

export function entriesFolder(cacheDir: string): string {
  return join(cacheDir, "pictures", "made");
}

/** A folder for what is not yet, or no longer, an entry. On the same disk, so it can be renamed. */
export function temporaryFolder(cacheDir: string): string {
  return join(cacheDir, "pictures", "temporary");
}

/** The name of a picture, in the cache and on the site. */
export function fileName(name: string, { format, width }: Pick<StoredFile, "format" | "width">) {
  const { extension } = outputs.find((output) => output.format === format) ?? outputs[0];
  return `${name.slice(0, 12)}-${width}.${extension}`;
}

/** An entry, or why there is none to be had. */
export type EntryReading = StoredEntry | "absent" | "damaged";

/** Reads an entry. It is damaged where anything of it was not written here, or changed since. */
export async function readEntry(cacheDir: string, name: string): Promise<EntryReading> {
  const folder = entryFolder(cacheDir, name);
  const record = join(folder, "record.json");
  const remembered = await readSealed(record, name);
  if (remembered.state !== "sound") return remembered.state;
  const entry = remembered.value as StoredEntry;
  const checked = "fault" in entry ? entry : await checkFiles(folder, name, entry);
  if (!checked) return "damaged";
  await markUsed(record);
  return checked;
}

/** Sizes and times tell that a file is untouched; otherwise its content must be what it was. */
async function checkFiles(
  folder: string,
  name: string,
  entry: StoredPictures,
): Promise<StoredPictures | undefined> {
  const pathOf = (file: StoredFile) => join(folder, fileName(name, file));
  const states = await Promise.all(entry.files.map((file) => checkFile(pathOf(file), file)));
  if (states.includes("damaged")) return undefined;
  if (!states.includes("touched")) return entry;
  const files = await Promise.all(
    entry.files.map(async (file) => ({ ...file, modified: (await stat(pathOf(file))).mtimeMs })),
  );
  await writeSealed(join(folder, "record.json"), name, { ...entry, files });
  return { ...entry, files };
}

async function checkFile(
  path: string,
  { size, modified, sha256 }: StoredFile,
): Promise<"damaged" | "touched" | "untouched"> {
  try {
    const found = await stat(path);
    if (found.size !== size) return "damaged";
    if (found.mtimeMs === modified) return "untouched";
    return hashOf(await readFile(path)) === sha256 ? "touched" : "damaged";
  } catch (error) {
    if (hasCode(error, "ENOENT", "ENOTDIR", "EISDIR")) return "damaged";
    throw error;
  }
}

/** Pruning goes by the record's time; once a day is often enough to set it. */
async function markUsed(record: string): Promise<void> {
  const { mtimeMs } = await stat(record);
  const now = new Date();
  if (now.getTime() - mtimeMs > day) await utimes(record, now, now);
}

/** Writes what was made as an entry, in place of a damaged one. It appears whole or not at all. */
export async function writeEntry(
  cacheDir: string,
  name: string,
  made: Pick<StoredPictures, "placeholder" | "warnings"> & Pick<Derived, "files">,
): Promise<StoredPictures> {
  const folder = await makeTemporaryFolder(cacheDir);
  const files: StoredFile[] = [];
  for (const { format, width, height, bytes } of made.files) {
    const path = join(folder, fileName(name, { format, width }));
    await writeFile(path, bytes);
    const { size, mtimeMs: modified } = await stat(path);
    files.push({ format, width, height, size, modified, sha256: hashOf(bytes) });
  }
  const entry = { placeholder: made.placeholder, warnings: made.warnings, files };
  await writeFile(join(folder, "record.json"), seal(name, entry));
  await moveIntoPlace(cacheDir, folder, entryFolder(cacheDir, name));
  return entry;
}

/** Remembers that a source cannot be decoded. */
export async function writeFaultEntry(
  cacheDir: string,
  name: string,
  fault: PictureFault,
): Promise<void> {
  const folder = await makeTemporaryFolder(cacheDir);
  await writeFile(join(folder, "record.json"), seal(name, { fault }));
  await moveIntoPlace(cacheDir, folder, entryFolder(cacheDir, name));
}

async function makeTemporaryFolder(cacheDir: string): Promise<string> {
  const folder = join(temporaryFolder(cacheDir), randomBytes(9).toString("hex"));
  await mkdir(folder, { recursive: true });
  return folder;
}

/**
 * A folder cannot be renamed over a full one, so what stands there is moved aside first. Where
 * another process has put the same entry there meanwhile, that one serves.
 */
async function moveIntoPlace(cacheDir: string, folder: string, place: string): Promise<void> {
  await mkdir(join(place, ".."), { recursive: true });
  const aside = join(temporaryFolder(cacheDir), randomBytes(9).toString("hex"));
  if (await move(place, aside, "ENOENT")) await rm(aside, { recursive: true, force: true });
  if (await move(folder, place, "ENOTEMPTY", "EEXIST")) return;
  await rm(folder, { recursive: true, force: true });
}

/** Renames; false where it cannot be done for one of the reasons that are expected. */
async function move(from: string, to: string, ...expected: string[]): Promise<boolean> {
  try {
    await rename(from, to);
    return true;
  } catch (error) {
    if (hasCode(error, ...expected)) return false;
    throw error;
  }
}

/** Finds a measurement that was remembered, or makes it and remembers it. */
export async function findOrMakeReading<Value>(
  cacheDir: string,
  name: string,
  id: string,
  make: () => Promise<Value>,
): Promise<Value> {
  const known = await readSealed(readingFile(cacheDir, name, id), readingOf(name, id));
  if (known.state === "sound") return known.value as Value;
  const value = await make();
  await writeReading(cacheDir, name, id, value);
  return value;
}

export function writeReading(
  cacheDir: string,
  name: string,
  id: string,
  value: unknown,
): Promise<void> {
  return writeSealed(readingFile(cacheDir, name, id), readingOf(name, id), value);
}

function readingFile(cacheDir: string, name: string, id: string): string {
  return join(entryFolder(cacheDir, name), `reading-${hashOf(id).slice(0, 16)}.json`);
}

function readingOf(name: string, id: string): string {
  return JSON.stringify([name, id]);
}
