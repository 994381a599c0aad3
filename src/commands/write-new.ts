/** Writes new files into an archive, and over none that is there. */
import { existsSync } from "node:fs";
import { mkdir, rm, writeFile } from "node:fs/promises";
import { dirname, join } from "node:path";
import { WrongUsage } from "./failure.ts";
import type { NewFile } from "./new-blend-records.ts";

/**
 * Writes all of the files, or none: where one of them is there already nothing is written, and where
 * writing one fails those before it are taken away again, with the folders that were made for them.
 *
 * @param archive the folder that their paths begin from
 * @throws WrongUsage, and what the system said where it could not write
 */
export async function writeNew(archive: string, files: readonly NewFile[]): Promise<void> {
  const taken = files.find(({ path }) => existsSync(join(archive, path)));
  if (taken)
    throw new WrongUsage(
      `${taken.path} is there already. Nothing was written over, and nothing new.`,
    );
  const made: string[] = [];
  try {
    for (const { path, content } of files) await writeOne(join(archive, path), content, made);
  } catch (error) {
    for (const path of made.reverse()) await rm(path, { recursive: true, force: true });
    throw error;
  }
}

/**
 * Writes a file that is not there yet, and its folder.
 *
 * @param made gains what came into being, the folder before the file
 */
async function writeOne(file: string, content: string, made: string[]): Promise<void> {
  const folder = await mkdir(dirname(file), { recursive: true });
  if (folder !== undefined) made.push(folder);
  try {
    await writeFile(file, content, { flag: "wx" });
  } catch (error) {
    // What another program has put there in the meantime is not ours to take away.
    if ((error as NodeJS.ErrnoException).code !== "EEXIST") await rm(file, { force: true });
    throw error;
  }
  made.push(file);
}
