import { readFile } from "node:fs/promises";
import { decodeLargest, takeSample } from "./decode.ts";
import type { PictureFault } from "./fault.ts";
import type { PictureFormat } from "./format.ts";
import { hashOf } from "./hash.ts";
import type { Pixels } from "./pixels.ts";

/** A photograph that was looked at, and its bytes where they had to be read for that. */
export interface LookedAt {
  readonly path: string;
  readonly hash: string;
  readonly bytes?: Uint8Array | undefined;
}

/** Nothing may be remembered under the hash of other content than it was made from. */
export async function readBytes({ path, hash, bytes: seen }: LookedAt): Promise<Uint8Array> {
  const bytes = seen ?? (await readFile(path));
  if (!seen && hashOf(bytes) !== hash) throw changedError(path);
  return bytes;
}

/** Decodes the pixels that are judged and measured. */
export async function readSample(
  source: LookedAt,
  format: PictureFormat,
): Promise<{ pixels: Pixels } | { fault: PictureFault }> {
  const decoded = await decodeLargest(await readBytes(source), format);
  return "fault" in decoded ? decoded : { pixels: await takeSample(decoded.pixels) };
}

export function changedError(path: string): Error {
  return new Error(`${path} changed while it was being read. Run the command again.`);
}
