/**
 * Finds tiles one change apart without comparing every pair: tiles meet under keys that leave out
 * one facet, one step, or the order of the steps, and only those that meet are compared.
 */
import { addTo } from "../terms/index-by.ts";
import { type Change, changeBetween, type Parts, partsOf, stepKey } from "./change.ts";
import { leavingOut } from "./leave-one-out.ts";
import type { Facet, MakeUp } from "./make-up.ts";

export interface Neighbour<T> {
  readonly other: T;
  /** From the tile that was asked about to this one. */
  readonly change: Change;
}

/** Tiles of which nothing that was written down differs. */
interface Kind<T> {
  readonly parts: Parts;
  readonly all: T[];
  readonly keys: Keys;
}

/** What a kind is found under, and what it asks for: two that are one change apart meet so. */
interface Keys {
  readonly under: readonly string[];
  readonly asked: readonly string[];
}

/**
 * Makes the function that finds all that is at most one change apart from one of those given, in the
 * order given: replicates among them (`none`), and never itself.
 *
 * @param makeUpOf the make-up of each; what it gives for one must not change
 */
export function neighbourFinder<T>(
  all: readonly T[],
  makeUpOf: (one: T) => MakeUp,
): (one: T) => readonly Neighbour<T>[] {
  const kinds = kindsOf(all, makeUpOf);
  const kindOf = new Map([...kinds.values()].flatMap((kind) => kind.all.map((one) => [one, kind])));
  const meeting = new Map<string, Kind<T>[]>();
  for (const kind of kinds.values()) for (const key of kind.keys.under) addTo(meeting, key, kind);
  const places = new Map(all.map((one, i) => [one, i]));
  const placeOf = (one: T) => places.get(one) ?? 0;
  return (one) => {
    const kind = kindOf.get(one);
    if (!kind) return [];
    const near = new Set(kind.keys.asked.flatMap((key) => meeting.get(key) ?? []));
    return [...near]
      .flatMap((other) => {
        const change = changeBetween(kind.parts, other.parts);
        return change ? other.all.map((tile) => ({ other: tile, change })) : [];
      })
      .filter(({ other }) => other !== one)
      .sort((a, b) => placeOf(a.other) - placeOf(b.other));
  };
}

function kindsOf<T>(all: readonly T[], makeUpOf: (one: T) => MakeUp): ReadonlyMap<string, Kind<T>> {
  const kinds = new Map<string, Kind<T>>();
  const numberOf = numberer();
  for (const one of all) {
    const parts = partsOf(makeUpOf(one));
    const [whole, steps] = [numberOf(stepKey(parts.whole)), parts.steps.map(stepKey).map(numberOf)];
    const key = [whole, ...steps].join(" ");
    const kind = kinds.get(key);
    if (kind) kind.all.push(one);
    else kinds.set(key, { parts, all: [one], keys: meetingKeys(parts, whole, steps, numberOf) });
  }
  return kinds;
}

/** A short number for each text, the same for the same. */
function numberer(): (text: string) => number {
  const numbers = new Map<string, number>();
  return (text) => {
    const number = numbers.get(text) ?? numbers.size;
    numbers.set(text, number);
    return number;
  };
}

function meetingKeys(
  parts: Parts,
  whole: number,
  steps: readonly number[],
  numberOf: (text: string) => number,
): Keys {
  const keyOf = (...numbers: readonly number[]) => numbers.join(" ");
  const others = (i: number, ...instead: number[]) =>
    keyOf(whole, ...steps.slice(0, i), ...instead, ...steps.slice(i + 1));
  const shared = [
    ...lessOne(parts.whole).map((less) => `tile ${keyOf(numberOf(less), ...steps)}`),
    ...parts.steps.flatMap((step, i) =>
      lessOne(step).map((less) => `facet ${others(i, numberOf(less))}`),
    ),
    `order ${keyOf(whole, ...steps.toSorted((a, b) => a - b))}`,
  ];
  const itself = keyOf(whole, ...steps);
  const withoutOne = steps.map((_, i) => others(i));
  return {
    under: [...shared, `all ${itself}`, ...withoutOne.map((key) => `less ${key}`)],
    asked: [...shared, `less ${itself}`, ...withoutOne.map((key) => `all ${key}`)],
  };
}

/** A part with each of its known facets left out in turn. */
function lessOne(facets: readonly Facet[]): readonly string[] {
  return facets
    .filter(({ value }) => value !== null)
    .map((left) => {
      const isLeft = leavingOut(left);
      return `less ${left.aspect}\n${stepKey(facets.filter((facet) => !isLeft(facet)))}`;
    });
}
