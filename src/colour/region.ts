/** A decoded picture: red, green and blue of sRGB, eight bits each, row by row. */
export interface Pixels {
  data: Uint8Array;
  width: number;
  height: number;
}

/** Left, top, right and bottom edge, in per cent of the picture's width and height. */
export type Crop = readonly [left: number, top: number, right: number, bottom: number];

/** Where nothing else is said the middle half is measured: there the tile is, and no bare edge. */
export const defaultCrop: Crop = [25, 25, 75, 75];

/** A grid of picture positions: some rows and columns of a crop, at even steps. */
export interface Grid {
  columns: number[];
  rows: number[];
}

/** Lays an even grid of at most about `most` pixels into a crop; at least one pixel. */
export function layGrid({ width, height }: Pixels, crop: Crop, most: number): Grid {
  const across = spanOf(crop[0], crop[2], width);
  const down = spanOf(crop[1], crop[3], height);
  const step = Math.max(1, Math.ceil(Math.sqrt((across.length * down.length) / most)));
  return { columns: everyNth(across, step), rows: everyNth(down, step) };
}

function spanOf(from: number, to: number, length: number): { start: number; length: number } {
  const start = Math.min(length - 1, Math.max(0, Math.round((from / 100) * length)));
  const end = Math.min(length, Math.max(start + 1, Math.round((to / 100) * length)));
  return { start, length: end - start };
}

function everyNth({ start, length }: { start: number; length: number }, step: number): number[] {
  const count = Math.ceil(length / step);
  return Array.from({ length: count }, (_, index) => start + index * step);
}
