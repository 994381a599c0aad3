/** Settings for editors that an archive has in its repository. */
import { existsSync } from "node:fs";
import { mkdir, readFile, writeFile } from "node:fs/promises";
import { dirname, join } from "node:path";
import { compiledFolder } from "../../compiled/own-files.ts";
import { commonSnippets } from "../../editing/snippets.ts";
import { leadsOutside } from "./editor-files.ts";

/** Where the starter's settings for editors go in an archive. */
const copied: Readonly<Record<string, string>> = {
  "vscode/settings.json": ".vscode/settings.json",
  "vscode/extensions.json": ".vscode/extensions.json",
  "helix/languages.toml": ".helix/languages.toml",
};

/**
 * Writes the settings that are not there yet, over none that are.
 *
 * @returns the files that were written, and those that stay as they were
 */
export async function writeEditorSettings(
  dir: string,
): Promise<{ readonly written: readonly string[]; readonly kept: readonly string[] }> {
  const written: string[] = [];
  const kept: string[] = [];
  for (const [file, text] of await editorSettings()) {
    // Where a link leads out of the archive, nothing is written through it.
    const isThere = existsSync(join(dir, file)) || leadsOutside(dir, file);
    (isThere ? kept : written).push(file);
    if (isThere) continue;
    await mkdir(dirname(join(dir, file)), { recursive: true });
    await writeFile(join(dir, file), text);
  }
  return { written, kept };
}

/** Every file of settings by its place in an archive, and what it holds. */
async function editorSettings(): Promise<ReadonlyMap<string, string>> {
  const starter = join(await compiledFolder(), "starter");
  const read = Object.entries(copied).map(
    async ([from, to]) => [to, await readFile(join(starter, from), "utf8")] as const,
  );
  return new Map([
    ...(await Promise.all(read)),
    [".vscode/tilebook.code-snippets", commonSnippets()],
  ]);
}
