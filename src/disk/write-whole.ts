/** Writes what Tilebook remembers for itself. What somebody wrote is replaced by `replace-file.ts`. */
import { randomBytes } from "node:crypto";
import { mkdir, rename, rm, writeFile } from "node:fs/promises";
import { dirname } from "node:path";

/**
 * Writes a file whole or not at all: a program killed meanwhile leaves no half of it.
 *
 * @throws what the system says where it cannot be written; what was begun is taken away
 */
export async function writeWhole(path: string, content: string | Uint8Array): Promise<void> {
  await mkdir(dirname(path), { recursive: true });
  const temporary = `${path}.${randomBytes(6).toString("hex")}.tmp`;
  try {
    await writeFile(temporary, content);
    await rename(temporary, path);
  } catch (error) {
    await rm(temporary, { force: true });
    throw error;
  }
}
