import { type Archive, type CoatStep, findById, type Tile } from "../../records/archive.ts";
import { coatsThatCount } from "../../records/coat-stack.ts";
import type { Area } from "../../terms/choices.ts";
import { idKey } from "../../terms/ids.ts";
import { commonPractice, type TileRule } from "../check.ts";
import { glazePath } from "../places.ts";
import { isRefuted } from "../verdicts.ts";

/** So many coats of glazes that run are many: common practice, no published source. */
const manyCoats = 3;

export const runsOff: TileRule = {
  of: "tile",
  name: "runs-off",
  severity: "warning",
  source: commonPractice,
  explains:
    "Three or more coats of glazes that run, all of them counted together, are on something that stands upright, and may run down onto the shelf.",
  find: (archive, tile) => {
    if (!standsUpright(tile) || isRefuted(archive, tile, ["running"])) return [];
    const movers = coatsThatCount(tile.steps).filter((coat) => moversIn(archive, coat).length > 0);
    const deepest = deepestOf(movers);
    const [first] = deepest.layers;
    const [glaze] = first ? moversIn(archive, first) : [];
    if (!first || glaze === undefined || deepest.coats < manyCoats) return [];
    const names = namesOf(archive, deepest.layers);
    return [
      {
        path: glazePath(first, glaze),
        message: `${andList(names)} ${names.length > 1 ? "run" : "runs"}, and ${deepest.coats} coats of ${names.length > 1 ? "them" : "it"} are on a piece that stands upright${seenOn(tile)}`,
        hint: `Keep the foot bare, put fewer coats near it, and stand the piece on something that catches drips; a run of glaze breaks off sharp.${names.length > 1 ? " Do not put one glaze that runs over another there, whichever is on top." : ""}`,
      },
    ];
  },
};

/** A pot, an upright or an L-shaped tile, or whatever leaned 45 degrees or more from lying flat. */
function standsUpright({ record: { shape, angle } }: Tile): boolean {
  return shape === "pot" || shape === "upright" || shape === "l-shape" || (angle ?? 0) >= 45;
}

/** What came of it, where the record says so. */
function seenOn({ record: { result = [], fate } }: Tile): string {
  const run = Math.max(0, ...result.map((seen) => seen.run ?? 0));
  const ran = result.some(({ faults }) => faults?.includes("running"));
  const told = [
    ...(ran && run > 0 ? [`ran ${run} mm`] : []),
    ...(fate === "stuck" ? ["stuck to the shelf"] : []),
  ];
  return told.length > 0 ? `; this one ${told.join(" and ")}` : "";
}

/** The glazes of a layer that run. */
function moversIn({ glazes }: Archive, coat: CoatStep): readonly string[] {
  return coat.glazes.filter((id) => findById(glazes, id)?.record.moves === "runs");
}

function namesOf(archive: Archive, layers: readonly CoatStep[]): readonly string[] {
  const ids = new Map(
    layers.flatMap((coat) => moversIn(archive, coat)).map((id) => [idKey(id), id] as const),
  );
  return [...ids.values()].map((id) => findById(archive.glazes, id)?.record.name ?? id);
}

function andList(names: readonly string[]): string {
  return names.length > 1 ? `${names.slice(0, -1).join(", ")} and ${names.at(-1)}` : `${names[0]}`;
}

interface Depth {
  readonly coats: number;
  readonly layers: readonly CoatStep[];
}

/** The most coats that lie anywhere, those of layers over the whole tile included. */
function deepestOf(layers: readonly CoatStep[]): Depth {
  const areas = [...new Set(layers.flatMap((layer) => layer.where))];
  return areas
    .map((area) => depthAt(area, layers))
    .reduce((most, next) => (next.coats > most.coats ? next : most), { coats: 0, layers: [] });
}

function depthAt(area: Area, layers: readonly CoatStep[]): Depth {
  const there = layers.filter(({ where }) => where.includes(area) || where.includes("all"));
  return { layers: there, coats: there.reduce((sum, { coats }) => sum + (coats ?? 0), 0) };
}
