/** What the pages of the desk, and their scripts and the server, say to each other. */
import type { ReadArchive } from "../reader/read-archive-files.ts";
import type { Archive } from "../records/archive.ts";

/** The archive as the desk reads it: what is faulty is among its problems, and not among its records. */
export type DeskArchive = ReadArchive & { readonly archive: Archive };

/** A file that was written, and its lines that hold what is new. */
export interface WrittenFile {
  /** Relative to the archive. */
  readonly file: string;
  readonly lines: readonly { readonly line: number; readonly text: string }[];
}

/** What came of writing, in words for whoever asked for it. */
export interface Written {
  readonly written: boolean;
  /** What was written and where; or why nothing was, and what to do. */
  readonly words: string;
  /** None where nothing was written. */
  readonly files: readonly WrittenFile[];
}
