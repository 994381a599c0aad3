/** What was fired at each cone. */

import { type Surface, surfaces } from "../terms/choices.ts";
import { type Cone, compareCones } from "../terms/cones.ts";
import { indexBy } from "../terms/index-by.ts";
import { coneSurfaceUrl, coneUrl } from "./addresses.ts";
import type { CatalogueTile } from "./tiles.ts";

/** All that was fired at one cone, or is to be. */
export interface CatalogueCone {
  readonly cone: Cone;
  readonly url: string;
  readonly tiles: readonly string[];
  /** How many of them are still to be fired. */
  readonly waiting: number;
  readonly surfaces: readonly {
    readonly surface: Surface;
    readonly url: string;
    readonly tiles: readonly string[];
  }[];
}

export function listCones(tiles: readonly CatalogueTile[]): readonly CatalogueCone[] {
  const byCone = indexBy(tiles, ({ cone }) => (cone === null ? [] : [cone])) as ReadonlyMap<
    Cone,
    readonly CatalogueTile[]
  >;
  return [...byCone]
    .sort(([a], [b]) => compareCones(a, b))
    .map(([cone, fired]) => ({
      cone,
      url: coneUrl(cone),
      tiles: fired.map((tile) => tile.id),
      waiting: fired.filter((tile) => tile.stage === "waiting").length,
      surfaces: surfaces
        .map((surface) => ({
          surface,
          url: coneSurfaceUrl(cone, surface),
          tiles: fired.filter((tile) => tile.surface.includes(surface)).map((tile) => tile.id),
        }))
        .filter((entry) => entry.tiles.length > 0),
    }));
}
