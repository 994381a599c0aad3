/**
 * What a faulty record says all the same. The faulty fields are taken out until the rest can be
 * read, so that what the rest names can be looked up too and every fault is told at once.
 */
import type * as z from "zod";
import type { FieldFault, FieldPath } from "../records/problem.ts";
import { readAs, type Source, type SourceMap } from "../records/read.ts";

/** A record without its faulty fields. */
export interface PartlyRead<T> {
  readonly record: T;
  /** The fields that were taken out, as they stand in the source. */
  readonly removed: readonly FieldPath[];
}

/** A fault in a list may take out a field, then its entry, then the list: no record is deeper. */
const mostRounds = 6;

/**
 * Reads what can be read of a faulty record.
 *
 * @param faults what `readAs` found in it
 * @returns undefined where nothing is left that the record could do without
 */
export function readPartly<T>(
  schema: z.ZodType<T>,
  source: SourceMap,
  faults: readonly FieldFault[],
): PartlyRead<T> | undefined {
  let removed: readonly FieldPath[] = [];
  let found = faults;
  for (let round = 0; round < mostRounds; round += 1) {
    const gone = keysOf(removed);
    const more = found.map(({ path }) => findRemovable(source, restore(path, gone), gone));
    if (more.some((path) => path.length === 0)) return undefined;
    removed = [...removed, ...more];
    const reading = readAs(schema, without(source, keysOf(removed), []) as SourceMap);
    if (reading.ok) return { record: reading.record, removed };
    found = reading.faults;
  }
  return undefined;
}

/** The field itself or, where it is missing, the nearest one around it; empty for the record. */
function findRemovable(source: Source, path: FieldPath, removed: Removed): FieldPath {
  const found: (string | number)[] = [];
  let value: Source | undefined = source;
  for (const step of path) {
    // One value where a list might stand counts as its only entry.
    if (step === 0 && !Array.isArray(value)) continue;
    const next = entryOf(value, step);
    if (next === undefined || isRemoved([...found, step], removed)) break;
    found.push(step);
    value = next;
  }
  return found;
}

function entryOf(value: Source | undefined, step: string | number): Source | undefined {
  if (typeof value !== "object" || !Object.hasOwn(value, step)) return undefined;
  return (value as Readonly<Record<string | number, Source>>)[step];
}

/** The fields that were taken out, each as one word. */
type Removed = ReadonlySet<string>;

function keysOf(removed: readonly FieldPath[]): Removed {
  return new Set(removed.map((path) => JSON.stringify(path)));
}

function isRemoved(path: FieldPath, removed: Removed): boolean {
  return removed.size > 0 && removed.has(JSON.stringify(path));
}

function without(source: Source, removed: Removed, at: FieldPath): Source {
  if (typeof source === "string") return source;
  const entries = Object.entries(source as SourceMap).flatMap(([key, value]) => {
    const path = [...at, Array.isArray(source) ? Number(key) : key];
    return isRemoved(path, removed) ? [] : [[key, without(value, removed, path)] as const];
  });
  return Array.isArray(source) ? entries.map(([, value]) => value) : Object.fromEntries(entries);
}

/** A field of a partly read record as it stands in the source: entries taken out count again. */
export function restorePath(path: FieldPath, removed: readonly FieldPath[]): FieldPath {
  return restore(path, keysOf(removed));
}

function restore(path: FieldPath, removed: Removed): FieldPath {
  const restored: (string | number)[] = [];
  for (const step of path)
    restored.push(typeof step === "number" ? restoreIndex(step, restored, removed) : step);
  return restored;
}

function restoreIndex(index: number, list: FieldPath, removed: Removed): number {
  let restored = -1;
  for (let left = index; left >= 0; ) {
    restored += 1;
    if (!isRemoved([...list, restored], removed)) left -= 1;
  }
  return restored;
}
