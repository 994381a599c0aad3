/**
 * Reads YAML that is written plainly, as nearly every record is: fields on lines of their own, lists
 * with dashes, lists and maps between brackets on one line, values that are words or stand whole in
 * quotes. Whatever is not of that form, or could be a slip, is left to the YAML parser, which tells
 * where everything stands and takes ten times as long. So this reports nothing wrong, guesses
 * nothing, and gives what the parser would give: `tests/reader/plain-yaml.test.ts` holds it to that.
 */
import type { Source, SourceMap } from "../records/read.ts";
import { longestList } from "../terms/limits.ts";

/** Letters. What is longer is left to the parser, so that no limit of a record can be passed here. */
const longestPlain = 9_000;

/** Maps and lists in each other: half as deep as may be. */
const deepestPlain = 10;

/** Reads plain YAML; undefined for any other. */
export function readPlainYaml(yaml: string): SourceMap | undefined {
  if (yaml.length > longestPlain) return undefined;
  const cursor: Cursor = { lines: yaml.split("\n").filter(Boolean).map(toLine), at: 0 };
  const map = readMap(cursor, 0, 1);
  return cursor.at === cursor.lines.length ? map : undefined;
}

interface Line {
  readonly indent: number;
  /** Without the spaces around it, and no other white space. */
  readonly text: string;
}

interface Cursor {
  readonly lines: Line[];
  at: number;
}

function toLine(line: string): Line {
  let [indent, end] = [0, line.length];
  while (line[indent] === " ") indent += 1;
  while (end > indent && line[end - 1] === " ") end -= 1;
  return { indent, text: line.slice(indent, end) };
}

const name = "[A-Za-z0-9][A-Za-z0-9_.+-]{0,60}";
const field = new RegExp(`^(?<key>${name}) *:(?: +(?<value>[^ ].*))?$`, "u");

/** Fields from a line on that all begin in one column. */
function readMap(cursor: Cursor, indent: number, depth: number): SourceMap | undefined {
  const fields = new Map<string, Source>();
  for (;;) {
    const line = cursor.lines[cursor.at];
    if (!line || line.indent < indent || (line.indent === indent && isEntry(line))) break;
    const { key, value } = (line.indent === indent && field.exec(line.text)?.groups) || {};
    if (key === undefined || fields.has(key)) return undefined;
    cursor.at += 1;
    const source =
      value === undefined ? readBelow(cursor, indent, depth) : readInLine(value, depth);
    if (source === undefined) return undefined;
    fields.set(key, source);
  }
  return fields.size > 0 ? Object.fromEntries(fields) : undefined;
}

/** What stands on the lines below a name: a list may begin in the name's own column. */
function readBelow(cursor: Cursor, indent: number, depth: number): Source | undefined {
  const line = cursor.lines[cursor.at];
  if (!line || depth >= deepestPlain) return undefined;
  if (isEntry(line))
    return line.indent >= indent ? readList(cursor, line.indent, depth) : undefined;
  return line.indent > indent ? readMap(cursor, line.indent, depth + 1) : undefined;
}

function isEntry({ text }: Line): boolean {
  return text.startsWith("- ");
}

/** Entries from a line on whose dashes stand in one column. */
function readList(cursor: Cursor, indent: number, depth: number): Source | undefined {
  const entries: Source[] = [];
  for (;;) {
    const line = cursor.lines[cursor.at];
    if (!line || line.indent < indent || (line.indent === indent && !isEntry(line))) break;
    const entry = line.indent === indent ? readEntry(cursor, line, depth + 1) : undefined;
    if (entry === undefined) return undefined;
    entries.push(entry);
  }
  return entries.length > longestList ? undefined : entries;
}

/** Behind a dash stands a value, or the first of some fields, which all begin in its column. */
function readEntry(cursor: Cursor, line: Line, depth: number): Source | undefined {
  const { indent, text } = toLine(line.text.slice(1));
  if (!field.test(text)) {
    cursor.at += 1;
    return readInLine(text, depth);
  }
  const column = line.indent + 1 + indent;
  cursor.lines[cursor.at] = { indent: column, text };
  return readMap(cursor, column, depth + 1);
}

/** Letters and signs that mean nothing in YAML inside a word, and are nobody's slip there. */
const plain = "A-Za-z0-9À-ɏ .’‘“”…–—()/%°+=*&!?<>@_½¼¾\\-";
const begin = "(?:[A-Za-z0-9À-ɏ]|-[0-9])";
const words = new RegExp(`^${begin}[${plain}'",]*$`, "u");
const wordsInBrackets = new RegExp(`${begin}[${plain}'"]*`, "uy");
const nameInBrackets = new RegExp(` *(?<key>${name}) *: +`, "uy");
/** Between quotes what parts values elsewhere means nothing either. */
const quoted = new RegExp(
  `"(?<double>[${plain}',:;[\\]{}]*)"|'(?<single>[${plain}",:;[\\]{}]*)'`,
  "uy",
);

/** A value that stands on one line. */
function readInLine(text: string, depth: number): Source | undefined {
  if (words.test(text)) return isLeftOut(text) || text.endsWith(",") ? undefined : text;
  const reader: Reader = { text, at: 0 };
  const source = readBetween(reader, depth);
  return reader.at === text.length ? source : undefined;
}

function isLeftOut(word: string): boolean {
  return word === "null";
}

interface Reader {
  readonly text: string;
  at: number;
}

/** A value in quotes or between brackets, or a word within them. */
function readBetween(reader: Reader, depth: number): Source | undefined {
  if (depth >= deepestPlain) return undefined;
  switch (reader.text[reader.at]) {
    case "{":
      return readMapBetween(reader, depth + 1);
    case "[":
      return readListBetween(reader, depth + 1);
    case '"':
    case "'":
      return readQuoted(reader);
    default:
      return readWords(reader);
  }
}

function readQuoted(reader: Reader): string | undefined {
  const { double, single } = take(quoted, reader)?.groups ?? {};
  const text = double ?? single;
  return text === undefined || text.trim() === "" ? undefined : text;
}

function readWords(reader: Reader): string | undefined {
  // Within brackets alone: elsewhere a word is read before this.
  const text = take(wordsInBrackets, reader)?.[0].trimEnd();
  return text === undefined || isLeftOut(text) ? undefined : text;
}

function readMapBetween(reader: Reader, depth: number): SourceMap | undefined {
  const fields = new Map<string, Source>();
  do {
    reader.at += 1;
    const key = take(nameInBrackets, reader)?.groups?.key;
    if (key === undefined || fields.has(key)) return undefined;
    const source = readBetween(reader, depth);
    if (source === undefined) return undefined;
    fields.set(key, source);
    skipSpaces(reader);
  } while (reader.text[reader.at] === ",");
  return closes(reader, "}") ? Object.fromEntries(fields) : undefined;
}

function readListBetween(reader: Reader, depth: number): Source | undefined {
  const entries: Source[] = [];
  do {
    reader.at += 1;
    skipSpaces(reader);
    const entry = readBetween(reader, depth);
    if (entry === undefined) return undefined;
    entries.push(entry);
    skipSpaces(reader);
  } while (reader.text[reader.at] === ",");
  return entries.length <= longestList && closes(reader, "]") ? entries : undefined;
}

function take(pattern: RegExp, reader: Reader): RegExpExecArray | null {
  pattern.lastIndex = reader.at;
  const found = pattern.exec(reader.text);
  if (found) reader.at = pattern.lastIndex;
  return found;
}

function skipSpaces(reader: Reader): void {
  while (reader.text[reader.at] === " ") reader.at += 1;
}

function closes(reader: Reader, bracket: string): boolean {
  if (reader.text[reader.at] !== bracket) return false;
  reader.at += 1;
  return true;
}
