/** An archive as it would be with more in it, so that it can be read before anything is written. */
import type { ArchiveFiles, Contents, FolderListing } from "./archive-files.ts";

const nothing: FolderListing = { files: [], folders: [], problems: [] };

/** An archive without any file. */
const empty: ArchiveFiles = {
  list: (folder) => (folder === "" ? nothing : null),
  read: () => ({ bytes: new Uint8Array() }),
};

/** An archive that lies on no disk, its files' content by their paths. */
export function filesOfTexts(texts: ReadonlyMap<string, string>): ArchiveFiles {
  return withFiles(empty, texts);
}

/**
 * The files of an archive with some more, or with other content.
 *
 * @param added the content by the file's path in the archive
 */
export function withFiles(
  archive: ArchiveFiles,
  added: ReadonlyMap<string, string | Uint8Array>,
): ArchiveFiles {
  const byFolder = namesByFolder([...added.keys()]);
  return {
    list(folder) {
      const listing = archive.list(folder);
      const names = byFolder.get(folder);
      return names ? addTo(listing ?? nothing, names) : listing;
    },
    read(file, largest) {
      const content = added.get(file);
      return content === undefined ? archive.read(file, largest) : readContent(content, largest);
    },
  };
}

interface Names {
  readonly files: Set<string>;
  readonly folders: Set<string>;
}

/** What lies in each folder that leads to a path, the archive's own folder among them. */
function namesByFolder(paths: readonly string[]): ReadonlyMap<string, Names> {
  const byFolder = new Map<string, Names>();
  for (const path of paths) {
    const parts = path.split("/");
    for (const [depth, name] of parts.entries()) {
      const folder = parts.slice(0, depth).join("/");
      const names = byFolder.get(folder) ?? { files: new Set(), folders: new Set() };
      byFolder.set(folder, names);
      (depth === parts.length - 1 ? names.files : names.folders).add(name);
    }
  }
  return byFolder;
}

function addTo({ files, folders, problems }: FolderListing, added: Names): FolderListing {
  const join = (some: readonly string[], more: Set<string>) =>
    [...new Set([...some, ...more])].sort();
  return {
    files: join(files, added.files),
    folders: join(folders, added.folders),
    problems,
  };
}

function readContent(content: string | Uint8Array, largest: number): Contents {
  const bytes = typeof content === "string" ? new TextEncoder().encode(content) : content;
  return bytes.length > largest ? { tooLarge: bytes.length } : { bytes };
}
