/** Records as people type them: in one of the ways that are right, and with a slip or two. */
import fc from "fast-check";
import { type Meant, type MeantRecord, ownWords } from "./intended.ts";

/** What a hand may do, choice by choice; `next` gives whether it does, with a chance of one in so many. */
export interface Hand {
  readonly next: (oneIn: number) => boolean;
  readonly pick: <T>(of: readonly T[]) => T;
  /** How often a slip happens: one in so many chances; 0 for never. */
  readonly slips: number;
}

/** A hand led by random numbers, so that a failing case can be made smaller and shown again. */
export const hand = (slips: number): fc.Arbitrary<Hand> =>
  fc.infiniteStream(fc.nat({ max: 0xffff })).map((stream) => {
    const draw = () => stream.next().value as number;
    const pick = <T>(of: readonly T[]) => of[draw() % of.length] as T;
    return { pick, slips, next: (oneIn: number) => oneIn > 0 && draw() % oneIn === 0 };
  });

/** The lines of a record's fields. */
export function type(record: MeantRecord, by: Hand): string {
  const lines = typeMap(record, by, 0);
  return lines.join("\n");
}

/** The whole file, as an editor saves it. */
export function save(yaml: string, form: "markdown" | "yaml", by: Hand): Uint8Array {
  const fence = () =>
    slip(by) ? by.pick(["—", "–-", "--", "--- ", " ---", "...", "----"]) : "---";
  const text = form === "yaml" ? `${yaml}\n` : `${fence()}\n${yaml}\n${fence()}\nIt ran.\n`;
  const mark = by.next(8) ? "\ufeff" : "";
  return new TextEncoder().encode(mark + (by.next(4) ? text.replaceAll("\n", "\r\n") : text));
}

function slip(by: Hand): boolean {
  return by.next(by.slips);
}

function indent(depth: number, by: Hand): string {
  const spaces = " ".repeat(depth);
  if (!slip(by)) return spaces;
  return by.pick([
    `${spaces} `,
    spaces.slice(1),
    `\t${spaces}`,
    spaces.replaceAll(" ", "\u00a0"),
    spaces.replaceAll("  ", "\t"),
  ]);
}

function typeMap(map: MeantRecord, by: Hand, depth: number): string[] {
  return Object.entries(map).flatMap(([key, value]) => [
    ...comment(by, depth),
    ...typeField(key, value, by, depth),
  ]);
}

function comment(by: Hand, depth: number): string[] {
  return by.next(30) ? [by.pick(["", `${" ".repeat(depth)}# a word: more, {or less}`])] : [];
}

function typeField(key: string, value: Meant, by: Hand, depth: number): string[] {
  const name = `${indent(depth, by)}${typeKey(key, by)}`;
  if (typeof value === "string")
    return [`${name}${colon(by)}${typeWord(value, by, false)}${tail(by)}`];
  if (by.next(2)) return [`${name}${colon(by)}${typeInline(value, by)}${tail(by)}`];
  const head = `${name}:${by.next(20) ? " " : ""}`;
  if (isList(value)) return [head, ...typeList(value, by, depth + by.pick([0, 2]))];
  return [head, ...typeMap(value, by, depth + 2)];
}

function typeList(list: readonly Meant[], by: Hand, depth: number): string[] {
  return list.flatMap((entry) => {
    const dash = `${indent(depth, by)}${typeDash(by)}`;
    if (typeof entry === "string") return [`${dash}${typeWord(entry, by, false)}${tail(by)}`];
    if (isList(entry) || by.next(2)) return [`${dash}${typeInline(entry, by)}${tail(by)}`];
    const [first = "", ...rest] = typeMap(entry, { ...by, next: quiet(by) }, depth + 2);
    return [`${dash}${first.slice(depth + 2)}`, ...rest];
  });
}

/** In a map behind a dash no comment stands before the first field, which would hide the dash. */
function quiet(by: Hand): Hand["next"] {
  return (oneIn) => oneIn !== 30 && by.next(oneIn);
}

function isList(value: Meant): value is readonly Meant[] {
  return Array.isArray(value);
}

function typeDash(by: Hand): string {
  return slip(by) ? by.pick(["– ", "— ", "-\u00a0", "-", "-\t", "• "]) : "- ";
}

function typeKey(key: string, by: Hand): string {
  if (!slip(by)) return by.next(40) ? `"${key}"` : key;
  const slips = [`“${key}”`, `${key}:`, `\u00a0${key}`, `– ${key}`];
  // A name of its author's own with a letter more or less is another name, and as good.
  return by.pick(isOwnName(key) ? slips : [...slips, `${key}s`, key.slice(0, -1)]);
}

function isOwnName(key: string): boolean {
  return /^(?:top|middle|bottom|loss|.*\d.*)$/u.test(key);
}

function colon(by: Hand): string {
  return slip(by)
    ? by.pick([":", " ", "", "：", ":\u00a0", ":\t", ": : ", " :", ";"])
    : by.pick([": ", ": ", ":  ", " : "]);
}

function tail(by: Hand): string {
  if (slip(by)) return by.pick([",", "\u00a0", " #5", "\n  more", ";"]);
  return by.pick(["", "", "", "", " ", "  # as typed"]);
}

function typeInline(value: Meant, by: Hand): string {
  if (typeof value === "string") return typeWord(value, by, true);
  const [open, close] = isList(value) ? ["[", "]"] : ["{", "}"];
  const entries = isList(value)
    ? value.map((entry) => typeInline(entry, by))
    : Object.entries(value).map(
        ([key, entry]) => `${typeKey(key, by)}${inlineColon(by)}${typeInline(entry, by)}`,
      );
  const closing = slip(by) ? by.pick(["", ",", `${close}${close}`]) : close;
  return `${open}${joinEntries(entries, by)}${closing}`;
}

function inlineColon(by: Hand): string {
  return slip(by) ? by.pick([":", " ", "", "：", ":\u00a0", "::"]) : ": ";
}

function joinEntries(entries: readonly string[], by: Hand): string {
  return entries.reduce((all, entry) => {
    const comma = slip(by) ? by.pick(badCommas(entry)) : by.pick([", ", ", ", ",", " , "]);
    return `${all}${comma}${entry}`;
  });
}

/** Two texts of own words without a comma between them are one text to anybody. */
function badCommas(entry: string): readonly string[] {
  const isText = !/^[{[]|: /u.test(entry) && ownWords.some((word) => entry.includes(word));
  return isText ? [",,", "; ", ", , "] : [" ", ",,", "; ", ", , "];
}

function typeWord(word: string, by: Hand, isInline: boolean): string {
  const isNumber = /^-?\d+\.\d+$/u.test(word);
  // With a comma, a decimal is right on a line of its own, and a slip between brackets.
  if (isNumber && (isInline ? slip(by) : by.next(4))) return word.replace(".", ",");
  if (slip(by))
    return by.pick([
      `“${word}”`,
      `‘${word}’`,
      `"${word}”`,
      `'${word}`,
      word.replaceAll(" ", "\u00a0"),
      `${word}\u00a0`,
      `\u200b${word}`,
      `*${word}`,
      `${word} #1`,
      `${word}: 1`,
    ]);
  // A colour begins with the sign of a comment: nobody can write it without quotes.
  const quoted = by.pick(word.startsWith("#") ? ['"', "'"] : ["", "", "", "", '"', "'"]);
  return `${quoted}${word}${quoted}`;
}
