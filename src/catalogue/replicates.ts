/**
 * Tiles made and fired alike, so that any difference between them is the studio's own scatter: the
 * same coats of the same glazes put on in the same way, places and order, on the same clay of the
 * same texture and shape, fired to the same cones in the same atmosphere. A glaze firing must also
 * have been one load, or the same programme in the same kiln: how a kiln cools changes colours at
 * one cone. Maker, set, shelf, jar and dates may differ.
 */
import type { TileStep } from "../records/archive.ts";
import { idKey } from "../terms/ids.ts";
import { groupBy } from "./group-by.ts";
import type { CatalogueFiring, CatalogueTile, TileFiring } from "./types.ts";

/** Groups of two or more tiles with a result that were made and fired alike, in the order given. */
export function findReplicates(
  tiles: readonly CatalogueTile[],
  firings: readonly CatalogueFiring[],
): readonly (readonly CatalogueTile[])[] {
  const programmes = new Map(firings.map((firing) => [firing.id, programmeOf(firing)]));
  const known = tiles.flatMap((tile) => {
    const key = tile.results.length > 0 ? findKey(tile, programmes) : undefined;
    return key === undefined ? [] : [{ tile, key }];
  });
  return groupBy(known, ({ key }) => key)
    .filter((group) => group.length > 1)
    .map((group) => group.map(({ tile }) => tile));
}

/** Without a programme a load is like itself alone. */
function programmeOf({ id, record }: CatalogueFiring): string {
  const { kiln, unit, schedule } = record;
  return JSON.stringify(schedule ? [kiln, unit, schedule] : [id]);
}

/** What tiles that are alike share; undefined where too little is known of one to say so. */
function findKey(
  { steps, firings, clay, texture, shape, angle }: CatalogueTile,
  programmes: ReadonlyMap<string, string>,
): string | undefined {
  if (clay === null || steps.some(isUncounted)) return undefined;
  const made = steps.filter((step) => step.step !== "fired").map(describeStep);
  const order = steps.map(({ step }) => step);
  const fired = firings.map((firing) => describeFiring(firing, programmes));
  if (fired.includes(undefined)) return undefined;
  return JSON.stringify([idKey(clay.id), texture, shape, angle, order, made, fired]);
}

/** Coats that nobody counted may have been any number. */
function isUncounted(step: TileStep): boolean {
  return step.step === "coat" && !step.touchUp && step.coats === null && step.cover === null;
}

function describeStep({ at: _, ...step }: Exclude<TileStep, { step: "fired" }>) {
  const where = [...step.where].sort();
  if (step.step !== "coat") return { ...step, where };
  return { ...step, where, glazes: step.glazes.map(idKey), over: step.over.map(idKey).sort() };
}

/** A bisque by its cone, as far as it is known; of any other firing the programme must be known. */
function describeFiring(
  { kind, cone, atmosphere, firing }: TileFiring,
  programmes: ReadonlyMap<string, string>,
): readonly unknown[] | undefined {
  if (kind === "bisque") return [kind, cone, atmosphere];
  const programme = firing && programmes.get(firing.id);
  return programme ? [kind, cone, atmosphere, programme] : undefined;
}
