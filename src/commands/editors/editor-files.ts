/** Files for editors that follow from an archive: schemas with its ids, and snippets that name them. */
import { existsSync, lstatSync, readFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { liesOutside } from "../../disk/give-name.ts";
import { writeWhole } from "../../disk/write-whole.ts";
import { editorSchemas } from "../../editing/editor-schemas.ts";
import { namingSnippets } from "../../editing/snippets.ts";
import type { Archive } from "../../records/archive.ts";

/** Where the snippets with ids lie; git is to pass it over. */
export const namingFile = ".vscode/tilebook-ids.code-snippets";

/** Whether somebody's editor is set up for the archive: only then is anything written for it. */
const signs = [".tilebook", ".vscode/tilebook.code-snippets", ".helix/languages.toml"];

/**
 * Writes what editors are offered of an archive, where its folder is set up for one and where it would change. It
 * is a convenience: where it cannot be written, nothing is said and nothing fails.
 *
 * @param archive null where it cannot be read: then what was there stays
 */
export function keepEditorFiles(dir: string, archive: Archive | null): void {
  try {
    if (archive && signs.some((sign) => existsSync(join(dir, sign))))
      writeEditorFiles(dir, archive);
  } catch {
    // A folder that can only be read, a full disk: the command itself says so where it matters.
  }
}

/**
 * Writes them wherever the archive lies.
 *
 * @returns the files that were written, those left out that would be no other than they are
 * @throws what the system says where one cannot be written
 */
export function writeEditorFiles(dir: string, archive: Archive): readonly string[] {
  const files = new Map([
    // The folder keeps itself out of git, in archives whose .gitignore does not know it too.
    [".tilebook/.gitignore", "*\n"],
    ...[...editorSchemas(archive)].map(
      ([name, text]) => [`.tilebook/schemas/${name}`, text] as const,
    ),
    ...(isPassedOverByGit(dir) ? [[namingFile, namingSnippets(archive)] as const] : []),
  ]);
  return [...files].flatMap(([file, text]) => (writeIfOther(dir, file, text) ? [file] : []));
}

/** Whether the archive's .gitignore names the snippets with ids, so that they come into no commit. */
export function isPassedOverByGit(dir: string): boolean {
  const lines = readIfThere(join(dir, ".gitignore"))?.split(/\r?\n/u) ?? [];
  return lines.some((line) => line.trim().replace(/^\//u, "") === namingFile);
}

function writeIfOther(dir: string, file: string, text: string): boolean {
  const place = join(dir, file);
  if (leadsOutside(dir, file) || readIfThere(place) === text) return false;
  writeWhole(place, text);
  return true;
}

/** Whether a link leads a file, or the nearest folder around it that is there, out of the archive. */
export function leadsOutside(dir: string, file: string): boolean {
  const place = join(dir, file);
  if (lstatSync(place, { throwIfNoEntry: false })?.isSymbolicLink()) return true;
  const folder = dirname(file);
  if (existsSync(dirname(place)) || folder === ".") return liesOutside(dir, place);
  return leadsOutside(dir, folder);
}

function readIfThere(file: string): string | undefined {
  return existsSync(file) ? readFileSync(file, "utf8") : undefined;
}
