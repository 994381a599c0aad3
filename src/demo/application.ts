import { type Chart, fillChart } from "./chart.ts";
import { clamp, type Grid, num, smoothstep } from "./grid.ts";
import { stampMotif } from "./motifs.ts";
import { clouds, findCell, grain, makeCellHit, type NoisePlace, noisePlace } from "./noise.ts";
import { between, hashText, makeChance } from "./random.ts";
import type { CoatStep, TilePlan } from "./tile-plan.ts";

/** Thickness of a coat at a place, `inside` millimetres from the edge of its area: 1 is a usual brushed coat. */
type Lay = (x: number, y: number, inside: number) => number;

/** Lays a step's coats: thickness at each place of the chart, in usual brushed coats. */
export function layCoats(
  chart: Chart,
  plan: TilePlan,
  step: CoatStep,
  inside: Grid,
  aboveFoot: Grid,
  name: string,
): Grid {
  const seed = `${plan.code} ${name}`;
  const lays = Array.from({ length: Math.max(1, Math.ceil(step.coats)) }, (_, i) => {
    const share = Math.min(1, step.coats - i) || 1;
    const lay = wayOf(step, plan, chart, `${seed} coat ${i}`, i);
    return (x: number, y: number, d: number) => lay(x, y, d) * share;
  });
  const scale = step.thickness * step.glaze.weight;
  const foot = footLine(step.by, seed);
  let at = 0;
  return fillChart(chart, (x, y) => {
    const free = isPuddle(step) ? 60 : num(inside.data, at);
    const d = Math.min(free, foot(x, num(aboveFoot.data, at)));
    at++;
    if (d < -9) return 0;
    let sum = 0;
    for (const lay of lays) sum += lay(x, y, d);
    return sum * scale;
  });
}

/** A drip whose cover nobody gave is one measured drop. */
function isPuddle(step: CoatStep): boolean {
  return step.by === "drip" && step.cover === undefined;
}

/** The lower edge, as straight as the way of applying leaves it. */
function footLine(by: string, seed: string): (x: number, above: number) => number {
  const at = noisePlace(`foot ${seed}`);
  const shift = between(makeChance(`foot ${seed}`), -1.2, 1.6);
  const [wave, ragged] = by === "dip" ? [0.35, 0] : by === "pour" ? [2, 0] : [0.9, 0.5];
  return (x, above) =>
    above + shift + wave * grain(at.x + x * 0.06, at.y) + ragged * grain(at.y + x * 0.5, at.x);
}

function wayOf(step: CoatStep, plan: TilePlan, chart: Chart, seed: string, coat: number): Lay {
  const at = noisePlace(seed);
  switch (step.by) {
    case "dip":
      return dip(at, chart, coat);
    case "pour":
      return pour(at, coat);
    case "spray":
      return spray(at);
    case "sponge":
      return sponge(at);
    case "sponge-stamp":
      return spongeStamp(at, plan);
    case "stencil":
    case "transfer":
      return stencil(at, step.by === "transfer");
    case "trail":
      return trail(at, step.cover);
    case "pen":
      return pen(at);
    case "dot":
      return dots(at, step.cover);
    case "spatter":
      return spatter(at, step.cover);
    case "drip":
      return isPuddle(step) ? puddle(at, chart, plan.run ?? 0) : drips(seed, chart, step.cover);
    case "roll":
      return roll(at);
    default:
      return brush(at, seed, coat);
  }
}

function brush(at: NoisePlace, seed: string, coat: number): Lay {
  const chance = makeChance(seed);
  const angle = (coat % 2 === 0 ? 0 : Math.PI / 2) + between(chance, -0.1, 0.1);
  const width = between(chance, 13, 18);
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  const offset = between(chance, 0, width);
  return (x, y, inside) => {
    const along = x * c + y * s;
    const across = y * c - x * s + offset + 1.6 * grain(at.x + along * 0.03, at.y);
    const stroke = Math.floor(across / width);
    const place = across / width - stroke;
    const bristle = clouds(
      at.x + across * 0.26 + stroke * 3.1,
      at.y + along * 0.014 + stroke * 7.7,
    );
    const hairs = grain(at.y + across * 1.7, at.x + along * 0.05 + stroke * 5.3);
    const load = 0.9 + 0.28 * grain(at.x + stroke * 1.7, at.y + along * 0.025);
    const ridge =
      0.2 *
      (Math.exp(-((place * width) ** 2) / 1.6) +
        0.6 * Math.exp(-(((1 - place) * width) ** 2) / 1.1));
    const thickness = load + 0.26 * bristle + 0.07 * hairs + ridge;
    const edge = smoothstep(-0.45, 0.35, inside + 0.6 * bristle + 0.25 * hairs);
    return Math.max(0.12, thickness) * edge;
  };
}

/** A first dip lies as thick as two brushed coats; a coat beneath drinks less of the next. */
const DIP_COATS = 1.95;

function dip(at: NoisePlace, chart: Chart, coat: number): Lay {
  const load = coat === 0 ? DIP_COATS : DIP_COATS * 0.45;
  const height = chart.face.top - chart.face.bottom;
  return (x, y, inside) => {
    const lower = 0.12 * clamp((chart.face.top - y) / height, 0, 1);
    const curtain = 0.1 * grain(at.x + x * 0.16, at.y + y * 0.012);
    const bead = 0.22 * Math.exp(-((inside / 1.1) ** 2));
    const body = 0.95 + lower + curtain + 0.05 * clouds(at.x + x * 0.06, at.y + y * 0.06) + bead;
    return load * body * smoothstep(-0.18, 0.2, inside);
  };
}

function pour(at: NoisePlace, coat: number): Lay {
  const load = coat === 0 ? DIP_COATS : DIP_COATS * 0.45;
  return (x, y, inside) => {
    const tongue = 4.5 * grain(at.x + x * 0.075, at.y) + 1.2 * grain(at.x + x * 0.2, at.y + 5);
    const d = inside + Math.min(0, tongue) * (inside < 30 ? 1 : 0);
    const stream = 0.4 * smoothstep(0.1, 0.7, grain(at.y + x * 0.09, at.x + y * 0.012));
    const lip = 0.45 * Math.exp(-(((d - 0.9) / 1.2) ** 2));
    return load * (0.82 + stream + lip) * smoothstep(-0.2, 0.35, d);
  };
}

function spray(at: NoisePlace): Lay {
  return (x, y, inside) => {
    const cloud = 0.85 + 0.22 * clouds(at.x + x * 0.03, at.y + y * 0.03);
    const drops =
      1 + 0.75 * grain(at.x + x * 2.1, at.y + y * 2.1) * grain(at.y + x * 3.7, at.x + y * 3.7);
    const fine = 0.2 * grain(at.y + x * 4.4, at.x + y * 4.4);
    return (
      Math.max(0, cloud * drops + fine) *
      smoothstep(-5, 6, inside + 1.2 * grain(at.x + x * 2.4, at.y + y * 2.4))
    );
  };
}

function sponge(at: NoisePlace): Lay {
  return (x, y, inside) => {
    const pores = clouds(at.x + x * 0.42, at.y + y * 0.42);
    const dab = 0.35 * grain(at.y + x * 0.09, at.x + y * 0.09);
    const body = smoothstep(-0.28, 0.3, pores + dab);
    return (0.25 + 1.1 * body) * smoothstep(-1.2, 1, inside + 2.2 * pores);
  };
}

function spongeStamp(at: NoisePlace, plan: TilePlan): Lay {
  const motif = stampMotif(`${plan.maker} sponge`, 6.2);
  return (x, y, inside) => {
    const row = Math.round(y / 16);
    const shift = row % 2 === 0 ? 0 : 8.5;
    const column = Math.round((x - shift) / 17);
    const u = x - shift - column * 17 + 1.4 * grain(at.x + row * 3.3, at.y + column * 5.7);
    const v = y - row * 16 + 1.4 * grain(at.y + column * 2.9, at.x + row * 4.1);
    const press = 0.9 + 0.35 * grain(at.x + row * 7.1, at.y + column * 3.9);
    const pores = clouds(at.x + x * 0.6, at.y + y * 0.6);
    const mark = smoothstep(0.35, -0.3, motif(u, v) - 0.6 * pores);
    return (
      1.25 *
      press *
      mark *
      (0.55 + 0.6 * smoothstep(-0.35, 0.2, pores)) *
      smoothstep(-0.5, 0.5, inside)
    );
  };
}

function stencil(at: NoisePlace, printed: boolean): Lay {
  return (x, y, inside) => {
    const dabs = printed ? 0 : 0.25 * clouds(at.x + x * 0.5, at.y + y * 0.5);
    const screen = printed ? 0.12 * Math.sin(x * 9) * Math.sin(y * 9) : 0;
    const bleed = 0.25 * clouds(at.y + x * 0.4, at.x + y * 0.4);
    return 1.1 * (1 + dabs + screen) * smoothstep(-0.14, 0.14, inside + bleed);
  };
}

/** The upper half of a round rope, `half` millimetres to either side. */
function rope(distance: number, half: number): number {
  return distance >= half ? 0 : Math.sqrt(1 - (distance / half) ** 2);
}

const COVER_STEP: Readonly<Record<string, number>> = { sparse: 17, medium: 11, dense: 7 };

function trail(at: NoisePlace, cover: string | undefined): Lay {
  const step = COVER_STEP[cover ?? "medium"] ?? 11;
  return (x, y, inside) => {
    const wave = y + 3.2 * Math.sin(x * 0.21 + at.x) + 1.5 * grain(at.x + x * 0.06, at.y);
    const row = Math.round(wave / step);
    const loop = step * 0.16 * Math.sin(x * 0.9 + row * 2.1);
    const half = 0.95 + 0.28 * grain(at.y + x * 0.12, row * 3.3);
    const distance = Math.abs(wave + loop - row * step) * 0.8;
    return 3.4 * rope(distance, half) * smoothstep(0, 0.8, inside);
  };
}

/** A drawn outline, and a second line inside it. */
function pen(at: NoisePlace): Lay {
  return (x, y, inside) => {
    const shaky = inside + 0.22 * clouds(at.x + x * 0.25, at.y + y * 0.25);
    const line = Math.min(Math.abs(shaky - 0.3), Math.abs(shaky - 1.7) + 0.12);
    const press = 0.85 + 0.3 * grain(at.x + x * 0.7, at.y + y * 0.7);
    return 1.4 * press * smoothstep(0.36, 0.16, line);
  };
}

function dots(at: NoisePlace, cover: string | undefined): Lay {
  const step = (COVER_STEP[cover ?? "medium"] ?? 11) * 0.85;
  return (x, y, inside) => {
    const row = Math.round(y / (step * 0.87));
    const shift = row % 2 === 0 ? 0 : step / 2;
    const column = Math.round((x - shift) / step);
    const size = 1.45 + 0.45 * grain(at.x + row * 5.3, at.y + column * 3.7);
    const dx = x - shift - column * step + 0.9 * grain(at.y + row * 2.3, at.x + column * 6.1);
    const dy = y - row * step * 0.87 + 0.9 * grain(at.x + column * 4.9, at.y + row * 3.1);
    return 3.2 * rope(Math.hypot(dx, dy), size) * smoothstep(-0.5, 1, inside);
  };
}

function spatter(at: NoisePlace, cover: string | undefined): Lay {
  const density = { sparse: 0.16, medium: 0.34, dense: 0.6 }[cover ?? "medium"] ?? 0.34;
  const hit = makeCellHit();
  const salt = hashText(`${at.x} ${at.y}`) & 0xffff;
  return (x, y, inside) => {
    let sum = 0;
    for (const [cell, largest] of [
      [7, 1.5],
      [3.2, 0.75],
      [1.4, 0.3],
    ] as const) {
      findCell(at.x + x / cell, at.y + y / cell, salt + cell * 10, hit);
      if (hit.id > density) continue;
      const size = largest * (0.35 + 0.65 * (hit.id / density) ** 2);
      sum += 2.6 * Math.min(1, size) * rope(hit.nearest * cell, size);
    }
    return sum * smoothstep(-1, 2, inside);
  };
}

function drips(seed: string, chart: Chart, cover: string | undefined): Lay {
  const chance = makeChance(seed);
  const count = { sparse: 4, medium: 7, dense: 11 }[cover ?? "medium"] ?? 7;
  const { left, right, top, bottom } = chart.face;
  const runs = Array.from({ length: count }, (_, i) => ({
    x: left + ((i + between(chance, 0.15, 0.85)) / count) * (right - left),
    end: top - between(chance, 0.15, 0.8) * (top - bottom - 10),
    half: between(chance, 1, 2.1),
  }));
  return (x, y, inside) => {
    let best = 0;
    for (const run of runs) {
      const below = run.end - y;
      const bulb = 1 + 0.35 * Math.exp(-(((y - run.end - 2) / 2.5) ** 2));
      const distance = below > 0 ? Math.hypot(x - run.x, below) : Math.abs(x - run.x);
      best = Math.max(best, rope(distance, run.half * bulb));
    }
    return 3 * best * smoothstep(-0.5, 1.5, inside);
  };
}

/** One measured drop near the top of a gutter, and the tongue that it sent down. */
function puddle(at: NoisePlace, chart: Chart, run: number): Lay {
  const start = chart.face.top - 13;
  const end = Math.max(chart.face.bottom + 2, start - run);
  return (x, y) => {
    const u = x - 1.2 * grain(at.x, at.y + y * 0.05);
    const uneven = 0.5 * grain(at.x + x * 0.2, at.y + y * 0.2);
    const drop = 3.2 * rope(Math.hypot(u * 0.95, y - start) + uneven, 7.5);
    const half = 4.6 + 1.1 * grain(at.y, at.x + y * 0.07);
    const d = Math.hypot(u, Math.max(0, end - y, y - start)) + uneven;
    const tongue = 2.6 * rope(d, half);
    const bead =
      4.2 * rope(Math.hypot(u, (y - end - 1) * 0.85) + uneven, Math.min(5.6, 2 + run * 0.12));
    return (drop ** 4 + tongue ** 4 + bead ** 4) ** 0.25;
  };
}

function roll(at: NoisePlace): Lay {
  return (x, y, inside) => {
    const nap = 0.34 * clouds(at.x + x * 0.3, at.y + y * 0.3);
    return Math.max(0.1, 0.95 + nap) * smoothstep(-0.5, 0.4, inside + nap * 2);
  };
}
