/** The coats of a tile as one sees them: the top one first. */
import type { CoatStep, TileStep } from "../records/archive.ts";
import { coatsThatCount, meets } from "../records/coat-stack.ts";
import { idKey } from "../terms/ids.ts";

export interface StackedCoat {
  /** Ids; two where one fades to the other. */
  readonly glazes: readonly string[];
  /** Whether the coat above it lies over it or beside it; null for the top one. */
  readonly under: "beside" | "over" | null;
}

/** The coats that count, top first. */
export function stackTopFirst(steps: readonly TileStep[]): readonly StackedCoat[] {
  const coats = coatsThatCount(steps).toReversed();
  return coats.map((coat, i) => {
    const upper = coats[i - 1];
    return {
      glazes: coat.glazes,
      under: upper ? (liesOver(upper, coat) ? "over" : "beside") : null,
    };
  });
}

function liesOver(upper: CoatStep, lower: CoatStep): boolean {
  const named = upper.over.some((id) => lower.glazes.some((glaze) => idKey(glaze) === idKey(id)));
  return named || upper.where.some((area) => lower.where.some((other) => meets(area, other)));
}
