/** From parsed files to typed records, kind by kind. */
import type * as z from "zod";
import type { Filed } from "../records/archive.ts";
import { type ClayRecord, claySchema } from "../records/clay.ts";
import { type FiringRecord, firingSchema } from "../records/firing.ts";
import { type GlazeRecord, glazeSchema } from "../records/glaze.ts";
import { type MaterialRecord, materialSchema } from "../records/material.ts";
import { type PageRecord, pageSchema } from "../records/page.ts";
import type { FieldPath, Problem } from "../records/problem.ts";
import { readAs } from "../records/read.ts";
import { type SetRecord, setSchema } from "../records/set.ts";
import { type StudioRecord, studioSchema } from "../records/studio.ts";
import { type TileRecord, tileSchema } from "../records/tile.ts";
import { findUndeclared } from "../records/undeclared.ts";
import { compareIds, idKey } from "../terms/ids.ts";
import { type BoundCodes, boundCodes } from "./bound-codes.ts";
import type { FoundFiles, KindOfRecord, RecordFile } from "./found-files.ts";
import type { ParsedText } from "./parsed-text.ts";
import { problemOfField, problemOfText } from "./problem-of-file.ts";
import { readPartly } from "./read-partly.ts";

/** All files of one kind, and those records among them that could be read. */
export interface Records<T> {
  /** The id of every file as published, by its key: what may be named, read or not. */
  readonly ids: ReadonlyMap<string, string>;
  readonly read: ReadonlyMap<string, Filed<T>>;
  /** Those with faults, without what is faulty in them: good for nothing but to follow the rest. */
  readonly partly: ReadonlyMap<string, Filed<T>>;
}

/** What can be followed of the records of one kind: those that were read, wholly or partly. */
export function readAtAll<T>({ read, partly }: Records<T>): ReadonlyMap<string, Filed<T>> {
  return partly.size === 0 ? read : new Map([...read, ...partly]);
}

export interface AllRecords {
  /** Null where it could not be read, or only partly. */
  readonly studio: StudioRecord | null;
  readonly studioPartly: StudioRecord | null;
  readonly sets: Records<SetRecord>;
  readonly tiles: Records<TileRecord>;
  readonly firings: Records<FiringRecord>;
  readonly glazes: Records<GlazeRecord>;
  readonly clays: Records<ClayRecord>;
  readonly materials: Records<MaterialRecord>;
  readonly pages: Records<PageRecord>;
  /** What was taken out of the partly read records, by file. */
  readonly removed: ReadonlyMap<string, readonly FieldPath[]>;
  readonly problems: readonly Problem[];
}

/** Whether something of a field had to be taken out of a partly read record. */
export function isFaulty({ removed }: AllRecords, file: string, field: string): boolean {
  return removed.get(file)?.some((path) => path[0] === field) ?? false;
}

/**
 * Reads every record by its schema. Of two files with one id the first counts.
 *
 * @param parsed what each file holds, by the file's name
 */
export function readRecords(
  files: FoundFiles,
  parsed: ReadonlyMap<string, ParsedText>,
): AllRecords {
  const problems: Problem[] = [];
  const removed = new Map<string, readonly FieldPath[]>();
  const read = <T>(file: string, schema: z.ZodType<T>): Filing<T> | undefined => {
    const held = parsed.get(file);
    if (!held) return undefined;
    problems.push(...held.faults.map((fault) => problemOfText(file, fault)));
    problems.push(...findUndeclaredBlanks(file, schema, held.blanks));
    if (!held.source) return undefined;
    const reading = readAs(schema, held.source);
    if (reading.ok) return { record: reading.record, notes: held.notes, isWhole: true };
    problems.push(...reading.faults.map((fault) => problemOfField(file, fault)));
    const partly = readPartly(schema, held.source, reading.faults);
    if (partly) removed.set(file, partly.removed);
    return partly && { record: partly.record, notes: held.notes, isWhole: false };
  };
  const readAll = <T>(kind: KindOfRecord, schema: z.ZodType<T>): Records<T> =>
    gather(
      files.records.filter((record) => record.kind === kind),
      (file) => read(file, schema),
    );
  const studio = files.studio === undefined ? undefined : read(files.studio, studioSchema);
  const sets = readAll("set", setSchema);
  const firings = readAll("firing", firingSchema);
  const codes = boundCodes(readAtAll(sets), readAtAll(firings));
  return {
    studio: studio?.isWhole ? studio.record : null,
    studioPartly: studio?.record ?? null,
    sets: withoutRefused(sets, codes),
    tiles: readAll("tile", tileSchema),
    firings: withoutRefused(firings, codes),
    glazes: readAll("glaze", glazeSchema),
    clays: readAll("clay", claySchema),
    materials: readAll("material", materialSchema),
    pages: readAll("page", pageSchema),
    removed,
    problems: [...problems, ...codes.problems],
  };
}

/** Records that name more codes than are read of an archive are left out, and told. */
function withoutRefused<T>({ ids, read, partly }: Records<T>, { refused }: BoundCodes): Records<T> {
  if (refused.size === 0) return { ids, read, partly };
  const keep = (records: ReadonlyMap<string, Filed<T>>) =>
    new Map([...records].filter(([, { file }]) => !refused.has(file)));
  return { ids, read: keep(read), partly: keep(partly) };
}

/** A field that was left empty counts as left out, if there is such a field. */
function findUndeclaredBlanks(
  file: string,
  schema: z.ZodType,
  blanks: ParsedText["blanks"],
): Problem[] {
  return blanks.flatMap(({ path, line, column }) => {
    const fault = findUndeclared(schema, path);
    return fault ? [{ file, severity: "error", ...fault, path: [], at: { line, column } }] : [];
  });
}

interface Filing<T> {
  readonly record: T;
  readonly notes: string;
  readonly isWhole: boolean;
}

function gather<T>(
  files: readonly RecordFile[],
  readFile: (file: string) => Filing<T> | undefined,
): Records<T> {
  const ids = new Map<string, string>();
  const read = new Map<string, Filed<T>>();
  const partly = new Map<string, Filed<T>>();
  for (const { id, file } of files.toSorted((a, b) => compareIds(a.id, b.id))) {
    const filing = readFile(file);
    const key = idKey(id);
    if (ids.has(key)) continue;
    ids.set(key, id);
    if (!filing) continue;
    const { record, notes, isWhole } = filing;
    (isWhole ? read : partly).set(key, { id, file, record, notes });
  }
  return { ids, read, partly };
}
