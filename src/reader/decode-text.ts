/** From a file's bytes to text, or to what is wrong with them. */
import { largestLog, largestRecord } from "../terms/limits.ts";
import type { Contents } from "./archive-files.ts";
import type { TextFault } from "./problem-of-file.ts";

export type TextReading =
  | { readonly ok: true; readonly text: string }
  | {
      readonly ok: false;
      readonly fault: TextFault;
      /** What can be shown of the text, to point at the fault; nothing is read of it. */
      readonly text: string;
    };

/** Reads a record: text in UTF-8, a byte-order mark dropped, every line ending in `\n`, so that
 * lines and columns are those an editor shows.
 */
export function decodeRecord(contents: Contents): TextReading {
  return "bytes" in contents
    ? decodeText(contents.bytes)
    : { ok: false, fault: tooLarge(contents.tooLarge, largestRecord), text: "" };
}

/**
 * Reads a log, as `decodeRecord` reads a record. Loggers and spreadsheets write in the encoding of
 * their own: UTF-16 where the first bytes say so, Windows-1252 where it is no UTF-8. Only signs
 * such as ° differ, never a digit.
 */
export function decodeLog(contents: Contents): TextReading {
  if (!("bytes" in contents))
    return { ok: false, fault: tooLarge(contents.tooLarge, largestLog), text: "" };
  const { bytes } = contents;
  const text = new TextDecoder(encodingOfLog(bytes)).decode(bytes).replace(/\r\n?/gu, "\n");
  const unseen = unseenFault(text);
  return unseen ? { ok: false, fault: unseen, text } : { ok: true, text };
}

/** Reads bytes as text in UTF-8: see `decodeRecord`. */
export function decodeText(bytes: Uint8Array): TextReading {
  const text = new TextDecoder().decode(bytes).replace(/\r\n?/gu, "\n");
  if (!isUtf8(bytes)) return notUtf8(bytes, text);
  const unseen = unseenFault(text);
  return unseen ? { ok: false, fault: unseen, text } : { ok: true, text };
}

function encodingOfLog(bytes: Uint8Array): string {
  const mark = utf16Mark(bytes);
  if (mark) return mark;
  return isUtf8(bytes) ? "utf-8" : "windows-1252";
}

/** The byte order that the first two bytes announce, where they do. */
function utf16Mark([first, second]: Uint8Array): "utf-16le" | "utf-16be" | undefined {
  if (first === 0xff && second === 0xfe) return "utf-16le";
  return first === 0xfe && second === 0xff ? "utf-16be" : undefined;
}

function isUtf8(bytes: Uint8Array): boolean {
  try {
    new TextDecoder("utf-8", { fatal: true }).decode(bytes);
    return true;
  } catch {
    return false;
  }
}

function tooLarge(size: number, largest: number): TextFault {
  return {
    severity: "error",
    code: "file-too-large",
    message: `The file is ${megabytes(size)} long, and no more than ${megabytes(largest)} is read`,
    hint: "Check that it is the right file; keep pictures and other large things out of it.",
    line: 1,
    column: 1,
  };
}

function megabytes(bytes: number): string {
  return `${Math.ceil(bytes / 100_000) / 10} MB`;
}

function notUtf8(bytes: Uint8Array, text: string): TextReading {
  const isUtf16 = utf16Mark(bytes) !== undefined;
  const fault: TextFault = {
    severity: "error",
    code: "not-utf-8",
    message: isUtf16
      ? "The file is written in UTF-16, and Tilebook reads UTF-8"
      : "The file is not written in UTF-8: a letter in this line cannot be read",
    hint: "Save it again as UTF-8: most editors ask for the encoding when you choose “Save as”.",
    ...(isUtf16 ? { line: 1, column: 1 } : placeOfBadByte(bytes)),
  };
  return { ok: false, fault, text: isUtf16 ? "" : text };
}

/** A newline is never part of a longer character of UTF-8, so lines can be looked at one by one. */
function placeOfBadByte(bytes: Uint8Array): { line: number; column: number } {
  let start = 0;
  for (let line = 1; start <= bytes.length; line += 1) {
    const newline = bytes.indexOf(0x0a, start);
    const end = newline < 0 ? bytes.length : newline;
    const found = bytes.subarray(start, end);
    if (!isUtf8(found))
      return { line, column: new TextDecoder().decode(found).indexOf("\uFFFD") + 1 };
    start = end + 1;
  }
  return { line: 1, column: 1 };
}

/** What YAML, XML and a terminal all refuse: control characters, but for tab and newline. */
// biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is looked for
const unseenCharacter = /[\0-\x08\x0b-\x1f\x7f-\x84\x86-\x9f\uFFFE\uFFFF]|\p{Cs}/u;

/** The code point of the first character of a text that nobody can see and no text needs. */
export function findUnseen(text: string): { offset: number; name: string } | undefined {
  const offset = text.search(unseenCharacter);
  if (offset < 0) return undefined;
  return {
    offset,
    name: `U+${text.charCodeAt(offset).toString(16).toUpperCase().padStart(4, "0")}`,
  };
}

function unseenFault(text: string): TextFault | undefined {
  const unseen = findUnseen(text);
  if (!unseen) return undefined;
  return {
    severity: "error",
    code: "control-character",
    message: `There is a character here that nobody can see (${unseen.name})`,
    hint: "Delete what is around it and type it again.",
    ...placeOfOffset(text, unseen.offset),
  };
}

/** What turns the letters after it around, so that a reader sees another text than was written. */
const turning = /[\u202a-\u202e\u2066-\u2069]/u;

/** The first sign in a text that turns letters around, where there is one: it cannot be seen itself. */
export function turningFault(text: string): TextFault | undefined {
  const offset = text.search(turning);
  if (offset < 0) return undefined;
  const name = `U+${text.charCodeAt(offset).toString(16).toUpperCase()}`;
  return {
    severity: "warning",
    code: "turned-letters",
    message: `A sign that cannot be seen (${name}) turns the letters after it around`,
    hint: "Delete what is around it and type it again, or look at the file in an editor that shows such signs.",
    ...placeOfOffset(text, offset),
  };
}

/** Line and column of an offset into a text, both from 1. */
export function placeOfOffset(text: string, offset: number): { line: number; column: number } {
  const before = text.slice(0, offset);
  const line = before.split("\n").length;
  return { line, column: offset - before.lastIndexOf("\n") };
}
