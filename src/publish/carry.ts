/** Writing the files of a new site: what has not changed is carried over from the last one. */
import { copyFile, link, mkdir, rm, writeFile } from "node:fs/promises";
import { dirname, join } from "node:path";
import { readLast, type Target } from "./site-folder.ts";

/** Hard-links a file into the new site, or copies it where the disk cannot link. */
export async function linkInto(from: string, to: string): Promise<void> {
  await mkdir(dirname(to), { recursive: true });
  try {
    await link(from, to);
  } catch (error) {
    const { code } = error as NodeJS.ErrnoException;
    if (code === "ENOENT" || code === "ENOSPC") throw error;
    await rm(to, { force: true });
    await copyFile(from, to);
  }
}

/**
 * Carries a file over if the last site has it with the same bytes. The bytes themselves are
 * compared, so that a page that somebody edited by hand is made anew.
 */
export async function carryOver(
  target: Target,
  path: string,
  content: string | Uint8Array,
): Promise<boolean> {
  const before = await readLast(target.last, path);
  if (target.last === null || !before?.equals(Buffer.from(content))) return false;
  await linkInto(join(target.last, path), join(target.folder, path));
  return true;
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
