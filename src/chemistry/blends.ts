/** Line blends and triaxial blends: series of glazes mixed from the same two or three. */
import { compareIds, idKey } from "../terms/ids.ts";
import { indexBy } from "../terms/index-by.ts";
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
  /** Ids of the two ends or the three corners, in the order in which most of the blends list them. */
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
  const byEnds = indexBy(spelt, (blend) => [keyOf(endsOf(blend))]);
  const triangles = listEnds(spelt, 3)
    .map((corners) => seriesBetween(corners, byEnds))
    .filter((series) => countBlends(series) >= 3);
  const lines = listEnds(spelt, 2)
    .map((ends) => seriesBetween(ends, byEnds))
    .filter((series) => countBlends(series) >= 2);
  const edges = new Set(
    triangles.flatMap(({ by, between }) => someOf(between).map((ids) => keyOf({ by, ids }))),
  );
  return [
    ...triangles,
    ...lines.filter(({ by, between }) => !edges.has(keyOf({ by, ids: between }))),
  ];
}

type Blend = Extract<Making, { kind: "blend" }>;

/** A blend spelt out as shares of glazes that are not blended themselves, by their ids. */
interface SpeltBlend {
  readonly glaze: string;
  readonly by: "volume" | "weight";
  readonly shares: ReadonlyMap<string, number>;
}

function spellOutBlends(glazes: readonly MixedGlaze[]): readonly SpeltBlend[] {
  const findShares = sharesFinder(glazes);
  return glazes.flatMap(({ id, making }) => {
    if (making.kind !== "blend") return [];
    const shares = findShares(id);
    return shares ? [{ glaze: id, by: making.by, shares }] : [];
  });
}

type Shares = ReadonlyMap<string, number>;

/**
 * Gives the shares of the blend of an id; undefined where it leads into a circle, wherever one
 * begins. Each is worked out once: of blends of blends there may be many ways down to one glaze.
 */
function sharesFinder(glazes: readonly MixedGlaze[]): (id: string) => Shares | undefined {
  const byId = new Map(glazes.map((glaze) => [idKey(glaze.id), glaze]));
  const known = new Map<string, Shares | undefined>();
  const within = new Set<string>();

  function find(id: string): Shares | undefined {
    const key = idKey(id);
    const making = byId.get(key)?.making;
    if (making?.kind !== "blend" || within.has(key)) return undefined;
    if (!known.has(key)) {
      within.add(key);
      known.set(key, add(making));
      within.delete(key);
    }
    return known.get(key);
  }

  function add({ by, parts: all }: Blend): Shares | undefined {
    const total = all.reduce((sum, { parts }) => sum + parts, 0);
    const shares = new Map<string, number>();
    for (const { glaze, parts } of all) {
      const found = byId.get(idKey(glaze));
      const isBlend = found?.making.kind === "blend" && found.making.by === by;
      const inner = isBlend ? find(glaze) : new Map([[found?.id ?? glaze, 1]]);
      if (!inner) return undefined;
      for (const [end, share] of inner)
        shares.set(end, (shares.get(end) ?? 0) + (share * parts) / total);
    }
    return shares;
  }

  return find;
}

interface Ends {
  readonly by: "volume" | "weight";
  readonly ids: readonly string[];
}

function endsOf({ by, shares }: SpeltBlend): Ends {
  return { by, ids: [...shares.keys()].sort(compareIds) };
}

function keyOf({ by, ids }: Ends): string {
  return JSON.stringify([by, ...ids]);
}

/** Every choice of one or more of some ends, each in their order. */
function someOf(ids: readonly string[]): readonly (readonly string[])[] {
  const chosen: (readonly string[])[] = [];
  for (const id of ids) chosen.push([id], ...chosen.map((some) => [...some, id]));
  return chosen;
}

/** Every set of so many ends that some blend is made of, each once, in the order of ids. */
function listEnds(spelt: readonly SpeltBlend[], count: number): readonly Ends[] {
  const found = spelt.filter(({ shares }) => shares.size === count).map(endsOf);
  return [...new Map(found.map((ends) => [keyOf(ends), ends])).values()].sort((a, b) =>
    compareIds(a.ids.join(), b.ids.join()),
  );
}

/** @param byEnds the blends by all of their ends */
function seriesBetween(
  { by, ids }: Ends,
  byEnds: ReadonlyMap<string, readonly SpeltBlend[]>,
): BlendSeries {
  const spelt = someOf(ids).flatMap((some) => byEnds.get(keyOf({ by, ids: some })) ?? []);
  const between = asMostListThem(ids, spelt);
  const ends = between.map((id) => ({
    glaze: id,
    shares: between.map((end) => (end === id ? 1 : 0)),
  }));
  const blends = spelt.map(({ glaze, shares }) => ({
    glaze,
    shares: between.map((id) => shares.get(id) ?? 0),
  }));
  return {
    kind: ids.length === 2 ? "line" : "triaxial",
    by,
    between,
    members: [...ends, ...blends].sort(byShares),
  };
}

/** Ends in the order in which most blends of all of them list them; in the order of ids where that is a draw. */
function asMostListThem(ids: readonly string[], blends: readonly SpeltBlend[]): readonly string[] {
  const lists = blends
    .map(({ shares }) => [...shares.keys()])
    .filter((list) => list.length === ids.length);
  const alike = [...indexBy(lists, (list) => [JSON.stringify(list)]).values()];
  const most = alike.reduce((times, some) => Math.max(times, some.length), 0);
  const [first, ...others] = alike.filter((some) => some.length === most);
  return (others.length === 0 && first?.[0]) || ids;
}

function byShares(a: BlendMember, b: BlendMember): number {
  const differing = a.shares.findIndex((share, i) => share !== b.shares[i]);
  if (differing < 0) return compareIds(a.glaze, b.glaze);
  return (b.shares[differing] ?? 0) - (a.shares[differing] ?? 0);
}

function countBlends(series: BlendSeries): number {
  return series.members.length - series.between.length;
}
