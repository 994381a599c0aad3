/**
 * What the makers of a set found out: what they would make again, what otherwise, and what to avoid.
 * Tiles are told together only where they were made and fired alike in every way that anybody could
 * have written down, and everybody did.
 */
import { groupAlike } from "../likeness/alike.ts";
import type { Fate } from "../terms/choices.ts";
import type { CatalogueTile } from "./tiles.ts";

/** One thing that was learned. */
export interface Learned {
  /** Those that say so, one at least. */
  readonly tiles: readonly CatalogueTile[];
  /** All of the set that were made and fired alike, those among them. */
  readonly alike: readonly CatalogueTile[];
}

export const lessons = ["repeat", "change", "avoid"] as const;

export type Lesson = (typeof lessons)[number];

export interface FoundOut extends Readonly<Record<Lesson, readonly Learned[]>> {
  /** How many tiles say what came of them. */
  readonly told: number;
}

/** @param tiles those of a set */
export function foundOutBy(tiles: readonly CatalogueTile[]): FoundOut {
  const told = tiles.filter(({ results, fate }) => results.length > 0 || isOfTheKiln(fate));
  const groups = groupAlike(told, ({ makeUp }) => makeUp);
  const learned = (lesson: Lesson) =>
    groups
      .map((alike) => ({ alike, tiles: alike.filter((tile) => lessonOf(tile) === lesson) }))
      .filter((group) => group.tiles.length > 0)
      .toSorted((a, b) => b.tiles.length - a.tiles.length);
  return {
    told: told.length,
    repeat: learned("repeat"),
    change: learned("change"),
    avoid: learned("avoid"),
  };
}

/** What a tile says to whoever would make it once more; null where it says nothing either way. */
export function lessonOf({ again, fate, faults }: CatalogueTile): Lesson | null {
  if (again === "no" || isOfTheKiln(fate)) return "avoid";
  if (again === "yes") return "repeat";
  if (again === "changed") return "change";
  return faults.length > 0 ? "avoid" : null;
}

/** What became of it in the kiln; that a tile was lost or dropped says nothing of its glaze. */
function isOfTheKiln(fate: Fate | null): boolean {
  return fate === "cracked" || fate === "exploded" || fate === "stuck";
}
