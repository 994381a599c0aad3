import { mkdir } from "node:fs/promises";
import { join } from "node:path";
import { linkOrCopy } from "./files.ts";
import { inParallel } from "./parallel.ts";
import type { Picture } from "./prepare.ts";
import { entryFolder } from "./store.ts";

/**
 * Puts prepared pictures into a folder, by hard link where the disk allows it. The folder's files
 * must never be written to, only replaced. Pictures of one content are put there once.
 */
export async function placePictures(
  pictures: readonly Pick<Picture<unknown>, "files" | "name">[],
  { cacheDir, outDir }: { cacheDir: string; outDir: string },
): Promise<void> {
  await mkdir(outDir, { recursive: true });
  const unique = [...new Map(pictures.map((picture) => [picture.name, picture])).values()];
  await inParallel(unique, 8, async ({ name, files }) => {
    for (const { file } of files) {
      await linkOrCopy(join(entryFolder(cacheDir, name), file), join(outDir, file));
    }
  });
}
