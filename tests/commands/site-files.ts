/** What lies in a folder, file by file. */
import { createHash } from "node:crypto";
import { readdir, readFile, stat } from "node:fs/promises";
import { join, relative, sep } from "node:path";
import { gunzipSync } from "node:zlib";
import { unpackData } from "../support/unpack-data.ts";

/** The files below a folder, as paths from it with forward slashes, sorted. */
export async function listFiles(folder: string): Promise<string[]> {
  const entries = await readdir(folder, { recursive: true, withFileTypes: true });
  return entries
    .filter((entry) => entry.isFile())
    .map((entry) => relative(folder, join(entry.parentPath, entry.name)).split(sep).join("/"))
    .sort();
}

/** The sum of every file's bytes, by its path. */
export async function sumsOf(folder: string): Promise<Record<string, string>> {
  const files = await listFiles(folder);
  const sums = files.map(async (file) => {
    const bytes = await readFile(join(folder, file));
    return [file, createHash("sha256").update(bytes).digest("hex")] as const;
  });
  return Object.fromEntries(await Promise.all(sums));
}

/** The number by which the disk knows each file, by its path: the same file keeps its own. */
export async function inodesOf(folder: string): Promise<Record<string, number>> {
  const files = await listFiles(folder);
  const inodes = files.map(async (file) => [file, (await stat(join(folder, file))).ino] as const);
  return Object.fromEntries(await Promise.all(inodes));
}

/** Which files hold some words in any case, those that Pagefind packed and tables included. */
export async function filesThatHold(folder: string, words: string): Promise<string[]> {
  const found: string[] = [];
  for (const file of await listFiles(folder)) {
    const text = await unpackData(file, unpack(await readFile(join(folder, file))));
    if (text.toLowerCase().includes(words.toLowerCase())) found.push(file);
  }
  return found;
}

function unpack(bytes: Buffer): Buffer {
  return bytes[0] === 0x1f && bytes[1] === 0x8b ? gunzipSync(bytes) : bytes;
}
