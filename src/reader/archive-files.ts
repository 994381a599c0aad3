/**
 * What the reader asks of the place an archive lies in: a folder, a zip, a browser. All else it does
 * is pure.
 */
import type { Problem } from "../records/problem.ts";

export interface FolderListing {
  /** Names of its files, in an order that depends on neither locale nor file system. */
  readonly files: readonly string[];
  /** Names of the folders in it, in the same order. */
  readonly folders: readonly string[];
  readonly problems: readonly Problem[];
}

/** A file's bytes, or how many there are where that is more than was asked for. */
export type Contents = { readonly bytes: Uint8Array } | { readonly tooLarge: number };

export interface ArchiveFiles {
  /**
   * Lists a folder of the archive; null where there is none of that name.
   *
   * @param folder relative to the archive, with `/`; empty for the archive itself
   */
  list(folder: string): FolderListing | null;
  /**
   * Reads a file of the archive.
   *
   * @param largest more bytes than this are not read
   */
  read(file: string, largest: number): Contents;
}

/** Lists a folder that another listing named; one that has gone since holds nothing. */
export function listKnown(archive: ArchiveFiles, folder: string): FolderListing {
  return archive.list(folder) ?? { files: [], folders: [], problems: [] };
}
