import type { Oklab } from "./oklab.ts";
import { distance, meanOf, type Samples, sampleAt } from "./samples.ts";

/** Colours that lie together. */
export interface Cluster {
  centre: Oklab;
  /** Root mean square distance from the centre. */
  radius: number;
  /** Which samples belong to it. */
  members: number[];
}

const MOST_STEPS = 12;

/**
 * Groups samples by k-means (S.P. Lloyd 1982), started as k-means++ does (D. Arthur and
 * S. Vassilvitskii 2007) from random numbers that are the same every time. Empty groups are left
 * out; the largest comes first.
 *
 * Own code, since a library's wants an array for each colour and brings four packages for this.
 */
export function findClusters(
  samples: Samples,
  indices: readonly number[],
  count: number,
): Cluster[] {
  let centres = chooseCentres(samples, indices, count);
  let groups = assign(samples, indices, centres);
  for (let step = 0; step < MOST_STEPS; step++) {
    const moved = groups.map((members) => meanOf(samples, members));
    const isSettled = moved.every((centre, at) => distance(centre, centres[at] ?? centre) < 1e-4);
    centres = moved;
    groups = assign(samples, indices, centres);
    if (isSettled) break;
  }
  return groups
    .map((members) => describe(samples, members))
    .sort((one, other) => other.members.length - one.members.length);
}

function describe(samples: Samples, members: number[]): Cluster {
  const centre = meanOf(samples, members);
  const squares = members.map((index) => distance(sampleAt(samples, index), centre) ** 2);
  const radius = Math.sqrt(squares.reduce((sum, square) => sum + square, 0) / members.length);
  return { centre, radius, members };
}

/** Each next centre is a sample, the likelier the further it lies from those chosen. */
function chooseCentres(samples: Samples, indices: readonly number[], count: number): Oklab[] {
  const random = startRandom(1);
  const centres = [sampleAt(samples, pick(indices, random()))];
  const nearest = indices.map(() => Number.POSITIVE_INFINITY);
  while (centres.length < count) {
    const latest = centres[centres.length - 1] ?? [0, 0, 0];
    let sum = 0;
    indices.forEach((index, at) => {
      const square = distance(sampleAt(samples, index), latest) ** 2;
      nearest[at] = Math.min(nearest[at] ?? square, square);
      sum += nearest[at] ?? 0;
    });
    if (sum === 0) break;
    centres.push(sampleAt(samples, pickWeighted(indices, nearest, random() * sum)));
  }
  return centres;
}

function pick(indices: readonly number[], share: number): number {
  return indices[Math.floor(share * indices.length)] ?? 0;
}

function pickWeighted(indices: readonly number[], weights: number[], target: number): number {
  let sum = 0;
  for (let at = 0; at < indices.length; at++) {
    sum += weights[at] ?? 0;
    if (sum >= target) return indices[at] ?? 0;
  }
  return indices[indices.length - 1] ?? 0;
}

function assign(samples: Samples, indices: readonly number[], centres: Oklab[]): number[][] {
  const groups: number[][] = centres.map(() => []);
  for (const index of indices) groups[nearestCentre(samples, index, centres)]?.push(index);
  return groups.filter((members) => members.length > 0);
}

/** Compares squares, number by number, since this runs for every pixel and centre. */
function nearestCentre({ values }: Samples, index: number, centres: Oklab[]): number {
  const [L, a, b] = [
    values[index * 3] ?? 0,
    values[index * 3 + 1] ?? 0,
    values[index * 3 + 2] ?? 0,
  ];
  let [best, least] = [0, Number.POSITIVE_INFINITY];
  for (let at = 0; at < centres.length; at++) {
    const centre = centres[at] ?? [0, 0, 0];
    const square = (L - centre[0]) ** 2 + (a - centre[1]) ** 2 + (b - centre[2]) ** 2;
    if (square < least) [best, least] = [at, square];
  }
  return best;
}

/** Mulberry32 (T. Ettinger 2017, public domain): numbers from 0 to 1, the same for a seed. */
function startRandom(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
}
