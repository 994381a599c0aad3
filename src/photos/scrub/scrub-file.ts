import { randomBytes } from "node:crypto";
import { open, readFile, realpath, rename, rm, stat } from "node:fs/promises";
import { basename, dirname, join } from "node:path";
import { largestPicture } from "../../terms/limits.ts";
import { tooHeavyFault } from "../fault.ts";
import { type Scrubbing, scrubPicture } from "./scrub.ts";

/**
 * Scrubs a photograph where it lies. The new file takes the old one's place only when it is whole;
 * until then the old one stays as it was. Throws where the machine fails.
 */
export async function scrubFile(path: string): Promise<Scrubbing> {
  const { size } = await stat(path);
  if (size > largestPicture) return { outcome: "fault", fault: tooHeavyFault(size) };
  const bytes = await readFile(path);
  const scrubbing = await scrubPicture(bytes);
  if (scrubbing.outcome !== "scrubbed") return scrubbing;
  await replaceFile(path, scrubbing.bytes);
  return scrubbing;
}

/**
 * Puts content in the place of a file, which keeps its permissions. Where the path is a link, what
 * it leads to is replaced. It is on the disk before the old content is let go.
 */
async function replaceFile(path: string, content: Uint8Array): Promise<void> {
  const place = await realpath(path);
  const { mode } = await stat(place);
  const beside = join(dirname(place), `.${basename(place)}.${randomBytes(6).toString("hex")}.tmp`);
  try {
    const file = await open(beside, "wx");
    try {
      await file.chmod(mode);
      await file.writeFile(content);
      await file.sync();
    } finally {
      await file.close();
    }
    await rename(beside, place);
  } catch (error) {
    await rm(beside, { force: true });
    throw error;
  }
}
