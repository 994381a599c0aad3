/**
 * Who is like whom. Two tiles are alike where every facet of their make-ups is the same. What nobody
 * wrote down is never the same as something that is known; it is the same on two tiles that were in
 * one load, and where a question says so, because its answer tells what is unknown.
 */
import type { Aspect, Facet, MakeUp } from "./make-up.ts";

export interface Likeness {
  /** Facets that the question leaves out; none if left out. */
  readonly leaveOut?: (facet: Facet) => boolean;
  /** Whether what is unwritten on both tiles keeps them apart; it does if left out. */
  readonly unwritten?: "apart" | "together";
}

/**
 * What all tiles share that are alike; undefined where too little is known of one to say that it is
 * like any other.
 */
export function likenessKey(
  { facets }: MakeUp,
  { leaveOut = () => false, unwritten = "apart" }: Likeness = {},
): string | undefined {
  let key = "";
  for (const facet of facets) {
    if (leaveOut(facet)) continue;
    if (unwritten === "apart" && isOpen(facet)) return undefined;
    key += keyOf(facet, unwritten);
  }
  return key;
}

function isOpen({ value, sharedBy, mayBeUnknown }: Facet): boolean {
  return value === null && sharedBy === null && !mayBeUnknown;
}

/** How long each text is stands before it, so that no two make-ups run together into one key. */
function keyOf(
  { aspect, step, value, sharedBy, mayBeUnknown }: Facet,
  unwritten: Likeness["unwritten"],
): string {
  if (value !== null) return `${aspect} ${step} ${value.length} ${value}`;
  const load = mayBeUnknown || unwritten === "together" ? null : sharedBy;
  return load === null ? `${aspect} ${step} ?` : `${aspect} ${step} ?${load.length} ${load}`;
}

/** Whether two make-ups are alike. */
export function areAlike(a: MakeUp, b: MakeUp, likeness: Likeness = {}): boolean {
  if (a === b) return true;
  const key = likenessKey(a, likeness);
  return key !== undefined && key === likenessKey(b, likeness);
}

/**
 * Groups what is alike, each in the order given and each with one at least. Of what too little is
 * known, each is a group of its own.
 */
export function groupAlike<T>(
  all: readonly T[],
  makeUpOf: (one: T) => MakeUp,
  likeness: Likeness = {},
): readonly (readonly [T, ...T[]])[] {
  const groups: [T, ...T[]][] = [];
  const byKey = new Map<string, [T, ...T[]]>();
  for (const one of all) {
    const key = likenessKey(makeUpOf(one), likeness);
    const group = key === undefined ? undefined : byKey.get(key);
    if (group) {
      group.push(one);
      continue;
    }
    const alone: [T, ...T[]] = [one];
    groups.push(alone);
    if (key !== undefined) byKey.set(key, alone);
  }
  return groups;
}

/** What nobody wrote down of a make-up, each aspect once, in the order of the facets. */
export function unknownAspects({ facets }: MakeUp): readonly Aspect[] {
  return [...new Set(facets.filter(({ value }) => value === null).map(({ aspect }) => aspect))];
}
