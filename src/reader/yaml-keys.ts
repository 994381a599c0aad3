/** Names of fields that cannot be meant as they stand, and entries that have no colon. */
import { badSpace, type FaultAt } from "./yaml-words.ts";

/** What stands before an entry in its brackets, as it was typed. */
export interface Neighbour {
  readonly key: string;
  readonly value: string;
}

/**
 * An entry between brackets that has no colon, so that YAML takes all of it for a name: a decimal
 * comma, a forgotten space or colon, or a comma in a value without quotes.
 *
 * @param entry as it was typed
 * @param before the entry to its left, where that is one value
 */
export function describeNoColon(
  entry: string,
  offset: number,
  before: Neighbour | undefined,
): FaultAt {
  const decimals = before && decimalComma(entry, before);
  if (decimals) return { offset, ...decimals };
  const joined = /^(?<name>[^\s:：﹕]+)[:：﹕]\s*(?<value>\S.*)$/su.exec(entry)?.groups;
  if (joined)
    return {
      offset,
      code: "no-space-after-colon",
      message: `“${entry}” is read as one word: between a name and its value belong a plain colon and a space`,
      hint: `Write “${joined.name}: ${joined.value}”.`,
    };
  const apart = /^(?<name>\S+)\s+(?<value>\S.*)$/su.exec(entry)?.groups;
  return {
    offset,
    code: "no-colon",
    message: `There is no colon in “${entry}”, so no field is seen here`,
    hint: [
      apart
        ? `If “${apart.name}” is a field, write “${apart.name}: ${apart.value}”.`
        : `If it is a field, write “${entry}: …” with its value.`,
      ...(before ? [partOfValue(entry, before)] : []),
    ].join(" "),
  };
}

function decimalComma(entry: string, { key, value }: Neighbour) {
  if (!/^[+-]?\d+$/u.test(value)) return undefined;
  const digits = /^\d+/u.exec(entry)?.[0];
  if (digits === undefined || /[\d:]|^\S+\s/u.test(entry.slice(digits.length))) return undefined;
  return {
    code: "decimal-comma",
    message: `“${value},${entry}” is not read as one number: between brackets a comma begins the next entry`,
    hint: `Write the decimals with a point: “${key}: ${value}.${digits}”.`,
  };
}

function partOfValue(entry: string, { key, value }: Neighbour): string {
  return /\s/u.test(entry)
    ? `If it belongs to the value before it, put all of that in quotes: “${key}: "${value}, ${entry}"”.`
    : `If “${key}” has several values, put them between brackets: “${key}: [${value}, ${entry}]”.`;
}

/** A name without what is wrong with it, so that nothing is told of it twice. */
export function mendKey(key: string): string {
  return key
    .replace(longDash, "")
    .replace(/[“”„‟‘’‚‛«»]/gu, "")
    .replace(/[:：﹕]+$/u, "")
    .trim();
}

/** What is wrong with the name of a field, whatever fields there are; undefined where nothing is. */
export function describeOddKey(key: string, offset: number): FaultAt | undefined {
  const dash = longDash.exec(key);
  if (dash) return { offset, ...badListDash(dash[0].trim()) };
  const space = key.search(oddSpace);
  if (space >= 0)
    return {
      offset: offset + space,
      ...badSpace(key[space] ?? ""),
    };
  const quote = /[“”„‟‘’‚‛«»]/u.exec(key);
  if (quote)
    return {
      offset,
      code: "curly-quotes",
      message: `The curly quote ${quote[0]} is read as part of the field's name`,
      hint: "Write the name without quotes.",
    };
  const apart = (quotedBehind.exec(key) ?? /^(?<name>\d+)\s+(?<rest>\S.*)$/su.exec(key))?.groups;
  if (apart)
    return {
      offset,
      code: "no-colon",
      message: `There is no colon after “${apart.name}”`,
      hint: `Write “${apart.name}: ${apart.rest}”.`,
    };
  if (!/[:：﹕]$/u.test(key)) return undefined;
  return {
    offset,
    code: "two-colons",
    message: `Two colons stand after “${key.replace(/[:：﹕]+$/u, "")}”`,
    hint: "Leave one of them.",
  };
}

/** `Al2O3'14.2'`: a value in quotes that its name runs into, and often the next name behind it. */
const quotedBehind = /^(?<name>[^\s"']+)(?<quote>["'])(?<rest>[^\s"']+)\k<quote>(?:\s|$)/u;

/** What looks like the dash of a list and is another character, or has another space after it. */
export const longDash =
  /^(?:[‐‑‒–—―−•·](?:\s+|(?=\p{L}))|-(?:[\u00a0\u2000-\u200a\u202f\u205f\u3000]\s*|(?=[^\d\s.,-])))/u;

/** Every space but the one of the space bar and the tab. */
export const oddSpace = /[\u00a0\u1680\u2000-\u200a\u202f\u205f\u3000]/u;

export function badListDash(dash: string) {
  return {
    code: "long-dash",
    message:
      dash === "-"
        ? "No plain space stands after the “-”, so no entry of a list begins here"
        : `“${dash}” is no “-”, so no entry of a list begins here`,
    hint: "Begin the entry with a plain hyphen and a space, “- ”; if the dash belongs to the text, put all of it in quotes.",
  };
}

/** A character by its number in Unicode: `U+00A0`. */
export function codeOf(character: string): string {
  return `U+${(character.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, "0")}`;
}
