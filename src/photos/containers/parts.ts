import type { PictureFormat } from "../format.ts";
import { parseIsobmff } from "./isobmff.ts";
import { parseJpeg } from "./jpeg.ts";
import type { Part, Parts } from "./part.ts";
import { parsePng } from "./png.ts";
import { parseWebp } from "./webp.ts";

/** Splits a picture file into its pieces. A TIFF, whose pieces may lie anywhere, is one piece. */
export function parseParts(format: PictureFormat, bytes: Uint8Array): Parts {
  return parsersByFormat[format](bytes);
}

const parsersByFormat: Record<PictureFormat, (bytes: Uint8Array) => Parts> = {
  avif: parseIsobmff,
  heic: parseIsobmff,
  jpeg: parseJpeg,
  png: parsePng,
  tiff: (bytes) => ({ parts: [wholeOf(bytes)], complete: true }),
  webp: parseWebp,
};

function wholeOf(bytes: Uint8Array): Part {
  return { name: "TIFF", start: 0, end: bytes.length, bodyStart: 0, bodyEnd: bytes.length };
}
