/** Reads the archive that lies in a folder. */
import { type ReadArchive, readArchiveFiles } from "../reader/read-archive-files.ts";
import { folderCache } from "./folder-cache.ts";
import { folderFiles } from "./folder-files.ts";
import { noCache } from "./parse-cache.ts";
import { textParser } from "./parse-text.ts";

export interface ReadOptions {
  /** Ids of the materials that Tilebook knows without a record. */
  readonly builtInMaterials: Iterable<string>;
  /** The folder in which parsed files are remembered; nothing is where none is named. */
  readonly cacheDir?: string;
}

/**
 * Reads an archive.
 *
 * @param dir the folder that holds studio.yaml
 * @throws MachineError where the disk or a permission fails
 */
export async function readArchive(dir: string, options: ReadOptions): Promise<ReadArchive> {
  const cache = options.cacheDir === undefined ? noCache : folderCache(options.cacheDir);
  const read = readArchiveFiles(folderFiles(dir), {
    builtInMaterials: options.builtInMaterials,
    texts: textParser(cache),
  });
  cache.save();
  return read;
}
