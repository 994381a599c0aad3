import { mkdtemp, readdir, utimes, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, vi } from "vitest";
import { type Picture, type PictureSource, preparePictures } from "../../src/photos/prepare.ts";
import { removeFolder } from "../support/remove-folder.ts";

/** A folder for each test, with a cache in it; both are gone afterwards. */
export const work = { root: "", cacheDir: "" };

export function useWorkFolder(): void {
  beforeEach(async () => {
    work.root = await mkdtemp(join(tmpdir(), "tilebook-photos-"));
    work.cacheDir = join(work.root, "cache");
  });

  afterEach(async () => {
    vi.useRealTimers();
    await removeFolder(work.root);
  });
}

/** Writes a source as if some time ago, so that it counts as settled. */
export async function writeSource(name: string, bytes: Uint8Array | string): Promise<string> {
  const path = join(work.root, name);
  await writeFile(path, bytes);
  const before = new Date(Date.now() - 3_600_000);
  await utimes(path, before, before);
  return path;
}

/** A file changed just now is not trusted by its time, so the clock is put forward. */
export function settle(): void {
  vi.useFakeTimers({ toFake: ["Date"], now: Date.now() + 60_000 });
}

export async function prepareOne<Value>(source: PictureSource<Value>): Promise<Picture<Value>> {
  const [prepared] = await preparePictures([source], { cacheDir: work.cacheDir });
  if (!prepared || "fault" in prepared) throw new Error("no picture");
  return prepared.picture;
}

/** The names of all entries that the cache holds. */
export async function listMade(): Promise<string[]> {
  const made = join(work.cacheDir, "pictures", "made");
  const shards = await readdir(made);
  return (await Promise.all(shards.map((shard) => readdir(join(made, shard))))).flat();
}
