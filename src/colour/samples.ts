import { chain, type Matrix, type Vector } from "./matrix.ts";
import { conesToOklab, linearToCones, type Oklab } from "./oklab.ts";
import type { Grid, Pixels } from "./region.ts";
import { lightOfCode } from "./srgb.ts";

/**
 * Colours in OKLab on a grid, row by row. Here, and wherever every sample is visited, numbers are
 * worked on one by one: a small array for each would cost more than the reckoning itself.
 */
export interface Samples {
  /** Three numbers for each sample. */
  values: Float64Array;
  columns: number;
  rows: number;
  /** 1 where the picture is pure white, which only a reflection or too much light gives. */
  white: Uint8Array;
  /** 1 where a channel is at one of its ends, so that the true colour may lie beyond. */
  clipped: Uint8Array;
}

const whiteCode = 250;
const fullCode = 254;
const emptyCode = 1;

/** Reads the pixels of a grid as OKLab, their light changed by a matrix where one is given. */
export function readSamples(pixels: Pixels, grid: Grid, correction?: Matrix): Samples {
  const [columns, rows] = [grid.columns.length, grid.rows.length];
  const samples: Samples = {
    values: new Float64Array(columns * rows * 3),
    columns,
    rows,
    white: new Uint8Array(columns * rows),
    clipped: new Uint8Array(columns * rows),
  };
  const toCones = correction ? chain(correction, linearToCones) : linearToCones;
  let index = 0;
  for (const y of grid.rows) {
    for (const x of grid.columns) {
      readSample(pixels, (y * pixels.width + x) * 3, toCones, samples, index);
      index += 1;
    }
  }
  return samples;
}

function readSample(
  { data }: Pixels,
  at: number,
  toCones: Matrix,
  { values, white, clipped }: Samples,
  index: number,
): void {
  const red = data[at] ?? 0;
  const green = data[at + 1] ?? 0;
  const blue = data[at + 2] ?? 0;
  const least = Math.min(red, green, blue);
  const most = Math.max(red, green, blue);
  white[index] = least >= whiteCode ? 1 : 0;
  clipped[index] = most >= fullCode || least <= emptyCode ? 1 : 0;
  const r = lightOfCode[red] ?? 0;
  const g = lightOfCode[green] ?? 0;
  const b = lightOfCode[blue] ?? 0;
  const l = Math.cbrt(weigh(toCones[0], r, g, b));
  const m = Math.cbrt(weigh(toCones[1], r, g, b));
  const s = Math.cbrt(weigh(toCones[2], r, g, b));
  values[index * 3] = weigh(conesToOklab[0], l, m, s);
  values[index * 3 + 1] = weigh(conesToOklab[1], l, m, s);
  values[index * 3 + 2] = weigh(conesToOklab[2], l, m, s);
}

function weigh(row: Vector, x: number, y: number, z: number): number {
  return row[0] * x + row[1] * y + row[2] * z;
}

export function sampleAt({ values }: Samples, index: number): Oklab {
  return [values[index * 3] ?? 0, values[index * 3 + 1] ?? 0, values[index * 3 + 2] ?? 0];
}

/** How far a sample lies from a colour, squared, lightness counting `weight` times. */
export function squareDistance(
  { values }: Samples,
  index: number,
  colour: Oklab,
  weight = 1,
): number {
  const L = weight * ((values[index * 3] ?? 0) - colour[0]);
  const a = (values[index * 3 + 1] ?? 0) - colour[1];
  const b = (values[index * 3 + 2] ?? 0) - colour[2];
  return L * L + a * a + b * b;
}

export function meanOf({ values }: Samples, indices: readonly number[]): Oklab {
  let [L, a, b] = [0, 0, 0];
  for (const index of indices) {
    L += values[index * 3] ?? 0;
    a += values[index * 3 + 1] ?? 0;
    b += values[index * 3 + 2] ?? 0;
  }
  return [L / indices.length, a / indices.length, b / indices.length];
}

export function distance(one: Oklab, other: Oklab): number {
  return Math.hypot(one[0] - other[0], one[1] - other[1], one[2] - other[2]);
}

/**
 * At most `most` of the indices, evenly spread by the golden ratio: at even steps they might fall
 * into columns of the grid and meet a pattern's stripes.
 */
export function thinOut(indices: readonly number[], most: number): readonly number[] {
  if (indices.length <= most) return indices;
  return Array.from({ length: most }, (_, at) => {
    const share = (at * goldenRatio) % 1;
    return indices[Math.floor(share * indices.length)] ?? 0;
  });
}

const goldenRatio = (1 + Math.sqrt(5)) / 2;
