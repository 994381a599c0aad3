/** How far a tile has come. */
import type { Filed, TileStep } from "../../records/archive.ts";
import type { FiringRecord } from "../../records/firing.ts";
import type { TileRecord } from "../../records/tile.ts";
import type { Stage } from "../../terms/choices.ts";
import { idKey } from "../../terms/ids.ts";

/**
 * A tile's stage: **lost** where it has a fate, **recorded** where it has a result, **fired**
 * where a firing follows its last coat, else **waiting**.
 *
 * A `fired:` that names no firing, or one without a day, counts as still to come while the tile
 * has neither result nor fate: such a tile is waiting.
 */
export function stageOf(
  record: TileRecord,
  steps: readonly TileStep[],
  firings: ReadonlyMap<string, Filed<FiringRecord>>,
): Stage {
  if (record.fate) return "lost";
  if (record.result) return "recorded";
  const lastCoat = steps.findLastIndex((step) => step.step === "coat");
  const isFired = steps
    .slice(lastCoat + 1)
    .some((step) => step.step === "fired" && wasLit(step.firing, firings));
  return isFired ? "fired" : "waiting";
}

function wasLit(id: string | null, firings: ReadonlyMap<string, Filed<FiringRecord>>): boolean {
  return id !== null && firings.get(idKey(id))?.record.on !== undefined;
}
