import { readdirSync } from "node:fs";
import { join, relative, sep } from "node:path";
import { fileURLToPath } from "node:url";

/** The folder that holds the whole project. */
export const project = fileURLToPath(new URL("../..", import.meta.url));

/** Folders that no commit holds: what is installed, built or remembered. */
const untracked = new Set([".git", "node_modules", ".cache", ".tilebook", "dist", "site"]);

/** All files of the project below a folder, as paths from its root with forward slashes, sorted. */
export function listFiles(folder = ""): readonly string[] {
  return readdirSync(join(project, folder), { withFileTypes: true })
    .flatMap((entry) => {
      const path = join(folder, entry.name);
      // In a second working tree of the repository, .git is a file.
      if (untracked.has(path)) return [];
      if (entry.isFile()) return [relative("", path).split(sep).join("/")];
      return entry.isDirectory() ? listFiles(path) : [];
    })
    .sort();
}

/** The files of program code in src/ and templates/. */
export function listSources(): readonly string[] {
  return listFiles().filter((path) => /^(src|templates)\/.+\.(tsx?|mjs)$/.test(path));
}
