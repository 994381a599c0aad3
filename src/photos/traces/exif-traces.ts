import { mostExifBlocks } from "../../terms/limits.ts";
import { bufferOf } from "../containers/part.ts";
import { readDirectories, type TiffEntry } from "../containers/tiff.ts";
import type { Trace } from "./trace.ts";

/**
 * Finds traces in EXIF, wherever in the bytes a block of it begins; and a place also where the block
 * itself is broken or torn apart, by how the entries of a latitude and a longitude look.
 */
export function findExifTraces(bytes: Uint8Array): Trace[] {
  const blocks = tiffHeaders.flatMap((header) => findAll(bytes, header, mostExifBlocks));
  const found = blocks.flatMap((at) => findBlockTraces(bytes.subarray(at)));
  return holdsPlaceEntry(bytes) ? [...found, "place"] : found;
}

const tiffHeaders = ["II*\0", "MM\0*"].map((header) => Buffer.from(header, "latin1"));

function findAll(bytes: Uint8Array, needle: Buffer, most: number): number[] {
  const buffer = bufferOf(bytes);
  const found: number[] = [];
  let at = buffer.indexOf(needle);
  while (at >= 0 && found.length < most) {
    found.push(at);
    at = buffer.indexOf(needle, at + 1);
  }
  return found;
}

/** Exif 2.32, sections 4.6.4 and 4.6.5; the last of each are older programs' own. */
const tagsOfTraces: readonly (readonly [Trace, readonly number[]])[] = [
  ["device", [0x010f, 0x0110, 0x013c, 0xa433, 0xa434]],
  ["owner", [0x013b, 0x8298, 0xa430, 0x9c9d]],
  ["serial", [0xa420, 0xa431, 0xa435, 0xc62f, 0xfde8]],
];

/** Latitude, longitude, those of what is looked at, and the name of the area (section 4.6.6). */
const placeTags = [2, 4, 0x14, 0x16, 0x1c];

/** What the directories of one block tell, which its header leads to. */
export function findBlockTraces(bytes: Uint8Array): Trace[] {
  return readDirectories(bytes).flatMap(({ kind, entries }) =>
    entries.flatMap((entry) => {
      if (isBlank(bytes, entry)) return [];
      if (kind === "gps") return placeTags.includes(entry.tag) ? (["place"] as const) : [];
      return tagsOfTraces.flatMap(([trace, tags]) => (tags.includes(entry.tag) ? [trace] : []));
    }),
  );
}

/** Left empty, as noughts or spaces. What lies beyond the end of a block may be anything. */
function isBlank(bytes: Uint8Array, { start, end }: TiffEntry): boolean {
  if (end > bytes.length) return false;
  return bytes
    .subarray(start, Math.min(end, start + 256))
    .every((byte) => byte === 0 || byte === 32);
}

/** A tag of a latitude or longitude with three rationals: eight bytes that hardly come by chance. */
const placeEntries = [2, 4, 0x14, 0x16].flatMap((tag) => [
  Buffer.from([tag, 0, 5, 0, 3, 0, 0, 0]),
  Buffer.from([0, tag, 0, 5, 0, 0, 0, 3]),
]);

function holdsPlaceEntry(bytes: Uint8Array): boolean {
  return placeEntries.some((entry) => bufferOf(bytes).includes(entry));
}
