/**
 * A site in the making. It is made in a folder of its build's own beside the last site, and takes its
 * place by renaming, so that visitors always find a whole one: whatever goes wrong, and at whatever
 * moment, the last good site stands, or the next command brings it back.
 */
import { existsSync } from "node:fs";
import { mkdir, open, readdir, readFile, rename, rm, rmdir, writeFile } from "node:fs/promises";
import { dirname, join } from "node:path";
import { hasCode } from "../disk/machine-error.ts";
import {
  findOwnedFolders,
  makeOwnedFolder,
  type OwnedFolder,
  removeAbandoned,
} from "../disk/owned-folder.ts";

/** The file by which Tilebook knows a site that it wrote, and what it put there. */
export const siteMark = ".tilebook.json";

/** Where a site, or a part of one, is written, and what stood there before. */
export interface Target {
  readonly folder: string;
  /** The last good site; null where there is none. */
  readonly last: string | null;
}

/** A site in the making. */
export interface Staging extends Target {
  /** An empty folder, for a tool that wants one. */
  readonly emptyFolder: string;
  /** Puts the new site in the place of the last. */
  readonly publish: () => Promise<void>;
  /** Removes it unfinished. */
  readonly discard: () => Promise<void>;
}

/** Another program took away what a build was making. */
export class StagingLost extends Error {
  override readonly name = "StagingLost";
  constructor(folder: string) {
    super(
      `${folder}: another program took this folder away while the new site was made in it. The last good site stands. Run the command again.`,
    );
  }
}

/** How often a build moves aside what other builds put in its way. Each such build is then done. */
const mostCrossings = 100;

/** What stands in the folder that a build owns: the site it makes, and sites that it moved aside. */
const made = "new";
const movedAside = "last-";

const ownedPrefix = (siteFolder: string) => `${siteFolder}.tilebook-`;

/** Opens a folder beside the site's own, on the same disk, for a new site. */
export async function openStaging(siteFolder: string): Promise<Staging> {
  const owned = await makeOwnedFolder(ownedPrefix(siteFolder));
  const [folder, emptyFolder] = [join(owned.folder, made), join(owned.folder, "empty")];
  try {
    await mkdir(folder);
    await mkdir(emptyFolder);
  } catch (error) {
    await owned.remove();
    throw error;
  }
  return {
    folder,
    emptyFolder,
    last: existsSync(join(siteFolder, siteMark)) ? siteFolder : null,
    publish: () => publish(owned, siteFolder),
    discard: () => discard(owned, siteFolder),
  };
}

/** @throws StagingLost, and what the system says where the folders cannot change places */
async function publish(owned: OwnedFolder, siteFolder: string): Promise<void> {
  const folder = join(owned.folder, made);
  await copyIgnoreFile(siteFolder, folder);
  await finish(folder);
  if (!(await owned.isOurs())) throw new StagingLost(owned.folder);
  await swap(owned.folder, siteFolder);
  await flushFolder(dirname(siteFolder));
  await owned.remove();
}

/** The last good site is in there as long as it could not be put back: then the next command does it. */
async function discard(owned: OwnedFolder, siteFolder: string): Promise<void> {
  if (await isWanted(owned.folder, siteFolder)) owned.leave();
  else await owned.remove();
}

/** Whether a folder of a build holds the last good site, and nothing is in that one's place. */
async function isWanted(ownedFolder: string, siteFolder: string): Promise<boolean> {
  return (
    !existsSync(join(siteFolder, siteMark)) && (await findLatestAside(ownedFolder)) !== undefined
  );
}

/** The mark says that all is there, so it comes last, and is on the disk before the site is moved. */
async function finish(folder: string): Promise<void> {
  const mark = { madeBy: "tilebook", format: 1, holds: (await readdir(folder)).sort() };
  await writeFile(join(folder, siteMark), `${JSON.stringify(mark)}\n`, { flush: true });
  await flushFolder(folder);
}

/** Has the system write down the names in a folder, where it can be asked to. */
async function flushFolder(folder: string): Promise<void> {
  try {
    const handle = await open(folder);
    await handle.sync().finally(() => handle.close());
  } catch (error) {
    // Windows opens no folders, and some network shares write down none when asked.
    if (!hasCode(error, "EACCES", "EINVAL", "EISDIR", "ENOTSUP", "EPERM")) throw error;
  }
}

async function copyIgnoreFile(from: string, to: string): Promise<void> {
  try {
    await writeFile(join(to, ".gitignore"), await readFile(join(from, ".gitignore")));
  } catch (error) {
    if (!hasCode(error, "ENOENT", "ENOTDIR")) throw error;
  }
}

/**
 * Moves aside what stands there, and the new site into its place. Should another build have put its
 * own there in between, that is moved aside as well: whoever comes last stays, and each is whole.
 */
async function swap(ownedFolder: string, siteFolder: string): Promise<void> {
  const folder = join(ownedFolder, made);
  for (let turn = 0; ; turn += 1) {
    const aside = join(ownedFolder, `${movedAside}${turn}`);
    const isMoved = await move(siteFolder, aside, "ENOENT");
    if (isMoved && !existsSync(join(folder, ".gitignore"))) await copyIgnoreFile(aside, folder);
    try {
      await rename(folder, siteFolder);
      return;
    } catch (error) {
      const isCrossed = turn < mostCrossings && isTaken(error, siteFolder);
      if (isMoved && !isCrossed) await move(aside, siteFolder, "ENOENT", "ENOTEMPTY", "EEXIST");
      if (!isCrossed) throw error;
    }
  }
}

/** Windows says of a folder that is there already that it is not allowed. */
function isTaken(error: unknown, folder: string): boolean {
  return (
    hasCode(error, "ENOTEMPTY", "EEXIST") ||
    (hasCode(error, "EPERM", "EACCES") && existsSync(folder))
  );
}

/** Renames; false where it cannot be done for one of the reasons that are expected. */
async function move(from: string, to: string, ...expected: readonly string[]): Promise<boolean> {
  try {
    await rename(from, to);
    return true;
  } catch (error) {
    if (hasCode(error, ...expected)) return false;
    throw error;
  }
}

/**
 * Mends what a build that was killed left behind: the last good site is put back if it was already
 * moved aside, and what is unfinished is removed, once whoever made it has ended.
 */
export async function mendAfterKill(siteFolder: string): Promise<void> {
  await bringBack(siteFolder);
  await removeAbandoned(
    ownedPrefix(siteFolder),
    async (folder) => !(await isWanted(folder, siteFolder)),
  );
}

/**
 * The latest site that was moved aside is the last good one, unless there is one in its place. A
 * build that is about to put its own there moves it aside again.
 */
async function bringBack(siteFolder: string): Promise<void> {
  for (const { folder } of await findOwnedFolders(ownedPrefix(siteFolder))) {
    const aside = await findLatestAside(folder);
    if (aside === undefined) continue;
    if (existsSync(siteFolder) && !(await clearAwayStub(siteFolder))) return;
    await move(aside, siteFolder, "ENOENT", "ENOTEMPTY", "EEXIST");
    return;
  }
}

async function findLatestAside(folder: string): Promise<string | undefined> {
  const names = await readdir(folder).catch(() => []);
  const turns = names
    .filter((name) => name.startsWith(movedAside))
    .map((name) => Number(name.slice(movedAside.length)));
  return turns.length === 0 ? undefined : join(folder, `${movedAside}${Math.max(...turns)}`);
}

/**
 * A checkout puts the empty folder with its `.gitignore` back: the site that was moved aside has it too.
 *
 * @returns whether nothing is there any more
 */
async function clearAwayStub(siteFolder: string): Promise<boolean> {
  const names = await readdir(siteFolder).catch(() => ["a file"]);
  if (names.some((name) => name !== ".gitignore")) return false;
  const ignore = join(siteFolder, ".gitignore");
  const text = await readFile(ignore).catch(() => undefined);
  await rm(ignore, { force: true });
  try {
    await rmdir(siteFolder);
    return true;
  } catch (error) {
    if (hasCode(error, "ENOENT")) return true;
    if (!hasCode(error, "ENOTEMPTY", "EEXIST")) throw error;
    // A site was put there just now.
    if (text) await writeFile(ignore, text);
    return false;
  }
}
