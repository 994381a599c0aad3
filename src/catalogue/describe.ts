/** A tile in one sentence, written from its record. */
import {
  type Archive,
  type CoatStep,
  findById,
  type Tile,
  type TileStep,
} from "../records/archive.ts";
import { coatsThatCount, meets } from "../records/coat-stack.ts";
import type { Cone } from "../terms/cones.ts";
import { idKey } from "../terms/ids.ts";

/**
 * `Tile TB-014: Tidewrack over Soot on Buff stoneware, cone 6, satin`.
 *
 * @param cone of the firing that decides
 */
export function describeTile(tile: Tile, archive: Archive, cone: Cone | null): string {
  const clay = findById(archive.clays, tile.clay)?.record.name;
  const surface = tile.record.result?.at(-1)?.surface;
  const stack = nameStack(tile.steps, (id) => findById(archive.glazes, id)?.record.name ?? id);
  const made = [stack, clay && `on ${clay}`].filter(Boolean).join(" ");
  const told = [made, cone && `cone ${cone}`, surface?.join(" and ")].filter(Boolean);
  return told.length > 0 ? `Tile ${tile.id}: ${told.join(", ")}` : `Tile ${tile.id}`;
}

/**
 * The glazes of a tile by name, top coat first: `Mist over Sandbar and Kelp` where those two lie
 * side by side.
 *
 * @param nameOf a glaze's name by its id
 */
export function nameStack(steps: readonly TileStep[], nameOf: (id: string) => string): string {
  const coats = coatsThatCount(steps).toReversed();
  const named = new Set<string>();
  let words = "";
  for (const [i, coat] of coats.entries()) {
    const name = coat.glazes.map(nameOf).join(" fading to ");
    if (named.has(name)) continue;
    const upper = coats[i - 1];
    words += upper ? `${liesOver(upper, coat) ? " over " : " and "}${name}` : name;
    named.add(name);
  }
  return words;
}

function liesOver(upper: CoatStep, lower: CoatStep): boolean {
  const named = upper.over.some((id) => lower.glazes.some((glaze) => idKey(glaze) === idKey(id)));
  return named || upper.where.some((area) => lower.where.some((other) => meets(area, other)));
}
