/** Takes a photograph in that somebody handed in: nothing but the picture, or why not. */
import { decodeLargest } from "./decode.ts";
import { sniffFormat } from "./format.ts";
import { hashOf } from "./hash.ts";
import { scrubPicture } from "./scrub/scrub.ts";
import type { Trace } from "./traces/trace.ts";

export type TakenIn =
  | {
      readonly ok: true;
      readonly bytes: Uint8Array;
      /** Sums of these bytes, and of those that were handed in. */
      readonly sums: readonly string[];
      readonly removed: readonly Trace[];
    }
  | { readonly ok: false; readonly fault: { readonly message: string; readonly hint: string } };

/** Scrubs a photograph in memory, and sees to it that it can be shown. */
export async function takeInPicture(bytes: Uint8Array): Promise<TakenIn> {
  const scrubbing = await scrubPicture(bytes);
  if (scrubbing.outcome === "fault") return { ok: false, fault: scrubbing.fault };
  if (scrubbing.outcome === "scrubbed")
    return {
      ...{ ok: true, bytes: scrubbing.bytes, removed: scrubbing.removed },
      sums: [hashOf(scrubbing.bytes), hashOf(bytes)],
    };
  // What had to be scrubbed was opened for that; the others are opened here.
  const format = sniffFormat(bytes);
  const decoded = format && (await decodeLargest(bytes, format));
  if (decoded && "fault" in decoded) return { ok: false, fault: decoded.fault };
  return { ok: true, bytes, sums: [hashOf(bytes)], removed: [] };
}
