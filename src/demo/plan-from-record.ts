import {
  type Archive,
  type CoatStep,
  type Firing,
  findById,
  type Tile,
  type TileStep,
} from "../records/archive.ts";
import type { FiringRecord, Witness } from "../records/firing.ts";
import type { Result } from "../records/tile.ts";
import { type Cone, conesHotter, findHottest } from "../terms/cones.ts";
import { idKey } from "../terms/ids.ts";
import { CLAY_APPEARANCE, GLAZE_APPEARANCE, PAIR_APPEARANCE } from "./appearance.ts";
import { findMotifName } from "./motifs.ts";
import type { ClayLook, GlazeLook, Step, TilePlan } from "./tile-plan.ts";

/** What the kiln did to a tile, over all of its glaze firings. */
interface Heat {
  readonly cone: Cone | undefined;
  readonly slowlyCooled: boolean;
  readonly reduction: boolean;
  readonly raku: boolean;
}

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
    clay: clayLook(tile.clay, heat),
    texture: tile.record.texture ?? "smooth",
    shape: tile.record.shape ?? "flat",
    angle: tile.record.angle ?? 90,
    steps: steps.flatMap((step, i) => planStep(archive, steps, step, i, heat)),
    surfaces: listOf(result?.surface),
    effects: listOf(result?.effects),
    faults: [...listOf(result?.faults), ...laterFaults(tile, firings)],
    run: result?.run,
    fate: tile.record.fate,
    motif: findMotifName(detailsOf(tile).join(" ")),
    figure: /\b(reed|net|fossil|foot)/i.exec(words)?.[1]?.toLowerCase(),
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

function readHeat(archive: Archive, steps: readonly TileStep[]): Heat {
  const fired = steps.filter((step) => step.step === "fired" && step.kind !== "bisque");
  const cones: Cone[] = [];
  let slowlyCooled = false;
  let reduction = false;
  let raku = false;
  for (const step of fired) {
    if (step.step !== "fired") continue;
    const firing = findById(archive.firings, step.firing)?.record;
    if (step.kind === "raku") raku = true;
    if (!firing) continue;
    const cone = coneReached(firing, step.shelf);
    if (cone) cones.push(cone);
    if (coolsSlowly(firing)) slowlyCooled = true;
    if (firing.atmosphere === "reduction") reduction = true;
  }
  return { cone: findHottest(cones), slowlyCooled, reduction, raku };
}

/** The cone that a shelf's witness shows, or the cone that was aimed at. */
function coneReached(firing: FiringRecord, shelf: string | null): Cone | undefined {
  const witnesses = firing.witness;
  const witness = shelf === null ? undefined : witnesses?.[shelf];
  const any = witness ?? witnesses?.middle ?? Object.values(witnesses ?? {})[0];
  return any ? (witnessCone(any) ?? firing.cone) : firing.cone;
}

function witnessCone(witness: Witness): Cone | undefined {
  if (witness.read === "cone") return witness.cone;
  const reached = [...witness.bends].filter(([, bend]) => bend === "bent" || bend === "down");
  return findHottest(reached.map(([cone]) => cone));
}

/** Whether the kiln was walked down from its top heat, at less than 100 °C an hour. */
function coolsSlowly(firing: FiringRecord): boolean {
  const limit = firing.unit === "F" ? 180 : 100;
  return (firing.schedule ?? []).some(
    (part) => part.rate !== undefined && part.rate < 0 && part.rate > -limit,
  );
}

function clayLook(id: string | null, heat: Heat): ClayLook {
  const known = CLAY_APPEARANCE[id ?? ""] ?? CLAY_APPEARANCE["buff-stoneware"];
  if (!known) throw new Error("No clay has an appearance.");
  const { reduction, raku, overfired, ...plain } = known;
  const change = heat.raku
    ? raku
    : heat.reduction
      ? reduction
      : tooHot(id, heat)
        ? overfired
        : undefined;
  return { ...plain, ...change };
}

/** Whether a clay was fired two cones or more above what it is for. */
function tooHot(id: string | null, heat: Heat): boolean {
  if (!heat.cone || id === null) return false;
  const limit = { "red-earthenware": "01", reclaim: "01" }[id] ?? "7";
  return conesHotter(heat.cone, limit as Cone) > 0;
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
  const look = (id: string) => glazeLook(archive, id, neighbours(steps, index), heat);
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

interface Neighbours {
  readonly below: readonly string[];
  readonly above: readonly string[];
}

function neighbours(steps: readonly TileStep[], index: number): Neighbours {
  const ids = (some: readonly TileStep[]) =>
    some.flatMap((step) => (step.step === "coat" ? step.glazes.map(idKey) : []));
  return { below: ids(steps.slice(0, index)), above: ids(steps.slice(index + 1)) };
}

function glazeLook(archive: Archive, id: string, near: Neighbours, heat: Heat): GlazeLook {
  const record = findById(archive.glazes, id)?.record;
  const known = GLAZE_APPEARANCE[idKey(id)];
  if (!record || !known)
    throw new Error(`The glaze “${id}” has no appearance in src/demo/appearance.ts.`);
  const { slowlyCooled, reduction, ...plain } = known;
  const changed = {
    ...plain,
    ...(heat.slowlyCooled ? slowlyCooled : undefined),
    ...(heat.reduction ? reduction : undefined),
  };
  for (const pair of PAIR_APPEARANCE) {
    const meets =
      pair.changes === "over"
        ? pair.over === id && near.below.includes(pair.under)
        : pair.under === id && near.above.includes(pair.over);
    if (meets) Object.assign(changed, pair.becomes);
  }
  const range = record.cones;
  return {
    hiding: { clear: 0, milky: 0.5, opaque: 0.9 }[record.cover ?? "opaque"],
    flow: { none: 0.05, little: 0.35, runs: 0.75 }[record.moves ?? "little"],
    ...changed,
    id,
    kind: record.kind,
    range: range
      ? [conesHotter(range.from, "1" as Cone), conesHotter(range.to, "1" as Cone)]
      : undefined,
    surface: record.surface ?? "satin",
    weight: 0.75 + 0.25 * (record.weightPerCoat ?? 1),
  };
}
