import { decodeLargest, openPixels, shrinkStepwise } from "./decode.ts";
import type { PictureFault } from "./fault.ts";
import type { PictureFormat } from "./format.ts";
import type { Pixels } from "./pixels.ts";
import { type OutputFormat, outputs, sampleWidth } from "./recipe.ts";

/** A picture made for the pages. It carries no metadata of its source. */
export interface DerivedFile {
  readonly format: OutputFormat;
  readonly width: number;
  readonly height: number;
  readonly bytes: Uint8Array;
}

export interface Derived {
  readonly files: readonly DerivedFile[];
  /** The decoded size that is judged and measured. */
  readonly sample: Pixels;
}

/**
 * Makes every size and format of a photograph. It is decoded once, and each smaller size is made
 * from the one above, which costs half of decoding for each and looks no worse.
 */
export async function derivePictures(
  bytes: Uint8Array,
  format: PictureFormat,
): Promise<Derived | { fault: PictureFault }> {
  const decoded = await decodeLargest(bytes, format);
  if ("fault" in decoded) return decoded;
  const files: DerivedFile[] = [];
  let sample = decoded.pixels;
  for await (const pixels of shrinkStepwise(decoded.pixels)) {
    if (pixels.width >= sampleWidth) sample = pixels;
    files.push(...(await encode(pixels)));
  }
  return { files, sample };
}

/** Encoding starts from bare pixels, so nothing of the source's metadata can come along. */
async function encode(pixels: Pixels): Promise<DerivedFile[]> {
  const files: DerivedFile[] = [];
  for (const { format, options } of outputs) {
    const bytes = await openPixels(pixels).toFormat(format, options).toBuffer();
    files.push({ format, width: pixels.width, height: pixels.height, bytes });
  }
  return files;
}
