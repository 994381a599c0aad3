/** The archive that hand-ins are held beside. */
import type { Archive } from "../records/archive.ts";

export interface KnownArchive {
  readonly archive: Archive;
  /** Every record's file, read or not. */
  readonly recordFiles: readonly {
    readonly kind: string;
    readonly id: string;
    readonly file: string;
  }[];
  /** What each of them held. */
  readonly texts: ReadonlyMap<string, string>;
}
