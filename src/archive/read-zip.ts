/**
 * Reads a zip that somebody handed in. It may come from anyone: what a zip of tiles never holds is
 * refused before anything of it is unpacked, and nothing is unpacked but into memory.
 */
import { statSync } from "node:fs";
import { crc32 } from "node:zlib";
import yauzl, { type Entry, type ZipFile } from "yauzl";
import { onMachine } from "../disk/machine-error.ts";
import type { Contents } from "../reader/archive-files.ts";
import { idKey } from "../terms/ids.ts";
import { largestUnzipped, largestZip, mostZipEntries } from "../terms/limits.ts";
import {
  cutOff,
  damaged,
  findEntryFault,
  holdsTwice,
  notAZip,
  tooLarge,
  tooMany,
  tooMuch,
  type ZipFault,
} from "./zip-faults.ts";

/** A file of a zip. */
export interface ZippedFile {
  /** As the zip names it, with `/`. */
  readonly path: string;
  readonly contents: Contents;
}

export type ZipReading =
  | { readonly ok: true; readonly files: readonly ZippedFile[] }
  | { readonly ok: false; readonly fault: ZipFault };

/**
 * Reads the files of a zip, or nothing of it.
 *
 * @param largestOf the most bytes that are read of a file, by its path: 0 for none of it
 * @throws MachineError where the disk or a permission fails
 */
export async function readZip(
  file: string,
  largestOf: (path: string) => number,
): Promise<ZipReading> {
  const { size } = onMachine("read", file, () => statSync(file));
  if (size > largestZip) return { ok: false, fault: tooLarge(size) };
  const zip = await openZip(file);
  if (!zip) return { ok: false, fault: notAZip };
  try {
    const listed = await listEntries(zip);
    return Array.isArray(listed)
      ? await unpackAll(zip, listed, largestOf)
      : { ok: false, fault: listed };
  } finally {
    zip.close();
  }
}

/** Undefined where the file has no zip's end. */
async function openZip(file: string): Promise<ZipFile | undefined> {
  try {
    return await yauzl.openPromise(file, { decodeStrings: false, autoClose: false });
  } catch {
    return undefined;
  }
}

interface Listed {
  readonly path: string;
  readonly entry: Entry;
}

/** Every file of a zip, or why none of it is read. Nothing is unpacked yet. */
async function listEntries(zip: ZipFile): Promise<Listed[] | ZipFault> {
  if (zip.entryCount > mostZipEntries) return tooMany;
  const listed = new Map<string, Listed>();
  let unpacked = 0;
  try {
    for await (const entry of zip.eachEntry()) {
      const path = pathOf(entry);
      const fault = findEntryFault(entry, path, yauzl.validateFileName(path) !== null);
      if (fault) return fault;
      if (path.endsWith("/")) continue;
      const key = idKey(path);
      if (listed.has(key)) return holdsTwice(path);
      listed.set(key, { path, entry });
      unpacked += entry.uncompressedSize;
      if (unpacked > largestUnzipped) return tooMuch;
    }
  } catch {
    return cutOff;
  }
  return [...listed.values()];
}

function pathOf({ generalPurposeBitFlag, fileNameRaw, extraFields }: Entry): string {
  return yauzl.getFileNameLowLevel(generalPurposeBitFlag, fileNameRaw, extraFields, false);
}

async function unpackAll(
  zip: ZipFile,
  listed: readonly Listed[],
  largestOf: (path: string) => number,
): Promise<ZipReading> {
  const files: ZippedFile[] = [];
  for (const { path, entry } of listed) {
    const contents =
      entry.uncompressedSize > largestOf(path)
        ? { tooLarge: entry.uncompressedSize }
        : await unpack(zip, entry);
    if (!contents) return { ok: false, fault: damaged(path) };
    files.push({ path, contents });
  }
  return { ok: true, files };
}

/** Undefined where it does not unpack to what the zip says of it: never more than it says. */
async function unpack(zip: ZipFile, entry: Entry): Promise<Contents | undefined> {
  try {
    const parts: Buffer[] = [];
    let length = 0;
    for await (const part of await zip.openReadStreamPromise(entry)) {
      length += (part as Buffer).length;
      if (length > entry.uncompressedSize) return undefined;
      parts.push(part as Buffer);
    }
    const bytes = Buffer.concat(parts);
    const isWhole = length === entry.uncompressedSize && crc32(bytes) === entry.crc32;
    return isWhole ? { bytes } : undefined;
  } catch {
    return undefined;
  }
}
