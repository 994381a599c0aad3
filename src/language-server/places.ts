/** Which archive a file that an editor shows belongs to. */
import { existsSync } from "node:fs";
import { dirname, join, relative, sep } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import { isOfArchive } from "../reader/passed-over.ts";

export interface FilePlace {
  /** The folder of the archive. */
  readonly dir: string;
  /** The file, relative to it, with `/`. */
  readonly file: string;
}

/** Undefined for what is no file of an archive, or lies on no disk. */
export function placeOfUri(uri: string): FilePlace | undefined {
  const path = pathOf(uri);
  const dir = path && findArchive(dirname(path));
  if (path === undefined || dir === undefined) return undefined;
  const file = relative(dir, path).split(sep).join("/");
  return isOfArchive(file) ? { dir, file } : undefined;
}

export function uriOf({ dir, file }: FilePlace): string {
  return pathToFileURL(join(dir, file)).href;
}

function pathOf(uri: string): string | undefined {
  try {
    return fileURLToPath(uri);
  } catch {
    // An editor has texts that are in no file as well.
    return undefined;
  }
}

/** The nearest folder around that holds a studio. */
function findArchive(folder: string): string | undefined {
  if (existsSync(join(folder, "studio.yaml"))) return folder;
  const above = dirname(folder);
  return above === folder ? undefined : findArchive(above);
}
