import { cleanProfile } from "../containers/icc.ts";
import { bufferOf, type Part } from "../containers/part.ts";
import { parseWebp } from "../containers/webp.ts";
import { encodeOrientation } from "./exif.ts";
import type { Scrubbed } from "./scrubbed.ts";

/** Chunks that the picture and its colours need, one of each (RFC 9649, section 2.7). */
const needed = new Set(["ALPH", "ICCP", "VP8 ", "VP8L", "VP8X"]);

/** Chunks of a moving picture: each frame is one more picture, and none of them can be left out. */
const moving = ["ANIM", "ANMF"];

/** Flags in the first byte of `VP8X`, and how long it is. */
const hasProfile = 0x20;
const hasAlpha = 0x10;
const hasExif = 0x08;
const extendedLength = 10;

/** Takes everything out of a WebP but what its picture, its colours and its way up need. */
export function scrubWebp(bytes: Uint8Array, orientation: number): Scrubbed {
  const { parts } = parseWebp(bytes);
  const kept = new Map<string, Buffer>();
  const gone: Part[] = [];
  for (const part of parts) {
    const body = kept.has(part.name) ? undefined : keep(bytes, part);
    if (body) kept.set(part.name, body);
    if (!body?.equals(bytes.subarray(part.bodyStart, part.bodyEnd))) gone.push(part);
  }
  const own = orientation === 1 ? undefined : encodeOrientation(orientation);
  if (own) kept.set("EXIF", own);
  setFlags(kept);
  const whole = encodeRiff([...kept].map(([name, body]) => encodeChunk(name, body)));
  const foreign = gone.map(({ bodyStart, bodyEnd }) => bytes.subarray(bodyStart, bodyEnd));
  const end = parts.at(-1)?.end ?? 0;
  return {
    bytes: parts.some(({ name }) => moving.includes(name)) ? undefined : whole,
    notes: [
      ...foreign.filter((note) => !own?.equals(note)),
      ...(end < bytes.length ? [bytes.subarray(end)] : []),
    ],
  };
}

/** What a chunk keeps of its content; undefined where it is not needed. */
function keep(bytes: Uint8Array, { name, bodyStart, bodyEnd }: Part): Buffer | undefined {
  const body = bufferOf(bytes).subarray(bodyStart, bodyEnd);
  if (name === "ICCP") return cleanProfile(body);
  if (name === "VP8X") return body.length < extendedLength ? undefined : plainExtended(body);
  return needed.has(name) ? body : undefined;
}

/** The size of the picture and whether it is see-through; what is reserved is noughts. */
function plainExtended(body: Buffer): Buffer {
  const plain = Buffer.from(body.subarray(0, extendedLength));
  plain.fill(0, 1, 4);
  return plain;
}

/** The flags say what is there, and no more. */
function setFlags(kept: ReadonlyMap<string, Buffer>): void {
  const extended = kept.get("VP8X");
  if (!extended) return;
  const alpha = (extended[0] ?? 0) & hasAlpha;
  const profile = kept.has("ICCP") ? hasProfile : 0;
  extended[0] = alpha | profile | (kept.has("EXIF") ? hasExif : 0);
}

function encodeChunk(name: string, body: Buffer): Buffer {
  const head = Buffer.from(`${name}\0\0\0\0`, "latin1");
  head.writeUInt32LE(body.length, 4);
  return Buffer.concat([head, body, Buffer.alloc(body.length % 2)]);
}

function encodeRiff(pieces: readonly Buffer[]): Buffer {
  const head = Buffer.from("RIFF\0\0\0\0WEBP", "latin1");
  const length = pieces.reduce((sum, piece) => sum + piece.length, 4);
  head.writeUInt32LE(length, 4);
  return Buffer.concat([head, ...pieces]);
}
