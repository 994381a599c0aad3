import { layCoats } from "./application.ts";
import { makeAreas, type TileAreas } from "./areas.ts";
import { type Chart, fillChart } from "./chart.ts";
import type { ClayRelief } from "./clay-relief.ts";
import { clamp, type Grid, makeGrid, num, smoothstep } from "./grid.ts";
import { planMotif } from "./motifs.ts";
import { clouds, grain, noisePlace } from "./noise.ts";
import type { CoatStep, GlazeLook, RemoveStep, ResistStep, Step, TilePlan } from "./tile-plan.ts";

/** One coating on the tile: how thick it lies, in usual brushed coats. */
export interface Coating {
  readonly glaze: GlazeLook;
  readonly thickness: Grid;
}

/** What lies on the clay when everything in the record has been done, before it melts. */
export interface GlazedClay {
  readonly coatings: readonly Coating[];
  /** Where a tool went into the clay, in millimetres below the surface. */
  readonly scratches: Grid;
}

interface Progress {
  coatings: Coating[];
  /** 1 where a resist keeps the next coats off. */
  resist: Grid | undefined;
  readonly scratches: Grid;
  /** How many of the coatings have been through the kiln and cannot be wiped off. */
  fired: number;
}

/** Does the steps of a tile's record, in their order. */
export function glazeClay(chart: Chart, plan: TilePlan, relief: ClayRelief): GlazedClay {
  const areas = makeAreas(chart, plan, relief);
  const progress: Progress = {
    coatings: [],
    resist: undefined,
    scratches: makeGrid(chart.width, chart.height),
    fired: 0,
  };
  plan.steps.forEach((step, i) => {
    doStep(chart, plan, areas, progress, step, `step ${i}`);
  });
  return { coatings: progress.coatings, scratches: progress.scratches };
}

function doStep(
  chart: Chart,
  plan: TilePlan,
  areas: TileAreas,
  progress: Progress,
  step: Step,
  name: string,
): void {
  switch (step.does) {
    case "coat":
      progress.coatings.push(...coat(chart, plan, areas, progress, step, name));
      return;
    case "resist":
      progress.resist = addResist(chart, plan, areas, progress.resist, step, name);
      return;
    case "remove":
      remove(chart, plan, areas, progress, step, name);
      return;
    case "fire":
      progress.resist = undefined;
      progress.fired = progress.coatings.length;
  }
}

function coat(
  chart: Chart,
  plan: TilePlan,
  areas: TileAreas,
  progress: Progress,
  step: CoatStep,
  name: string,
): Coating[] {
  const laid = layCoats(chart, plan, step, areas.find(whereOf(step)), areas.aboveFoot, name);
  if (progress.resist) keepOff(chart, laid, progress.resist, `${plan.code} ${name}`);
  if (!step.fade) return [{ glaze: step.glaze, thickness: laid }];
  const share = fadeShare(chart, step.fade.along, `${plan.code} ${name}`);
  const other = { width: laid.width, height: laid.height, data: laid.data.slice() };
  for (let i = 0; i < laid.data.length; i++) {
    laid.data[i] = num(laid.data, i) * (1 - num(share.data, i));
    other.data[i] = num(other.data, i) * num(share.data, i);
  }
  return [
    { glaze: step.glaze, thickness: laid },
    { glaze: step.fade.to, thickness: other },
  ];
}

/** A stencil or transfer shows its figure in the middle, whatever else it is said to cover. */
function whereOf(step: CoatStep): readonly string[] {
  const printed = step.by === "stencil" || step.by === "transfer";
  return printed && /^(all|centre)$/.test(step.where.join()) ? ["motif"] : step.where;
}

/** Takes a coat off where resist lies, but for small beads that stay on it. */
function keepOff(chart: Chart, laid: Grid, resist: Grid, seed: string): void {
  const at = noisePlace(`beads ${seed}`);
  let i = 0;
  const beads = fillChart(chart, (x, y) =>
    smoothstep(0.62, 0.74, grain(at.x + x * 0.95, at.y + y * 0.95)),
  );
  for (; i < laid.data.length; i++) {
    const kept = num(resist.data, i);
    laid.data[i] = num(laid.data, i) * (1 - kept) + 0.5 * kept * num(beads.data, i);
  }
}

/** How far along a fade each place lies: 0 at its beginning, 1 at its end. */
function fadeShare(chart: Chart, along: string, seed: string): Grid {
  const at = noisePlace(`fade ${seed}`);
  const { face } = chart;
  const width = face.right - face.left;
  const height = face.top - face.bottom;
  const place = (x: number, y: number): number => {
    const right = (x - face.left) / width;
    const up = (y - face.bottom - 8) / (height - 8);
    const out = Math.max(Math.abs(x) / (width / 2), Math.abs(up - 0.5) * 2);
    if (/left to right/.test(along)) return right;
    if (/right to left/.test(along)) return 1 - right;
    if (/(bottom|foot) to (top|rim)/.test(along)) return up;
    if (/(rim|edge) to centre/.test(along)) return 1 - out;
    if (/centre to (rim|edge)/.test(along)) return out;
    return 1 - up;
  };
  return fillChart(chart, (x, y) =>
    smoothstep(0.22, 0.78, place(x, y) + 0.12 * clouds(at.x + x * 0.12, at.y + y * 0.12)),
  );
}

function addResist(
  chart: Chart,
  plan: TilePlan,
  areas: TileAreas,
  before: Grid | undefined,
  step: ResistStep,
  name: string,
): Grid {
  const inside = areas.find(step.where);
  const at = noisePlace(`resist ${plan.code} ${name}`);
  const wave = step.material === "wax" ? 0.35 : 0.08;
  let i = 0;
  return fillChart(chart, (x, y) => {
    const strips = step.cross ? 2.4 - Math.min(Math.abs(x), Math.abs(y - 5)) : 99;
    const d = step.cross ? strips : num(inside.data, i);
    const now = smoothstep(-0.12, 0.12, d + wave * clouds(at.x + x * 0.5, at.y + y * 0.5));
    const earlier = before ? num(before.data, i) : 0;
    i++;
    return Math.max(now, earlier);
  });
}

function remove(
  chart: Chart,
  plan: TilePlan,
  areas: TileAreas,
  progress: Progress,
  step: RemoveStep,
  name: string,
): void {
  if (step.way === "peel") {
    progress.resist = undefined;
    return;
  }
  if (step.way === "all") {
    progress.coatings.splice(progress.fired);
    return;
  }
  const left = whatIsLeft(chart, plan, areas, progress, step, name);
  for (const coating of progress.coatings.slice(progress.fired)) {
    const { data } = coating.thickness;
    for (let i = 0; i < data.length; i++) data[i] = num(data, i) * num(left.data, i);
  }
}

/** The share of each coat that stays after wiping, scraping, washing or scratching. */
function whatIsLeft(
  chart: Chart,
  plan: TilePlan,
  areas: TileAreas,
  progress: Progress,
  step: RemoveStep,
  name: string,
): Grid {
  const at = noisePlace(`remove ${plan.code} ${name}`);
  const inside = areas.find(step.where);
  const raised = areas.find(["raised"]);
  const line = step.way === "sgraffito" ? scratchLines(plan, step) : undefined;
  let i = -1;
  return fillChart(chart, (x, y) => {
    i++;
    const d = num(inside.data, i);
    const smear = clouds(at.x + x * 0.07, at.y + y * 0.5);
    if (line) {
      const cut = smoothstep(0.72, 0.5, line(x, y) + 0.12 * smear) * (d > 0 ? 1 : 0);
      progress.scratches.data[i] = Math.max(num(progress.scratches.data, i), 0.4 * cut);
      return 1 - cut;
    }
    const reach = smoothstep(-0.5, 0.6, d);
    if (step.way === "scrape") return 1 - reach;
    if (step.way === "wash-off") return 1 - reach * clamp(0.75 + 0.3 * smear, 0, 1);
    const high = smoothstep(-0.9, 0.5, num(raised.data, i) + 0.25 * smear);
    return 1 - reach * clamp(0.3 + 0.62 * high + 0.15 * smear, 0, 0.96);
  });
}

/** Distance to the lines that a tool drew through the glaze. */
function scratchLines(plan: TilePlan, step: RemoveStep): (x: number, y: number) => number {
  const motif = planMotif(plan, 13);
  if (
    step.where.some((name) => ["motif", "background", "centre"].includes(name)) ||
    step.where.includes("all")
  ) {
    return (x, y) => {
      const d = motif(x, y - 4);
      const hatch = Math.abs(((((x + y) % 3.4) + 3.4) % 3.4) - 1.7) * 0.7;
      return d < -1 ? Math.min(Math.abs(d), hatch) : Math.abs(d);
    };
  }
  return (x, y) => Math.abs(((((x + 3 * Math.sin(y * 0.14)) % 6) + 6) % 6) - 3);
}
