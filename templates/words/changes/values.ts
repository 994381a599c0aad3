/** What was written in a field, and how it differs, in words. */
import type { FieldChange } from "../../../src/changes/types.ts";
import { foldCodes } from "../../../src/terms/ids.ts";
import { count, spoken } from "../english/numbers.ts";
import { code, type Line, strong } from "./summary.ts";

/** A value longer than this is counted and not repeated: its file has it. */
const longest = 300;

/** `clay-batch` for `clayBatch`: a field as it is written. */
export function fieldName(field: string): string {
  if (!/^[a-z]/u.test(field)) return field;
  return field.replace(/(?<=[a-z])[A-Z]/gu, (letter) => `-${letter.toLowerCase()}`);
}

/** A value as one could write it on one line; `nothing` for one that is left out. */
export function valueWords(value: unknown): string {
  const words = asWords(value);
  return words.length > longest ? `a text of ${count(words.length, "letter")}` : words;
}

function asWords(value: unknown): string {
  if (value === null || value === undefined || value === "") return "nothing";
  if (value === true) return "yes";
  if (value === false) return "no";
  if (Array.isArray(value)) return value.length === 0 ? "nothing" : value.map(inList).join(", ");
  if (typeof value === "object") return mapWords(value);
  return String(value);
}

function inList(value: unknown): string {
  if (Array.isArray(value)) return value.map(asWords).join(" ");
  return typeof value === "object" && value !== null ? `(${mapWords(value)})` : asWords(value);
}

function mapWords(value: object): string {
  if ("from" in value && "to" in value) return `${asWords(value.from)} to ${asWords(value.to)}`;
  return Object.entries(value)
    .filter(([, each]) => each !== undefined && each !== null)
    .map(([name, each]) => `${spoken(fieldName(name))} ${inList(each)}`)
    .join(", ");
}

/** `cone: 5, and 6 before`: what is written now first. */
export function fieldLine({ field, before, after, isPrivate }: FieldChange): Line {
  const name = strong(field === "notes" ? "words below" : fieldName(field));
  if (isPrivate) return [name, ": changed; not repeated here"];
  if (field === "notes")
    return [name, `: ${notesWords(String(before ?? ""), String(after ?? ""))}`];
  return changeLine(name, valueWords(before), valueWords(after));
}

function notesWords(before: string, after: string): string {
  if (before.trim() === "") return "new";
  return after.trim() === "" ? "taken out" : "written anew";
}

/** `was Buff, is Dark now`; of what was not there before, what it is. */
export function changeLine(name: Line[number], before: string, after: string): Line {
  if (before === "nothing") return [name, `: ${after} (nothing before)`];
  if (after === "nothing") return [name, `: taken out (${before} before)`];
  return [name, `: ${before} → ${after}`];
}

/** All of some codes, those in a row as a range: `TB-101..TB-140, TB-150`. */
export function allCodes(codes: readonly string[]): string {
  return foldCodes(codes).join(", ");
}

/** A file's name, and what became of it where that is worth a word. */
export function fileLine({
  file,
  what,
  from,
}: {
  readonly file: string;
  readonly what: "added" | "changed" | "gone" | "renamed";
  readonly from: string | null;
}): Line {
  if (from !== null) return [code(file), " (moved from ", code(from), ")"];
  const words = { added: "new", changed: "changed", gone: "gone", renamed: "moved" } as const;
  return [code(file), ` (${words[what]})`];
}
