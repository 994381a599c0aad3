/** The index for finding words: Pagefind's, under `pagefind/`. */
import { createHash } from "node:crypto";
import { existsSync } from "node:fs";
import { cp, readFile } from "node:fs/promises";
import { join } from "node:path";
import * as pagefind from "pagefind";
import { writeOrCarry } from "./carry.ts";
import type { Page } from "./page.ts";
import type { Target } from "./site-folder.ts";

/** Beside the index: what it was made of, so that an unchanged one is carried over. */
const sumFile = "pagefind/made-of.txt";

/**
 * Indexes the pages that have words to be found.
 *
 * @returns true where the index was made anew
 * @throws where Pagefind reports an error of its own
 */
export async function writeSearch(pages: readonly Page[], target: Target): Promise<boolean> {
  const records = pages.flatMap(toRecord);
  const sum = createHash("sha256").update(JSON.stringify(records)).digest("hex");
  const isSame = target.last !== null && (await readSum(target.last)) === sum;
  if (isSame && target.last !== null) {
    await cp(join(target.last, "pagefind"), join(target.folder, "pagefind"), { recursive: true });
    return false;
  }
  await makeIndex(records, join(target.folder, "pagefind"));
  await writeOrCarry(target, sumFile, sum);
  return true;
}

async function readSum(site: string): Promise<string | undefined> {
  const file = join(site, sumFile);
  return existsSync(file) ? readFile(file, "utf8") : undefined;
}

type Record = Parameters<pagefind.PagefindIndex["addCustomRecord"]>[0];

function toRecord({ path, search }: Page): Record[] {
  if (search === null) return [];
  const { title, kind, words, picture } = search;
  const meta = { title, kind, ...(picture && { picture }) };
  return [{ url: path, content: `${title} ${words}`, language: "en", meta }];
}

async function makeIndex(records: readonly Record[], outputPath: string): Promise<void> {
  try {
    const { index, errors } = await pagefind.createIndex({});
    if (!index) throw searchError(errors);
    for (const record of records) refuseErrors((await index.addCustomRecord(record)).errors);
    refuseErrors((await index.writeFiles({ outputPath })).errors);
  } finally {
    await pagefind.close();
  }
}

function refuseErrors(errors: readonly string[]): void {
  if (errors.length > 0) throw searchError(errors);
}

function searchError(errors: readonly string[]): Error {
  return new Error(`The search index could not be made: ${errors.join("; ")}`);
}
