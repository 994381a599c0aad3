/** Where a cone has no tile of a clay, or of clays that look alike, and which cone nearest to it has. */
import { type Shade, shades } from "../terms/choices.ts";
import { type Cone, conesHotter, conesOutside } from "../terms/cones.ts";
import { idKey } from "../terms/ids.ts";
import { rememberFor } from "../terms/remember.ts";
import type { CatalogueClay } from "./clays.ts";
import type { CatalogueCone } from "./cones.ts";
import type { CatalogueTile } from "./tiles.ts";
import type { Catalogue } from "./types.ts";

/** A cone, and how many of the tiles that are asked for it has. */
export interface NearestCone {
  readonly cone: Cone;
  readonly url: string;
  readonly tiles: number;
}

export interface ShadeGap {
  readonly shade: Shade;
  readonly nearest: NearestCone;
}

/** A cone within a clay's range that has no tile of it. */
export interface ConeGap {
  readonly cone: Cone;
  readonly nearest: NearestCone;
}

/** The shades of the studio's clays that no tile of a cone has, though one of another cone does. */
export function shadesMissingAt(
  { cone }: CatalogueCone,
  catalogue: Catalogue,
): readonly ShadeGap[] {
  return countsOfShades(catalogue).flatMap(({ shade, counts }) => {
    const nearest = counts.has(cone) ? undefined : nearestOf(cone, counts, catalogue);
    return nearest ? [{ shade, nearest }] : [];
  });
}

const countsOfShades = rememberFor((catalogue: Catalogue) =>
  shades.map((shade) => {
    const clays = catalogue.clays.filter((clay) => clay.shade?.shade === shade);
    return { shade, counts: countAtCones(clays, catalogue) };
  }),
);

/** The cones that tiles are fired to here and a clay is for, and that have no tile of it. */
export function conesMissingFor(clay: CatalogueClay, catalogue: Catalogue): readonly ConeGap[] {
  const { cones: range } = clay;
  if (!range) return [];
  const counts = countAtCones([clay], catalogue);
  return catalogue.cones.flatMap(({ cone }) => {
    if (counts.has(cone) || conesOutside(cone, range) !== 0) return [];
    const nearest = nearestOf(cone, counts, catalogue);
    return nearest ? [{ cone, nearest }] : [];
  });
}

function countAtCones(
  clays: readonly CatalogueClay[],
  { tileById }: Pick<Catalogue, "tileById">,
): ReadonlyMap<Cone, number> {
  const counts = new Map<Cone, number>();
  for (const { tiles } of clays)
    for (const code of tiles) {
      const cone = coneOf(tileById, code);
      if (cone) counts.set(cone, (counts.get(cone) ?? 0) + 1);
    }
  return counts;
}

function coneOf(tileById: Catalogue["tileById"], code: string): CatalogueTile["cone"] {
  return tileById.get(idKey(code))?.cone ?? null;
}

/** The fewest cones of the chart away; of two as near the one with more tiles. */
function nearestOf(
  cone: Cone,
  counts: ReadonlyMap<Cone, number>,
  { cones }: Pick<Catalogue, "cones">,
): NearestCone | undefined {
  return cones
    .flatMap(({ cone: other, url }) => {
      const tiles = counts.get(other);
      return tiles === undefined ? [] : [{ cone: other, url, tiles }];
    })
    .sort((a, b) => apart(a.cone, cone) - apart(b.cone, cone) || b.tiles - a.tiles)[0];
}

function apart(a: Cone, b: Cone): number {
  return Math.abs(conesHotter(a, b));
}
