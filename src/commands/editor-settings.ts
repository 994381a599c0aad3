/** Settings for editors that an archive has in its repository. */
import { readFile } from "node:fs/promises";
import { join } from "node:path";
import { compiledFolder } from "../compiled/own-files.ts";
import { commonSnippets } from "../editing/snippets.ts";

/** Where the starter's settings for editors go in an archive. */
const copied: Readonly<Record<string, string>> = {
  "vscode/settings.json": ".vscode/settings.json",
  "vscode/extensions.json": ".vscode/extensions.json",
};

/** Every file of settings by its place in an archive, and what it holds. */
export async function editorSettings(): Promise<ReadonlyMap<string, string>> {
  const starter = join(await compiledFolder(), "starter");
  const read = Object.entries(copied).map(
    async ([from, to]) => [to, await readFile(join(starter, from), "utf8")] as const,
  );
  return new Map([
    ...(await Promise.all(read)),
    [".vscode/tilebook.code-snippets", commonSnippets()],
  ]);
}
