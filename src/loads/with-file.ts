/** An archive with one file in it that lies nowhere yet. */
import type { ArchiveFiles, FolderListing } from "../reader/archive-files.ts";

/** The same files, but one, which is added where it is not there. */
export function withFile(files: ArchiveFiles, file: string, text: string): ArchiveFiles {
  const parts = file.split("/");
  const bytes = new TextEncoder().encode(text);
  return {
    list(folder) {
      const listing = files.list(folder);
      const depth = folder === "" ? 0 : folder.split("/").length;
      if (parts.slice(0, depth).join("/") !== folder) return listing;
      const name = parts[depth];
      if (name === undefined) return listing;
      const isFile = depth === parts.length - 1;
      return withName(listing ?? { files: [], folders: [], problems: [] }, name, isFile);
    },
    read: (path, largest) => (path === file ? { bytes } : files.read(path, largest)),
  };
}

function withName(listing: FolderListing, name: string, isFile: boolean): FolderListing {
  const key = isFile ? "files" : "folders";
  if (listing[key].includes(name)) return listing;
  return { ...listing, [key]: [...listing[key], name].sort() };
}
