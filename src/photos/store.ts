import { randomBytes } from "node:crypto";
import { mkdir, readFile, rename, rm, stat, utimes, writeFile } from "node:fs/promises";
import { join } from "node:path";
import type { Derived } from "./derive.ts";
import type { PictureFault } from "./fault.ts";
import { hasCode, readJson, writeWhole } from "./files.ts";
import type { PictureWarning } from "./quality.ts";
import { hashOf, type OutputFormat } from "./recipe.ts";

/**
 * What is remembered of one source under one recipe: a folder named after both, holding the
 * pictures made, `record.json` about them, and a `reading-*.json` for each measurement.
 */
export type StoredEntry = StoredPictures | { fault: PictureFault };

export interface StoredPictures {
  placeholder: string;
  warnings: PictureWarning[];
  files: StoredFile[];
}

export interface StoredFile {
  format: OutputFormat;
  width: number;
  height: number;
  file: string;
  size: number;
  /** When it was written, in milliseconds: a file written to since is looked at again. */
  modified: number;
  sha256: string;
}

const DAY = 24 * 60 * 60 * 1000;

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

/** Reads an entry, or gives undefined where there is none or anything in it is damaged. */
export async function readEntry(cacheDir: string, name: string): Promise<StoredEntry | undefined> {
  const folder = entryFolder(cacheDir, name);
  const entry = (await readJson(join(folder, "record.json"))) as StoredEntry | undefined;
  if (!entry) return undefined;
  const checked = "fault" in entry ? entry : await checkFiles(folder, entry);
  if (checked) await markUsed(join(folder, "record.json"));
  return checked;
}

/** Sizes and times tell that a file is untouched; otherwise its content must be what it was. */
async function checkFiles(
  folder: string,
  entry: StoredPictures,
): Promise<StoredPictures | undefined> {
  const states = await Promise.all(entry.files.map((file) => checkFile(folder, file)));
  if (states.includes("damaged")) return undefined;
  if (!states.includes("touched")) return entry;
  const files = await Promise.all(entry.files.map((file) => withPresentTime(folder, file)));
  await writeRecord(folder, { ...entry, files });
  return { ...entry, files };
}

async function checkFile(
  folder: string,
  { file, size, modified, sha256 }: StoredFile,
): Promise<"damaged" | "touched" | "untouched"> {
  const path = join(folder, file);
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

async function withPresentTime(folder: string, file: StoredFile): Promise<StoredFile> {
  return { ...file, modified: (await stat(join(folder, file.file))).mtimeMs };
}

/** Pruning goes by the record's time; once a day is often enough to set it. */
async function markUsed(record: string): Promise<void> {
  const { mtimeMs } = await stat(record);
  const now = new Date();
  if (now.getTime() - mtimeMs > DAY) await utimes(record, now, now);
}

/** Writes what was made as an entry, in place of a damaged one. It appears whole or not at all. */
export async function writeEntry(
  cacheDir: string,
  name: string,
  made: Pick<StoredPictures, "placeholder" | "warnings"> & Pick<Derived, "files">,
): Promise<StoredPictures> {
  const folder = await makeTemporaryFolder(cacheDir);
  const files: StoredFile[] = [];
  for (const { format, extension, width, height, bytes } of made.files) {
    const file = `${name.slice(0, 12)}-${width}.${extension}`;
    await writeFile(join(folder, file), bytes);
    const { size, mtimeMs: modified } = await stat(join(folder, file));
    files.push({ format, width, height, file, size, modified, sha256: hashOf(bytes) });
  }
  const entry = { placeholder: made.placeholder, warnings: made.warnings, files };
  await writeFile(join(folder, "record.json"), JSON.stringify(entry));
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
  await writeFile(join(folder, "record.json"), JSON.stringify({ fault }));
  await moveIntoPlace(cacheDir, folder, entryFolder(cacheDir, name));
}

function writeRecord(folder: string, entry: StoredEntry): Promise<void> {
  return writeWhole(join(folder, "record.json"), JSON.stringify(entry));
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
  const known = await readJson(readingFile(cacheDir, name, id));
  if (known !== undefined) return known as Value;
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
  return writeWhole(readingFile(cacheDir, name, id), JSON.stringify(value));
}

function readingFile(cacheDir: string, name: string, id: string): string {
  return join(entryFolder(cacheDir, name), `reading-${hashOf(id).slice(0, 16)}.json`);
}
