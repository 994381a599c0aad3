/** Reads the archive that lies in a folder. */
import { type ReadArchive, readArchiveFiles } from "../reader/read-archive-files.ts";
import { withFiles } from "../reader/with-files.ts";
import { folderFiles } from "./folder-files.ts";
import { textParser } from "./parse-text.ts";

export interface ReadOptions {
  /** Ids of the materials that Tilebook knows without a record. */
  readonly builtInMaterials: Iterable<string>;
  /** Files as they are in an editor, by their paths in the archive, in place of what the disk has of them. */
  readonly unsaved?: ReadonlyMap<string, string>;
}

/**
 * Reads an archive. Nothing of a text is remembered on disk: what was read of a tile that is gone
 * would outlive it there.
 *
 * @param dir the folder that holds studio.yaml
 * @throws MachineError where the disk or a permission fails
 */
export async function readArchive(dir: string, options: ReadOptions): Promise<ReadArchive> {
  const { builtInMaterials, unsaved = new Map() } = options;
  const files = withFiles(folderFiles(dir), unsaved);
  return readArchiveFiles(files, { builtInMaterials, texts: textParser });
}
