/** What was handed in, before anybody has looked at what it means. */
import type { Contents } from "../reader/archive-files.ts";

/** A file that was handed in. */
export interface HandedFile {
  /** Where it lies in its hand-in, with `/`. */
  readonly path: string;
  readonly read: () => Contents;
  /** True of one that only lies beside a spreadsheet: nothing is told of it where no row names it. */
  readonly isBeside?: boolean;
}

/** A zip, a folder, or the files that were named one by one. */
export interface HandIn {
  /** As people call it; empty for files that were named one by one. */
  readonly name: string;
  readonly files: readonly HandedFile[];
}

/** Something that is not taken in. */
export interface Refusal {
  /** What was handed in: a file, a zip, a row. */
  readonly what: string;
  /** Whole sentences: why not, and what to do. */
  readonly why: string;
}

/** A file of a hand-in as people find it again. */
export function nameOf(handIn: Pick<HandIn, "name">, path: string): string {
  return handIn.name === "" ? path : `${handIn.name}: ${path}`;
}

/** The last part of a path. */
export function baseOf(path: string): string {
  return path.slice(path.lastIndexOf("/") + 1);
}

/** The folder that a path lies in, without the last `/`; empty where it lies in none. */
export function folderOf(path: string): string {
  return path.slice(0, Math.max(0, path.lastIndexOf("/")));
}
