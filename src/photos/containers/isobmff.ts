import { mostBoxes } from "../../terms/limits.ts";
import { holdTo } from "../over-limit.ts";
import type { Part, Parts } from "./part.ts";
import { latin1, viewOf } from "./part.ts";

/**
 * Splits AVIF or HEIC into its outermost boxes (ISO/IEC 14496-12, section 4.2). Some phones append
 * notes of their own that are no boxes, so a file counts as complete once the picture's data is.
 */
export function parseIsobmff(bytes: Uint8Array): Parts {
  const { parts, complete } = parseBoxes(bytes, 0, bytes.length);
  const holdsPicture = ["meta", "mdat"].every((name) => findBox(parts, name));
  return { parts, complete: complete || holdsPicture };
}

/** The boxes that follow each other in a stretch, as far as they make sense. */
export function parseBoxes(bytes: Uint8Array, from: number, to: number): Parts {
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
    holdTo(mostBoxes, parts.length, "boxes");
    start = end;
  }
  return { parts, complete: start === to };
}

export function findBox(boxes: readonly Part[], name: string): Part | undefined {
  return boxes.find((box) => box.name === name);
}

/** Reads big-endian numbers one after another; throws a RangeError beyond the end. */
export interface Cursor {
  (length: number): number;
  at(): number;
}

export function cursor(bytes: Uint8Array, from: number): Cursor {
  const view = viewOf(bytes);
  let at = from;
  const take = (length: number) => {
    const value = readUint(view, at, length);
    at += length;
    return value;
  };
  return Object.assign(take, { at: () => at });
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
