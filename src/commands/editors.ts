/** `tilebook editors`: sets an archive up for editors that complete and check what is typed. */
import { existsSync } from "node:fs";
import { appendFile, mkdir, readFile, writeFile } from "node:fs/promises";
import { dirname, join } from "node:path";
import { isPassedOverByGit, namingFile, writeEditorFiles } from "./editor-files.ts";
import { editorSettings } from "./editor-settings.ts";
import { exitCodes } from "./failure.ts";
import { openArchive } from "./open-archive.ts";

/** Writes the settings that are not there yet, over none that are, and what follows from the archive. */
export async function editors({ archive: dir }: { readonly archive: string }): Promise<number> {
  const archive = await openArchive(dir, () => false);
  if (!archive) return exitCodes.faulty;
  const settings = [...(await editorSettings())];
  const absent = settings.filter(([file]) => !existsSync(join(dir, file)));
  for (const [file, text] of absent) {
    await mkdir(dirname(join(dir, file)), { recursive: true });
    await writeFile(join(dir, file), text);
  }
  if (!isPassedOverByGit(dir)) await passOver(join(dir, ".gitignore"));
  const written = [...absent.map(([file]) => file), ...writeEditorFiles(dir, archive)];
  const stands = settings.filter((each) => !absent.includes(each)).map(([file]) => file);
  for (const file of written) console.log(`Written: ${file}`);
  for (const file of stands) console.log(`Left as it was: ${file}`);
  return exitCodes.done;
}

async function passOver(ignore: string): Promise<void> {
  const before = existsSync(ignore) ? await readFile(ignore, "utf8") : "";
  await appendFile(ignore, `${before === "" || before.endsWith("\n") ? "" : "\n"}${namingFile}\n`);
}
