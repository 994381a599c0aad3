/** What a record that was handed in says beyond what the archive's record says, and against it. */
import type { FieldChange } from "../archive/write-fields.ts";
import type { Source, SourceMap } from "../records/read.ts";

/** A field that is new or another. */
export interface FieldDifference extends FieldChange {
  readonly value: string | readonly string[];
  /** What the archive says; null where it says nothing. */
  readonly was: string | null;
}

export interface FieldDifferences {
  readonly fields: readonly FieldDifference[];
  /** Fields that differ and that no small edit can bring together: for people. */
  readonly byHand: readonly string[];
  readonly areLayersOther: boolean;
}

/**
 * Compares two records of one tile. What was handed in and leaves something out takes nothing away.
 *
 * @param defaults what the tile has from its set
 */
export function compareFields(
  here: SourceMap,
  handedIn: SourceMap,
  defaults: SourceMap,
): FieldDifferences {
  const found: Found = { fields: [], byHand: [] };
  for (const [key, value] of Object.entries(handedIn)) {
    if (key === "layers") continue;
    const old = here[key] ?? defaults[key];
    if (isSame(old, value)) continue;
    if (key === "result")
      compareEntries([key], listOf(here[key]), listOf(value), found, matchResult);
    else if (key === "later")
      compareEntries([key], listOf(here[key]), listOf(value), found, matchLook);
    else compareValue([key], old, value, found);
  }
  return { ...found, areLayersOther: !isSame(here.layers, handedIn.layers ?? here.layers) };
}

interface Found {
  readonly fields: FieldDifference[];
  readonly byHand: string[];
}

type FieldPath = readonly (string | number)[];

function compareValue(path: FieldPath, old: Source | undefined, value: Source, found: Found): void {
  if (isSame(old, value)) return;
  if (isMap(value) && (old === undefined || isMap(old))) {
    for (const [key, inner] of Object.entries(value))
      compareValue([...path, key], old?.[key], inner, found);
    return;
  }
  const plain = plainOf(value);
  const was = old === undefined ? null : textOf(old);
  if (plain === undefined || was === undefined) found.byHand.push(path.join(" › "));
  else found.fields.push({ path, value: plain, was });
}

type Match = (entries: readonly SourceMap[], entry: SourceMap, at: number) => number;

/** Entry by entry: one that the archive has no counterpart of is added behind the last. */
function compareEntries(
  path: FieldPath,
  old: readonly SourceMap[],
  handedIn: readonly SourceMap[],
  found: Found,
  match: Match,
): void {
  let next = old.length;
  for (const [at, entry] of handedIn.entries()) {
    const matched = match(old, entry, at);
    const place = matched < 0 ? next : matched;
    if (matched < 0) next += 1;
    for (const [key, value] of Object.entries(entry))
      compareValue([...path, place, key], old[place]?.[key], value, found);
  }
}

/** A result is of the firing it names; of those that name none, the first is of the first. */
const matchResult: Match = (entries, entry, at) => {
  if (entry.after === undefined) return at < entries.length ? at : -1;
  const named = entries.findIndex(({ after }) => isSame(after, entry.after));
  if (named >= 0) return named;
  return entries[at] !== undefined && entries[at].after === undefined ? at : -1;
};

/** A later look is known by its day. */
const matchLook: Match = (entries, entry) => entries.findIndex(({ on }) => isSame(on, entry.on));

function listOf(value: Source | undefined): readonly SourceMap[] {
  const entries = value === undefined ? [] : Array.isArray(value) ? value : [value];
  return entries.filter(isMap);
}

function isMap(value: Source | undefined): value is SourceMap {
  return typeof value === "object" && !Array.isArray(value);
}

function plainOf(value: Source): string | readonly string[] | undefined {
  if (typeof value === "string") return value;
  return Array.isArray(value) && value.every((each) => typeof each === "string")
    ? value
    : undefined;
}

function textOf(value: Source): string | undefined {
  const plain = plainOf(value);
  return typeof plain === "string" ? plain : plain?.join(", ");
}

/** One word and a list of that one word say the same, and the order of fields says nothing. */
function isSame(a: Source | undefined, b: Source | undefined): boolean {
  return JSON.stringify(canonical(a)) === JSON.stringify(canonical(b));
}

function canonical(value: Source | undefined): unknown {
  if (Array.isArray(value))
    return value.length === 1 ? canonical(value[0]) : value.map((each) => canonical(each));
  if (!isMap(value)) return value;
  return Object.keys(value)
    .sort()
    .map((key) => [key, canonical(value[key])]);
}
