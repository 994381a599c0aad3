/** Writing the files of a new site: what has not changed is carried over from the last one. */
import { copyFile, link, lstat, mkdir, readFile, rm, writeFile } from "node:fs/promises";
import { dirname, join } from "node:path";
import { hasCode } from "../disk/machine-error.ts";
import type { Target } from "./staging.ts";

/** Hard-links a file into the new site, or copies it where the disk cannot link. */
export async function linkInto(from: string, to: string): Promise<void> {
  await mkdir(dirname(to), { recursive: true });
  try {
    await link(from, to);
  } catch (error) {
    if (hasCode(error, "ENOENT", "ENOSPC")) throw error;
    await rm(to, { force: true });
    await copyFile(from, to);
  }
}

/**
 * Carries a file over if the last site has it with the same bytes. The bytes themselves are
 * compared, so that a page that somebody edited by hand is made anew; and what was linked is compared,
 * not what was there before, since another build may put its own site there at any moment.
 */
export async function carryOver(
  target: Target,
  path: string,
  content: string | Uint8Array,
): Promise<boolean> {
  if (target.last === null) return false;
  const file = join(target.folder, path);
  try {
    await linkInto(join(target.last, path), file);
  } catch (error) {
    if (hasCode(error, "ENOENT", "ENOTDIR", "EISDIR", "EPERM", "ELOOP")) return false;
    throw error;
  }
  if (await holds(file, Buffer.from(content))) return true;
  await rm(file, { recursive: true, force: true });
  return false;
}

/** Whether a file is one of its own, no link to another, and holds these bytes. */
async function holds(file: string, content: Buffer): Promise<boolean> {
  const found = await lstat(file);
  return found.isFile() && found.size === content.length && (await readFile(file)).equals(content);
}

/** Writes a file, or carries it over unchanged. */
export async function writeOrCarry(
  target: Target,
  path: string,
  content: string | Uint8Array,
): Promise<void> {
  if (await carryOver(target, path, content)) return;
  const file = join(target.folder, path);
  await mkdir(dirname(file), { recursive: true });
  await writeFile(file, content);
}
