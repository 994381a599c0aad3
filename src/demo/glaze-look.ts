import { type Archive, findById, type TileStep } from "../records/archive.ts";
import type { GlazeRecord } from "../records/glaze.ts";
import { type Cone, conesHotter } from "../terms/cones.ts";
import { idKey } from "../terms/ids.ts";
import { CLAY_APPEARANCE, GLAZE_APPEARANCE, PAIR_APPEARANCE } from "./appearance.ts";
import type { Appearance } from "./appearance-kinds.ts";
import type { Heat } from "./kiln-heat.ts";
import type { ClayLook, GlazeLook } from "./tile-plan.ts";

/** Whether a clay was fired hotter than its record allows. */
export function isClayOverfired(archive: Archive, id: string | null, heat: Heat): boolean {
  const limit = findById(archive.clays, id)?.record.cones?.to;
  return limit !== undefined && heat.cone !== undefined && conesHotter(heat.cone, limit) > 0;
}

/** How a tile's clay looks after its firings; a clay of unknown look is taken for the plainest. */
export function findClayLook(archive: Archive, id: string | null, heat: Heat): ClayLook {
  const known = CLAY_APPEARANCE[id ?? ""] ?? CLAY_APPEARANCE["buff-stoneware"];
  if (!known) throw new Error("No clay has an appearance.");
  const { reduction, raku, overfired, ...plain } = known;
  if (heat.raku) return { ...plain, ...raku };
  if (heat.reduction) return { ...plain, ...reduction };
  return isClayOverfired(archive, id, heat) ? { ...plain, ...overfired } : plain;
}

/** The other glazes on a tile, seen from one coat. */
export interface Neighbours {
  readonly below: readonly string[];
  readonly above: readonly string[];
}

/** The glazes below and above the step at `index`. */
export function findNeighbours(steps: readonly TileStep[], index: number): Neighbours {
  const ids = (some: readonly TileStep[]) =>
    some.flatMap((step) => (step.step === "coat" ? step.glazes.map(idKey) : []));
  return { below: ids(steps.slice(0, index)), above: ids(steps.slice(index + 1)) };
}

/**
 * How a glaze looks where a tile has it.
 *
 * @throws where the glaze has no record or no appearance
 */
export function findGlazeLook(
  archive: Archive,
  id: string,
  near: Neighbours,
  heat: Heat,
): GlazeLook {
  const record = findById(archive.glazes, id)?.record;
  const known = GLAZE_APPEARANCE[idKey(id)];
  if (!record || !known) {
    throw new Error(`The glaze “${id}” has no appearance in src/demo/appearance.ts.`);
  }
  const { slowlyCooled, reduction, ...plain } = known;
  return {
    hiding: { clear: 0, milky: 0.5, opaque: 0.9 }[record.cover ?? "opaque"],
    flow: { none: 0.05, little: 0.35, runs: 0.75 }[record.moves ?? "little"],
    ...plain,
    ...(heat.slowlyCooled ? slowlyCooled : undefined),
    ...(heat.reduction ? reduction : undefined),
    ...pairChanges(idKey(id), near),
    ...recordedNature(id, record),
  };
}

function pairChanges(id: string, near: Neighbours): Partial<Appearance> {
  const met = PAIR_APPEARANCE.filter((pair) =>
    pair.changes === "over"
      ? pair.over === id && near.below.includes(pair.under)
      : pair.under === id && near.above.includes(pair.over),
  );
  return Object.assign({}, ...met.map((pair) => pair.becomes));
}

function recordedNature(
  id: string,
  record: GlazeRecord,
): Pick<GlazeLook, "id" | "kind" | "range" | "surface" | "weight"> {
  const place = (cone: Cone) => conesHotter(cone, "1" as Cone);
  return {
    id,
    kind: record.kind,
    range: record.cones && [place(record.cones.from), place(record.cones.to)],
    surface: record.surface ?? "satin",
    weight: 0.75 + 0.25 * (record.weightPerCoat ?? 1),
  };
}
