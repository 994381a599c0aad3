import type { Part, Parts } from "./part.ts";
import { latin1, viewOf } from "./part.ts";

/** A stretch of the file that holds (part of) an item. */
export interface Extent {
  start: number;
  end: number;
}

/** A metadata item of an AVIF or HEIC file, and where its bytes lie. */
export interface MetadataItem {
  kind: "exif" | "xmp";
  extents: Extent[];
}

/**
 * Splits AVIF or HEIC into its outermost boxes (ISO/IEC 14496-12, section 4.2). Some phones append
 * notes of their own that are no boxes, so a file counts as complete once the picture's data is.
 */
export function parseIsobmff(bytes: Uint8Array): Parts {
  const { parts, complete } = parseBoxes(bytes, 0, bytes.length);
  const holdsPicture = ["meta", "mdat"].every((name) => findBox(parts, name));
  return { parts, complete: complete || holdsPicture };
}

function parseBoxes(bytes: Uint8Array, from: number, to: number): Parts {
  const view = viewOf(bytes);
  const parts: Part[] = [];
  let start = from;
  while (start + 8 <= to) {
    const size = view.getUint32(start);
    const isLong = size === 1 && start + 16 <= to;
    const length = size === 0 ? to - start : isLong ? readUint64(view, start + 8) : size;
    const end = start + length;
    const bodyStart = start + (isLong ? 16 : 8);
    if (end > to || end < bodyStart) return { parts, complete: false };
    parts.push({ name: latin1(bytes, start + 4, start + 8), start, end, bodyStart, bodyEnd: end });
    start = end;
  }
  return { parts, complete: start === to };
}

/** Finds the EXIF and XMP items of the `meta` box (ISO/IEC 14496-12, sections 8.11.3 and 8.11.6). */
export function findMetadataItems(bytes: Uint8Array): MetadataItem[] {
  const meta = parseIsobmff(bytes).parts.find((box) => box.name === "meta");
  if (!meta) return [];
  const boxes = parseBoxes(bytes, meta.bodyStart + 4, meta.end).parts;
  const kinds = readItemKinds(bytes, findBox(boxes, "iinf"));
  const dataStart = findBox(boxes, "idat")?.bodyStart;
  return readLocations(bytes, findBox(boxes, "iloc"), dataStart).flatMap(({ id, extents }) => {
    const kind = kinds.get(id);
    return kind ? [{ kind, extents }] : [];
  });
}

function findBox(boxes: Part[], name: string): Part | undefined {
  return boxes.find((box) => box.name === name);
}

function readItemKinds(bytes: Uint8Array, box: Part | undefined): Map<number, "exif" | "xmp"> {
  const kinds = new Map<number, "exif" | "xmp">();
  if (!box) return kinds;
  const countLength = bytes[box.bodyStart] === 0 ? 2 : 4;
  for (const entry of parseBoxes(bytes, box.bodyStart + 4 + countLength, box.end).parts) {
    const idLength = bytes[entry.bodyStart] === 3 ? 4 : 2;
    const typeStart = entry.bodyStart + 4 + idLength + 2;
    const type = latin1(bytes, typeStart, typeStart + 4);
    const id = readUint(viewOf(bytes), entry.bodyStart + 4, idLength);
    if (type === "Exif") kinds.set(id, "exif");
    if (type === "mime" && latin1(bytes, typeStart, entry.end).includes("rdf+xml")) {
      kinds.set(id, "xmp");
    }
  }
  return kinds;
}

interface Location {
  id: number;
  extents: Extent[];
}

function readLocations(
  bytes: Uint8Array,
  box: Part | undefined,
  dataStart: number | undefined,
): Location[] {
  if (!box) return [];
  const take = cursor(bytes, box.bodyStart);
  const version = take(1);
  take(3);
  const sizes = take(2);
  const [offsetSize, lengthSize, baseSize] = [sizes >> 12, (sizes >> 8) & 15, (sizes >> 4) & 15];
  const indexSize = version === 0 ? 0 : sizes & 15;
  return Array.from({ length: take(version < 2 ? 2 : 4) }, () => {
    const id = take(version < 2 ? 2 : 4);
    const method = version === 0 ? 0 : take(2) & 15;
    take(2);
    const base = take(baseSize);
    const extents = Array.from({ length: take(2) }, () => {
      take(indexSize);
      const start = base + take(offsetSize) + (method === 1 ? (dataStart ?? Number.NaN) : 0);
      return { start, end: start + take(lengthSize) };
    });
    return { id, extents: method < 2 ? extents.filter((one) => one.end <= bytes.length) : [] };
  });
}

/** Reads big-endian numbers one after another. */
function cursor(bytes: Uint8Array, from: number): (length: number) => number {
  const view = viewOf(bytes);
  let at = from;
  return (length) => {
    const value = readUint(view, at, length);
    at += length;
    return value;
  };
}

function readUint(view: DataView, at: number, length: number): number {
  if (length === 8) return readUint64(view, at);
  let value = 0;
  for (let i = 0; i < length; i++) value = value * 256 + view.getUint8(at + i);
  return value;
}

function readUint64(view: DataView, at: number): number {
  return view.getUint32(at) * 2 ** 32 + view.getUint32(at + 4);
}
