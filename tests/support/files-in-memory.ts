/** Archives that lie on no disk. */
import type { ArchiveFiles } from "../../src/reader/archive-files.ts";

/** Texts by their paths. */
export type Texts = Readonly<Record<string, string>>;

/** An archive of some texts. */
export function filesOf(texts: Texts): ArchiveFiles {
  const paths = Object.keys(texts);
  return {
    list(folder) {
      const prefix = folder === "" ? "" : `${folder}/`;
      const below = paths.filter((path) => path.startsWith(prefix));
      if (folder !== "" && below.length === 0) return null;
      const names = below.map((path) => path.slice(prefix.length).split("/"));
      const [files, folders] = [
        names.filter(({ length }) => length === 1),
        names.filter(({ length }) => length > 1),
      ].map((some) => [...new Set(some.map(([name = ""]) => name))].sort());
      return { files: files ?? [], folders: folders ?? [], problems: [] };
    },
    read: (file) => ({ bytes: new TextEncoder().encode(texts[file] ?? "") }),
  };
}
