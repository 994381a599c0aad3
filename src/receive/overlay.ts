/** An archive as it would be with more in it, so that the reader can read it before anything is written. */
import type { ArchiveFiles, Contents, FolderListing } from "../reader/archive-files.ts";
import { baseOf, folderOf } from "./hand-in.ts";

/**
 * The files of an archive with some more, or with other content.
 *
 * @param added the content by the file's path in the archive
 */
export function withFiles(
  archive: ArchiveFiles,
  added: ReadonlyMap<string, string | Uint8Array>,
): ArchiveFiles {
  const byFolder = new Map<string, string[]>();
  for (const path of added.keys()) {
    const folder = folderOf(path);
    byFolder.set(folder, [...(byFolder.get(folder) ?? []), baseOf(path)]);
  }
  const folders = [...byFolder.keys()];
  return {
    list(folder) {
      const listing = archive.list(folder);
      const files = byFolder.get(folder);
      const inside = folders.filter((each) => folderOf(each) === folder && each !== "").map(baseOf);
      if (!files && inside.length === 0) return listing;
      return addTo(listing ?? { files: [], folders: [], problems: [] }, files ?? [], inside);
    },
    read(file, largest) {
      const content = added.get(file);
      return content === undefined ? archive.read(file, largest) : readContent(content, largest);
    },
  };
}

function addTo(
  { files, folders, problems }: FolderListing,
  addedFiles: readonly string[],
  addedFolders: readonly string[],
): FolderListing {
  const join = (some: readonly string[], more: readonly string[]) =>
    [...new Set([...some, ...more])].sort();
  return { files: join(files, addedFiles), folders: join(folders, addedFolders), problems };
}

function readContent(content: string | Uint8Array, largest: number): Contents {
  const bytes = typeof content === "string" ? new TextEncoder().encode(content) : content;
  return bytes.length > largest ? { tooLarge: bytes.length } : { bytes };
}
