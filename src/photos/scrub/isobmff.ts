import { type Extent, findMetadataItems, type MetadataItem } from "../containers/isobmff.ts";
import { encodeEmptyExif } from "./exif.ts";

/**
 * Blanks the metadata of an AVIF or HEIC where it stands: nothing moves, so nothing else must be
 * changed. Their way up is not part of it. Undefined where the file does not tell where its
 * metadata stands.
 */
export function scrubIsobmff(bytes: Uint8Array): Buffer | undefined {
  const scrubbed = Buffer.from(bytes);
  const items = findItems(bytes);
  if (!items) return undefined;
  for (const { kind, extents } of items) {
    overwrite(scrubbed, extents, kind === "exif" ? EMPTY_EXIF : EMPTY_XMP, kind);
  }
  return scrubbed;
}

/** A list of items that points outside the file cannot be read. */
function findItems(bytes: Uint8Array): MetadataItem[] | undefined {
  try {
    return findMetadataItems(bytes);
  } catch (error) {
    if (error instanceof RangeError) return undefined;
    throw error;
  }
}

/** An EXIF item begins with the length of what stands before the block (ISO/IEC 23008-12, A.2.1). */
const EMPTY_EXIF = Buffer.concat([Buffer.alloc(4), encodeEmptyExif()]);
const EMPTY_XMP = Buffer.from('<x:xmpmeta xmlns:x="adobe:ns:meta/"/>');

/** Fills an item with `content`, and what is left of it with zeros or, in a text, with spaces. */
function overwrite(file: Buffer, extents: Extent[], content: Buffer, kind: "exif" | "xmp"): void {
  const length = extents.reduce((sum, { start, end }) => sum + end - start, 0);
  const filled = Buffer.alloc(length, kind === "exif" ? 0 : " ");
  if (content.length <= length) content.copy(filled);
  let from = 0;
  for (const { start, end } of extents) {
    filled.copy(file, start, from, from + end - start);
    from += end - start;
  }
}
