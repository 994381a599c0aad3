/** The index for finding words: Pagefind's, under `pagefind/`. */
import { createHash } from "node:crypto";
import { existsSync } from "node:fs";
import { readdir, readFile, rm } from "node:fs/promises";
import { join, relative, sep } from "node:path";
import * as pagefind from "pagefind";
import { readOwnPackage } from "../compiled/own-files.ts";
import { hasCode } from "../disk/machine-error.ts";
import { isNoted, noteMade } from "../disk/own-notes.ts";
import { linkInto, writeOrCarry } from "./carry.ts";
import type { Page } from "./page.ts";
import type { Target } from "./staging.ts";

const indexFolder = "pagefind";

/**
 * Indexes the pages that have words to be found.
 *
 * @returns true where the index was made anew
 * @throws where Pagefind reports an error of its own
 */
export async function writeSearch(pages: readonly Page[], target: Target): Promise<boolean> {
  const records = pages.flatMap(toRecord);
  // Another Pagefind makes another index of the same words.
  const version = readOwnPackage().dependencies.pagefind;
  const madeOf = sumOf(JSON.stringify([version, records]));
  if (target.last !== null && (await carryIndex(target.last, target.folder, madeOf))) return false;
  for (const { path, content } of await orDeath(makeIndex(records)))
    await writeOrCarry(target, `${indexFolder}/${path}`, content);
  noteMade(await describeIndex(join(target.folder, indexFolder), madeOf));
  return true;
}

/**
 * Carries the last index over, if it was made here of the same and no file of it was touched since.
 * It holds code: one that came with somebody's site is not believed.
 */
async function carryIndex(last: string, folder: string, madeOf: string): Promise<boolean> {
  const [before, index] = [join(last, indexFolder), join(folder, indexFolder)];
  try {
    for (const file of await listIndex(before))
      await linkInto(join(before, file), join(index, file));
  } catch (error) {
    // There was none, or another build put its own site there meanwhile.
    if (!hasCode(error, "ENOENT", "ENOTDIR")) throw error;
  }
  if (existsSync(index) && isNoted(await describeIndex(index, madeOf))) return true;
  await rm(index, { recursive: true, force: true });
  return false;
}

/** The sum of what an index was made of, and of every file in it. */
async function describeIndex(index: string, madeOf: string): Promise<string> {
  const sum = createHash("sha256");
  for (const file of await listIndex(index))
    sum.update(`${file}\n${sumOf(await readFile(join(index, file)))}\n`);
  return sumOf(`${madeOf}\n${sum.digest("hex")}`);
}

/** The files of an index, as paths in it, in an order that is everywhere the same. */
async function listIndex(index: string): Promise<string[]> {
  const entries = await readdir(index, { recursive: true, withFileTypes: true });
  return entries
    .filter((entry) => entry.isFile())
    .map((entry) => relative(index, join(entry.parentPath, entry.name)).split(sep).join("/"))
    .sort();
}

function sumOf(content: string | Uint8Array): string {
  return createHash("sha256").update(content).digest("hex");
}

type Record = Parameters<pagefind.PagefindIndex["addCustomRecord"]>[0];

function toRecord({ path, search }: Page): Record[] {
  if (search === null) return [];
  const { title, kind, words, picture } = search;
  const meta = { title, kind, ...(picture && { picture }) };
  return [{ url: path, content: `${title} ${words}`, language: "en", meta }];
}

/** Pagefind's own writing is not asked for: a full disk ends it without a word. */
async function makeIndex(records: readonly Record[]): Promise<readonly pagefind.IndexFile[]> {
  try {
    const { index, errors } = await pagefind.createIndex({});
    if (!index) throw new SearchError(errors);
    for (const record of records) refuseErrors((await index.addCustomRecord(record)).errors);
    const made = await index.getFiles();
    refuseErrors(made.errors);
    return made.files;
  } catch (error) {
    throw error instanceof SearchError ? error : new SearchError([String(error)]);
  } finally {
    await pagefind.close();
  }
}

/**
 * Pagefind works in a process of its own. Should that be ended, for want of memory say, its
 * promises never settle, and this process would run out of work and end as if nothing had happened.
 */
function orDeath<T>(work: Promise<T>): Promise<T> {
  return new Promise((resolve, reject) => {
    const died = () => reject(new SearchError(["Pagefind was ended before it was done"]));
    process.once("beforeExit", died);
    work.then(resolve, reject).finally(() => process.off("beforeExit", died));
  });
}

function refuseErrors(errors: readonly string[]): void {
  if (errors.length > 0) throw new SearchError(errors);
}

class SearchError extends Error {
  override readonly name = "SearchError";
  constructor(errors: readonly string[]) {
    super(`The search index could not be made: ${errors.join("; ")}`);
  }
}
