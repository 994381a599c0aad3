/** Pagefind, which works in a process of its own: words in, the files of an index out. */
import * as pagefind from "pagefind";

export type IndexRecord = Parameters<pagefind.PagefindIndex["addCustomRecord"]>[0];
export type IndexFile = pagefind.IndexFile;

/**
 * Makes indexes one after another, so that each takes its memory alone. Meanwhile this process may do
 * other work.
 *
 * @param indexes the records of each
 * @param done is handed the files of each as soon as it is made
 * @throws SearchError where Pagefind reports an error of its own, or is ended before it is done
 */
export function makeIndexes<T extends { readonly records: () => readonly IndexRecord[] }>(
  indexes: readonly T[],
  done: (index: T, files: readonly IndexFile[]) => void,
): Promise<void> {
  return orDeath(makeEach(indexes, done));
}

async function makeEach<T extends { readonly records: () => readonly IndexRecord[] }>(
  indexes: readonly T[],
  done: (index: T, files: readonly IndexFile[]) => void,
): Promise<void> {
  try {
    for (const index of indexes) done(index, await asSearchError(makeIndex(index.records())));
  } finally {
    await pagefind.close();
  }
}

/** Pagefind's own writing is not asked for: a full disk ends it without a word. */
async function makeIndex(records: readonly IndexRecord[]): Promise<readonly IndexFile[]> {
  const { index, errors } = await pagefind.createIndex({});
  if (!index) throw new SearchError(errors);
  const added = await Promise.all(records.map((record) => index.addCustomRecord(record)));
  refuseErrors(added.flatMap((one) => one.errors));
  const made = await index.getFiles();
  refuseErrors(made.errors);
  await index.deleteIndex();
  return made.files;
}

async function asSearchError<T>(work: Promise<T>): Promise<T> {
  try {
    return await work;
  } catch (error) {
    throw error instanceof SearchError ? error : new SearchError([String(error)]);
  }
}

/**
 * Should Pagefind's process be ended, for want of memory say, its promises never settle, and this
 * process would run out of work and end as if nothing had happened.
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
