/** From parsed files to typed records, kind by kind. */
import type * as z from "zod";
import type { Filed } from "../records/archive.ts";
import { type ClayRecord, claySchema } from "../records/clay.ts";
import { type FiringRecord, firingSchema } from "../records/firing.ts";
import { type GlazeRecord, glazeSchema } from "../records/glaze.ts";
import { type MaterialRecord, materialSchema } from "../records/material.ts";
import type { Problem } from "../records/problem.ts";
import { readAs } from "../records/read.ts";
import { type SetRecord, setSchema } from "../records/set.ts";
import { type StudioRecord, studioSchema } from "../records/studio.ts";
import { type TileRecord, tileSchema } from "../records/tile.ts";
import { compareIds, idKey } from "../terms/ids.ts";
import type { FoundFiles, KindOfRecord, RecordFile } from "./finds.ts";
import type { ParsedText } from "./parse-cache.ts";
import { problemOfField, problemOfText } from "./problem-of-file.ts";

/** All files of one kind, and those records among them that could be read. */
export interface Records<T> {
  /** The id of every file as published, by its key: what may be named, read or not. */
  readonly ids: ReadonlyMap<string, string>;
  readonly read: ReadonlyMap<string, Filed<T>>;
}

export interface AllRecords {
  /** Null where the studio is unknown. */
  readonly studio: StudioRecord | null;
  readonly sets: Records<SetRecord>;
  readonly tiles: Records<TileRecord>;
  readonly firings: Records<FiringRecord>;
  readonly glazes: Records<GlazeRecord>;
  readonly clays: Records<ClayRecord>;
  readonly materials: Records<MaterialRecord>;
  readonly problems: readonly Problem[];
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
  const read = <T>(file: string, schema: z.ZodType<T>): Filing<T> | undefined => {
    const held = parsed.get(file);
    if (!held) return undefined;
    problems.push(...held.faults.map((fault) => problemOfText(file, fault)));
    if (!held.source) return undefined;
    const reading = readAs(schema, held.source);
    if (reading.ok) return { record: reading.record, notes: held.notes };
    problems.push(...reading.faults.map((fault) => problemOfField(file, fault)));
    return undefined;
  };
  const readAll = <T>(kind: KindOfRecord, schema: z.ZodType<T>): Records<T> =>
    gather(
      files.records.filter((record) => record.kind === kind),
      (file) => read(file, schema),
    );
  return {
    studio: (files.studio && read(files.studio, studioSchema)?.record) || null,
    sets: readAll("set", setSchema),
    tiles: readAll("tile", tileSchema),
    firings: readAll("firing", firingSchema),
    glazes: readAll("glaze", glazeSchema),
    clays: readAll("clay", claySchema),
    materials: readAll("material", materialSchema),
    problems,
  };
}

interface Filing<T> {
  readonly record: T;
  readonly notes: string;
}

function gather<T>(
  files: readonly RecordFile[],
  read: (file: string) => Filing<T> | undefined,
): Records<T> {
  const ids = new Map<string, string>();
  const found = new Map<string, Filed<T>>();
  for (const { id, file } of files) {
    const filing = read(file);
    const key = idKey(id);
    if (filing && !ids.has(key)) found.set(key, { id, file, ...filing });
    if (!ids.has(key)) ids.set(key, id);
  }
  return { ids, read: new Map([...found].sort(([, a], [, b]) => compareIds(a.id, b.id))) };
}
