import type { Metadata } from "sharp";
import { largestNotes } from "../../terms/limits.ts";
import type { PictureFormat } from "../format.ts";
import { holdTo } from "../over-limit.ts";
import { findTraces } from "../traces/find-traces.ts";
import type { Trace } from "../traces/trace.ts";
import { scrubIsobmff } from "./isobmff.ts";
import { scrubJpeg } from "./jpeg.ts";
import { scrubPng } from "./png.ts";
import type { Scrubbed } from "./scrubbed.ts";
import { scrubTiff } from "./tiff.ts";
import { scrubWebp } from "./webp.ts";

/** A picture that was scrubbed in memory, to learn what it gives away or to write it. */
export interface Sifted {
  /** The same picture with nothing beside it; undefined where that cannot be made without risk. */
  readonly bytes: Buffer | undefined;
  /** What it gave away; none where there was nothing to take out. */
  readonly traces: readonly Trace[];
}

/**
 * Parts a picture from everything it does not need. That is judged by what may stay: so it does not
 * matter how, or how well hidden, something else is written.
 *
 * @throws OverLimit where there is more beside the picture than any studio's picture has
 */
export function siftPicture(
  format: PictureFormat,
  bytes: Uint8Array,
  { orientation = 1 }: Pick<Metadata, "orientation">,
): Sifted {
  const scrubbed = scrubbers[format](bytes, orientation);
  if (scrubbed.bytes?.equals(bytes)) return { bytes: scrubbed.bytes, traces: [] };
  const length = scrubbed.notes.reduce((sum, note) => sum + note.length, 0);
  holdTo(largestNotes, length, "bytes beside the picture itself");
  const traces = new Set<Trace>([...findTraces(scrubbed), "notes"]);
  return { bytes: scrubbed.bytes, traces: [...traces].sort() };
}

const scrubbers: Record<PictureFormat, (bytes: Uint8Array, orientation: number) => Scrubbed> = {
  avif: scrubIsobmff,
  heic: scrubIsobmff,
  jpeg: scrubJpeg,
  png: scrubPng,
  tiff: scrubTiff,
  webp: scrubWebp,
};
