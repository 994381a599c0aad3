import { findClusters } from "./clusters.ts";
import type { Oklab } from "./oklab.ts";
import { type Samples, sampleAt } from "./samples.ts";

/**
 * Which samples show the glaze: all but reflections and what is not the tile's middle's. Rules of
 * our own, for OKLab (in it 0.01 of lightness is about 1 of CIELAB's). They take for granted that
 * glaze without reflection covers more than half of the region.
 *
 * A *reflection* is pure white, or lighter than the glaze and on the way from its colour to white
 * light: lighter than the region's median by more than 0.03 and by more than three deviations
 * (1.4826 times the median absolute deviation); and within 0.03 of the line from the glaze's hue and
 * chroma to none. Its blurred rim goes with it; a line of two samples or less is none, since colours
 * that meet blend like that. But where such light parts alternate with others all
 * over the region's middle half they are the glaze's own, a speckle or a pattern: then only pure
 * white is left out.
 *
 * A *bare edge* (bare clay, ground, a neighbour) reaches in from the region's border and looks like
 * nothing in its middle half: further than 0.03, and than three radii, from each of the main colours
 * there. Lightness counts less than hue and chroma in that, since light falls off towards the edges.
 *
 * Where the rules leave less than a tenth, they are mistaken and everything but pure white counts.
 */
export function findGlazePixels(samples: Samples): number[] {
  const isReflection = findReflections(samples);
  const isBare = findBareEdges(samples, isReflection);
  const every = everyIndex(samples);
  const glaze = every.filter((index) => !isReflection[index] && !isBare[index]);
  if (glaze.length >= LEAST_GLAZE * every.length) return glaze;
  const notWhite = every.filter((index) => !samples.white[index]);
  return notWhite.length > 0 ? notWhite : every;
}

const LEAST_GLAZE = 0.1;
const LIGHTER = 0.03;
const OFF_THE_LINE = 0.03;
const DEVIATIONS = 3;
/** The blurred rim of a reflection, as a share of the region's width. */
const RIM = 0.02;

function findReflections(samples: Samples): Uint8Array {
  const judged = everyIndex(samples).filter((index) => !samples.white[index]);
  const rim = Math.ceil(RIM * samples.columns);
  if (judged.length === 0) return samples.white;
  const glaze = medianColour(samples, judged);
  const deviation = deviationOf(judged.map((index) => sampleAt(samples, index)[0]));
  const bound = glaze[0] + Math.max(LIGHTER, DEVIATIONS * deviation);
  const light = judged.filter((index) => {
    const colour = sampleAt(samples, index);
    return colour[0] > bound && offTheLine(colour, glaze) < OFF_THE_LINE;
  });
  const found = Uint8Array.from(samples.white);
  for (const index of light) found[index] = 1;
  const blots = narrow(alternates(samples, found) ? samples.white : found, samples);
  return join(samples.white, widen(blots, samples, 1 + rim));
}

/** Whether each of nine fields of the middle half has some of it, of about even share, and not all. */
function alternates(samples: Samples, marks: Uint8Array): boolean {
  const counts = new Array<number>(9).fill(0);
  const marked = new Array<number>(9).fill(0);
  const { left, right, top, bottom } = coreOf(samples);
  for (let y = top; y < bottom; y++) {
    for (let x = left; x < right; x++) {
      const row = Math.floor((3 * (y - top)) / (bottom - top));
      const field = row * 3 + Math.floor((3 * (x - left)) / (right - left));
      counts[field] = (counts[field] ?? 0) + 1;
      marked[field] = (marked[field] ?? 0) + (marks[y * samples.columns + x] ?? 0);
    }
  }
  const shares = marked.map((count, field) => count / (counts[field] ?? 1));
  const mean = shares.reduce((sum, share) => sum + share, 0) / 9;
  return Math.min(...shares) > mean / 3 && Math.max(...shares) < 0.8;
}

/** How far a colour's hue and chroma lie from the line between the glaze's and none. */
function offTheLine(colour: Oklab, glaze: Oklab): number {
  const square = glaze[1] ** 2 + glaze[2] ** 2;
  const along = square === 0 ? 0 : (colour[1] * glaze[1] + colour[2] * glaze[2]) / square;
  const share = Math.min(1, Math.max(0, along));
  return Math.hypot(colour[1] - share * glaze[1], colour[2] - share * glaze[2]);
}

const CORE_COLOURS = 4;
const LEAST_SHARE = 0.05;
const UNLIKE = 0.03;
const LIGHTNESS_WEIGHT = 0.4;

function findBareEdges(samples: Samples, isReflection: Uint8Array): Uint8Array {
  const core = coreIndices(samples).filter((index) => !isReflection[index]);
  const bare = new Uint8Array(samples.columns * samples.rows);
  if (core.length < LEAST_GLAZE * coreIndices(samples).length) return bare;
  const colours = findClusters(samples, core, CORE_COLOURS).filter(
    (cluster) => cluster.members.length >= LEAST_SHARE * core.length,
  );
  const isUnlike = (index: number) =>
    colours.every(
      ({ centre, radius }) =>
        unlikeness(sampleAt(samples, index), centre) > Math.max(UNLIKE, DEVIATIONS * radius),
    );
  const queue = borderIndices(samples);
  for (let index = queue.pop(); index !== undefined; index = queue.pop()) {
    if (bare[index] || !isUnlike(index)) continue;
    bare[index] = 1;
    queue.push(...neighbours(samples, index));
  }
  return bare;
}

function unlikeness(one: Oklab, other: Oklab): number {
  return Math.hypot(LIGHTNESS_WEIGHT * (one[0] - other[0]), one[1] - other[1], one[2] - other[2]);
}

function everyIndex({ columns, rows }: Samples): number[] {
  return Array.from({ length: columns * rows }, (_, index) => index);
}

/** The middle half of the region across and down. */
function coreOf({ columns, rows }: Samples) {
  return {
    left: Math.floor(columns / 4),
    right: Math.ceil((columns * 3) / 4),
    top: Math.floor(rows / 4),
    bottom: Math.ceil((rows * 3) / 4),
  };
}

function coreIndices(samples: Samples): number[] {
  const { left, right, top, bottom } = coreOf(samples);
  const indices: number[] = [];
  for (let y = top; y < bottom; y++) {
    for (let x = left; x < right; x++) indices.push(y * samples.columns + x);
  }
  return indices;
}

function borderIndices({ columns, rows }: Samples): number[] {
  const indices: number[] = [];
  for (let x = 0; x < columns; x++) indices.push(x, (rows - 1) * columns + x);
  for (let y = 0; y < rows; y++) indices.push(y * columns, y * columns + columns - 1);
  return indices;
}

function neighbours({ columns, rows }: Samples, index: number): number[] {
  const [x, y] = [index % columns, Math.floor(index / columns)];
  const found: number[] = [];
  if (x > 0) found.push(index - 1);
  if (x < columns - 1) found.push(index + 1);
  if (y > 0) found.push(index - columns);
  if (y < rows - 1) found.push(index + columns);
  return found;
}

function widen(marks: Uint8Array, samples: Samples, steps: number): Uint8Array {
  let current = marks;
  for (let step = 0; step < steps; step++) {
    const next = Uint8Array.from(current);
    current.forEach((mark, index) => {
      if (mark) for (const neighbour of neighbours(samples, index)) next[neighbour] = 1;
    });
    current = next;
  }
  return current;
}

/** Takes off each marked patch's outermost samples: what was thin is gone. */
function narrow(marks: Uint8Array, samples: Samples): Uint8Array {
  return marks.map((mark, index) => {
    const around = neighbours(samples, index);
    return mark && around.every((neighbour) => marks[neighbour]) ? 1 : 0;
  });
}

function join(one: Uint8Array, other: Uint8Array): Uint8Array {
  return one.map((mark, index) => mark | (other[index] ?? 0));
}

function medianColour(samples: Samples, indices: number[]): Oklab {
  const axis = (at: 0 | 1 | 2) => median(indices.map((index) => sampleAt(samples, index)[at]));
  return [axis(0), axis(1), axis(2)];
}

/** The standard deviation that a normal distribution of this median absolute deviation has. */
function deviationOf(values: number[]): number {
  const middle = median(values);
  return 1.4826 * median(values.map((value) => Math.abs(value - middle)));
}

function median(values: number[]): number {
  const sorted = Float64Array.from(values).sort();
  return sorted[sorted.length >> 1] ?? 0;
}
