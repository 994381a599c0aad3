/** The ids by which git knows what a file holds. */
import { createHash } from "node:crypto";

/**
 * Whether a record's text is what git knows by an id. A byte-order mark and the way lines end are no
 * part of a text as it is read, and of some folders git keeps other line ends than the disk.
 *
 * @param text lines end in `\n`
 */
export function isTextOf(blob: string, text: string): boolean {
  const ends = [text, text.replaceAll("\n", "\r\n")];
  return [...ends, ...ends.map((each) => `\uFEFF${each}`)].some(
    (each) => idOf(blob, each) === blob,
  );
}

/** The hash of `blob`, the length in bytes, a zero byte and the bytes: Git's book, “Git Objects”. */
function idOf(like: string, text: string): string {
  const bytes = Buffer.from(text, "utf8");
  const hash = createHash(like.length === 64 ? "sha256" : "sha1");
  return hash.update(`blob ${bytes.length}\0`).update(bytes).digest("hex");
}
