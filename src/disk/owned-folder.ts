/**
 * Folders that are made for a while and go again. Each bears a random token in its name and the same
 * in a file inside it, and is removed by another program only where both agree and whoever made it has
 * ended, or has not been heard of for an hour. Nothing else that has such a name is ever touched.
 */
import { createHash, randomBytes } from "node:crypto";
import fs from "node:fs";
import { lstat, mkdir, readdir, readFile, rename, rm, utimes, writeFile } from "node:fs/promises";
import os from "node:os";
import path from "node:path";
import { hasCode } from "./machine-error.ts";

const ownerFile = "owner.json";
const second = 1000;

/** So often whoever is at work says that he still is. */
const heartbeat = 30 * second;

/** Who was not heard of for so long is taken to have ended, though his computer cannot be asked. */
const longestSilence = 60 * 60 * second;

/** A folder of this program's own. */
export interface OwnedFolder {
  readonly folder: string;
  /** Whether it is still there and still ours. */
  readonly isOurs: () => Promise<boolean>;
  /** Removes it with all that is in it; where that fails it is left, and removed another time. */
  readonly remove: () => Promise<void>;
  /** Leaves it where it is, as a program that has ended does. */
  readonly leave: () => void;
}

/** A folder that some program made for a while, this one or another. */
export interface FoundFolder {
  readonly folder: string;
  /** When its maker was last heard of, in milliseconds since 1970. */
  readonly heardOf: number;
  readonly isAbandoned: boolean;
}

/** Who made a folder. */
interface Owner {
  readonly token: string;
  /** A sum of the computer's name and of what tells its containers and its starts apart. */
  readonly computer: string;
  readonly processNumber: number;
}

/** The tokens of what this process has made and not yet removed. */
const ours = new Set<string>();

/**
 * Makes a folder whose name begins with `prefix`, and keeps it until it is removed.
 *
 * @throws what the system says where it cannot be made
 */
export async function makeOwnedFolder(prefix: string): Promise<OwnedFolder> {
  const token = randomBytes(16).toString("hex");
  const folder = prefix + token;
  const signature = path.join(folder, ownerFile);
  const owner: Owner = { token, computer: thisComputer(), processNumber: process.pid };
  await mkdir(folder, { recursive: true });
  try {
    await writeFile(signature, `${JSON.stringify(owner)}\n`, { flag: "wx" });
  } catch (error) {
    await rm(folder, { recursive: true, force: true });
    throw error;
  }
  ours.add(token);
  const beating = setInterval(() => void touch(signature), heartbeat).unref();
  const leave = () => {
    clearInterval(beating);
    ours.delete(token);
  };
  return {
    folder,
    isOurs: async () => (await readOwner(folder))?.token === token,
    remove: () =>
      removeOwned(prefix, token)
        .catch(() => undefined)
        .finally(leave),
    leave,
  };
}

async function touch(signature: string): Promise<void> {
  const now = new Date();
  // Should the folder be gone, whoever works in it finds out by asking whether it is his.
  await utimes(signature, now, now).catch(() => undefined);
}

/** Finds the folders whose name begins with `prefix` and whose tokens agree, the latest first. */
export async function findOwnedFolders(prefix: string): Promise<FoundFolder[]> {
  const found = await Promise.all(
    (await listTokens(prefix)).map((token) => describeFolder(prefix + token, token)),
  );
  return found.filter((each) => each !== undefined).sort((a, b) => b.heardOf - a.heardOf);
}

/**
 * Removes the folders whose name begins with `prefix`, whose tokens agree, and whose maker is gone.
 *
 * @param mayGo whether one that could be removed holds nothing that is still wanted
 */
export async function removeAbandoned(
  prefix: string,
  mayGo: (folder: string) => Promise<boolean>,
): Promise<void> {
  for (const { folder, isAbandoned } of await findOwnedFolders(prefix))
    if (isAbandoned && (await mayGo(folder)))
      await removeOwned(prefix, folder.slice(prefix.length));
  for (const { folder, isAbandoned } of await findOwnedFolders(goingPrefix(prefix)))
    if (isAbandoned) await removeSignedLast(folder);
}

async function listTokens(prefix: string): Promise<string[]> {
  const [parent, begin] = [path.dirname(prefix), path.basename(prefix)];
  try {
    return (await readdir(parent))
      .filter((name) => name.startsWith(begin))
      .map((name) => name.slice(begin.length))
      .filter((rest) => /^[0-9a-f]{32}$/u.test(rest));
  } catch (error) {
    if (hasCode(error, "ENOENT", "ENOTDIR")) return [];
    throw error;
  }
}

async function describeFolder(folder: string, token: string): Promise<FoundFolder | undefined> {
  const owner = await readOwner(folder);
  if (owner?.token !== token) return undefined;
  const heardOf = (await lstat(path.join(folder, ownerFile)).catch(() => null))?.mtimeMs;
  if (heardOf === undefined) return undefined;
  const isSilent = heardOf < Date.now() - longestSilence;
  return { folder, heardOf, isAbandoned: !ours.has(token) && (isSilent || hasEnded(owner)) };
}

/** Reads who made a folder; undefined where it does not say so in the way that folders of ours do. */
async function readOwner(folder: string): Promise<Owner | undefined> {
  const signature = path.join(folder, ownerFile);
  try {
    const [itself, file] = await Promise.all([lstat(folder), lstat(signature)]);
    if (!itself.isDirectory() || !file.isFile() || file.size > 1000) return undefined;
    return parseOwner(JSON.parse(await readFile(signature, "utf8")));
  } catch {
    // Gone meanwhile, not readable, or no JSON: then nobody can tell that it is ours.
    return undefined;
  }
}

function parseOwner(value: unknown): Owner | undefined {
  if (typeof value !== "object" || value === null) return undefined;
  const { token, computer, processNumber } = value as Partial<Record<keyof Owner, unknown>>;
  const isOwner =
    typeof token === "string" && typeof computer === "string" && Number.isInteger(processNumber);
  return isOwner ? { token, computer, processNumber: Number(processNumber) } : undefined;
}

/** A process can be asked for on its own computer, and in its own container, alone. */
function hasEnded({ computer, processNumber }: Owner): boolean {
  if (computer !== thisComputer() || processNumber < 1) return false;
  if (processNumber === process.pid) return true;
  try {
    process.kill(processNumber, 0);
    return false;
  } catch (error) {
    return hasCode(error, "ESRCH");
  }
}

let computer: string | undefined;

/** Containers may bear one name, and number their processes alike: Linux tells them apart. */
function thisComputer(): string {
  const marks = [
    os.hostname(),
    orNothing(() => fs.readFileSync("/proc/sys/kernel/random/boot_id", "utf8")),
    orNothing(() => fs.readlinkSync("/proc/self/ns/pid")),
  ];
  computer ??= createHash("sha256").update(JSON.stringify(marks)).digest("hex");
  return computer;
}

function orNothing(read: () => string): string {
  try {
    return read();
  } catch {
    // Not Linux.
    return "";
  }
}

function goingPrefix(prefix: string): string {
  return `${prefix}going-`;
}

/** It gets another name first, so that nobody takes what is half removed for whole. */
async function removeOwned(prefix: string, token: string): Promise<void> {
  const going = goingPrefix(prefix) + token;
  try {
    await rename(prefix + token, going);
  } catch (error) {
    if (hasCode(error, "ENOENT")) return;
    throw error;
  }
  await removeSignedLast(going);
}

/** The signature goes last: what a kill leaves can still be known, and removed another time. */
async function removeSignedLast(folder: string): Promise<void> {
  const names = await readdir(folder).catch(() => []);
  for (const name of names.filter((each) => each !== ownerFile))
    await rm(path.join(folder, name), { recursive: true, force: true, maxRetries: 5 });
  // Something may still be writing there: then it is tried again.
  await rm(folder, { recursive: true, force: true, maxRetries: 5 });
}
