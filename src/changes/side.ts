/** One side of a comparison: the archive before a request, or after it. */
import type { KindOfRecord } from "../reader/found-files.ts";
import type { Version } from "./version.ts";

/** A record's file. */
export interface KnownFile {
  readonly kind: KindOfRecord;
  readonly id: string;
  readonly file: string;
}

/** An archive with every file that it has, read or not. */
export interface Side {
  /** Null where nothing of it could be read. */
  readonly version: Version | null;
  readonly files: readonly KnownFile[];
}
