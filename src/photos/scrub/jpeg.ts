import { parseJpeg } from "../containers/jpeg.ts";
import { latin1, type Part } from "../containers/part.ts";
import { encodeOrientation } from "./exif.ts";

/**
 * Takes all metadata out of a JPEG but what its colours and its way up need. The coded picture stays
 * as it is. What follows the picture's end (a film, a second picture, a light map) goes too.
 */
export function scrubJpeg(bytes: Uint8Array, orientation: number): Buffer {
  const kept = parseJpeg(bytes).parts.filter((part) => isNeeded(bytes, part));
  const pieces = kept.map((part) => bytes.subarray(part.start, part.end));
  const afterHead = kept.findIndex((part) => part.name !== "d8" && part.name !== "e0");
  if (orientation !== 1) pieces.splice(afterHead, 0, encodeSegment(orientation));
  return Buffer.concat(pieces);
}

/** Of the application segments: JFIF's own, the colour profile, and Adobe's note on the colours. */
function isNeeded(bytes: Uint8Array, { name, bodyStart }: Part): boolean {
  const startsWith = (word: string) => latin1(bytes, bodyStart, bodyStart + word.length) === word;
  if (name === "e0") return startsWith("JFIF\0");
  if (name === "e2") return startsWith("ICC_PROFILE\0");
  if (name === "ee") return startsWith("Adobe");
  const isApplicationOrComment = name.startsWith("e") || name === "fe";
  return !isApplicationOrComment;
}

function encodeSegment(orientation: number): Buffer {
  const body = Buffer.concat([Buffer.from("Exif\0\0"), encodeOrientation(orientation)]);
  const head = Buffer.from([0xff, 0xe1, 0, 0]);
  head.writeUInt16BE(body.length + 2, 2);
  return Buffer.concat([head, body]);
}
