/** What was planted in photographs, looked for byte by byte. */
import { crc32 } from "node:zlib";
import type { PictureFormat } from "../../src/photos/format.ts";
import { PLANTED } from "./exif-block.ts";
import { encodePlanted } from "./pictures.ts";

const words = [
  "PLANTED",
  "Oxbowcam",
  "SN-12345",
  "OWNER-M07",
  "Exif\0\0",
  "GPSLatitude",
  "II*\0",
] as const;

/** The planted words and numbers that the bytes hold, in either byte order. */
export function findSecrets(bytes: Uint8Array): string[] {
  const seconds = Buffer.alloc(4);
  seconds.writeUInt32LE(PLANTED.seconds[0]);
  const buffer = Buffer.from(bytes);
  const found: string[] = words.filter((word) => buffer.includes(word, 0, "latin1"));
  const holdsPlace = buffer.includes(seconds) || buffer.includes(Buffer.from(seconds).reverse());
  return holdsPlace ? [...found, "place"] : found;
}

/**
 * A picture that gives everything away, its place so that no reader of metadata finds it: a build
 * takes it in, and every byte that was planted is still there.
 */
export async function encodeHiddenPlace(format: PictureFormat): Promise<Buffer> {
  const bytes = await encodePlanted(format);
  for (const [shown, hidden] of signsOfPlace) {
    for (let at = bytes.indexOf(shown); at >= 0; at = bytes.indexOf(shown)) hidden.copy(bytes, at);
  }
  return format === "png" ? withSums(bytes) : bytes;
}

/**
 * The tag that leads to a place, in either byte order, as one long; the entries of a latitude and a
 * longitude; and their names in XMP.
 */
const signsOfPlace = [
  ...[2, 4].flatMap((tag) => [
    [
      Buffer.from([tag, 0, 5, 0, 3, 0, 0, 0]),
      Buffer.from([tag + 96, 0, 5, 0, 3, 0, 0, 0]),
    ] as const,
    [
      Buffer.from([0, tag, 0, 5, 0, 0, 0, 3]),
      Buffer.from([0, tag + 96, 0, 5, 0, 0, 0, 3]),
    ] as const,
  ]),
  [Buffer.from("25880400010000", "hex"), Buffer.from("26880400010000", "hex")],
  [Buffer.from("88250004000000", "hex"), Buffer.from("88260004000000", "hex")],
  [Buffer.from("exif:GPS"), Buffer.from("exif:XPS")],
] as const;

/** Puts right the sums of a PNG's chunks after their content was changed. */
function withSums(png: Buffer): Buffer {
  for (let at = 8; at < png.length; ) {
    const end = at + 8 + png.readUInt32BE(at);
    png.writeUInt32BE(crc32(png.subarray(at + 4, end)), end);
    at = end + 4;
  }
  return png;
}
