/** What stands on the shelves of a kiln: codes by shelf, in their order. */
import type { Firing } from "../records/archive.ts";

export interface Shelf {
  readonly name: string;
  readonly codes: readonly string[];
}

/** The load list of a firing as it is written, ranges spelt out; codes without a record are among them. */
export function shelvesOf({ record }: Pick<Firing, "record">): readonly Shelf[] {
  return Object.entries(record.tiles ?? {}).map(([name, entries]) => ({
    name,
    codes: entries.flat(),
  }));
}

export function codesOn(shelves: readonly Shelf[]): readonly string[] {
  return shelves.flatMap(({ codes }) => codes);
}

/** Shelves as a record's field: those on which nothing stands are left out. */
export function shelvesField(
  shelves: readonly Shelf[],
  entries: (codes: readonly string[]) => readonly string[],
): Readonly<Record<string, readonly string[]>> | undefined {
  const filled = shelves.filter(({ codes }) => codes.length > 0);
  if (filled.length === 0) return undefined;
  return Object.fromEntries(filled.map(({ name, codes }) => [name, entries(codes)]));
}
