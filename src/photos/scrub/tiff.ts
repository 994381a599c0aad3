import type { Metadata } from "sharp";
import { engine } from "../engine.ts";
import { MAX_PIXELS } from "../fault.ts";

/** What the picture library reads and writes again number for number. */
const SAME_AGAIN: Record<string, string> = {
  "b-w": "b-w",
  grey16: "grey16",
  rgb16: "rgb16",
  srgb: "srgb",
};

/**
 * Writes a TIFF anew without its metadata. It is packed otherwise than before, but without loss, and
 * turned the way up that it is looked at. Undefined where that would lose something: several
 * pictures in one file, or colours that are no red, green and blue.
 */
export async function rewriteTiff(
  bytes: Uint8Array,
  metadata: Metadata,
): Promise<Buffer | undefined> {
  const space = SAME_AGAIN[metadata.space];
  if (!space || (metadata.pages ?? 1) > 1) return undefined;
  return engine()(bytes, { failOn: "error", limitInputPixels: MAX_PIXELS })
    .autoOrient()
    .toColourspace(space)
    .keepIccProfile()
    .tiff({ compression: "deflate", predictor: "horizontal" })
    .toBuffer();
}
