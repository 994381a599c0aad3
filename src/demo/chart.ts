import { type Grid, makeGrid } from "./grid.ts";

/** A rectangle in millimetres, x to the right and y up. */
export interface Extent {
  readonly left: number;
  readonly right: number;
  readonly bottom: number;
  readonly top: number;
}

/**
 * A tile's skin laid flat: everything that is done to a tile is worked out here, and the form then
 * says which place of the chart a point of the solid shows.
 */
export interface Chart {
  readonly extent: Extent;
  /** The part that faces the viewer and takes the glaze; beyond it the skin turns over the edges. */
  readonly face: Extent;
  readonly perMm: number;
  readonly width: number;
  readonly height: number;
}

export function makeChart(face: Extent, margin: Extent, perMm: number): Chart {
  const extent = {
    left: face.left - margin.left,
    right: face.right + margin.right,
    bottom: face.bottom - margin.bottom,
    top: face.top + margin.top,
  };
  return {
    extent,
    face,
    perMm,
    width: Math.round((extent.right - extent.left) * perMm),
    height: Math.round((extent.top - extent.bottom) * perMm),
  };
}

/** A grid of the chart's size, filled from `value(x, y)` in millimetres. */
export function fillChart(chart: Chart, value: (x: number, y: number) => number): Grid {
  const grid = makeGrid(chart.width, chart.height);
  const step = 1 / chart.perMm;
  let at = 0;
  for (let row = 0; row < chart.height; row++) {
    const y = chart.extent.top - (row + 0.5) * step;
    for (let column = 0; column < chart.width; column++) {
      grid.data[at++] = value(chart.extent.left + (column + 0.5) * step, y);
    }
  }
  return grid;
}

/** The chart's column and row of a place in millimetres. */
export function chartCell(chart: Chart, x: number, y: number): readonly [number, number] {
  return [(x - chart.extent.left) * chart.perMm - 0.5, (chart.extent.top - y) * chart.perMm - 0.5];
}
