/** A rectangle of numbers, row by row from the top left. */
export interface Grid {
  readonly width: number;
  readonly height: number;
  readonly data: Float32Array;
}

export function makeGrid(width: number, height: number, fill = 0): Grid {
  const data = new Float32Array(width * height);
  if (fill !== 0) data.fill(fill);
  return { width, height, data };
}

export function clamp(value: number, low: number, high: number): number {
  if (value < low) return low;
  return Math.min(value, high);
}

/** From 0 below `low` to 1 above `high`, with a soft shoulder at either end. */
export function smoothstep(low: number, high: number, value: number): number {
  const t = clamp((value - low) / (high - low), 0, 1);
  return t * t * (3 - 2 * t);
}

export function mix(from: number, to: number, share: number): number {
  return from + (to - from) * share;
}

/** The value at a fractional place (column and row of cell centres), held at the borders. */
export function sampleGrid(grid: Grid, column: number, row: number): number {
  const { width, height, data } = grid;
  const x = clamp(column, 0, width - 1.001);
  const y = clamp(row, 0, height - 1.001);
  const x0 = x | 0;
  const y0 = y | 0;
  const fx = x - x0;
  const fy = y - y0;
  const at = y0 * width + x0;
  const top = num(data, at) * (1 - fx) + num(data, at + 1) * fx;
  const low = num(data, at + width) * (1 - fx) + num(data, at + width + 1) * fx;
  return top * (1 - fy) + low * fy;
}

/** A cell that the caller knows to be inside. */
export function num(data: Float32Array, index: number): number {
  return data[index] as number;
}

/** A new grid, blurred with a near-Gaussian of the given standard deviation in cells. */
export function blurGrid(grid: Grid, sigma: number): Grid {
  const radius = Math.max(1, Math.round(Math.sqrt(sigma * sigma + 0.25) - 0.5 + sigma * 0.2));
  let from = grid.data;
  let into = new Float32Array(from.length);
  for (let pass = 0; pass < 3; pass++) {
    const across = boxRows(from, grid.width, grid.height, radius);
    into = boxColumns(across, grid.width, grid.height, radius);
    from = into;
  }
  return { width: grid.width, height: grid.height, data: into };
}

function boxRows(data: Float32Array, width: number, height: number, radius: number) {
  const out = new Float32Array(data.length);
  const share = 1 / (2 * radius + 1);
  for (let row = 0; row < height; row++) {
    const start = row * width;
    const last = start + width - 1;
    let sum = num(data, start) * radius;
    for (let i = 0; i <= radius; i++) sum += num(data, Math.min(start + i, last));
    for (let i = 0; i < width; i++) {
      out[start + i] = sum * share;
      sum += num(data, Math.min(start + i + radius + 1, last));
      sum -= num(data, Math.max(start + i - radius, start));
    }
  }
  return out;
}

function boxColumns(data: Float32Array, width: number, height: number, radius: number) {
  const out = new Float32Array(data.length);
  const sums = new Float64Array(width);
  const share = 1 / (2 * radius + 1);
  const line = (row: number) => clamp(row, 0, height - 1) * width;
  for (let row = -radius; row <= radius; row++) {
    for (let i = 0, at = line(row); i < width; i++) sums[i] = (sums[i] ?? 0) + num(data, at + i);
  }
  for (let row = 0; row < height; row++) {
    const at = row * width;
    const enter = line(row + radius + 1);
    const leave = line(row - radius);
    for (let i = 0; i < width; i++) {
      const sum = sums[i] as number;
      out[at + i] = sum * share;
      sums[i] = sum + num(data, enter + i) - num(data, leave + i);
    }
  }
  return out;
}
