/**
 * What was glazed and how it was fired. Tiles are counted and compared side by side only where all of
 * it is the same: a glaze runs and looks otherwise on another clay, in another fire, and another way up.
 */
import type { Cooling } from "../firing/cooling.ts";
import { lastValue } from "../likeness/make-up.ts";
import type { Atmosphere, Shape } from "../terms/choices.ts";
import { type Cone, compareCones } from "../terms/cones.ts";
import { rememberFor } from "../terms/remember.ts";
import { type FireOnGlaze, fireOn, glazeFirings } from "./colours/measured-alone.ts";
import type { Link } from "./link.ts";
import type { CatalogueTile } from "./tiles.ts";

/** Null is what nobody wrote down: of it, too, no two values are put together. */
export interface Circumstance {
  readonly cone: Cone | null;
  readonly atmosphere: Atmosphere | null;
  /** What of the fire landed on the glaze; null where nothing is known to have. */
  readonly fire: FireOnGlaze | null;
  readonly cooling: Cooling;
  /** How many times it was glaze fired: 0 where it waits. */
  readonly firings: number;
  readonly clay: Link | null;
  readonly shape: Shape;
  readonly angle: number | null;
}

/** The circumstance of a tile. */
export const circumstanceOf = rememberFor((tile: CatalogueTile): Circumstance => {
  const { cone, atmosphere, clay, shape, angle } = tile;
  return {
    cone,
    atmosphere,
    fire: fireOn(tile),
    cooling: (lastValue(tile.makeUp, "cooling") ?? "unknown") as Cooling,
    firings: glazeFirings(tile).length,
    clay,
    shape,
    angle,
  };
});

/** A text that is the same for two tiles where all of their circumstance is. */
export const circumstanceKey = rememberFor((tile: CatalogueTile): string => {
  const { cone, atmosphere, fire, cooling, firings, clay, shape, angle } = circumstanceOf(tile);
  return JSON.stringify([cone, atmosphere, fire, cooling, firings, clay?.id ?? null, shape, angle]);
});

/** From cool to hot; where nobody wrote the cone down, last. */
export function byHeat(a: Cone | null, b: Cone | null): number {
  if (a === null || b === null) return Number(a === null) - Number(b === null);
  return compareCones(a, b);
}
