/** Writes new files into an archive, and over none that is there. */
import { existsSync } from "node:fs";
import { mkdir, writeFile } from "node:fs/promises";
import { dirname, join } from "node:path";
import { WrongUsage } from "./failure.ts";
import type { NewFile } from "./new-blend-records.ts";

/**
 * Writes all of the files, or none where one of them is there already.
 *
 * @param archive the folder that their paths begin from
 */
export async function writeNew(archive: string, files: readonly NewFile[]): Promise<void> {
  const taken = files.find(({ path }) => existsSync(join(archive, path)));
  if (taken)
    throw new WrongUsage(
      `${taken.path} is there already. Nothing was written over, and nothing new.`,
    );
  for (const { path, content } of files) {
    const file = join(archive, path);
    await mkdir(dirname(file), { recursive: true });
    await writeFile(file, content, { flag: "wx" });
  }
}
