/**
 * What this computer remembers of the files of the last site, beside the pictures in the cache: of
 * which inputs each was made, and how to tell that it is still the same file. It is sealed, and holds
 * sums alone, not even addresses, since those of unlisted sets are secrets.
 */
import { lstatSync, readFileSync, type Stats } from "node:fs";
import { join } from "node:path";
import { readSealed, writeSealed } from "../photos/sealed.ts";
import { sumOf } from "./sum.ts";

/** What is remembered of a file. */
export interface FileFacts {
  /** The sum of what it was made of. */
  readonly key: string;
  /** The sum of its bytes. */
  readonly sum: string;
  /** The sum of what a search is to find in it; empty where that is nothing. */
  readonly words: string;
}

export interface Ledger {
  /** What is remembered of a file of the last site, by its path there. */
  readonly find: (path: string) => FileFacts | undefined;
  /** Whether a file of the new site is what is remembered of it, byte for byte; if so, it is remembered on. */
  readonly keeps: (path: string, file: string) => boolean;
  /** Remembers a file that was written. */
  readonly note: (path: string, facts: FileFacts) => void;
  /** What is remembered of something that is made of several files. */
  readonly findWhole: (name: string) => string | undefined;
  readonly noteWhole: (name: string, sum: string) => void;
  /** Looks at what was written to the folder of the new site, and stores all. */
  readonly store: (folder: string) => Promise<void>;
}

/** A file as it lay on the disk when it was looked at. */
type Seen = readonly [size: number, modified: number, inode: number];
type Entry = readonly [key: string, sum: string, words: string, ...seen: Seen];

interface Stored {
  /** When the files were looked at, in milliseconds since 1970. */
  readonly at: number;
  readonly files: Readonly<Record<string, Entry>>;
  readonly wholes: Readonly<Record<string, string>>;
}

/** So long after a file was written it may be written to again and bear the same time: two seconds on some disks. */
const sameMoment = 2000;

/**
 * Opens what is remembered of the site in a folder.
 *
 * @param cacheDir where work is remembered
 * @param siteFolder the real path of the folder
 */
export async function openLedger(cacheDir: string, siteFolder: string): Promise<Ledger> {
  const about = sumOf(siteFolder);
  const file = join(cacheDir, "sites", `${about}.json`);
  const remembered = await readSealed(file, about);
  const last = remembered.state === "sound" ? (remembered.value as Stored) : nothing;
  return makeLedger(last, (next) => writeSealed(file, about, next));
}

function makeLedger(last: Stored, write: (next: Stored) => Promise<void>): Ledger {
  const at = Date.now();
  const files: Record<string, Entry> = {};
  const wholes: Record<string, string> = {};
  const written = new Map<string, FileFacts>();
  return {
    find: (path) => {
      const entry = last.files[nameOf(path)];
      return entry && { key: entry[0], sum: entry[1], words: entry[2] };
    },
    keeps: (path, file) => {
      const name = nameOf(path);
      const entry = last.files[name];
      const seen = entry && lookAgain(file, entry, last.at);
      if (entry && seen) files[name] = [entry[0], entry[1], entry[2], ...seen];
      return seen !== undefined;
    },
    note: (path, facts) => written.set(path, facts),
    findWhole: (name) => last.wholes[nameOf(name)],
    noteWhole: (name, sum) => {
      wholes[nameOf(name)] = sum;
    },
    store: (folder) => {
      for (const [path, { key, sum, words }] of written)
        files[nameOf(path)] = [key, sum, words, ...seenOf(lstatSync(join(folder, path)))];
      return write({ at, files, wholes });
    },
  };
}

const nothing: Stored = { at: 0, files: {}, wholes: {} };

function nameOf(path: string): string {
  return sumOf(path);
}

function seenOf({ size, mtimeMs, ino }: Stats): Seen {
  return [size, mtimeMs, ino];
}

/**
 * A file that has the size, the time and the place on the disk that it had was not written to since,
 * unless that was in the same moment: then it is read.
 */
function lookAgain(file: string, entry: Entry, at: number): Seen | undefined {
  const [, sum, , size, modified, inode] = entry;
  const found = lstatSync(file);
  if (!found.isFile() || found.size !== size) return undefined;
  const isUntouched =
    found.mtimeMs === modified && found.ino === inode && modified < at - sameMoment;
  return isUntouched || sumOf(readFileSync(file)) === sum ? seenOf(found) : undefined;
}
