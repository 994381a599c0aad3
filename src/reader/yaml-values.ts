/** Values that are read in a way nobody may have meant, told by looking at how they were typed. */
import { isScalar, type Scalar } from "yaml";
import { findUnseen } from "./decode-text.ts";
import { badListDash, codeOf, longDash } from "./yaml-keys.ts";
import type { FaultAt } from "./yaml-words.ts";

/** Takes up no room, so nobody sees that it is there, and two words look alike and are not. */
const hidden = /[\u00ad\u200b\u2060\ufeff]/u;
const hiddenAll = /[\u00ad\u200b\u2060\ufeff]/gu;

/** A value, all of it between curly quotes. */
const inCurlyQuotes = /^[“”„‟«»‘’‚‛](?<inside>[^“”„‟«»]*)[“”‟«»’‛]$/u;

/**
 * What is wrong with a value as it was typed.
 *
 * @param yaml the whole text
 * @param name the field it belongs to, for the hint
 */
export function findValueFaults(yaml: string, scalar: Scalar, name: string): FaultAt[] {
  const [start = 0, end = 0] = scalar.range ?? [];
  const text = String(scalar.value);
  const faults = findCharacters(text, start, scalar.type === "QUOTE_DOUBLE");
  if (scalar.type !== "PLAIN") return faults;
  // A no-break space at an end is part of the value, and hides no slip.
  const bare = text.trim();
  const dash = longDash.exec(bare);
  if (dash) faults.push({ offset: start, ...badListDash(dash[0].trim()) });
  const inside = inCurlyQuotes.exec(bare)?.groups?.inside;
  if (inside !== undefined) faults.push(curlyQuotes(bare, inside.trim(), start, name));
  if (/^[:：﹕]/u.test(bare)) faults.push({ offset: start, ...secondColon(name) });
  if (/[,;]$/u.test(bare)) faults.push(lastComma(text.trimEnd(), start));
  if (text.includes(";") && isBetweenBrackets(yaml, start))
    faults.push(semicolon(start + text.indexOf(";")));
  const field = /\s(?<name>[\p{L}-]{2,40}):+[^\s/]/u.exec(text);
  if (field) faults.push(joinedField(field[0].trim(), start + field.index + 1));
  const newline = yaml.indexOf("\n", start);
  if (newline >= 0 && newline < end) faults.push(swallowed(yaml, newline, name));
  return faults;
}

/** Whether a value is an entry of a list between brackets, or of a map that its line opened. */
function isBetweenBrackets(yaml: string, start: number): boolean {
  const line = yaml.slice(yaml.lastIndexOf("\n", start - 1) + 1, start);
  if (/[[,]\s*$/u.test(line.slice(-20))) return true;
  return line.lastIndexOf("{") > line.lastIndexOf("}");
}

/** Whether a text without quotes would be told of as a slip. */
export function isOdd(text: string): boolean {
  return [longDash, inCurlyQuotes, hidden, /^[:：﹕]|[,;]$/u].some((sign) =>
    sign.test(text.trim()),
  );
}

function findCharacters(text: string, offset: number, escaped: boolean): FaultAt[] {
  const unseen = findUnseen(text);
  if (unseen)
    return [
      {
        offset,
        code: "control-character",
        message: `A backslash in this value makes a character that nobody can see (${unseen.name})`,
        hint: "Use single quotes for this value, or write the backslash twice.",
      },
    ];
  const found = escaped ? null : hidden.exec(text);
  if (!found) return [];
  return [
    {
      offset: offset + found.index,
      code: "hidden-character",
      message: `A character that nobody can see (${codeOf(found[0])}) stands in this value`,
      hint: "Delete the word and type it again.",
    },
  ];
}

function curlyQuotes(text: string, inside: string, offset: number, name: string): FaultAt {
  return {
    offset,
    code: "curly-quotes",
    message: `The curly quotes of ${text} are read as part of the value`,
    hint: `Write “${name}: ${inside}” without quotes, or with straight ones: “${name}: "${inside}"”.`,
  };
}

/** What parts two entries between brackets has nothing to part at the end of a line. */
function lastComma(text: string, start: number): FaultAt {
  return {
    offset: start + text.length - 1,
    severity: "warning",
    code: "last-comma",
    message: `The “${text.slice(-1)}” at the end is read as part of the value`,
    hint: "Take it away, or put the whole value in quotes if it belongs to it.",
  };
}

/** `{alt: rim grey:no}`: two slips that together look like one text. */
function joinedField(words: string, offset: number): FaultAt {
  return {
    offset,
    severity: "warning",
    code: "joined-field",
    message: `“${words}…” is read as part of the value before it`,
    hint: "If it is a field, put a comma or a new line before it and a space after its colon; if it belongs to the value, put all of it in quotes.",
  };
}

function secondColon(name: string) {
  return {
    code: "two-colons",
    message: `A second colon after “${name}” is read as part of the value`,
    hint: "Take it away, or put the whole value in quotes if it belongs to it.",
  };
}

function semicolon(offset: number): FaultAt {
  return {
    offset,
    severity: "warning",
    code: "semicolon",
    message:
      "This semicolon is read as part of the value: between brackets a comma begins the next entry",
    hint: "Write a comma, or put the whole value in quotes if the semicolon belongs to it.",
  };
}

/** A line that goes on with the value above it; it may have been meant as a field of its own. */
function swallowed(yaml: string, newline: number, name: string): FaultAt {
  const offset = newline + 1 + yaml.slice(newline + 1).search(/\S/u);
  return {
    offset,
    severity: "warning",
    code: "line-joined",
    message: `This line is read as part of the value of “${name}” above it`,
    hint: `If it is a field of its own, write it as “name: value” in the column of “${name}”; if it does belong to the value, put all of the value in quotes.`,
  };
}

/** A value without what `findValueFaults` finds wrong with it, so that nothing is told of it twice. */
export function mendValue(text: string): string {
  const inside = inCurlyQuotes.exec(text.trim())?.groups?.inside;
  return (inside ?? text.replace(longDash, "")).replace(hiddenAll, "");
}

/** A scalar in the text it was parsed from. */
export function typedText(yaml: string, node: unknown): string {
  return isScalar(node) && node.range ? yaml.slice(node.range[0], node.range[1]) : "";
}
