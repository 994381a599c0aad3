import { type Chart, chartCell, fillChart } from "./chart.ts";
import type { ClayRelief } from "./clay-relief.ts";
import { type Grid, num, sampleGrid } from "./grid.ts";
import { planMotif } from "./motifs.ts";
import type { TilePlan } from "./tile-plan.ts";

/** A far place inside or outside, where no edge is near. */
const FAR = 60;

/** What the words of `where` mean on one tile. */
export interface TileAreas {
  /** Signed distance in millimetres to the edge of the union of areas; positive inside. */
  find(where: readonly string[]): Grid;
  /** How far above the bare foot a place lies, in millimetres. */
  readonly aboveFoot: Grid;
}

/** Left and right together mean the two sides, not the two halves. */
const SIDES: Readonly<Record<string, (x: number) => number>> = {
  left: (x) => -9 - x,
  right: (x) => x - 9,
};

/** Millimetres at the bottom that makers keep free of glaze. */
const FOOT = 11;

export function makeAreas(chart: Chart, plan: TilePlan, relief: ClayRelief): TileAreas {
  const { face } = chart;
  const motif = planMotif(plan, 13);
  const middle = (face.top + face.bottom + FOOT) / 2;
  const patterned = spreadOf(relief.pattern) > 0.05;
  const level = patterned ? middleLevel(relief.pattern) : 0;
  const raised = (x: number, y: number): number => {
    if (!patterned) return -motif(x, y - middle);
    const [c, r] = chartCell(chart, x, y);
    return (sampleGrid(relief.pattern, c, r) - level) * 3;
  };
  const rimDepth = plan.shape === "flat" || plan.shape === "channel" ? 13 : 11;
  const half = (face.right - face.left) / 2;
  const distances: Readonly<Record<string, (x: number, y: number) => number>> = {
    all: () => FAR,
    top: (_, y) => y - middle + 2,
    bottom: (_, y) => middle + 4 - y,
    left: (x) => 2 - x,
    right: (x) => x + 2,
    rim: (_, y) => Math.min(y - face.top + rimDepth, face.top + 8 - y),
    centre: (x, y) => (1 - Math.hypot(x / (half * 0.62), (y - middle) / 21)) * 19,
    motif: (x, y) => -motif(x, y - middle),
    background: (x, y) => motif(x, y - middle),
    raised,
    hollows: (x, y) => -raised(x, y) - 0.1,
  };
  return {
    find(where) {
      const bothSides = where.includes("left") && where.includes("right");
      const parts = where.map((name) => (bothSides ? SIDES[name] : undefined) ?? distances[name]);
      return fillChart(chart, (x, y) => {
        let best = -FAR;
        for (const part of parts) best = Math.max(best, part ? part(x, y) : FAR);
        return best;
      });
    },
    aboveFoot: fillChart(chart, (_, y) => y - face.bottom - FOOT),
  };
}

function spreadOf(grid: Grid): number {
  let low = 0;
  let high = 0;
  for (let i = 0; i < grid.data.length; i += 7) {
    low = Math.min(low, num(grid.data, i));
    high = Math.max(high, num(grid.data, i));
  }
  return high - low;
}

/** Half way between the deepest and the highest of a texture. */
function middleLevel(grid: Grid): number {
  let low = 0;
  let high = 0;
  for (let i = 0; i < grid.data.length; i++) {
    low = Math.min(low, num(grid.data, i));
    high = Math.max(high, num(grid.data, i));
  }
  return low * 0.45 + high * 0.3;
}
