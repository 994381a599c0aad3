/** Where commands read and write, where nothing else is said. */
import { join } from "node:path";

export interface Folders {
  readonly archive: string;
  readonly out?: string;
  readonly cache?: string;
}

/** The folder for the site: `site` in the archive. */
export function siteFolderOf({ archive, out }: Folders): string {
  return out ?? join(archive, "site");
}

/** The folder in which work is remembered: `.cache` in the archive. */
export function cacheFolderOf({ archive, cache }: Folders): string {
  return cache ?? join(archive, ".cache");
}
