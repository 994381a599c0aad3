import { randomBytes } from "node:crypto";
import { open, readFile, realpath, rename, rm, stat } from "node:fs/promises";
import { basename, dirname, join } from "node:path";
import { decodeLargest } from "../decode.ts";
import { sniffFormat } from "../format.ts";
import { type Scrubbing, scrubPicture } from "./scrub.ts";

/**
 * Scrubs a photograph where it lies. The new file takes the old one's place only when it is whole
 * and shows the same picture, pixel for pixel; until then the old one stays as it was. Throws where
 * the machine fails.
 */
export async function scrubFile(path: string): Promise<Scrubbing> {
  const bytes = await readFile(path);
  const scrubbing = await scrubPicture(bytes);
  if (scrubbing.outcome !== "scrubbed") return scrubbing;
  if (!(await showTheSame(bytes, scrubbing.bytes))) return { outcome: "fault", fault: CHANGED };
  await replaceFile(path, scrubbing.bytes);
  return scrubbing;
}

const CHANGED = {
  code: "picture-not-scrubbed",
  message: "The photograph is built so oddly that it would not come out the same.",
  hint: "Save it as JPEG without its location (phones offer that when sharing), and put that in its place.",
} as const;

async function showTheSame(before: Uint8Array, after: Uint8Array): Promise<boolean> {
  const [one, other] = [await decode(before), await decode(after)];
  return one !== undefined && other !== undefined && Buffer.compare(one, other) === 0;
}

async function decode(bytes: Uint8Array): Promise<Uint8Array | undefined> {
  const format = sniffFormat(bytes);
  const decoded = format && (await decodeLargest(bytes, format));
  return decoded && "pixels" in decoded ? decoded.pixels.data : undefined;
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
