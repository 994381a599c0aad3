/**
 * What changed from one tile to another, where that was one thing. Make-ups are one change apart
 * where one facet is known on both and differs, where one has a step that the other lacks, or where
 * the same steps were done in another order. What nobody wrote down on one of them and is known on
 * the other keeps them apart; what is unknown on both is told beside the answer.
 */
import type { Aspect, Facet, MakeUp } from "./make-up.ts";

export type Change =
  /** Nothing that was written down. */
  | { readonly kind: "none" }
  | {
      readonly kind: "facet";
      readonly aspect: Aspect;
      /** The step that it is a facet of, in both; null for what is the whole tile's. */
      readonly step: number | null;
      /** The values as facets have them. */
      readonly from: string;
      readonly to: string;
    }
  /** The second has a step more, at this place among its own steps. */
  | { readonly kind: "more"; readonly step: number }
  /** The second lacks a step that is at this place on the first. */
  | { readonly kind: "fewer"; readonly step: number }
  /** On the first the steps of these two places come in this order; on the second the other way round. */
  | { readonly kind: "order"; readonly steps: readonly [number, number] };

/** One facet that is known on both and differs. */
export type FacetChange = Extract<Change, { kind: "facet" }>;

/** A make-up as what is the whole tile's, and what is each step's. */
export interface Parts {
  readonly whole: readonly Facet[];
  readonly steps: readonly (readonly Facet[])[];
}

export function partsOf({ facets, steps }: MakeUp): Parts {
  const parts: { whole: Facet[]; steps: Facet[][] } = {
    whole: [],
    steps: Array.from({ length: steps }, () => []),
  };
  for (const facet of facets) {
    (facet.step === null ? parts.whole : parts.steps[facet.step])?.push(facet);
  }
  return parts;
}

/** What changed from the first to the second; null where that was more than one thing, or unknown. */
export function changeBetween(a: Parts, b: Parts): Change | null {
  if (a.steps.length === b.steps.length) return changeOfFacet(a, b) ?? changeOfOrder(a, b);
  if (differencesOf(a.whole, b.whole).length > 0) return null;
  if (b.steps.length === a.steps.length + 1) return stepAdded("more", a, b);
  if (a.steps.length === b.steps.length + 1) return stepAdded("fewer", b, a);
  return null;
}

/**
 * What changed from the first to the second where that was exactly two facets, each known on both;
 * null where it was anything else, as two layers that changed places, which is one change of order.
 */
export function twoChangesBetween(a: Parts, b: Parts): readonly [FacetChange, FacetChange] | null {
  if (a.steps.length !== b.steps.length) return null;
  const [first, second, ...more] = differencesBetween(a, b);
  if (!first || !second || more.length > 0 || changeOfOrder(a, b)) return null;
  const [one, other] = [facetChange(first), facetChange(second)];
  return one && other ? [one, other] : null;
}

/** What nobody wrote down of either, and no load that they shared makes the same, each aspect once. */
export function unknownOfBoth(a: MakeUp, b: MakeUp): readonly Aspect[] {
  const shared = new Set(b.facets.flatMap(({ sharedBy }) => sharedBy ?? []));
  const open = a.facets.filter(
    ({ value, sharedBy }) => value === null && !(sharedBy !== null && shared.has(sharedBy)),
  );
  return [...new Set(open.map(({ aspect }) => aspect))];
}

interface Difference {
  readonly aspect: Aspect;
  readonly step: number | null;
  /** Null where it is unknown, or such a step has no such facet. */
  readonly from: string | null;
  readonly to: string | null;
}

function changeOfFacet(a: Parts, b: Parts): Change | null {
  const [first, ...more] = differencesBetween(a, b);
  if (!first) return { kind: "none" };
  return more.length > 0 ? null : facetChange(first);
}

function differencesBetween(a: Parts, b: Parts): readonly Difference[] {
  return [
    ...differencesOf(a.whole, b.whole),
    ...a.steps.flatMap((step, i) => differencesOf(step, b.steps[i] ?? [])),
  ];
}

/** Null where one of the two is unknown. */
function facetChange({ aspect, step, from, to }: Difference): FacetChange | null {
  return from === null || to === null ? null : { kind: "facet", aspect, step, from, to };
}

/** Of a layer that was dipped on one tile alone, how long it was dipped is no difference besides. */
function differencesOf(a: readonly Facet[], b: readonly Facet[]): readonly Difference[] {
  const differences = a.flatMap((facet) => {
    const other = b.find(({ aspect }) => aspect === facet.aspect);
    return other?.value === facet.value ? [] : [differenceOf(facet, facet.value, other?.value)];
  });
  const added = b
    .filter(({ aspect }) => a.every((facet) => facet.aspect !== aspect))
    .map((facet) => differenceOf(facet, null, facet.value));
  const all = [...differences, ...added];
  const isDippedOnOne = hasAspect(a, "dipping") !== hasAspect(b, "dipping");
  const hasOtherWay = all.some(({ aspect, from, to }) => aspect === "way" && from && to);
  return isDippedOnOne && hasOtherWay ? all.filter(({ aspect }) => aspect !== "dipping") : all;
}

function differenceOf(
  { aspect, step }: Facet,
  from: string | null,
  to: string | null | undefined,
): Difference {
  return { aspect, step, from, to: to ?? null };
}

function hasAspect(facets: readonly Facet[], aspect: Aspect): boolean {
  return facets.some((facet) => facet.aspect === aspect);
}

/** A step as a text, the same for two steps that differ in nothing, wherever they come. */
export function stepKey(step: readonly Facet[]): string {
  return step.map(({ aspect, value }) => `${aspect} ${value}`).join("\n");
}

function stepAdded(kind: "more" | "fewer", short: Parts, long: Parts): Change | null {
  const [without, all] = [short.steps.map(stepKey), long.steps.map(stepKey)];
  const place = all.findIndex((key, i) => key !== without[i]);
  const isRest = all.slice(place + 1).every((key, i) => key === without[place + i]);
  return isRest ? { kind, step: place } : null;
}

/** One step moved past others, or two changed places, and all the rest as it was. */
function changeOfOrder(a: Parts, b: Parts): Change | null {
  if (differencesOf(a.whole, b.whole).length > 0) return null;
  const [from, to] = [a.steps.map(stepKey), b.steps.map(stepKey)];
  const first = from.findIndex((key, i) => key !== to[i]);
  const last = from.findLastIndex((key, i) => key !== to[i]);
  if (first < 0) return null;
  const [before, after] = [from.slice(first, last + 1), to.slice(first, last + 1)];
  const isOneMove =
    isSame([...before.slice(1), ...before.slice(0, 1)], after) ||
    isSame([...before.slice(-1), ...before.slice(0, -1)], after) ||
    isSame([...before.slice(-1), ...before.slice(1, -1), ...before.slice(0, 1)], after);
  return isOneMove ? { kind: "order", steps: [first, last] } : null;
}

function isSame(a: readonly string[], b: readonly string[]): boolean {
  return a.length === b.length && a.every((key, i) => key === b[i]);
}
