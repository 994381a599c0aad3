import { mostSegments } from "../../terms/limits.ts";
import { holdTo } from "../over-limit.ts";
import type { Part, Parts } from "./part.ts";
import { viewOf } from "./part.ts";

const endOfImage = 0xd9;
const startOfScan = 0xda;

/**
 * Splits a JPEG into its segments (ITU-T T.81, annex B). A scan's segment holds the coded picture
 * that follows it. What stands after the end of the image belongs to no part.
 */
export function parseJpeg(bytes: Uint8Array): Parts {
  const parts: Part[] = [{ name: "d8", start: 0, end: 2, bodyStart: 2, bodyEnd: 2 }];
  let at = 2;
  while (at + 2 <= bytes.length && bytes[at] === 0xff) {
    const marker = bytes[at + 1] ?? 0;
    if (marker === 0xff) {
      at += 1;
      continue;
    }
    const part = readSegment(bytes, at, marker);
    if (!part) break;
    parts.push(part);
    holdTo(mostSegments, parts.length, "segments");
    if (marker === endOfImage) return { parts, complete: true };
    at = part.end;
  }
  return { parts, complete: false };
}

function readSegment(bytes: Uint8Array, start: number, marker: number): Part | undefined {
  const name = marker.toString(16).padStart(2, "0");
  if (marker === endOfImage) {
    return { name, start, end: start + 2, bodyStart: start + 2, bodyEnd: start + 2 };
  }
  if (start + 4 > bytes.length) return undefined;
  const length = viewOf(bytes).getUint16(start + 2);
  const bodyEnd = start + 2 + length;
  if (length < 2 || bodyEnd > bytes.length) return undefined;
  const end = marker === startOfScan ? findScanEnd(bytes, bodyEnd) : bodyEnd;
  return { name, start, end, bodyStart: start + 4, bodyEnd };
}

/** Coded data goes on until a marker that is neither a stuffed zero nor a restart. */
function findScanEnd(bytes: Uint8Array, from: number): number {
  let at = bytes.indexOf(0xff, from);
  while (at >= 0 && at + 1 < bytes.length) {
    const next = bytes[at + 1] ?? 0;
    const isCodedData = next === 0 || (next >= 0xd0 && next <= 0xd7);
    if (!isCodedData) return at;
    at = bytes.indexOf(0xff, at + 2);
  }
  return bytes.length;
}
