import { parseWebp } from "../containers/webp.ts";
import { encodeOrientation } from "./exif.ts";

/** Chunks that the picture and its colours need (RFC 9649, section 2.7). */
const NEEDED = new Set(["ALPH", "ANIM", "ANMF", "ICCP", "VP8 ", "VP8L", "VP8X"]);

/** Flags in the first byte of `VP8X`. */
const HAS_EXIF = 0x08;
const HAS_XMP = 0x04;

/** Takes all metadata out of a WebP but what its colours and its way up need. */
export function scrubWebp(bytes: Uint8Array, orientation: number): Buffer {
  const kept = parseWebp(bytes).parts.filter((part) => NEEDED.has(part.name));
  const pieces: Buffer[] = kept.map(({ name, start, end }) => {
    const piece = Buffer.from(bytes.subarray(start, end));
    if (name === "VP8X") piece[8] = setFlags(piece[8] ?? 0, orientation !== 1);
    return piece;
  });
  if (orientation !== 1) pieces.push(encodeExifChunk(orientation));
  return encodeRiff(pieces);
}

function setFlags(flags: number, hasExif: boolean): number {
  return (flags & ~(HAS_EXIF | HAS_XMP)) | (hasExif ? HAS_EXIF : 0);
}

function encodeExifChunk(orientation: number): Buffer {
  const body = encodeOrientation(orientation);
  const head = Buffer.from("EXIF\0\0\0\0", "latin1");
  head.writeUInt32LE(body.length, 4);
  return Buffer.concat([head, body]);
}

function encodeRiff(pieces: Buffer[]): Buffer {
  const head = Buffer.from("RIFF\0\0\0\0WEBP", "latin1");
  const length = pieces.reduce((sum, piece) => sum + piece.length, 4);
  head.writeUInt32LE(length, 4);
  return Buffer.concat([head, ...pieces]);
}
