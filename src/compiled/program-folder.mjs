/** Where a checkout keeps what was compiled of it: made when it is asked for, known by the sum of its sources. */
import { existsSync } from "node:fs";
import { chmod, mkdir, mkdtemp, readdir, rename, rm, stat } from "node:fs/promises";
import { join } from "node:path";
import { projectFolder, sumOfSources } from "./sources.mjs";

/**
 * The folder that holds the sources as they are now, compiled.
 *
 * @throws what the compiler says of a source that it cannot read, and where node_modules cannot be
 *   written
 */
export async function programFolder() {
  const all = join(projectFolder(), "node_modules/.cache/tilebook");
  const folder = join(all, sumOfSources());
  if (!existsSync(folder)) {
    await compileTo(all, folder);
    await forgetOld(all, folder);
  }
  return folder;
}

/**
 * Whole or not at all: two commands may begin at the same moment.
 *
 * @param {string} all
 * @param {string} folder
 */
async function compileTo(all, folder) {
  const { compileInto } = await import("./compile.mjs");
  await mkdir(all, { recursive: true });
  const begun = await mkdtemp(join(all, "begun-"));
  try {
    await compileInto(begun);
    await chmod(begun, 0o755);
    await rename(begun, folder);
  } catch (error) {
    await rm(begun, { recursive: true, force: true });
    if (!existsSync(folder)) throw error;
  }
}

/**
 * What another command may still be running from stays for a day.
 *
 * @param {string} all
 * @param {string} current
 */
async function forgetOld(all, current) {
  const dayAgo = Date.now() - 24 * 60 * 60 * 1000;
  for (const name of await readdir(all)) {
    const folder = join(all, name);
    if (folder === current || (await stat(folder)).mtimeMs > dayAgo) continue;
    await rm(folder, { recursive: true, force: true });
  }
}
