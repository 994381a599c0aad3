/** What is left out of a site, and why. */
import type { KindOfRecord, RecordFile } from "../reader/found-files.ts";
import type { Archive } from "../records/archive.ts";
import type { FieldPath, Problem } from "../records/problem.ts";

/** An archive as it was read: what is sound of it, and every file there is. */
export interface WholeArchive {
  /** The records that were read wholly, with what they name followed. */
  readonly archive: Archive;
  /** The files of all records, faulty or not. */
  readonly files: readonly RecordFile[];
  readonly studioFile: string | undefined;
  /** What the files of records hold, by their names. */
  readonly texts: ReadonlyMap<string, string>;
}

/** A record that another one rests on. */
export interface Ground {
  readonly kind: KindOfRecord;
  readonly id: string;
  /** The field of the resting record that names it. */
  readonly path: FieldPath;
}

/** A file whose record is left out. */
export interface LeftOut {
  /** `file`: one that lies in the way and holds no record. */
  readonly kind: KindOfRecord | "file";
  readonly id: string;
  readonly file: string;
  /** The folder that the file lies in. */
  readonly folder: string;
  /** Its own errors. */
  readonly faults: readonly Problem[];
  /** What it rests on that is left out too; null where it is left out for its own errors alone. */
  readonly because: Ground | null;
}
