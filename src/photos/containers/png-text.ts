import { largestUnpacked } from "../../terms/limits.ts";
import { OverLimit } from "../over-limit.ts";
import { inflate } from "./inflate.ts";
import { bufferOf, latin1, type Part } from "./part.ts";

/** The contents of chunks, as they are and unpacked; throws where that is more than the limit. */
export function readPngNotes(bytes: Uint8Array, chunks: readonly Part[]): Uint8Array[] {
  let left = largestUnpacked;
  const unpack = (packed: Uint8Array): Buffer[] => {
    const inflated = inflate(packed, left);
    if (inflated === "too large") {
      throw new OverLimit(`${largestUnpacked / 1e6} MB of packed notes`);
    }
    left -= inflated?.unpacked.length ?? 0;
    return inflated ? [inflated.unpacked] : [];
  };
  return chunks.flatMap((chunk) => {
    const body = bufferOf(bytes).subarray(chunk.bodyStart, chunk.bodyEnd);
    const texts = [body, ...packedIn(chunk.name, body).flatMap(unpack)];
    return texts.flatMap((text) => [text, ...decodeRawProfile(text)]);
  });
}

/**
 * Where a chunk may hold something packed: compressed text (W3C PNG, third edition, sections 11.3.3.3
 * and 11.3.3.4), a colour profile, and compressed EXIF, which was proposed with one to five bytes
 * before it.
 */
function packedIn(name: string, body: Buffer): Buffer[] {
  const afterKey = body.indexOf(0) + 1;
  if (name === "zTXt" || name === "iCCP") return [body.subarray(afterKey + 1)];
  if (name === "zxIf" || name === "zXIf") return [0, 1, 5].map((at) => body.subarray(at));
  if (name !== "iTXt") return [];
  const afterLanguage = body.indexOf(0, afterKey + 2) + 1;
  return [body.subarray(body.indexOf(0, afterLanguage) + 1)];
}

/** A name, a length and lines of hexadecimal digits: so older programs keep EXIF, IPTC and XMP in a PNG. */
const rawProfile = /(?:^|\0)\s{0,16}[\w ]{1,32}\s{1,16}\d{1,10}\s/;
const headLength = 256;

function decodeRawProfile(text: Buffer): Buffer[] {
  const head = rawProfile.exec(latin1(text, 0, headLength));
  if (!head) return [];
  const digits = Buffer.from(
    text.subarray(head.index + head[0].length).filter((byte) => byte > 0x20),
  );
  return [Buffer.from(digits.toString("latin1"), "hex")];
}
