import { coreOf, indicesOf, join, type Marks, narrow, widen } from "./marks.ts";
import type { Oklab } from "./oklab.ts";
import { type Samples, thinOut } from "./samples.ts";

const lighter = 0.03;
const leastOffTheLine = 0.03;
const deviations = 3;
/** The blurred rim of a reflection, as a share of the region's width. */
const rimWidth = 0.02;
const medianSamples = 1000;

/**
 * Marks reflections. A reflection is pure white, or lighter than the glaze and on the way from its
 * colour to white light: lighter than the region's median by more than 0.03 in OKLab and by more
 * than three deviations (1.4826 times the median absolute deviation), and within 0.03 of the line
 * from the glaze's hue and chroma to none. Its blurred rim goes with it.
 *
 * A line of two samples or less is no reflection, since colours that meet blend like that. And where
 * light parts alternate with others all over the region's middle half they are the glaze's own, a
 * speckle or a pattern: then only pure white is left out. Rules of our own.
 */
export function findReflections(samples: Samples): Marks {
  const judged = indicesOf(samples.white, 0);
  if (judged.length === 0) return samples.white;
  const light = join(samples.white, markLight(samples, thinOut(judged, medianSamples)));
  const blots = narrow(alternates(samples, light) ? samples.white : light, samples);
  const rim = Math.ceil(rimWidth * samples.columns);
  return join(samples.white, widen(blots, samples, 1 + rim));
}

/** Marks what may be the glaze with light on it, the glaze's colour taken from `judged`. */
function markLight(samples: Samples, judged: readonly number[]): Marks {
  const { values } = samples;
  const axis = (at: number) => Float64Array.from(judged, (index) => values[index * 3 + at] ?? 0);
  const lightness = axis(0);
  const glaze: Oklab = [median(lightness), median(axis(1)), median(axis(2))];
  const bound = glaze[0] + Math.max(lighter, deviations * deviationOf(lightness, glaze[0]));
  const marks = new Uint8Array(samples.white.length);
  for (let index = 0; index < marks.length; index++) {
    const isLight = (values[index * 3] ?? 0) > bound;
    if (isLight && offTheLine(samples, index, glaze) < leastOffTheLine) marks[index] = 1;
  }
  return marks;
}

/** How far a sample's hue and chroma lie from the line between the glaze's and none. */
function offTheLine({ values }: Samples, index: number, glaze: Oklab): number {
  const [a, b] = [values[index * 3 + 1] ?? 0, values[index * 3 + 2] ?? 0];
  const square = glaze[1] ** 2 + glaze[2] ** 2;
  const along = square === 0 ? 0 : (a * glaze[1] + b * glaze[2]) / square;
  const share = Math.min(1, Math.max(0, along));
  return Math.hypot(a - share * glaze[1], b - share * glaze[2]);
}

/** Whether each of nine fields of the middle half has some of it, of about even share, and not all. */
function alternates(samples: Samples, marks: Marks): boolean {
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
  const shares = marked.map((count, field) => count / (counts[field] || 1));
  const mean = shares.reduce((sum, share) => sum + share, 0) / 9;
  return Math.min(...shares) > mean / 3 && Math.max(...shares) < 0.8;
}

/** The standard deviation that a normal distribution of this median absolute deviation has. */
function deviationOf(values: Float64Array, middle: number): number {
  return 1.4826 * median(values.map((value) => Math.abs(value - middle)));
}

function median(values: Float64Array): number {
  return Float64Array.from(values).sort()[values.length >> 1] ?? 0;
}
