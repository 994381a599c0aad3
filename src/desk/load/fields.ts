/** A load as fields of its firing's record. */
import { parseText } from "../../archive/parse-text.ts";
import type { FieldChange } from "../../archive/write-fields.ts";
import { changedEntries, entriesOf } from "../../loads/entries.ts";
import type { Shelf } from "../../loads/shelves.ts";
import type { FieldValue } from "../../reader/render-record.ts";
import type { SourceMap } from "../../records/read.ts";
import type { NewFiring } from "./types.ts";

/** What a firing's record says as it was written; nothing where it cannot be read. */
export function sourceOf(text: string | undefined): SourceMap {
  return (text === undefined ? undefined : parseText(text, "markdown").source) ?? {};
}

/** The fields of a firing that is begun; what was left empty is left out. */
export function fieldsOfNew(begun: NewFiring): Readonly<Record<string, FieldValue | undefined>> {
  const { on, kind, kiln, heatedBy, atmosphere, cone } = begun;
  const all = { on, kind, kiln, "heated-by": heatedBy, atmosphere, cone };
  return Object.fromEntries(Object.entries(all).map(([name, value]) => [name, value || undefined]));
}

/** What is to change so that the list names these codes: nothing of a shelf that stays as it is. */
export function changesOfTiles(
  { tiles }: SourceMap,
  shelves: readonly Shelf[],
): readonly FieldChange[] {
  const written = typeof tiles === "object" && !Array.isArray(tiles) ? (tiles as SourceMap) : {};
  if (shelves.every(({ codes }) => codes.length === 0))
    return Object.keys(written).length > 0 ? [{ path: ["tiles"], value: null }] : [];
  const names = new Set([...Object.keys(written), ...shelves.map(({ name }) => name)]);
  return [...names].flatMap((name) => {
    const codes = shelves.filter((shelf) => shelf.name === name).flatMap((shelf) => shelf.codes);
    return changeOfShelf(name, Object.hasOwn(written, name) ? written[name] : undefined, codes);
  });
}

function changeOfShelf(
  name: string,
  written: SourceMap[string] | undefined,
  codes: readonly string[],
): readonly FieldChange[] {
  const path = ["tiles", name];
  if (codes.length === 0) return written === undefined ? [] : [{ path, value: null }];
  if (written === undefined) return [{ path, value: entriesOf(codes) }];
  const before = [written].flat() as readonly string[];
  const value = changedEntries(before, codes);
  const isSame = value.every((entry, at) => entry === before[at]);
  if (isSame) return [];
  return [{ path, value: typeof written === "string" ? value.flat() : value }];
}
