import { num } from "./grid.ts";
import { hashText, makeChance } from "./random.ts";

const SIZE = 1024;
const MASK = SIZE - 1;

/** Gradient noise that repeats every `cells` cells over a square of SIZE. */
function gradientTile(cells: number, seed: string): Float32Array {
  const chance = makeChance(seed);
  const angles = Float32Array.from({ length: cells * cells }, () => chance() * Math.PI * 2);
  const out = new Float32Array(SIZE * SIZE);
  const step = cells / SIZE;
  const corner = (cx: number, cy: number, dx: number, dy: number) => {
    const angle = num(angles, (cy % cells) * cells + (cx % cells));
    return Math.cos(angle) * dx + Math.sin(angle) * dy;
  };
  for (let row = 0; row < SIZE; row++) {
    const y = row * step;
    const y0 = Math.floor(y);
    const fy = y - y0;
    const ey = fy * fy * fy * (fy * (fy * 6 - 15) + 10);
    for (let column = 0; column < SIZE; column++) {
      const x = column * step;
      const x0 = Math.floor(x);
      const fx = x - x0;
      const ex = fx * fx * fx * (fx * (fx * 6 - 15) + 10);
      const a = corner(x0, y0, fx, fy);
      const b = corner(x0 + 1, y0, fx - 1, fy);
      const c = corner(x0, y0 + 1, fx, fy - 1);
      const d = corner(x0 + 1, y0 + 1, fx - 1, fy - 1);
      out[row * SIZE + column] = (a + (b - a) * ex) * (1 - ey) + (c + (d - c) * ex) * ey;
    }
  }
  return out;
}

function cloudTile(): Float32Array {
  const sum = new Float32Array(SIZE * SIZE);
  for (let octave = 0; octave < 5; octave++) {
    const tile = gradientTile(32 << octave, `clouds ${octave}`);
    const weight = 1.7 * 0.55 ** octave;
    for (let i = 0; i < sum.length; i++) sum[i] = num(sum, i) + num(tile, i) * weight;
  }
  return sum;
}

function grainTile(): Float32Array {
  return gradientTile(128, "grain").map((value) => value * 1.7);
}

function sampler(make: () => Float32Array, perUnit: number): (x: number, y: number) => number {
  let tile: Float32Array | undefined;
  return (x, y) => {
    tile ??= make();
    const u = x * perUnit;
    const v = y * perUnit;
    const x0 = Math.floor(u);
    const y0 = Math.floor(v);
    const fx = u - x0;
    const fy = v - y0;
    const left = x0 & MASK;
    const right = (x0 + 1) & MASK;
    const top = (y0 & MASK) * SIZE;
    const low = ((y0 + 1) & MASK) * SIZE;
    const a = num(tile, top + left);
    const c = num(tile, low + left);
    return (
      (a + (num(tile, top + right) - a) * fx) * (1 - fy) +
      (c + (num(tile, low + right) - c) * fx) * fy
    );
  };
}

/** Cloudy noise, five octaves, largest features one unit across; mostly −1 to 1, mean 0. */
export const clouds = sampler(cloudTile, SIZE / 32);

/** Smooth noise of one size, features one unit across; mostly −1 to 1, mean 0. */
export const grain = sampler(grainTile, SIZE / 128);

/** A place in a noise of its own for each seed and use. */
export interface NoisePlace {
  readonly x: number;
  readonly y: number;
}

export function noisePlace(seed: string): NoisePlace {
  const hash = hashText(seed);
  return { x: (hash & 0xffff) / 97, y: (hash >>> 16) / 89 };
}

/** What lies around a point among scattered seeds: the two nearest distances and the nearest's id. */
export interface CellHit {
  nearest: number;
  second: number;
  id: number;
  /** From the point to the nearest seed. */
  dx: number;
  dy: number;
}

export function makeCellHit(): CellHit {
  return { nearest: 0, second: 0, id: 0, dx: 0, dy: 0 };
}

/** A number from 0 to 1 for a cell of the plane. */
export function cellChance(x: number, y: number, salt: number): number {
  let h = Math.imul(x, 0x27d4eb2d) ^ Math.imul(y, 0x165667b1) ^ Math.imul(salt, 0x9e3779b1);
  h = Math.imul(h ^ (h >>> 15), 0x85ebca6b);
  h = Math.imul(h ^ (h >>> 13), 0xc2b2ae35);
  return ((h ^ (h >>> 16)) >>> 0) / 4294967296;
}

/** Looks among seeds scattered one to a unit cell; writes into `hit` and returns it. */
export function findCell(x: number, y: number, salt: number, hit: CellHit): CellHit {
  const cx = Math.floor(x);
  const cy = Math.floor(y);
  let nearest = 9;
  let second = 9;
  let id = 0;
  for (let j = -1; j <= 1; j++) {
    for (let i = -1; i <= 1; i++) {
      const dx = cx + i + cellChance(cx + i, cy + j, salt) - x;
      const dy = cy + j + cellChance(cx + i, cy + j, salt + 1) - y;
      const d = dx * dx + dy * dy;
      if (d < nearest) {
        second = nearest;
        nearest = d;
        hit.dx = dx;
        hit.dy = dy;
        id = cellChance(cx + i, cy + j, salt + 2);
      } else if (d < second) second = d;
    }
  }
  hit.nearest = Math.sqrt(nearest);
  hit.second = Math.sqrt(second);
  hit.id = id;
  return hit;
}
