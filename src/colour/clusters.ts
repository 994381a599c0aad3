import type { Oklab } from "./oklab.ts";
import { distance, meanOf, type Samples, sampleAt, squareDistance } from "./samples.ts";

/** Colours that lie together. */
export interface Cluster {
  centre: Oklab;
  /** Root mean square distance from the centre. */
  radius: number;
  /** Which samples belong to it. */
  members: number[];
}

const mostSteps = 12;
const settled = 1e-4;

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
  const labels = new Uint8Array(indices.length);
  for (let step = 0; step < mostSteps; step++) {
    assign(samples, indices, centres, labels);
    const moved = averageEach(samples, indices, centres, labels);
    const isSettled = moved.every(
      (centre, at) => distance(centre, centres[at] ?? centre) < settled,
    );
    centres = moved;
    if (isSettled) break;
  }
  return centres
    .map((_, label) => indices.filter((_index, at) => labels[at] === label))
    .filter((members) => members.length > 0)
    .map((members) => describe(samples, members))
    .sort((one, other) => other.members.length - one.members.length);
}

function describe(samples: Samples, members: number[]): Cluster {
  const centre = meanOf(samples, members);
  let squares = 0;
  for (const index of members) squares += squareDistance(samples, index, centre);
  return { centre, radius: Math.sqrt(squares / members.length), members };
}

/** Each next centre is a sample, the likelier the further it lies from those chosen. */
function chooseCentres(samples: Samples, indices: readonly number[], count: number): Oklab[] {
  const random = startRandom(1);
  const centres = [sampleAt(samples, indices[Math.floor(random() * indices.length)] ?? 0)];
  const nearest = new Float64Array(indices.length).fill(Number.POSITIVE_INFINITY);
  while (centres.length < count) {
    const latest = centres[centres.length - 1] ?? [0, 0, 0];
    let sum = 0;
    for (let at = 0; at < indices.length; at++) {
      const square = squareDistance(samples, indices[at] ?? 0, latest);
      nearest[at] = Math.min(nearest[at] ?? square, square);
      sum += nearest[at] ?? 0;
    }
    if (sum === 0) break;
    centres.push(sampleAt(samples, pickWeighted(indices, nearest, random() * sum)));
  }
  return centres;
}

function pickWeighted(indices: readonly number[], weights: Float64Array, target: number): number {
  let sum = 0;
  for (let at = 0; at < indices.length; at++) {
    sum += weights[at] ?? 0;
    if (sum >= target) return indices[at] ?? 0;
  }
  return indices[indices.length - 1] ?? 0;
}

function assign(
  samples: Samples,
  indices: readonly number[],
  centres: Oklab[],
  labels: Uint8Array,
): void {
  for (let at = 0; at < indices.length; at++) {
    labels[at] = nearestCentre(samples, indices[at] ?? 0, centres);
  }
}

/** The mean colour of each group; a group without members keeps its centre. */
function averageEach(
  { values }: Samples,
  indices: readonly number[],
  centres: Oklab[],
  labels: Uint8Array,
): Oklab[] {
  const sums = new Float64Array(centres.length * 3);
  const counts = new Float64Array(centres.length);
  for (let at = 0; at < indices.length; at++) {
    const label = labels[at] ?? 0;
    counts[label] = (counts[label] ?? 0) + 1;
    for (let axis = 0; axis < 3; axis++) {
      const value = values[(indices[at] ?? 0) * 3 + axis] ?? 0;
      sums[label * 3 + axis] = (sums[label * 3 + axis] ?? 0) + value;
    }
  }
  return centres.map((centre, label) => {
    const count = counts[label] ?? 0;
    const mean = (axis: number) => (sums[label * 3 + axis] ?? 0) / count;
    return count === 0 ? centre : [mean(0), mean(1), mean(2)];
  });
}

function nearestCentre(samples: Samples, index: number, centres: Oklab[]): number {
  let best = 0;
  let least = Number.POSITIVE_INFINITY;
  for (let at = 0; at < centres.length; at++) {
    const square = squareDistance(samples, index, centres[at] ?? [0, 0, 0]);
    if (square < least) {
      best = at;
      least = square;
    }
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
