/** The folder a site is published in: where nothing is lost by writing there. */
import { readdir, readFile, realpath } from "node:fs/promises";
import { basename, dirname, join, relative, resolve, sep } from "node:path";
import { hasCode } from "../disk/machine-error.ts";
import { mendAfterKill, siteMark } from "./staging.ts";

/** Why a folder cannot take the site, in words for the one who named it. */
export class RefusedFolder extends Error {
  override readonly name = "RefusedFolder";
}

/**
 * Resolves the folder for the site and makes sure that nothing is lost by writing there: it may
 * be absent, empty but for a `.gitignore`, or a site that Tilebook wrote; it may not be or
 * contain the archive, nor lie in its `tiles/`, `recipes/` or `pages/`.
 *
 * @returns the folder's real path
 * @throws RefusedFolder
 */
export async function checkSiteFolder(out: string, archiveDir: string): Promise<string> {
  const folder = await realPathOf(out);
  const archive = await realPathOf(archiveDir);
  if (isWithin(archive, folder))
    throw new RefusedFolder(
      `The site cannot be written to ${out}: the archive itself lies there. Name another folder with --out.`,
    );
  for (const part of ["tiles", "recipes", "pages"]) {
    if (isWithin(folder, join(archive, part)))
      throw new RefusedFolder(
        `The site cannot be written to ${out}: that is inside the archive's ${part}/. Name another folder with --out.`,
      );
  }
  await mendAfterKill(folder);
  await checkContents(folder, out);
  return folder;
}

/** What stays with the site, and what an operating system drops wherever its owner looks. */
const mayStandThere = [".gitignore", ".DS_Store", "Thumbs.db", "desktop.ini"];

/** How often a folder is looked at again while other builds put their sites there. */
const mostLooks = 100;

/** What is told to be in the way was there together with the mark that does not name it. */
async function checkContents(folder: string, out: string): Promise<void> {
  for (let look = 1; ; look += 1) {
    const mark = await readOf(folder, siteMark);
    const ours = [...mayStandThere, siteMark, ...heldBy(mark)];
    const names = await namesIn(folder, out);
    const foreign = names.find((name) => !ours.includes(name));
    if (foreign === undefined) return;
    const isSettled =
      names.includes(siteMark) === (mark !== undefined) &&
      mark === (await readOf(folder, siteMark));
    if (isSettled || look === mostLooks)
      throw new RefusedFolder(
        `The site cannot be written to ${out}: it holds files that Tilebook did not write (${foreign}). Name an empty folder with --out, or take them out of this one.`,
      );
  }
}

/** The names of what Tilebook put into a folder, as its mark says; none where that cannot be read. */
function heldBy(mark: string | undefined): readonly string[] {
  try {
    const { holds } = JSON.parse(String(mark)) as { holds?: unknown };
    return Array.isArray(holds) ? holds : [];
  } catch {
    return [];
  }
}

async function namesIn(folder: string, out: string): Promise<string[]> {
  try {
    return await readdir(folder);
  } catch (error) {
    if (hasCode(error, "ENOENT")) return [];
    if (hasCode(error, "ENOTDIR"))
      throw new RefusedFolder(
        `The site cannot be written to ${out}: that is a file. Name a folder with --out.`,
      );
    throw error;
  }
}

/** The real path of something that may not exist yet: its nearest folder that does decides. */
async function realPathOf(path: string): Promise<string> {
  const whole = resolve(path);
  try {
    return await realpath(whole);
  } catch {
    const parent = dirname(whole);
    return parent === whole ? whole : join(await realPathOf(parent), basename(whole));
  }
}

function isWithin(path: string, folder: string): boolean {
  const way = relative(folder, path);
  return (
    way === "" || (way !== ".." && !way.startsWith(`..${sep}`) && resolve(folder, way) === path)
  );
}

/** Reads a file of a site; undefined where it has none. */
async function readOf(site: string, path: string): Promise<string | undefined> {
  try {
    return await readFile(join(site, path), "utf8");
  } catch (error) {
    if (hasCode(error, "ENOENT", "ENOTDIR", "EISDIR")) return undefined;
    throw error;
  }
}
