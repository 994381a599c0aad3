import type { PictureFormat } from "../format.ts";
import { parseIsobmff } from "./isobmff.ts";
import { parseJpeg } from "./jpeg.ts";
import type { Parts } from "./part.ts";
import { parsePng } from "./png.ts";
import { parseWebp } from "./webp.ts";

/**
 * Whether the file breaks off before the end that its own structure announces. A TIFF announces
 * none in one place, so only decoding tells there.
 */
export function isCutShort(format: PictureFormat, bytes: Uint8Array): boolean {
  return format !== "tiff" && !parsersByFormat[format](bytes).complete;
}

const parsersByFormat: Record<Exclude<PictureFormat, "tiff">, (bytes: Uint8Array) => Parts> = {
  avif: parseIsobmff,
  heic: parseIsobmff,
  jpeg: parseJpeg,
  png: parsePng,
  webp: parseWebp,
};
