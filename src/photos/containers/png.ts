import { mostChunks } from "../../terms/limits.ts";
import { holdTo } from "../over-limit.ts";
import type { Part, Parts } from "./part.ts";
import { latin1, viewOf } from "./part.ts";

const signatureLength = 8;

/** Splits a PNG into its chunks (W3C PNG, section 5). What follows `IEND` belongs to no part. */
export function parsePng(bytes: Uint8Array): Parts {
  const view = viewOf(bytes);
  const parts: Part[] = [];
  let start = signatureLength;
  while (start + 12 <= bytes.length) {
    const name = latin1(bytes, start + 4, start + 8);
    const bodyEnd = start + 8 + view.getUint32(start);
    const end = bodyEnd + 4;
    if (end > bytes.length) break;
    parts.push({ name, start, end, bodyStart: start + 8, bodyEnd });
    holdTo(mostChunks, parts.length, "chunks");
    if (name === "IEND") return { parts, complete: true };
    start = end;
  }
  return { parts, complete: false };
}
