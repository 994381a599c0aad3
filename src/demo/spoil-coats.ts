import type { Chart } from "./chart.ts";
import { fillChart } from "./chart.ts";
import type { Coating } from "./glazing.ts";
import { blurGrid, clamp, type Grid, num, smoothstep } from "./grid.ts";
import {
  type CellHit,
  clouds,
  findCell,
  grain,
  makeCellHit,
  type NoisePlace,
  noisePlace,
} from "./noise.ts";
import { hashText } from "./random.ts";
import type { TilePlan } from "./tile-plan.ts";

/** Faults that move or remove glaze, worked on the coats before they are painted. */
export function spoilCoats(chart: Chart, plan: TilePlan, coatings: readonly Coating[]): void {
  for (const fault of plan.faults) {
    const share = coatLeft(chart, plan, fault);
    if (!share) continue;
    for (const { thickness } of fault === "crawling" ? coatings.slice(-1) : coatings) {
      const { data } = thickness;
      for (let i = 0; i < data.length; i++) data[i] = num(data, i) * num(share.data, i);
    }
  }
}

function coatLeft(chart: Chart, plan: TilePlan, fault: string): Grid | undefined {
  const at = noisePlace(`${fault} ${plan.code}`);
  const hit = makeCellHit();
  const salt = hashText(`${fault} ${plan.code}`) & 0xffff;
  switch (fault) {
    case "crawling":
      return crawl(chart, at, salt, hit);
    case "pinholing":
      return fillChart(chart, (x, y) => {
        findCell(x / 2.3, y / 2.3, salt, hit);
        const many = 0.3 + 0.35 * clouds(at.x + x * 0.05, at.y + y * 0.05);
        if (hit.id > many) return 1;
        const size = 0.13 + 0.2 * hit.id;
        const d = hit.nearest * 2.3;
        return (
          smoothstep(size * 0.55, size, d) * (1 + 0.2 * Math.exp(-(((d - size * 1.4) / 0.15) ** 2)))
        );
      });
    case "flaking":
    case "shivering":
      return fillChart(chart, (x, y) => {
        const { face } = chart;
        const edge = Math.min(x - face.left, face.right - x, face.top - y);
        const worst = smoothstep(-0.1, 0.5, grain(at.x + x * 0.02, at.y + y * 0.02));
        const reach = (fault === "shivering" ? 2.2 : 5.5) * worst;
        const chip =
          reach *
          (grain(at.x + x * 0.17, at.y + y * 0.17) + 0.35 * grain(at.y + x * 0.6, at.x + y * 0.6));
        const patch =
          fault === "flaking" ? grain(at.y + x * 0.1, at.x + y * 0.1) * worst - 0.5 : -1;
        return smoothstep(-0.1, 0.1, Math.min(edge - chip, -patch * 6));
      });
    case "too-thin":
      return fillChart(chart, () => 0.65);
    case "too-thick":
      return fillChart(chart, (x, y) => 1.5 + 0.3 * clouds(at.x + x * 0.06, at.y + y * 0.06));
    default:
      return undefined;
  }
}

/**
 * Glaze that drew back into islands: where one ends it stands in a rounded roll, as thick as what the
 * bare clay between has lost.
 */
function crawl(chart: Chart, at: NoisePlace, salt: number, hit: CellHit): Grid {
  const edges = fillChart(chart, (x, y) => {
    const bad = clouds(at.x + x * 0.025, at.y + y * 0.025) + 0.02;
    const wx = x + 1.2 * grain(at.y + x * 0.2, at.x + y * 0.2);
    const wy = y + 1.2 * grain(at.x + x * 0.2, at.y - y * 0.2);
    findCell(wx / 6.4, wy / 6.4, salt, hit);
    const gap = (hit.second - hit.nearest) * 6.4;
    return gap - clamp(bad * 4.5 + (hit.id - 0.5) * 1.4, -1.5, 2.6);
  });
  const round = blurGrid(edges, 0.42 * chart.perMm);
  for (let i = 0; i < round.data.length; i++) {
    const d = num(round.data, i);
    const wall = Math.sqrt(clamp(d / ROLL, 0, 1));
    const roll = 1.9 * Math.exp(-(((d - ROLL) / 0.5) ** 2));
    round.data[i] = wall * (1 + roll);
  }
  return round;
}

/** Millimetres from the end of crawled glaze to the top of its roll. */
const ROLL = 0.55;
