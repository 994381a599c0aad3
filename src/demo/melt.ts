import type { Chart } from "./chart.ts";
import { fillChart } from "./chart.ts";
import type { Coating, GlazedClay } from "./glazing.ts";
import { blurGrid, clamp, type Grid, makeGrid, mix, num, smoothstep } from "./grid.ts";
import { clouds, findCell, makeCellHit, noisePlace } from "./noise.ts";
import { hashText } from "./random.ts";
import { type Moving, runDown } from "./running.ts";
import type { GlazeLook, TilePlan } from "./tile-plan.ts";

/** Millimetres of fired glaze that one usual brushed coat leaves. */
export const COAT_MM = 0.11;

/** How far beyond (above 0) or short of (below 0) its range the kiln took a glaze, in cones. */
export function conesBeyond(glaze: GlazeLook, plan: TilePlan): number {
  const heat = hottest(plan);
  if (!glaze.range || heat === undefined) return 0;
  return heat > glaze.range[1] ? heat - glaze.range[1] : Math.min(0, heat - glaze.range[0]);
}

function hottest(plan: TilePlan): number | undefined {
  let heat: number | undefined;
  for (const step of plan.steps) {
    if (step.does !== "fire" || step.kind === "bisque" || step.heat === undefined) continue;
    heat = Math.max(heat ?? step.heat, step.heat);
  }
  return heat;
}

/** 0 stays where it was put, 1 runs; as the kiln took it. */
export function fluidity(glaze: GlazeLook, plan: TilePlan): number {
  const beyond = conesBeyond(glaze, plan);
  const melted = 1 - unmelted(glaze, plan);
  return clamp(
    (glaze.flow * (1 + 0.22 * clamp(beyond, -3, 5)) + Math.max(0, beyond) * 0.04) * melted,
    0,
    1.6,
  );
}

/** How far a glaze is from having melted: 0 melted, 1 still a powder. */
export function unmelted(glaze: GlazeLook, plan: TilePlan): number {
  const short = -Math.min(0, conesBeyond(glaze, plan));
  return clamp((short - 0.6) / 5, 0, 1);
}

/** Lets the glaze run, level out over the clay's relief and draw back from sharp edges. */
export function meltGlaze(chart: Chart, plan: TilePlan, clay: Grid, glazed: GlazedClay): Coating[] {
  const moving = glazed.coatings.map((coating, i) => ({
    ...coating,
    flow: mostFluidFrom(glazed.coatings, i, plan),
  }));
  const flow = Math.max(0, ...moving.map((coating) => coating.flow));
  const moved = runDown(
    chart,
    plan,
    moving.map((coating) => soften(chart, coating)),
  );
  openCracks(chart, plan, moved);
  const ratio = levelRatio(chart, plan, clay, moved, flow);
  const edges = edgeThinning(chart, plan.effects.includes("breaking") ? 1.25 : 0.85);
  const least = plan.effects.includes("breaking") ? 0.8 : 0.15;
  for (const coating of moved) {
    const share = clamp(least + coating.flow * 1.3, 0, 1);
    const drawnBack = coating.flow > 0.1 ? Math.max(share, 0.85) : 0.3;
    const { data } = coating.thickness;
    for (let i = 0; i < data.length; i++) {
      const levelled = mix(1, num(ratio.data, i), share);
      data[i] = num(data, i) * levelled * mix(1, num(edges.data, i), drawnBack);
    }
  }
  return moved.map(({ glaze, thickness }) => ({ glaze, thickness }));
}

/** A melt loses the marks of the brush; what does not melt keeps them. */
function soften(chart: Chart, coating: Moving): Moving {
  const sigma = (0.12 + 0.75 * Math.min(1, coating.flow)) * chart.perMm;
  const smooth = blurGrid(coating.thickness, sigma);
  const covered = makeGrid(chart.width, chart.height);
  for (let i = 0; i < covered.data.length; i++) {
    covered.data[i] = clamp(num(coating.thickness.data, i) * 3.5, 0, 1);
  }
  const cover = blurGrid(covered, sigma);
  for (let i = 0; i < smooth.data.length; i++) {
    const inside = num(cover.data, i);
    const domed = mix(0.5, 1, smoothstep(0.5, 0.97, inside));
    const edge = smoothstep(0.4, 0.56, inside) * domed;
    smooth.data[i] = (num(smooth.data, i) / Math.max(0.3, inside)) * edge;
  }
  return { ...coating, thickness: smooth };
}

/** A stiff coat over one that moves is torn open, and what lies beneath shows in the cracks. */
function openCracks(chart: Chart, plan: TilePlan, moved: readonly Moving[]): void {
  if (!plan.effects.includes("breaking") && !plan.effects.includes("variegated")) return;
  if (plan.faults.includes("crawling")) return;
  moved.forEach((coating, i) => {
    const stiff = fluidity(coating.glaze, plan) < 0.12 && coating.glaze.kind === "glaze";
    const beneath = moved.slice(0, i).map((below) => fluidity(below.glaze, plan));
    const pulls = Math.max(0, ...beneath);
    if (!stiff || pulls < 0.12) return;
    const width = 0.25 + 0.5 * Math.min(1, pulls);
    const open = crackNet(chart, `cracks ${plan.code}`, width, pulls);
    const { data } = coating.thickness;
    for (let k = 0; k < data.length; k++) data[k] = num(data, k) * num(open.data, k);
  });
}

/** Seams as in thawing ice: hair-fine here, open there, and never with an edge, for both melts meet in them. */
function crackNet(chart: Chart, seed: string, width: number, pulls: number): Grid {
  const at = noisePlace(seed);
  const salt = hashText(seed) & 0xffff;
  const hit = makeCellHit();
  const high = 7.5 + 5 * pulls;
  const gaps = fillChart(chart, (x, y) => {
    const wx = x + 1.6 * clouds(at.x + x * 0.13, at.y + y * 0.1);
    const wy = y + 2.2 * clouds(at.y + x * 0.13, at.x + y * 0.1);
    findCell(wx / 5.4, wy / high, salt, hit);
    const wide = width * (0.75 + 1.5 * clouds(at.x - x * 0.045, at.y - y * 0.03));
    return (hit.second - hit.nearest) * 5.4 - wide;
  });
  const soft = blurGrid(gaps, 0.16 * chart.perMm);
  for (let i = 0; i < soft.data.length; i++) {
    soft.data[i] = mix(0.06, 1, smoothstep(-0.35, 0.95, num(soft.data, i)));
  }
  return soft;
}

/** A coat moves as the most fluid of itself and what lies beneath carries it. */
function mostFluidFrom(coatings: readonly Coating[], index: number, plan: TilePlan): number {
  const own = coatings[index];
  if (!own) return 0;
  let flow = fluidity(own.glaze, plan);
  for (const below of coatings.slice(0, index)) {
    flow = Math.max(flow, 0.75 * fluidity(below.glaze, plan));
  }
  return flow;
}

/** What the melt leaves at each place, as a share of what was put there. */
function levelRatio(
  chart: Chart,
  plan: TilePlan,
  clay: Grid,
  moved: readonly Moving[],
  flow: number,
): Grid {
  const total = makeGrid(chart.width, chart.height);
  for (const { thickness } of moved) {
    for (let i = 0; i < total.data.length; i++) {
      total.data[i] = num(total.data, i) + num(thickness.data, i) * COAT_MM;
    }
  }
  const surface = makeGrid(chart.width, chart.height);
  for (let i = 0; i < surface.data.length; i++) {
    surface.data[i] = num(clay.data, i) + num(total.data, i);
  }
  const strong = plan.effects.some((effect) => effect === "breaking" || effect === "pooling");
  const reach = Math.max(strong ? 0.8 : 0.3, 0.3 + 1.5 * Math.min(1, flow));
  const level = blurGrid(surface, reach * chart.perMm);
  const pull = strong ? 1.6 : 0.8;
  const ratio = makeGrid(chart.width, chart.height, 1);
  for (let i = 0; i < ratio.data.length; i++) {
    const here = num(total.data, i);
    if (here < 0.01) continue;
    const hollow = (num(level.data, i) - num(surface.data, i)) * pull;
    ratio.data[i] = Math.exp(Math.tanh(hollow * 2.4));
  }
  return ratio;
}

/** Glaze draws back from the edges where the face turns over. */
function edgeThinning(chart: Chart, width: number): Grid {
  const { face } = chart;
  return fillChart(chart, (x, y) => {
    const d = Math.min(Math.abs(x - face.left), Math.abs(face.right - x), Math.abs(face.top - y));
    return 1 - 0.72 * Math.exp(-((Math.abs(d - 0.2) / width) ** 2));
  });
}
