import { randomBytes } from "node:crypto";
import { copyFile, link, mkdir, readFile, rename, rm, writeFile } from "node:fs/promises";
import { dirname } from "node:path";

/** Writes a file whole or not at all: a program killed meanwhile leaves no half of it. */
export async function writeWhole(path: string, content: string | Uint8Array): Promise<void> {
  await mkdir(dirname(path), { recursive: true });
  const temporary = `${path}.${randomBytes(6).toString("hex")}.tmp`;
  await writeFile(temporary, content);
  await rename(temporary, path);
}

/** Reads JSON, or gives undefined where there is none or it does not parse. */
export async function readJson(path: string): Promise<unknown> {
  try {
    return JSON.parse(await readFile(path, "utf8"));
  } catch (error) {
    if (error instanceof SyntaxError || hasCode(error, "ENOENT")) return undefined;
    throw error;
  }
}

/** Puts a file at `to` as a hard link, or as a copy where the disk cannot link. */
export async function linkOrCopy(from: string, to: string): Promise<void> {
  try {
    await link(from, to);
  } catch (error) {
    if (hasCode(error, "ENOENT")) throw error;
    await rm(to, { force: true });
    await copyFile(from, to);
  }
}

export function hasCode(error: unknown, ...codes: string[]): boolean {
  return error instanceof Error && "code" in error && codes.includes(String(error.code));
}
