/** A new tile as somebody types it up: code, maker, layers on one line, notes. */
import { isDeepStrictEqual } from "node:util";
import { parseText } from "../../archive/parse-text.ts";
import type { NewFile } from "../../archive/write-new.ts";
import { decodeText, turningFault } from "../../reader/decode-text.ts";
import { type FieldValue, renderRecord } from "../../reader/render-record.ts";
import { shortNames } from "../../reader/short-form/names.ts";
import { readShortForm, type ShortStep } from "../../reader/short-form/read-short-form.ts";
import { findById } from "../../records/archive.ts";
import { type WhyTaken, whyTaken } from "../../records/next-code.ts";
import { readAs, type SourceMap } from "../../records/read.ts";
import { findNearest } from "../../records/suggest.ts";
import { tileSchema } from "../../records/tile.ts";
import { findIdFault, idKey } from "../../terms/ids.ts";
import type { DeskArchive } from "../types.ts";

/** What was typed, word for word; what was left empty is an empty text. */
export interface TypedTile {
  /** The id of the set; null for a tile in none. */
  readonly set: string | null;
  /** The day the first layer went on. */
  readonly glazed: string;
  readonly code: string;
  readonly maker: string;
  /** In short form. */
  readonly layers: string;
  readonly notes: string;
  /** What else the record says, in the order in which its fields are written; those above may have their place in it. */
  readonly more?: SourceMap;
}

export type TypedField = Exclude<keyof TypedTile, "set" | "more">;

/** What is wrong with a field, and in the layers with which words of the line. */
export interface TypedFault {
  readonly field: TypedField;
  readonly from?: number;
  readonly to?: number;
  readonly message: string;
  readonly hint: string;
}

export interface ReadTile {
  /** The layers that were understood, the lowest first. */
  readonly steps: readonly ShortStep[];
  readonly faults: readonly TypedFault[];
  /** The file to be written; undefined where anything is faulty. */
  readonly file: NewFile | undefined;
}

/** Reads what was typed, and renders the record that it makes. */
export function readTypedTile(archive: DeskArchive, typed: TypedTile): ReadTile {
  const { steps, faults: ofLayers } = readShortForm(
    typed.layers,
    shortNames(archive.archive, typed.set),
  );
  const maker = readMaker(archive, typed.maker);
  const faults = [
    ...faultOfCode(typed.code, whyTaken(archive.archive, archive.recordFiles, typed.set)),
    ...maker.faults,
    ...ofLayers.map((fault) => ({ field: "layers" as const, ...fault })),
    ...(steps.length === 0 && ofLayers.length === 0 ? [noLayers] : []),
  ];
  if (faults.length > 0) return { steps, faults, file: undefined };
  const record = {
    ...typed.more,
    ...(typed.glazed.trim() !== "" && { glazed: typed.glazed.trim() }),
    ...(maker.key !== undefined && { maker: maker.key }),
    layers: steps.map(({ layer }) => layer),
  };
  const notes = typed.notes.trim();
  const content = renderRecord(record as Record<string, FieldValue>) + (notes && `${notes}\n`);
  const unsound = findUnsound(content, record, notes);
  if (unsound.length > 0) return { steps, faults: unsound, file: undefined };
  return {
    steps,
    faults,
    file: { path: `${folderOf(archive, typed.set)}/${typed.code}.md`, content },
  };
}

function folderOf({ archive }: DeskArchive, set: string | null): string {
  return findById(archive.sets, set)?.file.replace(/\/[^/]+$/u, "") ?? "tiles";
}

function faultOfCode(code: string, taken: WhyTaken): readonly TypedFault[] {
  const fault = (message: string, hint: string) => [{ field: "code" as const, message, hint }];
  if (code === "") return fault("The code is missing", "Write the code that is on the clay.");
  const unusable = findIdFault(code);
  if (unusable !== undefined)
    return fault(`“${code}” cannot be a code: ${unusable}`, "Write another code.");
  const why = taken(code);
  if (why === undefined) return [];
  return fault(`“${code}” is taken: ${why}`, "Look at the clay again, or write another code.");
}

const noLayers: TypedFault = {
  field: "layers",
  message: "No layer is written yet",
  hint: "Write what was put on first, such as “7 x2”.",
};

function readMaker({ archive }: DeskArchive, typed: string) {
  const wanted = idKey(typed.trim());
  const makers = Object.entries(archive.studio.makers ?? {});
  const key = makers.find(([it]) => idKey(it) === wanted)?.[0];
  if (wanted === "" || key !== undefined) return { key, faults: [] };
  const called = makers.filter(([, { name }]) => name !== undefined && idKey(name) === wanted);
  const near = findNearest(
    typed,
    makers.map(([it]) => it),
  );
  const meant = called.length === 1 ? called[0]?.[0] : near;
  const hint = meant
    ? `Did you mean “${meant}”?`
    : "Add the code under “makers:” in studio.yaml, as in “m07: {}”.";
  return {
    key,
    faults: [{ field: "maker" as const, message: `There is no maker “${typed}”`, hint }],
  };
}

/** What the reader of archives would say of the file, and whether it reads what was meant. */
function findUnsound(content: string, record: object, notes: string): readonly TypedFault[] {
  const decoded = decodeText(new TextEncoder().encode(content));
  const parsed = parseText(content, "markdown");
  const turned = turningFault(content);
  const told = [
    ...(decoded.ok ? [] : [decoded.fault]),
    ...parsed.faults,
    ...(turned ? [turned] : []),
  ];
  if (told.length > 0)
    return told.map(({ message, hint }) => ({ field: "notes" as const, message, hint }));
  const read = readAs(tileSchema, (parsed.source ?? {}) as SourceMap);
  if (!read.ok)
    return read.faults.map(({ path, message, hint }) => ({
      field: fieldOf(path[0]),
      message,
      hint,
    }));
  if (isDeepStrictEqual(parsed.source, record) && parsed.notes.trim() === notes) return [];
  const hint = "Type it again in plain letters, and leave out what cannot be seen.";
  return [{ field: "notes", message: "This would be read otherwise than it is typed", hint }];
}

function fieldOf(name: string | number | undefined): TypedField {
  return name === "glazed" || name === "maker" || name === "layers" ? name : "notes";
}
