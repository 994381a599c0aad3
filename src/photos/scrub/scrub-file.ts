import { readFile, stat } from "node:fs/promises";
import { replaceWhole } from "../../disk/write-whole.ts";
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
  replaceWhole(path, scrubbing.bytes);
  return scrubbing;
}
