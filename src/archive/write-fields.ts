/** Writes fields into a record's file and leaves every other letter of it as it was. */
import fs from "node:fs";
import path from "node:path";
import { isDeepStrictEqual } from "node:util";
import { onMachine } from "../disk/machine-error.ts";
import { replaceFile } from "../disk/replace-file.ts";
import { decodeText } from "../reader/decode-text.ts";
import { type Edit, type EditPath, findEdits, type NewValue } from "../reader/edit-yaml.ts";
import { findPosition } from "../reader/find-position.ts";
import type { Form } from "../reader/parsed-text.ts";
import { type RecordKind, recordKinds } from "../records/kinds.ts";
import { readAs, type Source, type SourceMap } from "../records/read.ts";
import { parseText, yamlOf } from "./parse-text.ts";
import { splitRecord } from "./split-record.ts";

/** A record that is to be written into. */
export interface RecordToWrite {
  /** Relative to the archive. */
  readonly file: string;
  readonly kind: RecordKind["name"];
  /** What the file held when the archive was read. */
  readonly asRead: string;
}

export interface FieldToWrite {
  readonly path: readonly string[];
  readonly value: NewValue;
}

/** A field that gets a value, or is taken away; its path may lead into entries of lists. */
export interface FieldChange {
  readonly path: EditPath;
  readonly value: NewValue | null;
}

export type FieldsWritten =
  /** The lines that now hold the fields, numbered from 1. */
  | { readonly ok: true; readonly lines: readonly { line: number; text: string }[] }
  /** Nothing was written: the file is another than was read, is faulty, or would be. */
  | { readonly ok: false; readonly because: "changed" | "faulty" | "unchangeable" };

/**
 * Writes fields into a record's file, or nothing at all: where the file was changed since it was
 * read, where it has faults, and where it would say anything but what it said and the new fields.
 *
 * @param dir the archive
 * @throws MachineError where the disk or a permission fails
 */
export function writeFields(
  dir: string,
  { file, kind, asRead }: RecordToWrite,
  fields: readonly FieldChange[],
): FieldsWritten {
  const form = kind === "studio" ? "yaml" : "markdown";
  const absolute = path.join(dir, file);
  const bytes = onMachine("read", absolute, () => fs.readFileSync(absolute));
  const reading = decodeText(bytes);
  if (reading.text !== asRead) return { ok: false, because: "changed" };
  const before = readSound(asRead, form, kind);
  if (!reading.ok || !before) return { ok: false, because: "faulty" };
  const typed = new TextDecoder("utf-8", { ignoreBOM: true }).decode(bytes);
  const written = fields.reduce((text, field) => setField(text, form, field), typed);
  const text = normalise(written);
  const after = readSound(text, form, kind);
  const wanted = fields.reduce((source, field) => withField(source, field), before);
  if (!after || !isDeepStrictEqual(after, wanted)) return { ok: false, because: "unchangeable" };
  if (written !== typed) replaceFile(dir, file, written);
  return { ok: true, lines: linesOf(text, form, fields) };
}

/** What a record says, where nothing is wrong with it. */
function readSound(text: string, form: Form, kind: RecordToWrite["kind"]): SourceMap | undefined {
  const { source, faults } = parseText(text, form);
  const schema = recordKinds.find(({ name }) => name === kind)?.schema;
  if (!source || !schema || faults.some(({ severity }) => severity === "error")) return undefined;
  return readAs(schema, source).ok ? source : undefined;
}

function withField(source: SourceMap, { path: [step, ...rest], value }: FieldChange): SourceMap {
  if (step === undefined) return source;
  const key = String(step);
  const { [key]: old, ...others } = source;
  if (rest.length > 0) return { ...source, [key]: withInner(old, { path: rest, value }) };
  if (value === null) return others;
  return { ...source, [key]: typeof value === "string" ? value : value.flat() };
}

/** What holds a field: a map, an entry of a list, or a map that stands where a list may. */
function withInner(old: Source | undefined, change: FieldChange): Source {
  const [step, ...rest] = change.path;
  const map = isSourceMap(old) ? old : {};
  if (typeof step !== "number") return withField(map, change);
  const inner = { ...change, path: rest };
  if (step === 0 && !Array.isArray(old)) return withField(map, inner);
  const entries = Array.isArray(old) ? old : [map];
  const entry = entries[step];
  return [
    ...entries.slice(0, step),
    withField(isSourceMap(entry) ? entry : {}, inner),
    ...entries.slice(step + 1),
  ];
}

function isSourceMap(source: Source | undefined): source is SourceMap {
  return typeof source === "object" && !Array.isArray(source);
}

/** Sets one field in the text as it was typed, with its own ends of lines. */
function setField(typed: string, form: Form, { path: names, value }: FieldChange): string {
  const text = normalise(typed);
  const split = form === "markdown" ? splitRecord(text) : undefined;
  if (split?.ok === false) return typed;
  const yaml = split?.yaml ?? text;
  const begin = split ? text.indexOf(yaml, "---".length) : 0;
  const newline = typed.includes("\r\n") ? "\r\n" : "\n";
  return findEdits(yaml, names, value).reduceRight(
    (result, { from, to, text: piece }: Edit) =>
      result.slice(0, offsetInTyped(typed, begin + from)) +
      piece.replaceAll("\n", newline) +
      result.slice(offsetInTyped(typed, begin + to)),
    typed,
  );
}

/** As `decodeText` gives a text: every line ends in `\n`, and no mark stands before the first. */
function normalise(typed: string): string {
  return typed.replace(/^\uFEFF/u, "").replace(/\r\n?/gu, "\n");
}

/** The place in a text as it was typed of a place in the same text as it is read. */
function offsetInTyped(typed: string, offset: number): number {
  let at = typed.startsWith("\uFEFF") ? 1 : 0;
  for (let left = offset; left > 0; left -= 1) at += typed.startsWith("\r\n", at) ? 2 : 1;
  return at;
}

function linesOf(text: string, form: Form, fields: readonly FieldChange[]) {
  const all = text.split("\n");
  const yaml = yamlOf(text, form) ?? "";
  const numbers = fields.map(({ path: names }) => findPosition(yaml, names).line);
  return [...new Set(numbers)].map((line) => ({ line, text: all[line - 1] ?? "" }));
}
