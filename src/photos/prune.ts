import { existsSync } from "node:fs";
import { readdir, rm, stat } from "node:fs/promises";
import { basename, join } from "node:path";
import { hasCode } from "../disk/machine-error.ts";
import { writeWhole } from "../disk/write-whole.ts";
import { entriesFolder, temporaryFolder } from "./store.ts";

const day = 24 * 60 * 60 * 1000;

/** What no build has used for so long is forgotten. */
const keptDays = 30;

/** Prunes the cache of a build, if nobody has done so today. */
export async function pruneOnceADay(cacheDir: string): Promise<void> {
  const mark = join(cacheDir, "pictures", "pruned");
  if (!(await isOlder(mark, new Date(Date.now() - day)))) return;
  await prunePictures(cacheDir, new Date(Date.now() - keptDays * day));
  writeWhole(mark, "");
}

/**
 * Removes from the cache what no build has used since `unusedSince`, and what killed builds left
 * behind. Use is noted once a day, so the time should lie at least some days back. Gives the number
 * of photographs forgotten. They are made again should they return.
 */
export async function prunePictures(cacheDir: string, unusedSince: Date): Promise<number> {
  const forgotten = await forgetEntries(cacheDir, (entry) => isUnused(entry, unusedSince));
  for (const left of await listFolder(temporaryFolder(cacheDir))) {
    if (await isOlder(left, unusedSince)) await rm(left, { recursive: true, force: true });
  }
  return forgotten;
}

/** Removes from the cache everything but the pictures with these names, and gives the number of photographs forgotten. */
export async function keepPictures(cacheDir: string, names: ReadonlySet<string>): Promise<number> {
  await rm(temporaryFolder(cacheDir), { recursive: true, force: true });
  return await forgetEntries(cacheDir, async (entry) => !names.has(basename(entry)));
}

async function forgetEntries(
  cacheDir: string,
  isToGo: (entry: string) => Promise<boolean>,
): Promise<number> {
  let forgotten = 0;
  for (const shard of await listFolder(entriesFolder(cacheDir))) {
    for (const entry of await listFolder(shard)) {
      if (await isToGo(entry)) {
        await rm(entry, { recursive: true, force: true });
        forgotten += 1;
      }
    }
  }
  return forgotten;
}

/** A photograph that was judged only has no record: then its folder's time counts. */
async function isUnused(entry: string, unusedSince: Date): Promise<boolean> {
  const record = join(entry, "record.json");
  return isOlder(existsSync(record) ? record : entry, unusedSince);
}

async function listFolder(folder: string): Promise<string[]> {
  try {
    return (await readdir(folder)).map((name) => join(folder, name));
  } catch (error) {
    if (hasCode(error, "ENOENT", "ENOTDIR")) return [];
    throw error;
  }
}

/** What is not there counts as older. */
async function isOlder(path: string, time: Date): Promise<boolean> {
  try {
    return (await stat(path)).mtimeMs < time.getTime();
  } catch (error) {
    if (hasCode(error, "ENOENT")) return true;
    throw error;
  }
}
