import { type CoatStep, findById, type Tile } from "../../records/archive.ts";
import { coatsThatCount } from "../../records/coat-stack.ts";
import type { Area } from "../../terms/choices.ts";
import { idKey } from "../../terms/ids.ts";
import { commonPractice, type Finding, type TileRule } from "../check.ts";
import { glazePath } from "../places.ts";

/** So many coats of a glaze that runs are many: common practice, no published source. */
const manyCoats = 3;

export const runsOff: TileRule = {
  of: "tile",
  name: "runs-off",
  severity: "warning",
  source: commonPractice,
  explains:
    "Three or more coats of a glaze that runs are on something that stands upright, and may run down onto the shelf.",
  find: (archive, tile) => {
    if (!standsUpright(tile)) return [];
    return [...layersByGlaze(tile)].flatMap(([key, layers]): Finding[] => {
      const glaze = findById(archive.glazes, key)?.record;
      const [first] = layers;
      const coats = deepest(layers);
      if (!first || glaze?.moves !== "runs" || coats < manyCoats) return [];
      return [
        {
          path: glazePath(first, key),
          message: `${glaze.name} runs, and ${coats} coats of it are on a piece that stands upright`,
          hint: "Keep the foot bare, put fewer coats near it, and stand the piece on something that catches drips; a run of glaze breaks off sharp.",
        },
      ];
    });
  },
};

/** A pot, an upright or an L-shaped tile, or whatever leaned 45 degrees or more from lying flat. */
function standsUpright({ record: { shape, angle } }: Tile): boolean {
  return shape === "pot" || shape === "upright" || shape === "l-shape" || (angle ?? 0) >= 45;
}

function layersByGlaze(tile: Tile): ReadonlyMap<string, readonly CoatStep[]> {
  const layers = new Map<string, CoatStep[]>();
  for (const coat of coatsThatCount(tile.steps)) {
    for (const key of new Set(coat.glazes.map(idKey)))
      layers.set(key, [...(layers.get(key) ?? []), coat]);
  }
  return layers;
}

/** The most coats that lie anywhere, those of layers over the whole tile included. */
function deepest(layers: readonly CoatStep[]): number {
  const areas = new Set(layers.flatMap((layer) => layer.where));
  return Math.max(...[...areas].map((area) => coatsAt(area, layers)));
}

function coatsAt(area: Area, layers: readonly CoatStep[]): number {
  return layers
    .filter(({ where }) => where.includes(area) || where.includes("all"))
    .reduce((sum, { coats }) => sum + (coats ?? 0), 0);
}
