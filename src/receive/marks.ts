/**
 * How a tile that was given another code than it came with is known again: by a comment in its record,
 * so that whoever receives the same once more is told that it is here.
 */
import { hasNoCode } from "./claim.ts";
import type { SettledClaim } from "./settled.ts";

/** What the comment says of a tile that was handed in. */
export function markOf({ stem, sum }: Pick<SettledClaim, "stem" | "sum">): string {
  return hasNoCode(stem) ? stem.toLowerCase() : `${stem} (${sum.slice(0, 12)})`;
}

/** A record with the comment beneath its first line; every other letter stays. */
export function withMark(text: string, mark: string): string {
  const end = text.indexOf("\n");
  const newline = text.charAt(end - 1) === "\r" ? "\r\n" : "\n";
  return `${text.slice(0, end + 1)}${begin}${mark}${newline}${text.slice(end + 1)}`;
}

const begin = "# handed in as ";

/** The tiles that bear such a comment: their ids by what it says. */
export function findMarks(
  files: readonly { readonly kind: string; readonly id: string; readonly file: string }[],
  texts: ReadonlyMap<string, string>,
): ReadonlyMap<string, string> {
  const found = new Map<string, string>();
  for (const { kind, id, file } of files) {
    const text = kind === "tile" ? texts.get(file) : undefined;
    if (!text?.includes(begin)) continue;
    for (const line of text.split("\n"))
      if (line.startsWith(begin)) found.set(line.slice(begin.length).trim(), id);
  }
  return found;
}
