/** `tilebook new glaze`, `clay`, `material`, `firing`, and a set of its own: one record, asked for by its schema. */
import { isDeepStrictEqual } from "node:util";
import { parseText } from "../../archive/parse-text.ts";
import type { NewFile } from "../../archive/write-new.ts";
import { type Asking, askMap, valueAt } from "../../asking/ask-field.ts";
import { inOrder, readAssignments } from "../../asking/assignments.ts";
import { type Draft, makeDraft } from "../../asking/draft.ts";
import type { Prompts } from "../../asking/prompts.ts";
import type { DeskArchive } from "../../desk/types.ts";
import { knownNames } from "../../editing/names.ts";
import { type MapShape, shapeOfRecord } from "../../editing/shape.ts";
import { type FieldValue, renderRecord } from "../../reader/render-record.ts";
import { type RecordKind, recordKinds } from "../../records/kinds.ts";
import type { FieldPath } from "../../records/problem.ts";
import { readAs, type SourceMap } from "../../records/read.ts";
import { findIdFault, idKey } from "../../terms/ids.ts";
import { exitCodes, WrongUsage } from "../failure.ts";
import { openWhole } from "../open-archive.ts";
import { writeTried } from "./write-tried.ts";

export type NewKind = Extract<RecordKind["name"], "clay" | "firing" | "glaze" | "material" | "set">;

export interface NewRecordOptions {
  readonly archive: string;
  readonly notes?: string;
  /** Fields that are settled already, besides those among the words. */
  readonly begin?: SourceMap;
}

/**
 * Writes one new record, over none that is there.
 *
 * @param words its id, and fields as in `cones=5-6`
 * @param prompts asks for what is left out; undefined where nobody is there to answer
 * @throws Stopped where somebody ends the questions
 */
export async function newRecord(
  name: NewKind,
  words: readonly string[],
  options: NewRecordOptions,
  prompts: Prompts | undefined,
): Promise<number> {
  const opened = await openWhole(options.archive, () => false);
  if (!opened) return exitCodes.faulty;
  const kind = kindOf(name);
  const [map] = shapeOfRecord(name).maps;
  const written = words[0]?.includes("=") ? undefined : words[0];
  const fields = written === undefined ? words : words.slice(1);
  const draft = makeDraft(kind.schema, readFields(fields, kind, options.begin));
  // Who gave all of it on the command line has said what shall be written.
  const asked = isWhole(draft, kind) && written !== undefined ? undefined : prompts;
  const id = await chooseId(opened, kind, written, asked);
  if (asked && map) await askMap(askingOf(opened, draft, asked), [], map);
  const notes = options.notes ?? (await asked?.write("Notes?")) ?? "";
  const file = render(kind, id, draft.source, map, notes.trim());
  const told = asked ? [] : [`${file.path}:`, ...linesOf(file).map((line) => `  ${line}`)];
  return writeTried(options.archive, file, told, asked);
}

function kindOf(name: NewKind): RecordKind {
  const kind = recordKinds.find((each) => each.name === name);
  if (!kind) throw new Error(`There is no kind of record “${name}”`);
  return kind;
}

function readFields(
  written: readonly string[],
  { schema }: RecordKind,
  begin: SourceMap = {},
): SourceMap {
  const { source, faults } = readAssignments(written, schema);
  const twice = Object.keys(begin).filter((field) => Object.hasOwn(source, field));
  const told = [...faults, ...twice.map((field) => `“${field}” is written twice.`)];
  if (told.length > 0) throw new WrongUsage(["Nothing was written.", ...told].join("\n"));
  return { ...begin, ...source };
}

function isWhole({ source }: Draft, { schema }: RecordKind): boolean {
  return readAs(schema, source).ok;
}

async function chooseId(
  { recordFiles }: DeskArchive,
  kind: RecordKind,
  written: string | undefined,
  prompts: Prompts | undefined,
): Promise<string> {
  const faultOf = (id: string): string | undefined => {
    const fault = isKept(kind, id) ? "that folder holds the kiln loads" : findIdFault(id);
    if (fault !== undefined) return `“${id}” cannot be the id of a ${kind.name}: ${fault}.`;
    const there = recordFiles.find((it) => it.kind === kind.name && idKey(it.id) === idKey(id));
    return there && `There is a ${kind.name} ${there.id} already, in ${there.file}.`;
  };
  const id =
    written ??
    (await prompts?.write(
      `Its id, which names its file: short, as in ${examples[kind.name] ?? "grey-one"}.`,
      { faultOf },
    ));
  if (id === undefined)
    throw new WrongUsage(
      `Nothing was written. Say the ${kind.name}'s id first, as in “new ${kind.name} ${examples[kind.name] ?? "grey-one"}”.`,
    );
  const fault = faultOf(id);
  if (fault !== undefined) throw new WrongUsage(`Nothing was written. ${fault}`);
  return id;
}

function isKept({ name }: RecordKind, id: string): boolean {
  return name === "set" && idKey(id) === "firings";
}

const examples: Readonly<Record<string, string>> = {
  clay: "buff-stoneware",
  firing: "g-1020",
  glaze: "sea-green",
  material: "river-clay",
  set: "monday-class",
};

function askingOf({ archive }: DeskArchive, draft: Draft, prompts: Prompts): Asking {
  return { prompts, draft, names: knownNames(archive, null), tellEntries: tellParts };
}

/** `So far 90 parts.` for a recipe. */
function tellParts(path: FieldPath, { source }: Draft): string | undefined {
  const entries = valueAt(source, path);
  const parts = (Array.isArray(entries) ? entries : []).flatMap((entry: SourceMap) =>
    typeof entry.parts === "string" ? [Number(entry.parts.replace(",", "."))] : [],
  );
  if (parts.length === 0) return undefined;
  // Decimals such as 0.1 and 0.2 are summed without the dust that they leave.
  const sum = Number(parts.reduce((a, b) => a + b, 0).toFixed(6));
  return `So far ${sum} parts.`;
}

function render(
  kind: RecordKind,
  id: string,
  source: SourceMap,
  map: MapShape | undefined,
  notes: string,
): NewFile {
  const read = readAs(kind.schema, source);
  if (!read.ok)
    throw new WrongUsage(
      [
        "Nothing was written.",
        ...read.faults.map(({ message, hint }) => `${message}. ${hint}`),
        `On the command line a field is written as in “name=${kind.name === "firing" ? "kind=glaze" : "Chalk"}”.`,
      ].join("\n"),
    );
  const record = map ? inOrder(source, map) : source;
  const content = renderRecord(record as Record<string, FieldValue>) + (notes && `${notes}\n`);
  const parsed = parseText(content, "markdown");
  if (parsed.faults.length === 0 && !isDeepStrictEqual({ ...parsed.source }, { ...record }))
    throw new WrongUsage(
      "Nothing was written. This would be read otherwise than it is typed: type it again in plain letters.",
    );
  return { path: kind.file.replace(/<[a-z]+>/u, id), content };
}

function linesOf({ content }: NewFile): readonly string[] {
  return String(content).trimEnd().split("\n");
}
