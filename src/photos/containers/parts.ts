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

/** The pieces that hold nothing but coded pixels. */
const CODED_PIXELS: Partial<Record<PictureFormat, string[]>> = {
  jpeg: ["da"],
  png: ["IDAT", "fdAT"],
  webp: ["ALPH", "VP8 ", "VP8L"],
};

/** Everything in a file that is not coded pixels, in stretches: also what follows its end. */
export function stretchesOutsidePixels(
  format: PictureFormat,
  bytes: Uint8Array,
  { parts }: Parts,
): Uint8Array[] {
  const coded = CODED_PIXELS[format] ?? [];
  const stretches: Uint8Array[] = [];
  let start = 0;
  for (const part of parts.filter(({ name }) => coded.includes(name))) {
    stretches.push(bytes.subarray(start, part.start));
    start = part.end;
  }
  return [...stretches, bytes.subarray(start)].filter((stretch) => stretch.length > 0);
}
