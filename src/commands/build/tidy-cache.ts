/** What a build leaves in the cache for the next one. */
import { keepPictures, pruneOnceADay } from "../../photos/prune.ts";

/**
 * On a computer of one's own, what no build used for a month is forgotten. A forge hands a cache on from run to
 * run for ever, and to whoever may start a run: there what this build did not use is forgotten at once, so that the
 * pictures of a tile that was deleted go with it.
 *
 * @param used the names of the pictures that the build used
 */
export async function tidyCache(cacheDir: string, used: ReadonlySet<string>): Promise<void> {
  if (isOnForge()) await keepPictures(cacheDir, used);
  else await pruneOnceADay(cacheDir);
}

/** Forges set this for everything that they run. */
function isOnForge(): boolean {
  const { CI = "" } = process.env;
  return CI !== "" && CI !== "false";
}
