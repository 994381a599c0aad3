/** What a glaze alone measured: by clay and fire, by cone, by coats. */

import type { Atmosphere } from "../../terms/choices.ts";
import { type Cone, compareCones } from "../../terms/cones.ts";
import { compareIds } from "../../terms/ids.ts";
import { groupBy } from "../group-by.ts";
import type { Link } from "../link.ts";
import type { CatalogueTile } from "../tiles.ts";
import { type ColourFinding, findColours } from "./colour-findings.ts";
import { findShown } from "./glaze-paint.ts";
import { type FireOnGlaze, type MeasuredAlone, measureAlone } from "./measured-alone.ts";
import type { ColourTrust } from "./trust.ts";

/** A glaze alone on one clay in one kind of fire. */
export interface GlazeOnClay {
  readonly clay: Link | null;
  readonly atmosphere: Atmosphere | null;
  readonly fire: FireOnGlaze | null;
  /** By cone from cool to hot, then from few coats to many; what is not known stands last. */
  readonly measured: readonly MeasuredAlone[];
}

/** What a glaze alone measured, on every clay. */
export interface GlazeColours {
  /** By clay, in the order of their names, and by fire. */
  readonly onClays: readonly GlazeOnClay[];
  /** What those measurements say when one thing is changed: for each clay its widest difference. */
  readonly colourFindings: readonly ColourFinding[];
  /** The one tile that speaks for the glaze where it is one of many; null where none is measured. */
  readonly shownAs: MeasuredAlone | null;
}

/**
 * The colours of a glaze.
 *
 * @param alone the tiles that have it and no other glaze
 */
export function glazeColours(
  alone: readonly CatalogueTile[],
  trust: ColourTrust | null,
): GlazeColours {
  const measured = alone.flatMap((tile) => measureAlone(tile) ?? []);
  return {
    onClays: arrangeByClay(measured),
    colourFindings: findColours(measured, trust),
    shownAs: findShown(measured) ?? null,
  };
}

/** Every measurement in one place: on its clay in its fire, at its cone, in the order of coats. */
export function arrangeByClay(measured: readonly MeasuredAlone[]): readonly GlazeOnClay[] {
  const grounds = groupBy(measured, ({ clay, atmosphere, fire }) =>
    JSON.stringify([clay?.id, atmosphere, fire]),
  );
  return grounds
    .map(([first, ...others]) => ({
      clay: first.clay,
      atmosphere: first.atmosphere,
      fire: first.fire,
      measured: [first, ...others].sort(byConeAndCoats),
    }))
    .sort(
      (a, b) =>
        lastIfNull(a.clay?.name, b.clay?.name, compareIds) ||
        lastIfNull(a.atmosphere, b.atmosphere, compareIds) ||
        lastIfNull(a.fire, b.fire, compareIds),
    );
}

function byConeAndCoats(a: MeasuredAlone, b: MeasuredAlone): number {
  return (
    lastIfNull<Cone>(a.cone, b.cone, compareCones) ||
    lastIfNull(a.coats, b.coats, (x: number, y: number) => x - y) ||
    compareIds(a.tile.id, b.tile.id)
  );
}

function lastIfNull<T extends number | string>(
  a: T | null | undefined,
  b: T | null | undefined,
  compare: (a: T, b: T) => number,
): number {
  if (a === null || a === undefined) return b === null || b === undefined ? 0 : 1;
  return b === null || b === undefined ? -1 : compare(a, b);
}
