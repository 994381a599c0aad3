/** Ids: a file's stem, compared without regard to case and Unicode form. */

import { longestRange } from "./limits.ts";
import { remember } from "./remember.ts";

/** More ids than the largest archive has; they are asked for by the million. */
const rememberedIds = 50_000;

/** The form under which two spellings of one id meet. */
export const idKey: (id: string) => string = remember(
  rememberedIds,
  // Some letters come apart when they are made small, so they are composed again.
  (id) => id.normalize("NFC").toLowerCase().normalize("NFC"),
  (id) => id,
);

/** An id as part of a file name in an address: lower case, other characters than letters and their marks, digits, `.`, `_` and `-` turned into `-`. */
export function idSlug(id: string): string {
  return idKey(id).replace(/[^\p{L}\p{M}\p{N}._-]+/gu, "-");
}

const windowsDevices = /^(con|prn|aux|nul|com\d|lpt\d)$/u;

/** Whether Windows has a device of the name that a file's name begins with, and so cannot store the file. */
export function isDeviceName(name: string): boolean {
  return windowsDevices.test(idKey(name).split(".")[0] ?? "");
}

/**
 * The longest id, in bytes of UTF-8: three of them, with what joins them, still make one name of a
 * file, of which common file systems take 255 bytes.
 */
export const longestId = 72;

/** How long a name of a file is, in bytes, in the encoding that most file systems count in. */
export function bytesOf(name: string): number {
  return new TextEncoder().encode(name).length;
}

/**
 * Why an id cannot be used, in a potter's words; undefined where it can. `index` is the page of
 * a whole list, and Windows cannot store a file named after one of its devices.
 */
export function findIdFault(id: string): string | undefined {
  const key = idKey(id);
  if (key === "index") return "“index” is the name of the page that lists them all";
  if (isDeviceName(id)) return `Windows cannot store a file named “${id}”`;
  if (!/^[\p{L}\p{N}][\p{L}\p{M}\p{N}._-]*$/u.test(id.normalize("NFC")))
    return "a name may hold letters, digits, “-”, “_” and “.”, and begins with a letter or digit";
  if (/[.]$/u.test(id)) return "a name may not end in a full stop";
  if (bytesOf(key) > longestId)
    return `it is too long: a name may have ${longestId} letters, and fewer where they are not those of English`;
  return undefined;
}

/** Splits a code into what stands before its last number, and that number: `TB-014` → `TB-`, `014`; undefined where it ends in none. */
export function splitCode(code: string): { stem: string; digits: string } | undefined {
  let begin = code.length;
  while (begin > 0 && /\d/u.test(code.charAt(begin - 1))) begin -= 1;
  return begin < code.length
    ? { stem: code.slice(0, begin), digits: code.slice(begin) }
    : undefined;
}

interface CodeRange {
  readonly first: string;
  readonly stem: string;
  readonly begin: number;
  readonly count: number;
  readonly width: number;
}

/** A code or a range of codes, before it is spelt out; undefined as for `findCodes`. */
function parseRange(text: string): CodeRange | undefined {
  const [first = "", last, ...rest] = text.split("..").map((part) => part.trim());
  if (first === "" || rest.length > 0) return undefined;
  if (last === undefined) return { first, stem: "", begin: 0, count: 1, width: 0 };
  const from = splitCode(first);
  const to = splitCode(last);
  if (!from || !to || idKey(from.stem) !== idKey(to.stem)) return undefined;
  const begin = Number(from.digits);
  const count = Number(to.digits) - begin + 1;
  if (!(count >= 1 && count <= longestRange)) return undefined;
  return { first, stem: from.stem, begin, count, width: from.digits.length };
}

/** How many codes a text names, as `findCodes` would spell them out; 1 where it names none. */
export function countCodes(text: string): number {
  return parseRange(text)?.count ?? 1;
}

/**
 * Spells out a range of codes: `TB-101..TB-103` → `TB-101`, `TB-102`, `TB-103`; a single code
 * gives itself.
 *
 * @returns the codes, or undefined where the two ends do not belong together, run backwards or
 * lie more than `longestRange` apart
 */
export function findCodes(text: string): readonly string[] | undefined {
  const range = parseRange(text);
  if (!range || range.width === 0) return range && [range.first];
  const { stem, begin, count, width } = range;
  return Array.from(
    { length: count },
    (_, i) => `${stem}${String(begin + i).padStart(width, "0")}`,
  );
}

/**
 * The same codes in fewer words, sorted: `TB-101`, `TB-102`, `TB-103` → `TB-101..TB-103`. `findCodes` of each
 * spells them out again.
 */
export function foldCodes(codes: Iterable<string>): readonly string[] {
  const folded: string[] = [];
  let range: CodeRange | undefined;
  for (const code of [...new Set(codes)].sort(compareIds)) {
    const next = range && range.count < longestRange ? codeAfter(range) : undefined;
    if (range && next === code) range = { ...range, count: range.count + 1 };
    else range = rangeOfOne(code);
    folded.splice(range.count > 1 ? -1 : folded.length, 1, formatRange(range));
  }
  return folded;
}

function rangeOfOne(code: string): CodeRange {
  const { stem, digits } = splitCode(code) ?? { stem: code, digits: "" };
  return { first: code, stem, begin: Number(digits), count: 1, width: digits.length };
}

/** Undefined behind a code without a number, and where the number is too long to be counted. */
function codeAfter({ stem, begin, count, width }: CodeRange): string | undefined {
  if (width === 0 || !Number.isSafeInteger(begin + count)) return undefined;
  return `${stem}${String(begin + count).padStart(width, "0")}`;
}

function formatRange({ first, stem, begin, count, width }: CodeRange): string {
  if (count === 1) return first;
  return `${first}..${stem}${String(begin + count - 1).padStart(width, "0")}`;
}

/** Sorts ids as a reader would: by Unicode form and case folded, numbers by their value. */
export function compareIds(a: string, b: string): number {
  const [x, y] = [idKey(a), idKey(b)];
  return collator.compare(x, y) || (x < y ? -1 : x > y ? 1 : 0);
}

/** A fixed locale, so that the same archive gives the same bytes everywhere. */
const collator = new Intl.Collator("en", { numeric: true });
