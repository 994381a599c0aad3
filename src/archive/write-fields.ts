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

/** What is to change in a record: fields, and words that are added below what its notes say. */
export interface RecordChange {
  readonly fields: readonly FieldChange[];
  readonly addedNotes?: string;
}

/** A record's text as it would be with a change, or why it cannot be had. */
export type RecordChanged =
  | { readonly ok: true; readonly text: string }
  | { readonly ok: false; readonly because: "faulty" | "unchangeable" };

/**
 * Writes fields into a record's file, or nothing at all: where the file was changed since it was
 * read, where it has faults, and where it would say anything but what it said and the new fields.
 *
 * @param dir the archive
 * @throws MachineError where the disk or a permission fails
 */
export function writeFields(
  dir: string,
  record: RecordToWrite,
  fields: readonly FieldChange[],
): FieldsWritten {
  return writeChange(dir, record, { fields });
}

/** Writes a change into a record's file, or nothing at all: see `writeFields`. */
export function writeChange(
  dir: string,
  { file, kind, asRead }: RecordToWrite,
  change: RecordChange,
): FieldsWritten {
  const absolute = path.join(dir, file);
  const bytes = onMachine("read", absolute, () => fs.readFileSync(absolute));
  const reading = decodeText(bytes);
  if (reading.text !== asRead) return { ok: false, because: "changed" };
  if (!reading.ok) return { ok: false, because: "faulty" };
  const typed = new TextDecoder("utf-8", { ignoreBOM: true }).decode(bytes);
  const changed = changeRecord(typed, kind, change);
  if (!changed.ok) return changed;
  if (changed.text !== typed) replaceFile(dir, file, changed.text);
  return { ok: true, lines: linesOf(normalise(changed.text), formOf(kind), change.fields) };
}

/**
 * Changes a record's text, and no other letter of it than is asked for.
 *
 * @param typed the text with the ends of lines that its file has
 */
export function changeRecord(
  typed: string,
  kind: RecordToWrite["kind"],
  { fields, addedNotes = "" }: RecordChange,
): RecordChanged {
  const form = formOf(kind);
  const before = readSound(normalise(typed), form, kind);
  if (!before) return { ok: false, because: "faulty" };
  const withFields = fields.reduce((text, field) => setField(text, form, field), typed);
  const text = addNotes(withFields, addedNotes, before.notes === "");
  const after = readSound(normalise(text), form, kind);
  const wanted = fields.reduce((source, field) => withField(source, field), before.source);
  const notes = [before.notes, normalise(addedNotes).trim()].filter(Boolean).join("\n\n");
  const isAsWanted = isDeepStrictEqual(after, { source: wanted, notes });
  return isAsWanted ? { ok: true, text } : { ok: false, because: "unchangeable" };
}

function formOf(kind: RecordToWrite["kind"]): Form {
  return kind === "studio" ? "yaml" : "markdown";
}

/** Below what is there, after an empty line, with the file's own ends of lines. */
function addNotes(typed: string, added: string, areFirst: boolean): string {
  if (added.trim() === "") return typed;
  const newline = typed.includes("\r\n") ? "\r\n" : "\n";
  const kept = typed.trimEnd();
  const between = newline.repeat(areFirst ? 1 : 2);
  return `${kept}${between}${normalise(added).trim().replaceAll("\n", newline)}${newline}`;
}

/** What a record says, where nothing is wrong with it. */
function readSound(
  text: string,
  form: Form,
  kind: RecordToWrite["kind"],
): { readonly source: SourceMap; readonly notes: string } | undefined {
  const { source, notes, faults } = parseText(text, form);
  const schema = recordKinds.find(({ name }) => name === kind)?.schema;
  if (!source || !schema || faults.some(({ severity }) => severity === "error")) return undefined;
  return readAs(schema, source).ok ? { source, notes } : undefined;
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
