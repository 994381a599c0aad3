import { type Matrix, multiply } from "./matrix.ts";
import { CONES_TO_OKLAB, LINEAR_TO_CONES, type Oklab } from "./oklab.ts";
import type { Grid, Pixels } from "./region.ts";
import { LIGHT_OF_CODE } from "./srgb.ts";

/** Colours in OKLab on a grid: three numbers for each, row by row. */
export interface Samples {
  values: Float64Array;
  columns: number;
  rows: number;
  /** 1 where the picture is pure white, which only a reflection or too much light gives. */
  white: Uint8Array;
  /** 1 where a channel is at one of its ends, so that the true colour may lie beyond. */
  clipped: Uint8Array;
}

const WHITE_CODE = 250;
const FULL_CODE = 254;
const EMPTY_CODE = 1;

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
  let index = 0;
  for (const y of grid.rows) {
    for (const x of grid.columns) {
      readSample(pixels, (y * pixels.width + x) * 3, samples, index, correction);
      index += 1;
    }
  }
  return samples;
}

/** Written out number by number, since this runs for every pixel. */
function readSample(
  { data }: Pixels,
  at: number,
  { values, white, clipped }: Samples,
  index: number,
  correction?: Matrix,
): void {
  const [red, green, blue] = [data[at] ?? 0, data[at + 1] ?? 0, data[at + 2] ?? 0];
  white[index] = Math.min(red, green, blue) >= WHITE_CODE ? 1 : 0;
  const isFull = Math.max(red, green, blue) >= FULL_CODE;
  const isEmpty = Math.min(red, green, blue) <= EMPTY_CODE;
  clipped[index] = isFull || isEmpty ? 1 : 0;
  const light = [
    LIGHT_OF_CODE[red] ?? 0,
    LIGHT_OF_CODE[green] ?? 0,
    LIGHT_OF_CODE[blue] ?? 0,
  ] as const;
  const corrected = correction ? multiply(correction, light) : light;
  const cones = multiply(LINEAR_TO_CONES, corrected);
  const lab = multiply(CONES_TO_OKLAB, [
    Math.cbrt(cones[0]),
    Math.cbrt(cones[1]),
    Math.cbrt(cones[2]),
  ]);
  values.set(lab, index * 3);
}

export function sampleAt({ values }: Samples, index: number): Oklab {
  return [values[index * 3] ?? 0, values[index * 3 + 1] ?? 0, values[index * 3 + 2] ?? 0];
}

export function meanOf(samples: Samples, indices: readonly number[]): Oklab {
  const sum = [0, 0, 0];
  for (const index of indices) {
    for (let axis = 0; axis < 3; axis++) {
      sum[axis] = (sum[axis] ?? 0) + (samples.values[index * 3 + axis] ?? 0);
    }
  }
  const mean = (axis: number) => (sum[axis] ?? 0) / indices.length;
  return [mean(0), mean(1), mean(2)];
}

export function distance(one: Oklab, other: Oklab): number {
  return Math.hypot(one[0] - other[0], one[1] - other[1], one[2] - other[2]);
}
