/**
 * What lies over what on a tile. A layer of glaze lies over the nearest earlier layer of glaze
 * whose area meets its own: `all` meets every area, an area meets itself, others do not unless
 * `over:` says so. Resists and firings between do not break it, a touch-up counts for nothing,
 * and starting again (`remove: all`) clears what lies beneath.
 */

import type { Area } from "../terms/choices.ts";
import { idKey } from "../terms/ids.ts";
import type { CoatStep, TileStep } from "./archive.ts";

/** One glaze directly over another on a tile: ids as published. */
export interface Lap {
  readonly over: string;
  readonly under: string;
  readonly upper: CoatStep;
  readonly lower: CoatStep;
}

/** The last step that took everything off again, so that the tile was begun anew; −1 without one. */
export function findRestart(steps: readonly TileStep[]): number {
  return steps.findLastIndex((step) => step.step === "remove" && step.remove === "all");
}

/** The steps of which something is left on the tile. */
export function stepsThatLast(steps: readonly TileStep[]): readonly TileStep[] {
  return steps.slice(findRestart(steps) + 1);
}

/** The layers of glaze that count: touch-ups left out, and all that was taken off again. */
export function coatsThatCount(steps: readonly TileStep[]): readonly CoatStep[] {
  return stepsThatLast(steps).filter((step) => step.step === "coat" && !step.touchUp) as CoatStep[];
}

/**
 * Every place where one glaze lies directly over another, bottom first. A layer with several
 * areas is followed in each of them. Coats of one glaze in one area add up and are no pair.
 */
export function findLaps(steps: readonly TileStep[]): readonly Lap[] {
  const coats = coatsThatCount(steps);
  return coats.flatMap((upper, i) => lapsOf(upper, coats.slice(0, i)));
}

function lapsOf(upper: CoatStep, earlier: readonly CoatStep[]): Lap[] {
  const lowers = new Set<CoatStep>();
  for (const area of upper.where) {
    const nearest = earlier.findLast((coat) => coat.where.some((other) => meets(area, other)));
    if (nearest) lowers.add(nearest);
  }
  for (const id of upper.over) {
    const named = earlier.findLast((coat) => hasGlaze(coat, id));
    if (named) lowers.add(named);
  }
  return [...lowers].flatMap((lower) => pairsOf(upper, lower));
}

function pairsOf(upper: CoatStep, lower: CoatStep): Lap[] {
  return upper.glazes.flatMap((over) =>
    lower.glazes
      .filter((under) => idKey(under) !== idKey(over))
      .map((under) => ({ over, under, upper, lower })),
  );
}

function hasGlaze(coat: CoatStep, id: string): boolean {
  return coat.glazes.some((glaze) => idKey(glaze) === idKey(id));
}

/** Whether two areas of a tile overlap. */
export function meets(a: Area, b: Area): boolean {
  return a === "all" || b === "all" || a === b;
}

/** Coats of one glaze in one area, added up; null where a layer's coats were not written down. */
export interface CoatCount {
  readonly glaze: string;
  readonly area: Area;
  readonly coats: number | null;
}

/** How many coats of each glaze lie in each area, in the order they first went on. */
export function countCoats(steps: readonly TileStep[]): readonly CoatCount[] {
  const counts = new Map<string, CoatCount>();
  for (const coat of coatsThatCount(steps)) {
    for (const glaze of coat.glazes) {
      for (const area of coat.where) {
        const key = `${idKey(glaze)} ${area}`;
        const before = counts.get(key);
        const coats = before ? addCoats(before.coats, coat.coats) : coat.coats;
        counts.set(key, { glaze, area, coats });
      }
    }
  }
  return [...counts.values()];
}

function addCoats(a: number | null, b: number | null): number | null {
  return a === null || b === null ? null : a + b;
}
