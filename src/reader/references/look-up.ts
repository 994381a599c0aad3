/** Looks up what a record names, and says what was probably meant where there is no such thing. */
import type { FieldPath, Problem } from "../../records/problem.ts";
import { findNearest } from "../../records/suggest.ts";
import { idKey } from "../../terms/ids.ts";
import { problemOfFile } from "../problem-of-file.ts";

/** What may be named: ids as published by their keys. */
export type Known = ReadonlyMap<string, string>;

/** A value, and what is wrong with the way to it. */
export interface Followed<T> {
  readonly value: T;
  readonly problems: readonly Problem[];
}

/** Where a name was written. */
export interface Mention {
  readonly file: string;
  readonly path: FieldPath;
  readonly written: string;
}

/** The id that is meant, as published, whatever the case or Unicode form it was written in. */
export function lookUp(known: Known, written: string): string | undefined {
  return known.get(idKey(written));
}

/** Ids by their keys. */
export function knownIds(ids: Iterable<string>): Known {
  return new Map([...ids].map((id) => [idKey(id), id]));
}

/** How to speak of a kind of thing that was not found. */
export interface Lookup {
  readonly code: string;
  /** `glaze`, `clay`, as in “There is no glaze …”. */
  readonly what: string;
  /** What to do where nothing known comes near. */
  readonly otherwise: string;
  /** True where numbers tell one from the other, so that a near number would be a bad guess. */
  readonly isNumbered?: boolean;
  /** Other words for known ids, such as a glaze's name: word to id. */
  readonly alsoCalled?: ReadonlyMap<string, string>;
  /** True of people, whose names are not repeated. */
  readonly isPerson?: boolean;
}

/** The problem of a name that leads nowhere. */
export function unknownName(mention: Mention, known: Known, lookup: Lookup): Problem {
  return problemOfFile(
    mention.file,
    {
      code: lookup.code,
      message: `There is no ${lookup.what} “${mention.written}”`,
      hint: suggest(mention.written, known, lookup) ?? lookup.otherwise,
    },
    mention.path,
  );
}

function suggest(written: string, known: Known, lookup: Lookup): string | undefined {
  const names = lookup.alsoCalled ?? new Map<string, string>();
  const ids = [...known.values()].filter(
    (id) => lookup.isNumbered !== true || !isOtherNumber(id, written),
  );
  const words = [...ids, ...names.keys()];
  const near = findNearest(written, words) ?? findOnlyWithin(written, words);
  if (near === undefined) return undefined;
  const id = known.has(idKey(near)) ? near : names.get(near);
  if (id === near) return `Did you mean “${near}”?`;
  return lookup.isPerson === true
    ? `Write the code from studio.yaml in place of the name: “${id}”.`
    : `Did you mean “${id}”, the id of “${near}”?`;
}

/** The only name that a name became a part of, or is a part of: `soot` → `soot-2026`, `Wren` → `Wren Ashdown`. */
function findOnlyWithin(written: string, words: readonly string[]): string | undefined {
  const [wanted, ...none] = partsOf(written);
  if (wanted === undefined) return undefined;
  const own = [wanted, ...none];
  const [near, ...others] = words.filter((word) => {
    const parts = partsOf(word);
    if (parts.length === 0) return false;
    return own.every((part) => parts.includes(part)) || parts.every((part) => own.includes(part));
  });
  return others.length === 0 ? near : undefined;
}

/** The words of a name, but for numbers and single letters. */
function partsOf(name: string): readonly string[] {
  return idKey(name)
    .split(/[^\p{L}\p{M}\p{N}]+/u)
    .filter((part) => /\p{L}.*\p{L}/u.test(part));
}

/** Follows a name; what leads nowhere is null, with the problem. */
export function follow(mention: Mention, known: Known, lookup: Lookup): Followed<string | null> {
  const id = lookUp(known, mention.written);
  if (id !== undefined) return { value: id, problems: [] };
  return { value: null, problems: [unknownName(mention, known, lookup)] };
}

/** Whether two codes are of one series and differ in their numbers: `m01` and `m07`. */
function isOtherNumber(a: string, b: string): boolean {
  const [series, numbers] = splitNumbers(a);
  const [otherSeries, otherNumbers] = splitNumbers(b);
  return series === otherSeries && numbers.some((number, i) => number !== otherNumbers[i]);
}

function splitNumbers(code: string): [string, number[]] {
  return [idKey(code).replace(/\d+/gu, "#"), (code.match(/\d+/gu) ?? []).map(Number)];
}
