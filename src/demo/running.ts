import { type Chart, chartCell, fillChart } from "./chart.ts";
import type { Coating } from "./glazing.ts";
import { clamp, type Grid, num, sampleGrid, smoothstep } from "./grid.ts";
import { grain, noisePlace } from "./noise.ts";
import type { TilePlan } from "./tile-plan.ts";

/** A coating and how readily the melt carries it: 0 stays, 1 runs. */
export interface Moving extends Coating {
  readonly flow: number;
}

/** A melt that ran farther than this many millimetres leaves the place that it came from bare. */
const LEAVES_BARE = 14;

/** Lets every coat run down the tile as far as the record or its own flow says. */
export function runDown(chart: Chart, plan: TilePlan, moving: readonly Moving[]): Moving[] {
  const run = runLength(plan, moving);
  const fingers = makeFingers(chart, plan.code);
  return moving.map((coating) => {
    const share = clamp((coating.flow - 0.12) * 2, 0, 1);
    return run * share < 0.5
      ? coating
      : {
          ...coating,
          thickness: slide(chart, coating.thickness, run * share, fingers),
        };
  });
}

/** How many millimetres the lower edge moves where it moves most. */
function runLength(plan: TilePlan, moving: readonly Moving[]): number {
  if (plan.shape === "channel") return 0;
  if (plan.run !== undefined) return plan.run;
  if (plan.faults.includes("running")) return 12;
  const load = moving.reduce((sum, c) => sum + meanOf(c.thickness) * Math.max(0, c.flow - 0.4), 0);
  return clamp(load * 2.4, 0, 14);
}

function meanOf(grid: Grid): number {
  let sum = 0;
  let count = 0;
  for (let i = 0; i < grid.data.length; i += 13) {
    if (num(grid.data, i) > 0.1) {
      sum += num(grid.data, i);
      count++;
    }
  }
  return count > 0 ? sum / count : 0;
}

/** How far each place across a tile runs, as a share of where it runs farthest. */
function makeFingers(chart: Chart, code: string): (x: number) => number {
  const at = noisePlace(`run ${code}`);
  const { left, right } = chart.face;
  const raw = (x: number): number => {
    const wide = smoothstep(-0.35, 0.75, grain(at.x + x * 0.085, at.y));
    const narrow = smoothstep(0.1, 0.8, grain(at.y + x * 0.21, at.x));
    return 0.18 + 0.55 * wide + 0.27 * narrow * wide;
  };
  let most = 0;
  for (let x = left; x <= right; x += 0.5) most = Math.max(most, raw(x));
  return (x) => Math.min(1, raw(x) / most);
}

/** Moves a coat down by up to `run` millimetres; what is left above is thin, or next to nothing. */
function slide(chart: Chart, coat: Grid, run: number, fingers: (x: number) => number): Grid {
  const { top, bottom } = chart.face;
  const height = top - bottom;
  const perColumn = Float32Array.from({ length: chart.width }, (_, column) =>
    fingers(chart.extent.left + (column + 0.5) / chart.perMm),
  );
  const bare = smoothstep(LEAVES_BARE, 2.6 * LEAVES_BARE, run);
  const thickness = fillChart(chart, (x, y) => {
    const down = clamp((top - y) / height, 0, 1);
    const finger = num(perColumn, Math.floor((x - chart.extent.left) * chart.perMm));
    const [column, row] = chartCell(chart, x, y + run * finger * down ** 0.8);
    const drained = 1 + (run / height) * (1.7 * down ** 0.8 - 1.15);
    const cleared = smoothstep(0, 1.5, (down * height) / (run * (0.55 + 0.45 * finger)));
    return sampleGrid(coat, column, row) * drained * (1 - bare * (1 - cleared) * 0.96);
  });
  leaveTrail(chart, coat, thickness, run);
  thickenLowerEdge(chart, thickness, clamp(0.45 + run * 0.15, 0, 3.2) * Math.min(1, run / 3));
  return thickness;
}

/** What ran away from a place that is not fed from above leaves a film there. */
function leaveTrail(chart: Chart, before: Grid, after: Grid, run: number): void {
  const film = 0.28 * smoothstep(6, 16, run);
  if (film === 0) return;
  const { width } = after;
  const inner = Math.round((chart.extent.top - chart.face.top + 1) * chart.perMm) * width;
  for (let i = inner; i < after.data.length; i++) {
    const was = num(before.data, i);
    if (was > 0.3) after.data[i] = Math.max(num(after.data, i), film * Math.min(was, 1.5) * 0.35);
  }
}

/** Where a run ends, the glaze stands in a thick roll. */
function thickenLowerEdge(chart: Chart, thickness: Grid, roll: number): void {
  const { width, data } = thickness;
  const before = data.slice();
  const reach = Math.round(2.4 * chart.perMm) * width;
  for (let i = 0; i + reach < data.length; i++) {
    const here = num(before, i);
    if (here < 0.2) continue;
    const below = num(before, i + reach);
    const middle = num(before, i + (reach >> 1) - ((reach >> 1) % width));
    const missing = 1 - Math.min(1, (below * 0.6 + middle * 0.4) / here);
    data[i] = here * (1 + roll * missing);
  }
}
