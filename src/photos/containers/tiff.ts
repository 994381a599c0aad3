import { mostExifDirectories, mostExifEntries } from "../../terms/limits.ts";
import { latin1, viewOf } from "./part.ts";

/** A directory of a TIFF or EXIF block (TIFF 6.0, section 2; Exif 2.32, section 4.6). */
export interface TiffDirectory {
  readonly kind: "exif" | "gps" | "picture";
  readonly start: number;
  readonly entries: readonly TiffEntry[];
  /** Where the next directory of its chain stands; 0 for none. */
  readonly next: number;
}

export interface TiffEntry {
  readonly tag: number;
  readonly type: number;
  readonly count: number;
  /** Where its twelve bytes stand. */
  readonly at: number;
  /** Where its value stands: in those bytes, or elsewhere, perhaps beyond the end. */
  readonly start: number;
  readonly end: number;
}

/** Bytes of one value, by type (TIFF 6.0, section 2); 13 is a pointer to a directory. */
const sizes = [0, 1, 1, 2, 4, 8, 1, 1, 2, 4, 8, 4, 8, 4];

const pointers: ReadonlyMap<number, TiffDirectory["kind"]> = new Map([
  [0x014a, "picture"], // SubIFDs
  [0x8769, "exif"],
  [0x8825, "gps"],
  [0xa005, "exif"], // interoperability
]);

/** Reads numbers in the byte order that a block's header names. */
export interface TiffReader {
  uint16(at: number): number;
  uint32(at: number): number;
}

/** Undefined where the bytes do not begin like a TIFF. */
export function openTiff(bytes: Uint8Array): TiffReader | undefined {
  const header = latin1(bytes, 0, 4);
  if (bytes.length < 8 || (header !== "II*\0" && header !== "MM\0*")) return undefined;
  const view = viewOf(bytes);
  const little = header === "II*\0";
  return { uint16: (at) => view.getUint16(at, little), uint32: (at) => view.getUint32(at, little) };
}

/** The number that an entry's value holds at a place of its list: of type short or long. */
export function numberAt(reader: TiffReader, entry: TiffEntry, index: number): number {
  if (entry.type === 3) return reader.uint16(entry.start + index * 2);
  return reader.uint32(entry.start + index * 4);
}

/**
 * All directories that a block's header leads to, in chains and by pointers, each once. Ones that
 * lie beyond the end are left out, and after a great many no more are read.
 */
export function readDirectories(bytes: Uint8Array): TiffDirectory[] {
  const reader = openTiff(bytes);
  if (!reader) return [];
  const found = new Map<number, TiffDirectory>();
  const queue: [start: number, kind: TiffDirectory["kind"]][] = [[reader.uint32(4), "picture"]];
  let entries = 0;
  for (const [start, kind] of queue) {
    if (found.has(start) || found.size >= mostExifDirectories) continue;
    const directory = readDirectory(bytes, reader, start, kind);
    if (!directory) continue;
    entries += directory.entries.length;
    if (entries > mostExifEntries) break;
    found.set(start, directory);
    if (directory.next !== 0) queue.push([directory.next, kind]);
    queue.push(...pointersOf(bytes, reader, directory));
  }
  return [...found.values()];
}

export function readDirectory(
  bytes: Uint8Array,
  reader: TiffReader,
  start: number,
  kind: TiffDirectory["kind"],
): TiffDirectory | undefined {
  if (start < 8 || start + 2 > bytes.length) return undefined;
  const count = reader.uint16(start);
  const end = start + 2 + count * 12;
  if (end > bytes.length || count > mostExifEntries) return undefined;
  const entries = Array.from({ length: count }, (_, i) => readEntry(reader, start + 2 + i * 12));
  return { kind, start, entries, next: end + 4 > bytes.length ? 0 : reader.uint32(end) };
}

function readEntry(reader: TiffReader, at: number): TiffEntry {
  const [type, count] = [reader.uint16(at + 2), reader.uint32(at + 4)];
  const length = (sizes[type] ?? 0) * count;
  const start = length <= 4 ? at + 8 : reader.uint32(at + 8);
  return { tag: reader.uint16(at), type, count, at, start, end: start + length };
}

function pointersOf(
  bytes: Uint8Array,
  reader: TiffReader,
  { entries }: TiffDirectory,
): [start: number, kind: TiffDirectory["kind"]][] {
  return entries.flatMap((entry) => {
    const kind = pointers.get(entry.tag);
    const isPointer = [4, 13].includes(entry.type) && entry.end <= bytes.length;
    if (!kind || !isPointer) return [];
    const starts = Array.from({ length: Math.min(entry.count, mostExifDirectories) }, (_, index) =>
      numberAt(reader, entry, index),
    );
    return starts.map((start): [number, TiffDirectory["kind"]] => [start, kind]);
  });
}
