/** How far a colour difference can be trusted in this studio. */

import { measureRepeatability } from "../../colour/trust.ts";
import { groupAlike } from "../../likeness/alike.ts";
import type { CatalogueTile } from "../tiles.ts";

/** How far colour differences can be trusted here. */
export interface ColourTrust {
  /** In CIEDE2000: in 19 cases of 20 two tiles made alike were measured no further apart. */
  readonly difference: number;
  /** How many tiles it rests on, and how many different things they are repeats of. */
  readonly tiles: number;
  readonly kinds: number;
}

/**
 * The colour difference that means nothing here, from tiles made and fired alike, the twins of
 * control tiles among them: whatever else differed (hand, shelf, day, light, camera) is in it.
 * Null where no two measured tiles are alike.
 */
export function measureTrust(tiles: readonly CatalogueTile[]): ColourTrust | null {
  const recorded = tiles.filter(({ results }) => results.length > 0);
  const groups = groupAlike(recorded, ({ makeUp }) => makeUp)
    .map((group) => group.flatMap(({ colour }) => (colour ? [colour.lab] : [])))
    .filter((labs) => labs.length > 1);
  const repeatability = measureRepeatability(groups);
  if (!repeatability) return null;
  return {
    difference: repeatability.difference,
    tiles: groups.reduce((sum, group) => sum + group.length, 0),
    kinds: groups.length,
  };
}
