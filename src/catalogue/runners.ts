/**
 * What runs: glazes alone and glazes on each other that ran on some tile, with every tile that tells
 * of it. How far a glaze ran on one shape of test says nothing of another, so each circumstance is an
 * entry of its own, and nothing is averaged.
 */
import type { TileStep } from "../records/archive.ts";
import { coatsThatCount } from "../records/coat-stack.ts";
import type { Movement, Shape } from "../terms/choices.ts";
import { compareIds, idKey } from "../terms/ids.ts";
import { rememberFor } from "../terms/remember.ts";
import { hasRun } from "../terms/run.ts";
import { byHeat, type Circumstance, circumstanceKey, circumstanceOf } from "./circumstance.ts";
import { groupBy } from "./group-by.ts";
import type { Link } from "./link.ts";
import { type StackedCoat, stackTopFirst } from "./stack.ts";
import type { CatalogueTile, TilePair } from "./tiles.ts";
import type { Catalogue } from "./types.ts";

/** Glazes on each other as some tiles have them, in one circumstance, where one of them ran. */
export interface Runner {
  /** From the top down: one layer is a glaze alone, two lying over each other are a pair. */
  readonly layers: readonly RunnerLayer[];
  /** The page of the glaze or of the pair; null of more layers, or of two side by side. */
  readonly page: string | null;
  /** What the record of a glaze alone says of how it moves; null where it says nothing. */
  readonly moves: Movement | null;
  readonly circumstance: Circumstance;
  /** In millimetres; null where nobody measured. */
  readonly farthest: number | null;
  /** Those that ran, the farthest first, and last those that nobody measured. */
  readonly ran: readonly CatalogueTile[];
  /** Those that moved less than a run. */
  readonly held: readonly CatalogueTile[];
  /** So many of which nobody wrote down whether they ran. */
  readonly unmeasured: number;
  readonly coats: CoatLimit;
  /** The same glazes in other circumstances: so many measured tiles, and how many of them ran. */
  readonly elsewhere: { readonly tiles: number; readonly ran: number };
}

export interface RunnerLayer {
  readonly glazes: readonly Link[];
  /** How it lies under the layer before it; null for the top one. */
  readonly under: StackedCoat["under"];
}

/** How many coats ran, all layers counted together. */
export interface CoatLimit {
  /** The fewest coats that ran; null where nobody counted them, or they are not the same all over. */
  readonly ranWith: number | null;
  /** The most coats fewer than that which did not run; null where no tile has any. */
  readonly heldWith: number | null;
}

/** Shapes of test: those first that stand as a pot's wall does. */
export const testShapes: readonly Shape[] = [
  ...(["pot", "upright", "l-shape", "ring", "flat", "channel"] as const),
];

/** From so many degrees from lying flat a tile stands as a wall. Common practice, no source. */
const steep = 60;

/** Whether a test stands as a pot's wall does, so that its run is one that a wall may have. */
export function standsAsAWall({ shape, angle }: Pick<Circumstance, "angle" | "shape">): boolean {
  if (shape === "channel") return false;
  return angle === null ? shape !== "flat" : angle >= steep;
}

/** Whether a tile ran: it was measured, or somebody called it running. */
export function isRunner({ run, faults }: Pick<CatalogueTile, "faults" | "run">): boolean {
  return faults.includes("running") || (run !== null && hasRun(run));
}

/** Everything that ran, by shape of test and from cool to hot, and of each cone the farthest first. */
export const listRunners = rememberFor(
  ({ tiles, glazeById }: Pick<Catalogue, "glazeById" | "tiles">): readonly Runner[] => {
    const recorded = tiles.filter(({ results, steps }) => {
      return results.length > 0 && coatsThatCount(steps).length > 0;
    });
    return groupBy(recorded, layersKey)
      .filter((alike) => alike.some(isRunner))
      .flatMap((alike) => runnersAmong(alike, glazeById))
      .sort(inOrder);
  },
);

/** The same for all tiles that have the same glazes on each other in the same order. */
export function layersKey(tile: { readonly steps: readonly TileStep[] }): string {
  return JSON.stringify(layersOf(tile).map(({ glazes, under }) => [glazes.map(idKey), under]));
}

/** Coats of one glaze on each other are one layer. */
function layersOf({ steps }: { readonly steps: readonly TileStep[] }): readonly StackedCoat[] {
  const layers: StackedCoat[] = [];
  for (const coat of stackTopFirst(steps)) {
    const above = layers.at(-1);
    if (above?.glazes.map(idKey).join() !== coat.glazes.map(idKey).join()) layers.push(coat);
  }
  return layers;
}

function runnersAmong(
  alike: readonly [CatalogueTile, ...CatalogueTile[]],
  glazeById: Catalogue["glazeById"],
): readonly Runner[] {
  const subject = subjectOf(alike[0], glazeById);
  const all = knownAmong(alike);
  return groupBy(alike, circumstanceKey).flatMap((group) => {
    const ran = group.filter(isRunner).toSorted(byRun);
    if (ran.length === 0) return [];
    const held = group.filter((tile) => !isRunner(tile) && tile.run !== null);
    return [
      {
        ...subject,
        circumstance: circumstanceOf(group[0]),
        farthest: ran[0]?.run ?? null,
        ran,
        held,
        unmeasured: group.length - ran.length - held.length,
        coats: coatLimit(ran, held),
        elsewhere: { tiles: all.tiles - ran.length - held.length, ran: all.ran - ran.length },
      },
    ];
  });
}

/** Of how many it is known whether they ran, and of how many that they did. */
function knownAmong(tiles: readonly CatalogueTile[]): Runner["elsewhere"] {
  const ran = tiles.filter(isRunner).length;
  return { tiles: ran + tiles.filter((tile) => !isRunner(tile) && tile.run !== null).length, ran };
}

function byRun(a: CatalogueTile, b: CatalogueTile): number {
  return (b.run ?? -1) - (a.run ?? -1) || compareIds(a.id, b.id);
}

function subjectOf(
  tile: CatalogueTile,
  glazeById: Catalogue["glazeById"],
): Pick<Runner, "layers" | "moves" | "page"> {
  const layers = layersOf(tile).map(({ glazes, under }) => ({
    glazes: glazes.map((id) => tile.glazes[id] ?? { id, name: id, url: "" }),
    under,
  }));
  const [first, second] = layers;
  const [glaze, ...fadesTo] = first?.glazes ?? [];
  const isAlone = !second && glaze && fadesTo.length === 0;
  return {
    layers,
    page: isAlone ? glaze.url : (onlyPairOf(tile)?.pair ?? null),
    moves: isAlone ? (glazeById.get(idKey(glaze.id))?.moves ?? null) : null,
  };
}

/** The pair of a tile that has two glazes, one over the other, and no more: what ran there is theirs. */
export function onlyPairOf(tile: Pick<CatalogueTile, "pairs" | "steps">): TilePair | null {
  const [, second, ...more] = layersOf(tile);
  const isPair = second?.under === "over" && more.length === 0 && tile.pairs.length === 1;
  return (isPair && tile.pairs[0]) || null;
}

function coatLimit(ran: readonly CatalogueTile[], held: readonly CatalogueTile[]): CoatLimit {
  const ranWith = leastOf(ran.flatMap((tile) => coatsTogether(tile) ?? []));
  const fewer = held.flatMap((tile) => coatsTogether(tile) ?? []);
  const below = fewer.filter((coats) => ranWith !== null && coats < ranWith);
  return { ranWith, heldWith: below.length > 0 ? Math.max(...below) : null };
}

function leastOf(numbers: readonly number[]): number | null {
  return numbers.length > 0 ? Math.min(...numbers) : null;
}

/** All coats of a tile, one on another; null where one was not counted or does not lie all over. */
function coatsTogether({ steps }: CatalogueTile): number | null {
  return coatsThatCount(steps).reduce<number | null>(
    (sum, { coats, where }) =>
      sum === null || coats === null || !where.includes("all") ? null : sum + coats,
    0,
  );
}

function inOrder(a: Runner, b: Runner): number {
  return (
    testShapes.indexOf(a.circumstance.shape) - testShapes.indexOf(b.circumstance.shape) ||
    byHeat(a.circumstance.cone, b.circumstance.cone) ||
    (b.farthest ?? -1) - (a.farthest ?? -1) ||
    compareIds(a.ran[0]?.id ?? "", b.ran[0]?.id ?? "")
  );
}
