import { crc32, deflateSync } from "node:zlib";
import { largestProfile } from "../../terms/limits.ts";
import { cleanProfile } from "../containers/icc.ts";
import { inflate } from "../containers/inflate.ts";
import { bufferOf, latin1, type Part } from "../containers/part.ts";
import { parsePng } from "../containers/png.ts";
import { readPngNotes } from "../containers/png-text.ts";
import { encodeOrientation } from "./exif.ts";
import type { Scrubbed } from "./scrubbed.ts";

/**
 * Chunks that the picture and its colours need, with the bytes each holds (W3C PNG, third edition,
 * section 11): those of no fixed length may hold fewer. Of all but the picture's data there is one.
 */
const needed: ReadonlyMap<string, number> = new Map([
  ["IHDR", 13],
  ["PLTE", 768],
  ["IDAT", Number.POSITIVE_INFINITY],
  ["IEND", 0],
  ["tRNS", 256],
  ["cHRM", 32],
  ["cICP", 4],
  ["cLLI", 8],
  ["gAMA", 4],
  ["iCCP", largestProfile],
  ["mDCV", 24],
  ["sBIT", 4],
  ["sRGB", 1],
  ["bKGD", 6],
  ["pHYs", 9],
]);

/** Chunks of a moving picture: each frame is one more picture, and none of them can be left out. */
const moving = ["acTL", "fcTL", "fdAT"];

/** Chunks whose length depends on the picture. */
const ofAnyLength = ["PLTE", "IDAT", "tRNS", "iCCP", "sBIT", "bKGD"];

const signatureLength = 8;

/** Takes everything out of a PNG but what its picture, its colours and its way up need. */
export function scrubPng(bytes: Uint8Array, orientation: number): Scrubbed {
  const { parts } = parsePng(bytes);
  const kept = keepChunks(bytes, parts);
  const own = orientation === 1 ? undefined : encodeChunk("eXIf", encodeOrientation(orientation));
  const gone = parts.filter((part) => {
    const whole = bytes.subarray(part.start, part.end);
    return !kept.get(part)?.equals(whole) && !own?.equals(whole);
  });
  const pieces = [bufferOf(bytes).subarray(0, signatureLength), ...kept.values()];
  const firstData = [...kept.keys()].findIndex(({ name }) => name === "IDAT");
  if (own) pieces.splice(1 + firstData, 0, own);
  const isMoving = parts.some(({ name }) => moving.includes(name));
  const end = parts.at(-1)?.end ?? signatureLength;
  return {
    bytes: isMoving ? undefined : Buffer.concat(pieces),
    notes: [...readPngNotes(bytes, gone), ...(end < bytes.length ? [bytes.subarray(end)] : [])],
  };
}

/** Each chunk that stays, as it is written; of all but the picture's data the first. */
function keepChunks(bytes: Uint8Array, parts: readonly Part[]): ReadonlyMap<Part, Buffer> {
  const kept = new Map<Part, Buffer>();
  const names = new Set<string>();
  for (const part of parts) {
    const isSecond = part.name !== "IDAT" && names.has(part.name);
    const piece = isSecond ? undefined : keep(bytes, part);
    if (!piece) continue;
    kept.set(part, piece);
    names.add(part.name);
  }
  return kept;
}

function keep(bytes: Uint8Array, part: Part): Buffer | undefined {
  const { name, start, end, bodyStart, bodyEnd } = part;
  const [most, length] = [needed.get(name), bodyEnd - bodyStart];
  if (most === undefined || length > most) return undefined;
  if (length < most && !ofAnyLength.includes(name)) return undefined;
  if (name === "iCCP") return keepProfile(bytes, part);
  // How many pixels make a metre: its last byte says whether the others are metres at all.
  if (name === "pHYs" && (bytes[bodyEnd - 1] ?? 2) > 1) return undefined;
  return bufferOf(bytes).subarray(start, end);
}

/** The names that programs give every profile. Another name is replaced by the first. */
const profileNames = ["icc", "ICC profile", "ICC Profile", "Photoshop ICC profile"];

/** A profile that is one, packed as it was where nothing had to be taken out of it. */
function keepProfile(
  bytes: Uint8Array,
  { start, end, bodyStart, bodyEnd }: Part,
): Buffer | undefined {
  const body = bufferOf(bytes).subarray(bodyStart, bodyEnd);
  const afterName = body.indexOf(0) + 1;
  const inflated = inflate(body.subarray(afterName + 1), largestProfile);
  if (!inflated || inflated === "too large") return undefined;
  const { unpacked, isAll } = inflated;
  const clean = cleanProfile(unpacked);
  if (!clean) return undefined;
  const isPlain = isAll && profileNames.includes(latin1(body, 0, afterName - 1));
  if (isPlain && clean.equals(unpacked)) return bufferOf(bytes).subarray(start, end);
  const name = Buffer.from(`${profileNames[0]}\0\0`);
  return encodeChunk("iCCP", Buffer.concat([name, deflateSync(clean)]));
}

function encodeChunk(name: string, body: Buffer): Buffer {
  const chunk = Buffer.alloc(body.length + 12);
  chunk.writeUInt32BE(body.length, 0);
  chunk.write(name, 4, "latin1");
  body.copy(chunk, 8);
  chunk.writeUInt32BE(crc32(chunk.subarray(4, 8 + body.length)), 8 + body.length);
  return chunk;
}
