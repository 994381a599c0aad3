/**
 * Tiles that differ in one facet alone, set out as a series: by coats, by cone, by clay. What a class
 * asked is the facet in which its tiles differ while all the rest is the same.
 */
import { likenessKey } from "./alike.ts";
import { leavingOut } from "./leave-one-out.ts";
import type { Aspect, MakeUp } from "./make-up.ts";

/** Tiles that are alike but for one facet, by what is known of it. Two values at least. */
export interface SeriesRow<T> {
  /** The step whose facet it is; null for what is the whole tile's. */
  readonly step: number | null;
  readonly byValue: ReadonlyMap<string, readonly [T, ...T[]]>;
}

export interface Series<T> {
  readonly aspect: Aspect;
  readonly rows: readonly SeriesRow<T>[];
}

/** What is put on is asked by pairs and by the grid; the rest of a make-up can be a question of its own. */
const askable: readonly Aspect[] = [
  ...(["coats", "way", "thickness", "dipping", "dried", "area", "cone", "cooling"] as const),
  ...(["atmosphere", "fire", "bisque", "clay", "texture", "shape"] as const),
];

/**
 * Every series among some tiles, in the order of the tiles. What nobody wrote down of two tiles does
 * not keep them apart, as elsewhere, but no value is ever unknown.
 *
 * @param makeUpOf the make-up of each
 * @param aspects in which they may differ
 */
export function seriesAmong<T>(
  all: readonly T[],
  makeUpOf: (one: T) => MakeUp,
  aspects: readonly Aspect[] = askable,
): readonly Series<T>[] {
  return aspects
    .map((aspect) => ({ aspect, rows: rowsOf(all, makeUpOf, aspect) }))
    .filter(({ rows }) => rows.length > 0);
}

function rowsOf<T>(
  all: readonly T[],
  makeUpOf: (one: T) => MakeUp,
  aspect: Aspect,
): readonly SeriesRow<T>[] {
  const rows = new Map<string, { step: number | null; byValue: Map<string, [T, ...T[]]> }>();
  for (const one of all) {
    const makeUp = makeUpOf(one);
    for (const facet of makeUp.facets) {
      if (facet.aspect !== aspect || facet.value === null) continue;
      const key = `${facet.step} ${likenessKey(makeUp, { leaveOut: leavingOut(facet), unwritten: "together" })}`;
      const row = rows.get(key) ?? { step: facet.step, byValue: new Map() };
      rows.set(key, row);
      const known = row.byValue.get(facet.value);
      if (known) known.push(one);
      else row.byValue.set(facet.value, [one]);
    }
  }
  return [...rows.values()].filter(({ byValue }) => byValue.size > 1);
}
