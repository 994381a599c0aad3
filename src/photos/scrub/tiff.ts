import { mostStrips } from "../../terms/limits.ts";
import { cleanProfile } from "../containers/icc.ts";
import { parseJpeg } from "../containers/jpeg.ts";
import {
  numberAt,
  openTiff,
  readDirectories,
  readDirectory,
  type TiffDirectory,
  type TiffEntry,
  type TiffReader,
} from "../containers/tiff.ts";
import { holdTo } from "../over-limit.ts";
import { blankStretches, type Stretch, stretchesBetween } from "./blank.ts";
import type { Scrubbed } from "./scrubbed.ts";

/** No tag of a few numbers has more of them than this: some have one for each of a pixel's samples. */
const mostOfFew = 32;

/** Each level of three colours. */
const colourTable = 3 * 65536;

const stripOffsets = [273, 324];
const stripLengths = [279, 325];
/** Short and long: places and lengths are of no other type (TIFF 6.0, section 8). */
const numberTypes = [3, 4];

const profile = 34675;
const compressionTag = 259;
const jpegTables = 347;
const trailsOfJpeg = [6, 7];

/**
 * Tags that a picture needs, with the most values each may have (TIFF 6.0, sections 8, 10 to 15, 18
 * to 23; technical note 2 on JPEG; the colour profile is ICC.1:2022, annex B.3). Words, dates,
 * thumbnails, and the directories of EXIF and GPS are not among them.
 */
const mostOfTag: ReadonlyMap<number, number> = new Map([
  ...[254, 255, 256, 257, 258, 259, 262, 263, 266, 274, 277, 278, 280, 281].map(few),
  ...[282, 283, 284, 290, 292, 293, 296, 317, 318, 319, 321, 322, 323].map(few),
  ...[332, 334, 336, 338, 339, 340, 341, 529, 530, 531, 532].map(few),
  [291, 65536],
  [320, colourTable],
  ...[...stripOffsets, ...stripLengths].map((tag) => [tag, mostStrips] as const),
  [jpegTables, 65536],
  [profile, Number.POSITIVE_INFINITY],
]);

function few(tag: number): readonly [number, number] {
  return [tag, mostOfFew];
}

/**
 * Blanks everything in a TIFF that its picture does not need, where it stands: nothing moves, so
 * nothing else must be changed. Where several pictures are in the file, or a piece of it lies where
 * it cannot be, no bytes are given.
 */
export function scrubTiff(bytes: Uint8Array): Scrubbed {
  const reader = openTiff(bytes);
  const main = reader && readDirectory(bytes, reader, reader.uint32(4), "picture");
  const needed = neededOf(bytes, main);
  const strips = reader ? readStrips(reader, needed) : [];
  const isSound = strips.length > 0 && strips.every(({ end }) => end <= bytes.length);
  const canStay = reader && main && isSound && isOnePicture(bytes, reader, main);
  if (!canStay || !isPlainlyCoded(bytes, reader, needed, strips)) return refuse(bytes, reader);
  const after = Buffer.from(bytes);
  rewriteDirectory(after, main, needed);
  const directory = { start: main.start, end: main.start + 2 + needed.length * 12 + 4 };
  const kept = [{ start: 0, end: 8 }, directory, ...strips, ...needed.filter(isElsewhere)];
  const blanked = stretchesBetween({ start: 0, end: bytes.length }, kept);
  const notes = [...blankStretches(after, bytes, blanked), ...blankProfile(after, needed)];
  return { bytes: after, notes, block: bytes };
}

/** Nothing can be taken out; read is everything outside the strips of all pictures. */
function refuse(bytes: Uint8Array, reader: TiffReader | undefined): Scrubbed {
  const strips = reader
    ? readDirectories(bytes).flatMap((each) => readStrips(reader, neededOf(bytes, each)))
    : [];
  const outside = stretchesBetween({ start: 0, end: bytes.length }, strips);
  const notes = outside.map(({ start, end }) => bytes.subarray(start, end));
  return { bytes: undefined, notes, block: bytes };
}

/** Of each tag the first entry counts. */
function neededOf(bytes: Uint8Array, directory: TiffDirectory | undefined): TiffEntry[] {
  const seen = new Set<number>();
  return (directory?.entries ?? []).filter((entry) => {
    const isFirst = !seen.has(entry.tag);
    seen.add(entry.tag);
    return isFirst && isNeeded(bytes, entry);
  });
}

function isElsewhere({ at, start }: TiffEntry): boolean {
  return start !== at + 8;
}

function isNeeded(bytes: Uint8Array, { tag, count, start, end }: TiffEntry): boolean {
  return count <= (mostOfTag.get(tag) ?? 0) && start < end && end <= bytes.length;
}

function readStrips(reader: TiffReader, needed: readonly TiffEntry[]): Stretch[] {
  const offsets = needed.find(({ tag }) => stripOffsets.includes(tag));
  const lengths = needed.find(({ tag }) => stripLengths.includes(tag));
  if (!offsets || offsets.count !== lengths?.count) return [];
  if (![offsets, lengths].every(({ type }) => numberTypes.includes(type))) return [];
  holdTo(mostStrips, offsets.count, "strips");
  return Array.from({ length: offsets.count }, (_, index) => {
    const start = numberAt(reader, offsets, index);
    return { start, end: start + numberAt(reader, lengths, index) };
  });
}

/** A smaller copy of the same picture may follow it; a page of its own may not. */
function isOnePicture(bytes: Uint8Array, reader: TiffReader, main: TiffDirectory): boolean {
  if (main.next === 0) return true;
  const second = readDirectory(bytes, reader, main.next, "picture");
  const kind = neededOf(bytes, second).find(({ tag }) => tag === 254);
  const isThumbnail = kind !== undefined && (numberAt(reader, kind, 0) & 1) === 1;
  const holdsNoPicture = !second?.entries.some(({ tag }) => stripOffsets.includes(tag));
  return isThumbnail || holdsNoPicture;
}

/** Pieces coded as JPEG may carry notes of their own, which cannot be blanked where they stand. */
function isPlainlyCoded(
  bytes: Uint8Array,
  reader: TiffReader,
  needed: readonly TiffEntry[],
  strips: readonly Stretch[],
): boolean {
  const compression = needed.find(({ tag }) => tag === compressionTag);
  if (!compression || !trailsOfJpeg.includes(numberAt(reader, compression, 0))) return true;
  const tables = needed.filter(({ tag }) => tag === jpegTables);
  return [...strips, ...tables].every(({ start, end }) => {
    const { parts } = parseJpeg(bytes.subarray(start, end));
    return parts.every(({ name }) => !name.startsWith("e") && name !== "fe");
  });
}

/** The needed entries move together; the rest of the table's room is blanked later. */
function rewriteDirectory(
  after: Buffer,
  { start }: TiffDirectory,
  needed: readonly TiffEntry[],
): void {
  if (after.toString("latin1", 0, 2) === "II") after.writeUInt16LE(needed.length, start);
  else after.writeUInt16BE(needed.length, start);
  const entries = needed.map((entry) => plainEntry(after, entry));
  entries.forEach((entry, index) => {
    entry.copy(after, start + 2 + index * 12);
  });
  const end = start + 2 + entries.length * 12;
  after.fill(0, end, end + 4); // no directory follows
}

/** An entry whose value is shorter than its four bytes holds noughts behind it. */
function plainEntry(after: Buffer, entry: TiffEntry): Buffer {
  const plain = Buffer.from(after.subarray(entry.at, entry.at + 12));
  if (!isElsewhere(entry)) plain.fill(0, 8 + entry.end - entry.start);
  return plain;
}

function blankProfile(after: Buffer, needed: readonly TiffEntry[]): Uint8Array[] {
  const entry = needed.find(({ tag }) => tag === profile);
  if (!entry) return [];
  const before = Buffer.from(after.subarray(entry.start, entry.end));
  const clean = cleanProfile(before);
  (clean ?? Buffer.alloc(before.length)).copy(after, entry.start);
  return clean?.equals(before) ? [] : [before];
}
