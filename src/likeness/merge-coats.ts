/** Coats of one glaze on each other are one layer, whether they were written in one step or in two. */
import type { CoatStep, TileStep } from "../records/archive.ts";
import { idKey } from "../terms/ids.ts";

/**
 * Adds up layers that lie on each other and differ in nothing but their number of coats: the same
 * glaze on the same area, put on the same way on a touch-dry coat. Where one of them was not
 * counted, the sum is unknown.
 */
export function mergeCoats(steps: readonly TileStep[]): readonly TileStep[] {
  const merged: TileStep[] = [];
  for (const step of steps) {
    const below = merged.at(-1);
    if (below?.step === "coat" && step.step === "coat" && isMoreOfTheSame(below, step))
      merged[merged.length - 1] = { ...below, coats: sumOf(below.coats, step.coats) };
    else merged.push(step);
  }
  return merged;
}

function isMoreOfTheSame(below: CoatStep, coat: CoatStep): boolean {
  const canBeCounted = below.cover === null && coat.cover === null && coat.dried === "touch-dry";
  return canBeCounted && haveSameGlazes(below, coat) && likeOf(below) === likeOf(coat);
}

function haveSameGlazes(a: CoatStep, b: CoatStep): boolean {
  return (
    a.glazes.length === b.glazes.length &&
    a.glazes.every((glaze, i) => idKey(glaze) === idKey(b.glazes[i] ?? ""))
  );
}

function likeOf({ at: _, coats: __, dried: ___, glazes: ____, where, ...coat }: CoatStep): string {
  return JSON.stringify([[...where].sort(), coat]);
}

function sumOf(a: number | null, b: number | null): number | null {
  return a === null || b === null ? null : a + b;
}
