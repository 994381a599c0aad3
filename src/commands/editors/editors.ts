/** `tilebook editors`: sets an archive up for editors that complete and check what is typed. */
import { existsSync } from "node:fs";
import { appendFile, readFile } from "node:fs/promises";
import { join } from "node:path";
import { exitCodes } from "../failure.ts";
import { openArchive } from "../open-archive.ts";
import { isPassedOverByGit, leadsOutside, namingFile, writeEditorFiles } from "./editor-files.ts";
import { writeEditorSettings } from "./editor-settings.ts";

/** Writes the settings that are not there yet, over none that are, and what follows from the archive. */
export async function editors({ archive: dir }: { readonly archive: string }): Promise<number> {
  const archive = await openArchive(dir, () => false);
  if (!archive) return exitCodes.faulty;
  const settings = await writeEditorSettings(dir);
  if (!isPassedOverByGit(dir) && !leadsOutside(dir, ".gitignore"))
    await passOver(join(dir, ".gitignore"));
  const written = [...settings.written, ...writeEditorFiles(dir, archive)];
  for (const file of written) console.log(`Written: ${file}`);
  for (const file of settings.kept) console.log(`Left as it was: ${file}`);
  return exitCodes.done;
}

async function passOver(ignore: string): Promise<void> {
  const before = existsSync(ignore) ? await readFile(ignore, "utf8") : "";
  await appendFile(ignore, `${before === "" || before.endsWith("\n") ? "" : "\n"}${namingFile}\n`);
}
