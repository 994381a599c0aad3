import { mostItems } from "../../terms/limits.ts";
import { holdTo } from "../over-limit.ts";
import { cursor, parseBoxes } from "./isobmff.ts";
import { latin1, type Part } from "./part.ts";

/** A stretch of a box that tells of one item, or of several, and their numbers. */
export interface HeifEntry {
  readonly id: number;
  readonly start: number;
  readonly end: number;
}

/** What an item is: a coded picture, a grid of them, EXIF, and so on (ISO/IEC 14496-12, 8.11.6). */
export interface HeifItem extends HeifEntry {
  readonly type: string;
  /** Where its name and what else is said in words begins. */
  readonly wordsAt: number;
}

/** Where an item's bytes lie (8.11.3): in the file, or in the `idat` box. */
export interface HeifLocation extends HeifEntry {
  readonly isInIdat: boolean;
  readonly extents: { start: number; end: number }[];
}

/** Items that an item refers to (8.11.12): as its parts, or as what it is an addition to. */
export interface HeifReference extends HeifEntry {
  readonly type: string;
  readonly to: readonly number[];
}

/** Which of the properties belong to an item, counted from 1 (ISO/IEC 23008-12, 9.3). */
export interface HeifAssociation extends HeifEntry {
  readonly properties: readonly number[];
}

/** The version of a box and its flags are its first four bytes. */
const versionLength = 4;

export function readItems(bytes: Uint8Array, box: Part): { items: HeifItem[]; countAt: number } {
  const countLength = bytes[box.bodyStart] === 0 ? 2 : 4;
  const countAt = box.bodyStart + versionLength;
  const { parts } = parseBoxes(bytes, countAt + countLength, box.end);
  holdTo(mostItems, parts.length, "items");
  const items = parts.map(({ start, end, bodyStart }) => {
    const take = cursor(bytes, bodyStart);
    const idLength = take(1) === 3 ? 4 : 2;
    take(3);
    const id = take(idLength);
    take(2); // whether it is protected
    const typeAt = take.at();
    return { id, start, end, type: latin1(bytes, typeAt, typeAt + 4), wordsAt: typeAt + 4 };
  });
  return { items, countAt };
}

export function readLocations(
  bytes: Uint8Array,
  box: Part,
): { locations: HeifLocation[]; countAt: number } {
  const take = cursor(bytes, box.bodyStart);
  const version = take(1);
  take(3);
  const sizes = take(2);
  const [offsetSize, lengthSize, baseSize] = [sizes >> 12, (sizes >> 8) & 15, (sizes >> 4) & 15];
  const indexSize = version === 0 ? 0 : sizes & 15;
  const countAt = take.at();
  const locations: HeifLocation[] = [];
  let stretches = 0;
  for (let left = take(version < 2 ? 2 : 4); left > 0; left--) {
    const start = take.at();
    const id = take(version < 2 ? 2 : 4);
    const method = version === 0 ? 0 : take(2) & 15;
    take(2); // which file: this one
    const base = take(baseSize);
    const count = take(2);
    stretches += count;
    holdTo(mostItems, stretches, "stretches of items");
    const extents = Array.from({ length: count }, () => {
      take(indexSize);
      const from = base + take(offsetSize);
      return { start: from, end: from + take(lengthSize) };
    });
    if (method > 1) throw new RangeError("an item is made of other items' bytes");
    locations.push({ id, start, end: take.at(), isInIdat: method === 1, extents });
  }
  return { locations, countAt };
}

export function readReferences(bytes: Uint8Array, box: Part): HeifReference[] {
  const idLength = bytes[box.bodyStart] === 0 ? 2 : 4;
  const { parts } = parseBoxes(bytes, box.bodyStart + versionLength, box.end);
  return parts.map(({ name, start, end, bodyStart }) => {
    const take = cursor(bytes, bodyStart);
    const id = take(idLength);
    const to = Array.from({ length: take(2) }, () => take(idLength));
    return { id, start, end, type: name, to };
  });
}

export function readAssociations(
  bytes: Uint8Array,
  box: Part,
): { associations: HeifAssociation[]; countAt: number } {
  const take = cursor(bytes, box.bodyStart);
  const version = take(1);
  const isWide = (take(3) & 1) === 1;
  const countAt = take.at();
  const associations: HeifAssociation[] = [];
  for (let left = take(4); left > 0; left--) {
    holdTo(mostItems, associations.length, "items");
    const start = take.at();
    const id = take(version === 0 ? 2 : 4);
    const properties = Array.from({ length: take(1) }, () =>
      isWide ? take(2) & 0x7fff : take(1) & 0x7f,
    );
    associations.push({ id, start, end: take.at(), properties });
  }
  return { associations, countAt };
}
