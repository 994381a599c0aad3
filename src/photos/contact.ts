/** A photograph on a contact sheet: how it looks when small, and which codes lie in it. */
import { decodeLargest, openPixels } from "./decode.ts";
import { notReadableFault, type PictureFault } from "./fault.ts";
import { describeContent, sniffFormat } from "./format.ts";
import { readCodes } from "./read-codes.ts";

export interface Contact {
  /** WebP, the way up that it is looked at. */
  readonly small: Uint8Array;
  /** What the QR codes in it say, word for word. */
  readonly codes: readonly string[];
}

/** The longest side of a small picture, in pixels: enough to tell one tile from the next. */
const smallSide = 480;

/** Decodes a photograph once, for its small picture and its codes. */
export async function contactOf(
  bytes: Uint8Array,
): Promise<Contact | { readonly fault: PictureFault }> {
  const format = sniffFormat(bytes);
  if (!format) return { fault: notReadableFault(describeContent(bytes)) };
  const decoded = await decodeLargest(bytes, format);
  if ("fault" in decoded) return decoded;
  const { pixels } = decoded;
  const small = await openPixels(pixels)
    .resize({ width: smallSide, height: smallSide, fit: "inside", withoutEnlargement: true })
    .webp({ quality: 75 })
    .toBuffer();
  return { small, codes: await readCodes(pixels) };
}
