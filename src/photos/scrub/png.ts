import { crc32 } from "node:zlib";
import { parsePng } from "../containers/png.ts";
import { encodeOrientation } from "./exif.ts";

/** Chunks that the picture and its colours need (W3C PNG, third edition, section 4.7). */
const NEEDED = new Set([
  ...["IHDR", "PLTE", "IDAT", "IEND", "tRNS"],
  ...["cHRM", "cICP", "cLLI", "gAMA", "iCCP", "mDCV", "sBIT", "sRGB"],
  ...["bKGD", "hIST", "pHYs"],
  ...["acTL", "fcTL", "fdAT"],
]);

/** Takes all metadata out of a PNG but what its colours and its way up need. */
export function scrubPng(bytes: Uint8Array, orientation: number): Buffer {
  const kept = parsePng(bytes).parts.filter((part) => NEEDED.has(part.name));
  const pieces = kept.map((part) => bytes.subarray(part.start, part.end));
  if (orientation !== 1) {
    const firstData = kept.findIndex((part) => part.name === "IDAT");
    pieces.splice(firstData, 0, encodeChunk("eXIf", encodeOrientation(orientation)));
  }
  return Buffer.concat([bytes.subarray(0, 8), ...pieces]);
}

function encodeChunk(name: string, body: Buffer): Buffer {
  const chunk = Buffer.alloc(body.length + 12);
  chunk.writeUInt32BE(body.length, 0);
  chunk.write(name, 4, "latin1");
  body.copy(chunk, 8);
  chunk.writeUInt32BE(crc32(chunk.subarray(4, 8 + body.length)), 8 + body.length);
  return chunk;
}
