/** The stories of tiles and of glazes, from the versions of their records. */
import { type Archive, findById } from "../../records/archive.ts";
import type { Findings } from "../findings.ts";
import { type RecordStory, type RecordVersion, tellStory } from "./entries.ts";
import {
  type RecipeChange,
  type RecipeNames,
  recipeChanges,
  type WrittenGlaze,
} from "./recipe-changes.ts";
import { firstChange, type TileChange, tileChanges, type WrittenTile } from "./tile-changes.ts";
import type { ShownNames } from "./told-steps.ts";

export type TileStory = RecordStory<TileChange>;

/**
 * The story of each tile whose record changed since it was first written, by the tile's file.
 *
 * @param archive what is shown of it: nothing else is named
 */
export function tileStories(
  archive: Archive,
  { history, written }: Findings,
): ReadonlyMap<string, TileStory> {
  const names = namesShownIn(archive);
  const stories = [...archive.tiles.values()].flatMap(({ file }) => {
    const { versions = [], photographs = [] } = history?.get(file) ?? {};
    if (!written || versions.length === 0) return [];
    const compare = comparer(versions, written.tiles, {
      unreadable: { what: "unreadable" },
      first: ({ record }) => firstChange(record),
      differences: (a: WrittenTile, b: WrittenTile) => tileChanges(a, b, names),
    });
    const beside = photographs.map(({ day, change }) => ({
      day,
      change: { what: "photograph", change } as const,
    }));
    const story = tellStory<TileChange>(versions, compare, beside);
    return story.entries.length > 1 ? [[file, story] as const] : [];
  });
  return new Map(stories);
}

/** The story of a glaze's recipe. */
export type GlazeStory = RecordStory<RecipeChange>;

/** The story of each glaze whose recipe was changed since it was first written, by the glaze's file. */
export function glazeStories(
  archive: Archive,
  { history, written }: Findings,
  names: RecipeNames,
): ReadonlyMap<string, GlazeStory> {
  const stories = [...archive.glazes.values()].flatMap(({ file }) => {
    const { versions = [] } = history?.get(file) ?? {};
    if (!written || versions.length < 2) return [];
    const compare = comparer(versions, written.glazes, {
      unreadable: { what: "unreadable" },
      first: (): RecipeChange => ({ what: "first" }),
      differences: (a: WrittenGlaze, b: WrittenGlaze) => recipeChanges(a.record, b.record, names),
    });
    const story = tellStory<RecipeChange>(versions, compare);
    return story.entries.length > 1 ? [[file, story] as const] : [];
  });
  return new Map(stories);
}

/** How two versions of one kind of record are told apart. */
interface Teller<Written, Change> {
  readonly unreadable: Change;
  readonly first: (written: Written) => Change;
  readonly differences: (before: Written, after: Written) => readonly Change[];
}

/** Compares a version with the nearest one before it that can be read. */
export function comparer<Written, Change>(
  versions: readonly RecordVersion[],
  written: ReadonlyMap<string, Written | null>,
  { unreadable, first, differences }: Teller<Written, Change>,
): (from: string | null, to: string) => readonly Change[] {
  const origin = new Map(versions.map(({ blob, before }) => [blob, before[0] ?? null]));
  const readableBefore = (from: string | null): Written | null => {
    const tried = new Set<string>();
    for (let blob = from; blob !== null && !tried.has(blob); blob = origin.get(blob) ?? null) {
      const found = written.get(blob);
      if (found) return found;
      tried.add(blob);
    }
    return null;
  };
  return (from, to) => {
    const after = written.get(to);
    if (!after) return [unreadable];
    const before = readableBefore(from);
    return before ? differences(before, after) : [first(after)];
  };
}

function namesShownIn({ glazes, clays, firings }: Archive): ShownNames {
  return {
    glaze: (id) => findById(glazes, id)?.record.name ?? null,
    clay: (id) => findById(clays, id)?.record.name ?? null,
    firing: (id) => findById(firings, id)?.id ?? null,
  };
}
