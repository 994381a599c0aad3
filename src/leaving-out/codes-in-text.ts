/**
 * Which tiles a text speaks of. A load list with a fault cannot be read as a list, and whoever stood
 * in that load must be known all the same: so a code counts however it is written, in ranges too.
 */
import { findCodes, idKey } from "../terms/ids.ts";

/**
 * Finds the codes of tiles in the front matter of a record.
 *
 * @param known keys of the codes that there are
 * @returns keys
 */
export function findCodesInText(text: string, known: ReadonlyMap<string, unknown>): Set<string> {
  const matter = idKey(frontMatterOf(text));
  const words = [...matter.matchAll(word)].map((match) => ({
    text: match[0],
    begins: match.index,
    ends: match.index + match[0].length,
  }));
  const found = new Set<string>();
  const add = (codes: readonly string[]) => {
    for (const code of codes.map(idKey)) if (known.has(code)) found.add(code);
  };
  for (const [i, { text: here, ends }] of words.entries()) {
    add(piecesOf(here));
    const after = joins.has(words[i + 1]?.text ?? "") ? 2 : 1;
    const next = words[i + after];
    if (!next) continue;
    const between = after === 2 ? "-" : matter.slice(ends, next.begins);
    if (/^[ \t]*(?:\.{2,}|…|[-–—])[ \t]*$/u.test(between)) add(rangeBetween(here, next.text));
  }
  return found;
}

/** Letters and digits with single signs between them: two full stops end it. */
const word = /[\p{L}\p{N}][\p{L}\p{M}\p{N}_-]*(?:\.[\p{L}\p{M}\p{N}_-]+)*/gu;

/** Words that people write between the ends of a range. */
const joins: ReadonlySet<string> = new Set(["to", "bis", "until", "through"]);

function frontMatterOf(text: string): string {
  const lines = text.replace(/^\ufeff/u, "").split(/\r?\n/u);
  if (lines[0]?.trimEnd() !== "---") return text;
  const end = lines.findIndex((line, i) => i > 0 && line.trimEnd() === "---");
  return lines.slice(1, end < 0 ? undefined : end).join("\n");
}

/** How many parts of one word are tried: a code has few. */
const mostParts = 12;

/** A word, every part of it between two signs, and the ranges that it may be: `cl-01-cl-07`. */
function piecesOf(text: string): readonly string[] {
  const parts = text.split(/(?<=[-._])|(?=[-._])/u);
  if (parts.length > 2 * mostParts) return [text];
  const pieces: string[] = [];
  for (let from = 0; from < parts.length; from += 1)
    for (let to = from + 1; to <= parts.length; to += 1) {
      const piece = parts.slice(from, to).join("");
      pieces.push(piece);
      if (parts[to] === "-") pieces.push(...rangeBetween(piece, parts.slice(to + 1).join("")));
    }
  return pieces;
}

function rangeBetween(first: string, last: string): readonly string[] {
  return findCodes(`${first}..${last}`) ?? [];
}
