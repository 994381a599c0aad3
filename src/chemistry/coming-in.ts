/** Which one or two new materials bring a recipe nearest to a formula. */
import type { OxideAmounts } from "../terms/oxides.ts";
import { sumOfOxides } from "./oxide-sums.ts";
import {
  type Candidate,
  columnOf,
  findNearestRecipe,
  partsIn,
  type Rework,
  solve,
} from "./rework.ts";
import { comparedAmounts } from "./rework-distance.ts";

/** Parts in a hundred below which a new material is not worth opening. Common practice, no source. */
export const leastNewParts = 0.5;

/**
 * The nearest recipe from what is held and one of the materials that could come in, of which it
 * takes half a part at least.
 */
export function findNearestWithOne(
  wanted: OxideAmounts,
  held: readonly Candidate[],
  comingIn: readonly Candidate[],
): Rework | undefined {
  return findNearestWith(
    wanted,
    held,
    findUsable(comingIn).map((candidate) => [candidate]),
  );
}

/**
 * The same with two of them. Of more materials than studios keep, the most promising pairs alone
 * are tried.
 *
 * @param nearerThan only pairs that could lead nearer than this are tried
 */
export function findNearestWithTwo(
  wanted: OxideAmounts,
  held: readonly Candidate[],
  comingIn: readonly Candidate[],
  nearerThan = Number.POSITIVE_INFINITY,
): Rework | undefined {
  const pairs = pairsByBound(wanted, held, findUsable(comingIn));
  const promising = pairs.filter(({ bound = 0 }) => bound < nearerThan);
  return findNearestWith(wanted, held, promising.slice(0, mostPairs));
}

/** All pairs of 17 materials; a second is enough for them. */
const mostPairs = 150;

function findUsable(candidates: readonly Candidate[]): readonly Candidate[] {
  return candidates.filter(({ analysis }) => sumOfOxides(analysis.oxides) > 0);
}

/** Distances that differ by less are rounding: the preferred material is kept. */
const sameDistance = 1e-6;

type Group = readonly Candidate[] & { readonly bound?: number };

function findNearestWith(
  wanted: OxideAmounts,
  held: readonly Candidate[],
  groups: readonly Group[],
): Rework | undefined {
  let best: { readonly group: Group; readonly distance: number } | undefined;
  for (const group of groups) {
    if (best && (group.bound ?? 0) >= best.distance) break;
    const found = solve(wanted, [...held, ...group]);
    if (!found || !takesEnough(found, group)) continue;
    if (!best || found.distance < best.distance - sameDistance)
      best = { group, distance: found.distance };
  }
  const chosen = best?.group;
  return chosen && findNearestRecipe(wanted, [...held, ...chosen], (it) => takesEnough(it, chosen));
}

function takesEnough(rework: Rework, comingIn: readonly Candidate[]): boolean {
  return comingIn.every(({ material }) => partsIn(rework, material) >= leastNewParts);
}

/**
 * All pairs, those first that could lead nearest. No recipe with a pair is nearer than its bound:
 * how near the pair would lead if what is held could be taken in amounts below zero too. So most
 * pairs need never be tried.
 */
function pairsByBound(
  wanted: OxideAmounts,
  held: readonly Candidate[],
  comingIn: readonly Candidate[],
): readonly Group[] {
  const basis = orthonormal(held.map(columnOf));
  const goal = without(basis, comparedAmounts(wanted));
  const columns = comingIn.map((candidate) => without(basis, columnOf(candidate)));
  const pairs = comingIn.flatMap((first, i) =>
    comingIn.slice(i + 1).map((second, j): Group => {
      const bound = distanceByTwo(goal, columns[i] ?? [], columns[i + 1 + j] ?? []);
      return Object.assign([first, second], { bound });
    }),
  );
  return pairs.sort((a, b) => (a.bound ?? 0) - (b.bound ?? 0));
}

type Vector = readonly number[];

function dot(a: Vector, b: Vector): number {
  return a.reduce((sum, value, i) => sum + value * (b[i] ?? 0), 0);
}

/** A vector without its part in the span of others, which are at right angles and of length 1. */
function without(basis: readonly Vector[], vector: Vector): Vector {
  return basis.reduce((left, direction) => {
    const share = dot(left, direction);
    return left.map((value, i) => value - share * (direction[i] ?? 0));
  }, vector);
}

/** Below this share of its length, what is left of a vector is rounding. */
const rounding = 1e-9;

/** By the procedure of Gram and Schmidt, twice over against rounding. */
function orthonormal(vectors: readonly Vector[]): readonly Vector[] {
  const basis: Vector[] = [];
  for (const vector of vectors) {
    const rest = without(basis, without(basis, vector));
    const length = Math.hypot(...rest);
    if (length > rounding * Math.hypot(...vector)) basis.push(rest.map((value) => value / length));
  }
  return basis;
}

/** How near no less than nothing of two columns comes to a goal. */
function distanceByTwo(goal: Vector, a: Vector, b: Vector): number {
  const [aa, bb, ab] = [dot(a, a), dot(b, b), dot(a, b)];
  const [ga, gb] = [dot(goal, a), dot(goal, b)];
  const alone = (g: number, length: number) =>
    g > 0 && length > rounding ** 2 ? g ** 2 / length : 0;
  const area = aa * bb - ab ** 2;
  const [x, y] = [(ga * bb - gb * ab) / area, (gb * aa - ga * ab) / area];
  const together = area > rounding * aa * bb && x > 0 && y > 0 ? x * ga + y * gb : 0;
  const gain = Math.max(alone(ga, aa), alone(gb, bb), together);
  return Math.sqrt(Math.max(0, dot(goal, goal) - gain));
}
