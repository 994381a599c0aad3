import { parseJpeg } from "../containers/jpeg.ts";
import { bufferOf, latin1, type Part } from "../containers/part.ts";
import { encodeOrientation } from "./exif.ts";
import { gatherSegments } from "./jpeg-notes.ts";
import { cleanJpegProfile, type JpegProfile } from "./jpeg-profile.ts";
import type { Scrubbed } from "./scrubbed.ts";

/**
 * Markers of segments without which no decoder can go (ITU-T T.81, table B.1): tables, frames and
 * scans of pictures that are coded in one piece. Application segments and remarks are not among them.
 */
const needed = new Set([
  ...["d8", "d9", "da", "db", "c4", "dd"],
  ...["c0", "c1", "c2", "c3", "c5", "c6", "c7", "c9", "ca", "cb", "cd", "ce", "cf"],
]);

const arithmetic = ["c9", "ca", "cb", "cd", "ce", "cf"];

/** JFIF's own segment without a small picture (ITU-T T.871, section 10.1), and Adobe's (T.872, 6.5.3). */
const jfif = { name: "e0", signature: "JFIF\0", length: 14, plain: 12 };
const adobe = { name: "ee", signature: "Adobe", length: 12, plain: 12 };

/**
 * Takes everything out of a JPEG but what its picture, its colours and its way up need. The coded
 * picture stays as it is. What follows the picture's end (a film, a second picture, a light map)
 * goes too, and with it the table that leads there.
 */
export function scrubJpeg(bytes: Uint8Array, orientation: number): Scrubbed {
  const { parts } = parseJpeg(bytes);
  const profile = cleanJpegProfile(bytes, parts);
  const kept = keepSegments(bytes, parts, profile);
  const own = encodeOrientationSegment(orientation);
  const gone = parts.filter((part) => {
    const whole = bytes.subarray(part.start, part.end);
    return !profile.segments.has(part) && !kept.get(part)?.equals(whole) && !own?.equals(whole);
  });
  const end = parts.at(-1)?.end ?? 0;
  return {
    bytes: Buffer.concat(withOrientation(kept, own)),
    notes: [
      ...gatherSegments(bytes, gone),
      ...(profile.note ? [profile.note] : []),
      ...(end < bytes.length ? [bytes.subarray(end)] : []),
    ],
  };
}

/** Each segment that stays, as it is written; of the named ones the first. */
function keepSegments(
  bytes: Uint8Array,
  parts: readonly Part[],
  { segments }: JpegProfile,
): ReadonlyMap<Part, Buffer> {
  const isArithmetic = parts.some(({ name }) => arithmetic.includes(name));
  const kept = new Map<Part, Buffer>();
  const named = new Set<string>();
  for (const part of parts) {
    const piece = segments.get(part) ?? keep(bytes, part, isArithmetic);
    if (!piece || named.has(part.name)) continue;
    kept.set(part, piece);
    if (part.name === jfif.name || part.name === adobe.name) named.add(part.name);
  }
  return kept;
}

/** A segment as it stays; undefined where it is not needed. */
function keep(bytes: Uint8Array, part: Part, isArithmetic: boolean): Buffer | undefined {
  const { name, start, end } = part;
  if (name === jfif.name) return keepNamed(bytes, part, jfif);
  if (name === adobe.name) return keepNamed(bytes, part, adobe);
  if (name === "cc" && !isArithmetic) return undefined;
  return needed.has(name) || name === "cc" ? bufferOf(bytes).subarray(start, end) : undefined;
}

/** The fields that a named segment is known for, and nothing that follows them. */
function keepNamed(
  bytes: Uint8Array,
  { name, bodyStart, bodyEnd }: Part,
  { signature, length, plain }: typeof jfif,
): Buffer | undefined {
  const isIt = latin1(bytes, bodyStart, bodyStart + signature.length) === signature;
  if (!isIt || bodyEnd - bodyStart < length) return undefined;
  const body = Buffer.alloc(length);
  bufferOf(bytes).copy(body, 0, bodyStart, bodyStart + plain);
  return encodeSegment(Number.parseInt(name, 16), body);
}

function withOrientation(kept: ReadonlyMap<Part, Buffer>, own: Buffer | undefined): Buffer[] {
  const pieces = [...kept.values()];
  if (!own) return pieces;
  const afterHead = [...kept.keys()].findIndex(({ name }) => name !== "d8" && name !== jfif.name);
  return pieces.toSpliced(afterHead, 0, own);
}

/** What tells the way up; none where the picture lies as it is coded. */
function encodeOrientationSegment(orientation: number): Buffer | undefined {
  if (orientation === 1) return undefined;
  const body = Buffer.concat([Buffer.from("Exif\0\0"), encodeOrientation(orientation)]);
  return encodeSegment(0xe1, body);
}

function encodeSegment(marker: number, body: Buffer): Buffer {
  const head = Buffer.from([0xff, marker, 0, 0]);
  head.writeUInt16BE(body.length + 2, 2);
  return Buffer.concat([head, body]);
}
