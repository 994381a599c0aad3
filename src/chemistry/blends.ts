/** Line blends and triaxial blends: series of glazes mixed from the same two or three. */
import { compareIds, idKey } from "../terms/ids.ts";
import type { Making, MixedGlaze } from "./mixed-glazes.ts";

/** A glaze on a line or in a triangle. */
export interface BlendMember {
  /** Its id. */
  readonly glaze: string;
  /** Its share of each end or corner, in their order, adding to 1. */
  readonly shares: readonly number[];
}

/** A series of blends of two glazes (a line) or three (a triangle). */
export interface BlendSeries {
  readonly kind: "line" | "triaxial";
  /** Whether parts were weighed or measured by volume. */
  readonly by: "volume" | "weight";
  /** Ids of the two ends or the three corners, in the order of ids. */
  readonly between: readonly string[];
  /** The ends or corners and all blends of them, most of the first end or corner first. */
  readonly members: readonly BlendMember[];
}

/**
 * Finds the series of blends among glazes. A blend of blends counts by what it comes to. A line
 * has at least two blends between its ends; a triangle at least three blends, one of them of all
 * three corners. The lines along the edges of a triangle are part of it.
 */
export function findBlendSeries(glazes: readonly MixedGlaze[]): readonly BlendSeries[] {
  const spelt = spellOutBlends(glazes);
  const triangles = endsOf(spelt, 3)
    .map((corners) => seriesBetween(corners, spelt))
    .filter((series) => countBlends(series) >= 3);
  const lines = endsOf(spelt, 2)
    .map((ends) => seriesBetween(ends, spelt))
    .filter((series) => countBlends(series) >= 2);
  const isEdge = (line: BlendSeries) =>
    triangles.some(
      ({ by, between }) => by === line.by && line.between.every((end) => between.includes(end)),
    );
  return [...triangles, ...lines.filter((line) => !isEdge(line))];
}

type Blend = Extract<Making, { kind: "blend" }>;

/** A blend spelt out as shares of glazes that are not blended themselves, by their ids. */
interface SpeltBlend {
  readonly glaze: string;
  readonly by: "volume" | "weight";
  readonly shares: ReadonlyMap<string, number>;
}

function spellOutBlends(glazes: readonly MixedGlaze[]): readonly SpeltBlend[] {
  const byId = new Map(glazes.map((glaze) => [idKey(glaze.id), glaze]));
  return glazes.flatMap(({ id, making }) => {
    if (making.kind !== "blend") return [];
    const shares = sharesOf(making, byId, [idKey(id)]);
    return shares ? [{ glaze: id, by: making.by, shares }] : [];
  });
}

/** Undefined where the blend leads back to itself. */
function sharesOf(
  blend: Blend,
  byId: ReadonlyMap<string, MixedGlaze>,
  within: readonly string[],
): ReadonlyMap<string, number> | undefined {
  const total = blend.parts.reduce((sum, { parts }) => sum + parts, 0);
  const shares = new Map<string, number>();
  for (const { glaze, parts } of blend.parts) {
    const found = byId.get(idKey(glaze));
    if (within.includes(idKey(glaze))) return undefined;
    const isBlend = found?.making.kind === "blend" && found.making.by === blend.by;
    const inner = isBlend
      ? sharesOf(found.making, byId, [...within, idKey(glaze)])
      : new Map([[found?.id ?? glaze, 1]]);
    if (!inner) return undefined;
    for (const [end, share] of inner)
      shares.set(end, (shares.get(end) ?? 0) + (share * parts) / total);
  }
  return shares;
}

interface Ends {
  readonly by: "volume" | "weight";
  readonly ids: readonly string[];
}

/** Every set of so many ends that some blend is made of, each once, in the order of ids. */
function endsOf(spelt: readonly SpeltBlend[], count: number): readonly Ends[] {
  const found = spelt
    .filter(({ shares }) => shares.size === count)
    .map(({ by, shares }) => ({ by, ids: [...shares.keys()].sort(compareIds) }));
  return [...new Map(found.map((ends) => [JSON.stringify(ends), ends])).values()].sort((a, b) =>
    compareIds(a.ids.join(), b.ids.join()),
  );
}

function seriesBetween({ by, ids }: Ends, spelt: readonly SpeltBlend[]): BlendSeries {
  const ends = ids.map((id) => ({ glaze: id, shares: ids.map((end) => (end === id ? 1 : 0)) }));
  const blends = spelt
    .filter((blend) => blend.by === by && [...blend.shares.keys()].every((id) => ids.includes(id)))
    .map(({ glaze, shares }) => ({ glaze, shares: ids.map((id) => shares.get(id) ?? 0) }));
  return {
    kind: ids.length === 2 ? "line" : "triaxial",
    by,
    between: ids,
    members: [...ends, ...blends].sort(byShares),
  };
}

function byShares(a: BlendMember, b: BlendMember): number {
  const differing = a.shares.findIndex((share, i) => share !== b.shares[i]);
  if (differing < 0) return compareIds(a.glaze, b.glaze);
  return (b.shares[differing] ?? 0) - (a.shares[differing] ?? 0);
}

function countBlends(series: BlendSeries): number {
  return series.members.length - series.between.length;
}
