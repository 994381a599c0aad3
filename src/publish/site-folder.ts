/**
 * The folder a site is published in. A new site is made beside it and takes its place by
 * renaming, so that visitors always find a whole one: whatever goes wrong, the last good site
 * stands, or the next command brings it back.
 */
import { existsSync } from "node:fs";
import {
  copyFile,
  mkdir,
  readdir,
  readFile,
  realpath,
  rename,
  rm,
  writeFile,
} from "node:fs/promises";
import { basename, dirname, join, relative, resolve, sep } from "node:path";

/** The file by which Tilebook knows a site that it wrote, and what it put there. */
export const siteMark = ".tilebook.json";

/** Why a folder cannot take the site, in words for the one who named it. */
export class RefusedFolder extends Error {
  override readonly name = "RefusedFolder";
}

/**
 * Resolves the folder for the site and makes sure that nothing is lost by writing there: it may
 * be absent, empty but for a `.gitignore`, or a site that Tilebook wrote; it may not be or
 * contain the archive, nor lie in its `tiles/` or `recipes/`.
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
  for (const part of ["tiles", "recipes"]) {
    if (isWithin(folder, join(archive, part)))
      throw new RefusedFolder(
        `The site cannot be written to ${out}: that is inside the archive's ${part}/. Name another folder with --out.`,
      );
  }
  await bringBack(folder);
  await checkContents(folder, out);
  return folder;
}

/** What stays with the site, and what an operating system drops wherever its owner looks. */
const mayStandThere = [".gitignore", ".DS_Store", "Thumbs.db", "desktop.ini"];

async function checkContents(folder: string, out: string): Promise<void> {
  const ours = [...mayStandThere, siteMark, ...(await readHeld(folder))];
  const foreign = (await namesIn(folder, out)).find((name) => !ours.includes(name));
  if (foreign !== undefined)
    throw new RefusedFolder(
      `The site cannot be written to ${out}: it holds files that Tilebook did not write (${foreign}). Name an empty folder with --out, or take them out of this one.`,
    );
}

/** The names of what Tilebook put into a folder; none where it left no mark that can be read. */
async function readHeld(folder: string): Promise<readonly string[]> {
  const mark = await readLast(folder, siteMark);
  try {
    const { holds } = JSON.parse(String(mark)) as { holds?: unknown };
    return Array.isArray(holds) ? holds : [];
  } catch {
    return [];
  }
}

async function writeMark(folder: string): Promise<void> {
  const mark = { madeBy: "tilebook", format: 1, holds: (await readdir(folder)).sort() };
  await writeFile(join(folder, siteMark), `${JSON.stringify(mark)}\n`);
}

async function namesIn(folder: string, out: string): Promise<string[]> {
  try {
    return await readdir(folder);
  } catch (error) {
    const { code } = error as NodeJS.ErrnoException;
    if (code === "ENOENT") return [];
    if (code === "ENOTDIR")
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

const oldSuffix = ".tilebook-old";
const newInfix = ".tilebook-new-";

/**
 * Mends what a build that was killed left behind: the last good site is put back if it was
 * already moved aside, and unfinished ones are removed.
 */
async function bringBack(folder: string): Promise<void> {
  const aside = folder + oldSuffix;
  if (existsSync(aside)) await putBack(aside, folder);
  const parent = dirname(folder);
  const prefix = basename(folder) + newInfix;
  for (const name of await namesBeside(folder)) {
    const builder = Number(name.slice(prefix.length));
    if (name.startsWith(prefix) && !isRunning(builder))
      await rm(join(parent, name), { recursive: true, force: true });
  }
}

async function namesBeside(folder: string): Promise<string[]> {
  try {
    return await readdir(dirname(folder));
  } catch (error) {
    if (["ENOENT", "ENOTDIR"].includes((error as NodeJS.ErrnoException).code ?? "")) return [];
    throw error;
  }
}

/** The site moved aside is the last good one, unless a whole one has taken its place. */
async function putBack(aside: string, folder: string): Promise<void> {
  if (existsSync(join(folder, siteMark))) {
    await rm(aside, { recursive: true, force: true });
    return;
  }
  const names = existsSync(folder) ? await readdir(folder) : [];
  if (names.some((name) => name !== ".gitignore")) return;
  await rm(folder, { recursive: true, force: true });
  await rename(aside, folder);
}

function isRunning(processId: number): boolean {
  try {
    process.kill(processId, 0);
    return processId !== process.pid;
  } catch (error) {
    return (error as NodeJS.ErrnoException).code === "EPERM";
  }
}

/** Where a site, or a part of one, is written, and what stood there before. */
export interface Target {
  readonly folder: string;
  /** The last good site; null where there is none. */
  readonly last: string | null;
}

/** A site in the making. */
export interface Staging extends Target {
  /** Puts the new site in the place of the last. */
  readonly publish: () => Promise<void>;
  /** Removes it unfinished. */
  readonly discard: () => Promise<void>;
}

/** Opens a folder beside the site's own, on the same disk, for a new site. */
export async function openStaging(siteFolder: string): Promise<Staging> {
  const folder = `${siteFolder}${newInfix}${process.pid}`;
  await rm(folder, { recursive: true, force: true });
  await mkdir(folder, { recursive: true });
  return {
    folder,
    last: existsSync(join(siteFolder, siteMark)) ? siteFolder : null,
    publish: () => swap(folder, siteFolder),
    // Something may still be writing there: then it is tried again.
    discard: () => rm(folder, { recursive: true, force: true, maxRetries: 5 }),
  };
}

async function swap(folder: string, siteFolder: string): Promise<void> {
  const ignore = join(siteFolder, ".gitignore");
  if (existsSync(ignore)) await copyFile(ignore, join(folder, ".gitignore"));
  await writeMark(folder);
  const aside = siteFolder + oldSuffix;
  if (existsSync(siteFolder)) await rename(siteFolder, aside);
  try {
    await rename(folder, siteFolder);
  } catch (error) {
    if (existsSync(aside)) await rename(aside, siteFolder);
    throw error;
  }
  await rm(aside, { recursive: true, force: true });
}

/** Reads a file of the last site, where it has one. */
export async function readLast(last: string | null, path: string): Promise<Buffer | undefined> {
  if (last === null) return undefined;
  try {
    return await readFile(join(last, path));
  } catch (error) {
    if (["ENOENT", "ENOTDIR", "EISDIR"].includes((error as NodeJS.ErrnoException).code ?? ""))
      return undefined;
    throw error;
  }
}
