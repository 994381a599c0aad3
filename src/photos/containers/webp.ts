import { mostChunks } from "../../terms/limits.ts";
import { holdTo } from "../over-limit.ts";
import type { Part, Parts } from "./part.ts";
import { latin1, viewOf } from "./part.ts";

const headerLength = 12;

/** Splits a WebP into its RIFF chunks (RFC 9649). What follows the RIFF belongs to no part. */
export function parseWebp(bytes: Uint8Array): Parts {
  const view = viewOf(bytes);
  const parts: Part[] = [];
  if (bytes.length < headerLength) return { parts, complete: false };
  const riffEnd = 8 + view.getUint32(4, true);
  const complete = riffEnd <= bytes.length;
  const last = Math.min(riffEnd, bytes.length);
  let start = headerLength;
  while (start + 8 <= last) {
    const bodyEnd = start + 8 + view.getUint32(start + 4, true);
    if (bodyEnd > last) return { parts, complete: false };
    const end = Math.min(bodyEnd + (bodyEnd % 2), last);
    parts.push({
      name: latin1(bytes, start, start + 4),
      start,
      end,
      bodyStart: start + 8,
      bodyEnd,
    });
    holdTo(mostChunks, parts.length, "chunks");
    start = end;
  }
  return { parts, complete };
}
