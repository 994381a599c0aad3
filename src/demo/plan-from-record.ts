import {
  type Archive,
  type CoatStep,
  type Firing,
  findById,
  type Tile,
  type TileStep,
} from "../records/archive.ts";
import type { Result } from "../records/tile.ts";
import { type Cone, conesHotter } from "../terms/cones.ts";
import { findClayLook, findGlazeLook, findNeighbours, isClayOverfired } from "./glaze-look.ts";
import { coneReached, type Heat, readHeat } from "./kiln-heat.ts";
import { findMotifName } from "./motifs.ts";
import type { Step, TilePlan } from "./tile-plan.ts";

/**
 * Makes a tile's plan from its record.
 *
 * @param firings how many of the tile's glaze firings the picture comes after; all if left out
 */
export function planTile(
  archive: Archive,
  tile: Tile,
  firings = Number.POSITIVE_INFINITY,
): TilePlan {
  const steps = stepsUpTo(tile.steps, firings);
  const heat = readHeat(archive, steps);
  const results = resultsOf(tile);
  const result = results[Math.min(firings, results.length) - 1];
  const words = `${tile.record.texture ?? ""} ${tile.notes}`;
  return {
    code: tile.id,
    set: tile.set ?? tile.id.replace(/\d+$/, ""),
    maker: tile.maker ?? tile.id,
    clay: findClayLook(archive, tile.clay, heat),
    texture: tile.record.texture ?? "smooth",
    shape: tile.record.shape ?? "flat",
    angle: tile.record.angle ?? 90,
    bleeds: isClayOverfired(archive, tile.clay, heat),
    steps: steps.flatMap((step, i) => planStep(archive, steps, step, i, heat)),
    surfaces: listOf(result?.surface),
    effects: listOf(result?.effects),
    faults: [...listOf(result?.faults), ...laterFaults(tile, firings)],
    run: result?.run,
    fate: tile.record.fate,
    scratched: undefined,
    card: tile.record.photo?.grey || undefined,
    motif: findMotifName(detailsOf(tile).join(" ")) ?? findMotifName(tile.notes),
    figure: /\b(reed|net|fossil|foot)/i.exec(words)?.[1]?.toLowerCase(),
  };
}

/** The plan of a tile's back: bare clay with the code scratched in. */
export function planBack(plan: TilePlan): TilePlan {
  return {
    ...plan,
    texture: "smooth",
    steps: plan.steps.filter((step) => step.does === "fire"),
    effects: [],
    faults: [],
    fate: undefined,
    scratched: plan.code,
  };
}

function listOf<T>(value: T | readonly T[] | undefined): readonly T[] {
  if (value === undefined) return [];
  return Array.isArray(value) ? (value as readonly T[]) : [value as T];
}

function resultsOf(tile: Tile): readonly Result[] {
  return listOf(tile.record.result);
}

function laterFaults(tile: Tile, firings: number): readonly string[] {
  if (firings !== Number.POSITIVE_INFINITY) return [];
  return (tile.record.later ?? []).flatMap((look) => listOf(look.faults));
}

function detailsOf(tile: Tile): string[] {
  return tile.steps.flatMap((step) => ("detail" in step && step.detail ? [step.detail] : []));
}

/** The steps down to the last wanted glaze firing. */
function stepsUpTo(steps: readonly TileStep[], firings: number): readonly TileStep[] {
  let seen = 0;
  const end = steps.findIndex((step) => {
    if (step.step === "fired" && step.kind !== "bisque") seen++;
    return seen === firings;
  });
  return end < 0 ? steps : steps.slice(0, end + 1);
}

function planStep(
  archive: Archive,
  steps: readonly TileStep[],
  step: TileStep,
  index: number,
  heat: Heat,
): Step[] {
  switch (step.step) {
    case "coat":
      return step.touchUp ? [] : [planCoat(archive, steps, step, index, heat)];
    case "resist":
      return [
        {
          does: "resist",
          material: step.resist,
          where: step.where,
          cross: /cross/i.test(step.detail ?? ""),
        },
      ];
    case "remove":
      return [{ does: "remove", way: step.remove, where: step.where }];
    case "fired":
      return [planFiring(step.kind, findById(archive.firings, step.firing), step.shelf)];
  }
}

function planFiring(kind: string, firing: Firing | undefined, shelf: string | null): Step {
  const cone = firing ? coneReached(firing.record, shelf) : undefined;
  return {
    does: "fire",
    kind,
    heat: cone ? conesHotter(cone, "1" as Cone) : undefined,
    atmosphere: firing?.record.atmosphere ?? "oxidation",
  };
}

const THICKNESS = { thin: 0.6, usual: 1, thick: 1.55 } as const;

function planCoat(
  archive: Archive,
  steps: readonly TileStep[],
  step: CoatStep,
  index: number,
  heat: Heat,
): Step {
  const [first, second] = step.glazes;
  const look = (id: string) => findGlazeLook(archive, id, findNeighbours(steps, index), heat);
  const dipped =
    step.seconds === null ? 1 : Math.min(1.5, Math.max(0.7, (step.seconds / 3) ** 0.35));
  const slop = step.gravity === null ? 1 : Math.min(1.35, Math.max(0.7, (step.gravity - 1) / 0.45));
  return {
    does: "coat",
    glaze: look(first),
    fade: second ? { to: look(second), along: step.along ?? "top to bottom" } : undefined,
    coats: step.coats ?? 1,
    cover: step.cover ?? undefined,
    by: step.by ?? "brush",
    where: step.where,
    thickness:
      THICKNESS[step.thickness] * dipped * slop * (/thin/i.test(step.detail ?? "") ? 0.6 : 1),
  };
}
