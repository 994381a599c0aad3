/**
 * Finds tiles that differ in exactly two facets without comparing every pair: the facets of a make-up
 * are dealt into six hands, tiles meet under the keys that leave two hands out, and only those that
 * meet are compared. Two facets lie in two hands at most, so none is missed.
 */
import { addTo } from "../terms/index-by.ts";
import { type FacetChange, type Parts, partsOf, stepKey, twoChangesBetween } from "./change.ts";
import type { Aspect, Facet, MakeUp } from "./make-up.ts";

export interface TwoApart<T> {
  readonly other: T;
  /** From the tile that was asked about to this one. */
  readonly changes: readonly [FacetChange, FacetChange];
}

const hands = 6;

/** Where each aspect is dealt first; the glazes of neighbouring layers come into different hands. */
const firstHand: Readonly<Record<Aspect, number>> = {
  ...{ what: 0, coats: 1, way: 2, dipping: 2, thickness: 3, dried: 4, area: 5 },
  ...{ clay: 0, texture: 1, shape: 2, bisque: 1, cone: 1, atmosphere: 2, fire: 3, cooling: 4 },
};

/** How long a layer was dipped goes with the way it was put on, of which it may be a part. */
function handOf({ aspect, step }: Facet): number {
  return (firstHand[aspect] + 5 * ((step ?? -1) + 1)) % hands;
}

interface Known<T> {
  readonly one: T;
  readonly parts: Parts;
  readonly keys: readonly string[];
  /** A short number for each facet, in their order. */
  readonly facets: Uint32Array;
}

/**
 * Makes the function that finds all that differ from one of those given in exactly two facets, in
 * the order given.
 *
 * @param makeUpOf the make-up of each
 */
export function twoApartFinder<T>(
  all: readonly T[],
  makeUpOf: (one: T) => MakeUp,
): (one: T) => readonly TwoApart<T>[] {
  const numbers = new Map<string, number>();
  const known = new Map(
    all.map((one): [T, Known<T>] => {
      const makeUp = makeUpOf(one);
      const facets = Uint32Array.from(makeUp.facets, (facet) => numberOf(facetKey(facet), numbers));
      return [one, { one, parts: partsOf(makeUp), keys: keysOf(makeUp, numbers), facets }];
    }),
  );
  const places = new Map(all.map((one, i) => [one, i]));
  const meeting = new Map<string, Known<T>[]>();
  for (const each of known.values()) for (const key of each.keys) addTo(meeting, key, each);
  return (asked) => {
    const own = known.get(asked);
    if (!own) return [];
    const near = new Set(own.keys.flatMap((key) => meeting.get(key) ?? []));
    return [...near]
      .filter(({ facets }) => mayBeTwoApart(own.facets, facets))
      .flatMap(({ one, parts }) => {
        const changes = twoChangesBetween(own.parts, parts);
        return changes ? [{ other: one, changes }] : [];
      })
      .sort((a, b) => (places.get(a.other) ?? 0) - (places.get(b.other) ?? 0));
  };
}

/**
 * Whether no more than two facets differ, so that a closer look is worth it. A layer that was dipped
 * has a facet more, and is looked at in any case.
 */
function mayBeTwoApart(a: Uint32Array, b: Uint32Array): boolean {
  if (a.length !== b.length) return true;
  let differing = 0;
  for (let i = 0; i < a.length && differing < 3; i += 1) if (a[i] !== b[i]) differing += 1;
  return differing === 2;
}

function facetKey({ aspect, value }: Facet): string {
  return `${aspect} ${value}`;
}

/** A make-up's keys: its six hands, each as a short number, but for two of them. */
function keysOf({ facets, steps }: MakeUp, numbers: Map<string, number>): readonly string[] {
  const dealt: Facet[][] = Array.from({ length: hands }, () => []);
  for (const facet of facets) dealt[handOf(facet)]?.push(facet);
  const held = dealt.map((hand) => numberOf(handKey(hand), numbers));
  return held.flatMap((_, i) =>
    held
      .slice(i + 1)
      .map((__, j) => `${steps} ${held.map((n, k) => (k === i || k === i + 1 + j ? "" : n))}`),
  );
}

function handKey(hand: readonly Facet[]): string {
  return `${hand.map(({ step }) => step).join()} ${stepKey(hand)}`;
}

function numberOf(text: string, numbers: Map<string, number>): number {
  const number = numbers.get(text) ?? numbers.size;
  numbers.set(text, number);
  return number;
}
