/** Where the parts of a YAML text begin and end, and the pieces that take their place. */
import { isMap, isSeq, type Pair } from "yaml";
import { isEmptyValue, startOf } from "./yaml-document.ts";

/** A piece of text that takes the place of what stands between two offsets. */
export interface Edit {
  readonly from: number;
  readonly to: number;
  readonly text: string;
}

export function insertion(at: number, text: string): Edit {
  return { from: at, to: at, text };
}

export function deletion(from: number, to: number): Edit {
  return { from, to, text: "" };
}

export function endOfPair({ key, value }: Pair<unknown, unknown>): number {
  return isEmptyValue(value) && startOf(value) === endOf(value) ? endOf(key) : endOf(value);
}

/** Where a node's own text ends: what the parser counts to a block goes on to the next line. */
export function endOf(node: unknown): number {
  if (isMap(node) && !node.flow) {
    const last = node.items.at(-1);
    if (last) return endOfPair(last);
  }
  if (isSeq(node) && !node.flow && node.items.length > 0) return endOf(node.items.at(-1));
  const { range } = node as { range?: readonly [number, number, number] | null };
  return range?.[1] ?? 0;
}

/** Where the line of an offset begins. */
export function lineBegin(yaml: string, offset: number): number {
  return yaml.lastIndexOf("\n", offset - 1) + 1;
}

/** Where the line of an offset ends, before its `\n`. */
export function lineEnd(yaml: string, offset: number): number {
  const end = yaml.indexOf("\n", offset);
  return end < 0 ? yaml.length : end;
}

/**
 * Takes a part of a block away that has lines of its own: the lines go, but for a comment behind it,
 * which stays where it was.
 */
export function deleteLines(yaml: string, from: number, to: number): Edit {
  const isWhole = yaml[to - 1] === "\n";
  const rest = isWhole ? "" : yaml.slice(to, lineEnd(yaml, to));
  const comment = rest.indexOf("#");
  if (comment >= 0) return deletion(from, to + comment);
  const begin = lineBegin(yaml, from);
  const end = isWhole ? to : lineEnd(yaml, to) + 1;
  return end > yaml.length ? deletion(Math.max(0, begin - 1), yaml.length) : deletion(begin, end);
}

/** Where parts between brackets begin and end, and their own bounds: for `deleteBetweenBrackets`. */
export interface Span {
  readonly from: number;
  readonly to: number;
}

/**
 * Takes parts out of a list or a map between brackets, with the commas that parted them. Comments
 * between them stay.
 *
 * @param parts all of them, in their order
 */
export function deleteBetweenBrackets(
  yaml: string,
  parts: readonly Span[],
  isDeleted: (at: number) => boolean,
): readonly Edit[] {
  const lastKept = parts.findLastIndex((_, at) => !isDeleted(at));
  return parts.flatMap((part, at) => {
    if (!isDeleted(at)) return [];
    const [before, after] = [parts[at - 1], parts[at + 1]];
    const isBehindAll = at > lastKept;
    const [from, to] = isBehindAll
      ? [before && lastKept >= 0 ? before.to : part.from, part.to]
      : [part.from, after?.from ?? part.to];
    if (!yaml.slice(from, to).includes("#")) return [deletion(from, to)];
    const comma = /^\s*,/u.exec(yaml.slice(part.to));
    return [deletion(part.from, part.to + (comma?.[0].length ?? 0))];
  });
}
