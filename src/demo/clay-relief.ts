import { type Chart, fillChart } from "./chart.ts";
import { type Profile, reedStamps, roundStamps } from "./clay-stamps.ts";
import { blurGrid, type Grid, num, smoothstep } from "./grid.ts";
import { findHandwriting, writeByHand } from "./lettering.ts";
import { planMotif, stampMotif } from "./motifs.ts";
import { clouds, grain, type NoisePlace, noisePlace } from "./noise.ts";
import { hashText } from "./random.ts";
import type { TilePlan } from "./tile-plan.ts";

/** The clay's surface before any glaze. */
export interface ClayRelief {
  /** Millimetres above the plain form, the texture alone. */
  readonly pattern: Grid;
  /** The same with the hand's unevenness. */
  readonly height: Grid;
  /** Fine roughness that glaze levels out. */
  readonly tooth: Grid;
}

/** Works the texture that a tile's record names into its clay. */
export function makeClayRelief(chart: Chart, plan: TilePlan): ClayRelief {
  const at = noisePlace(`clay ${plan.code}`);
  const profile = textureProfile(plan, at);
  const sharp = fillChart(chart, (x, y) => {
    const u = x + 0.9 * clouds(at.x + x * 0.035, at.y + y * 0.035);
    const v = y + 0.9 * clouds(at.y + x * 0.035, at.x + y * 0.035);
    return profile(u, v) * (0.85 + 0.3 * grain(at.x - x * 0.06, at.y - y * 0.06));
  });
  const pattern = blurGrid(sharp, 0.2 * chart.perMm);
  const height = fillChart(chart, (x, y) => 0.05 * clouds(at.x + x * 0.035, at.y + y * 0.035));
  for (let i = 0; i < height.data.length; i++) {
    height.data[i] = num(height.data, i) + num(pattern.data, i);
  }
  return { pattern, height, tooth: makeTooth(chart, plan, at) };
}

function makeTooth(chart: Chart, plan: TilePlan, at: NoisePlace): Grid {
  const coarse = plan.clay.grog;
  return fillChart(chart, (x, y) => {
    const fine = grain(at.x + x * 5.5, at.y + y * 5.5) * 0.008;
    const middle = clouds(at.y + x * 0.9, at.x + y * 0.9) * (0.008 + 0.03 * coarse);
    const pit = smoothstep(0.52, 0.8, grain(at.x + x * 1.9, at.y - y * 1.9)) * 0.09 * coarse;
    return fine + middle - pit;
  });
}

function textureProfile(plan: TilePlan, at: NoisePlace): Profile {
  const variant = hashText(`${plan.set} ${plan.maker} ${plan.texture}`);
  switch (plan.texture) {
    case "smooth":
      return plan.scratched ? scratched(plan) : () => 0;
    case "carved":
      return carved(variant, plan, at);
    case "combed":
      return combed(variant, at);
    case "pierced":
      return pierced();
    case "rolled":
      return plan.figure === "net" ? netted() : rolled(variant);
    case "sprigged":
      return sprigged(plan.set);
    case "stamped":
      return plan.figure === "reed" ? reedStamps(plan.code) : roundStamps(plan.set, at);
    case "slip-trailed":
      return slipTrailed(variant, at);
    default:
      return pressed(plan, variant, at);
  }
}

/** A tile's code, scratched into soft clay by its maker. */
function scratched({ scratched: word = "", maker, code }: TilePlan): Profile {
  const lettering = writeByHand(word, 9, findHandwriting(maker), code);
  return (x, y) => groove(lettering.distance(x + lettering.width / 2, y), 0.7, 0.65);
}

/** A groove of a depth whose walls slope from its middle outwards. */
function groove(distance: number, depth: number, half: number): number {
  const d = Math.abs(distance) / half;
  return d >= 1.5 ? 0 : d >= 1 ? (0.06 * (1.5 - d)) / 0.5 : -depth * (1 - d) ** 0.8;
}

function carved(variant: number, plan: TilePlan, at: NoisePlace): Profile {
  const kind = plan.motif ? 1 : variant % 3;
  const motif = planMotif(plan, 15);
  return (x, y) => {
    const uneven = 1 + 0.25 * grain(at.x + x * 0.2, at.y + y * 0.2);
    if (kind === 0) {
      const wave = y + 4.5 * Math.sin(x * 0.11 + 0.6) + 0.5 * grain(at.x + x * 0.15, at.y);
      return groove((((wave % 6.4) + 6.4) % 6.4) - 3.2, 1.15 * uneven, 1.7);
    }
    if (kind === 1) {
      const distance = motif(x, y - 3);
      const rays = Math.abs(Math.sin(Math.atan2(y - 3, x) * 14)) * Math.hypot(x, y - 3) * 0.07;
      const outline = groove(distance, 1.2 * uneven, 1.2);
      return outline + (distance > 2.6 ? groove(rays, 0.55, 0.6) : 0);
    }
    const chevron = y + Math.abs(x) * 0.8 + 1.1 * grain(at.x + y * 0.11, x > 0 ? 3 : 9);
    return groove((((chevron % 7) + 7) % 7) - 3.5, 1.1 * uneven, 1.5) + groove(x, 1.0, 1.1);
  };
}

function combed(variant: number, at: NoisePlace): Profile {
  const upright = variant % 2 === 0;
  const wave = 2 + (variant % 5);
  return (x, y) => {
    const along = upright ? y : x;
    const across =
      (upright ? x : y) + wave * Math.sin(along * 0.1 + 1) + grain(at.x + along * 0.08, at.y);
    const swath = ((across % 21) + 21) % 21;
    if (swath > 17.5) return 0;
    const tooth = (swath % 2.5) - 1.25;
    const drag = 0.9 + 0.2 * grain(at.y + along * 0.5, Math.floor(across / 2.5));
    return groove(tooth, 0.8 * drag, 0.72) + 0.1 * smoothstep(0.85, 1.2, Math.abs(tooth));
  };
}

/** Something pressed into the clay: a fossil, a bird's foot, cloth or rope. */
function pressed(plan: TilePlan, variant: number, at: NoisePlace): Profile {
  if (plan.figure === "fossil") return ammonite();
  if (plan.figure === "foot") return footprints();
  return variant % 2 === 0 ? cloth(at) : ropes();
}

function ammonite(): Profile {
  return (x, y) => {
    const r = Math.hypot(x, y - 3);
    const angle = Math.atan2(y - 3, x);
    const whorl = (Math.log(Math.max(r, 0.5) / 1.5) / 0.155 - angle) / (2 * Math.PI);
    const across = whorl - Math.floor(whorl);
    const edge = smoothstep(19.5, 18.6, r);
    const tube = 0.85 * Math.sin(Math.PI * across) ** 0.7;
    const ribs = 0.2 * Math.cos(angle * 22 + r * 0.15) * Math.sin(Math.PI * across);
    return -edge * (0.25 + tube + ribs);
  };
}

function footprints(): Profile {
  const toe = (x: number, y: number, angle: number, length: number): number => {
    const u = x * Math.cos(angle) + y * Math.sin(angle);
    const v = y * Math.cos(angle) - x * Math.sin(angle);
    const lobes = 1.05 + 0.5 * Math.abs(Math.sin(u * 0.62));
    return u < -0.6 || u > length ? 0 : -0.75 * smoothstep(lobes, lobes * 0.4, Math.abs(v));
  };
  return (x, y) => {
    let deepest = 0;
    for (const [cx, cy, lean] of [
      [-11, -14, 0.25],
      [9, 3, -0.1],
      [-8, 20, 0.2],
    ] as const) {
      for (const [spread, length] of [
        [0, 15],
        [0.6, 12.5],
        [-0.6, 12.5],
        [3.0, 4.5],
      ] as const) {
        deepest = Math.min(deepest, toe(x - cx, y - cy, Math.PI / 2 + lean + spread, length));
      }
    }
    return deepest;
  };
}

function cloth(at: NoisePlace): Profile {
  return (x, y) => {
    const over = Math.sin(x * 2.6) * Math.sin(y * 2.6) > 0 ? 1 : 0.55;
    const slub = 1 + 0.3 * grain(at.x + x * 0.1, at.y + y * 0.6);
    const thread = Math.max(Math.cos(x * 2.6) ** 2, Math.cos(y * 2.6) ** 2);
    return -0.34 * over * slub * (0.5 + 0.5 * thread);
  };
}

function ropes(): Profile {
  return (x, y) => {
    const strand = (x + y * 0.7) / 3.2;
    const row = ((((y % 9) + 9) % 9) - 4.5) / 3.2;
    return -0.8 * Math.max(0, 1 - row * row) * (0.6 + 0.4 * Math.cos(strand * 2 * Math.PI));
  };
}

/** A fisherman's net, left standing. */
function netted(): Profile {
  return (x, y) => {
    const wave = 0.35 * Math.sin(y * 0.8);
    const a = Math.abs(((((x + y * 0.8 + wave) % 7) + 7) % 7) - 3.5);
    const b = Math.abs(((((x - y * 0.8 - wave) % 7) + 7) % 7) - 3.5);
    const knot = smoothstep(1.9, 0.9, Math.hypot(a, b));
    return -0.75 + 0.75 * Math.max(smoothstep(1, 0.45, Math.min(a, b)), knot) + 0.15 * knot;
  };
}

function pierced(): Profile {
  return (x, y) => {
    let nearest = Math.hypot(x, y - 4) - 3.4;
    for (let k = 0; k < 8; k++) {
      const angle = (k / 8) * Math.PI * 2;
      const hole = Math.hypot(x - 12.5 * Math.cos(angle), y - 4 - 12.5 * Math.sin(angle)) - 2.3;
      nearest = Math.min(nearest, hole);
    }
    return nearest > 0.5
      ? 0
      : -5 * smoothstep(0.15, -0.5, nearest) - 0.15 * smoothstep(0.5, 0, nearest);
  };
}

function rolled(variant: number): Profile {
  const kind = variant % 2;
  return (x, y) => {
    const band = Math.floor((y + 100) / 9);
    const v = (y + 100) % 9;
    const rim = groove(Math.min(v, 9 - v), 0.5, 0.7);
    if (kind === 0 && band % 2 === 0) {
      const diamond = Math.abs((((x % 6) + 6) % 6) - 3) + Math.abs(v - 4.5) * 0.9;
      return rim - 0.6 * smoothstep(2.6, 2.1, diamond);
    }
    if (band % 2 === 0) {
      const bead = Math.hypot((((x % 5) + 5) % 5) - 2.5, v - 4.5);
      return rim + 0.55 * Math.sqrt(Math.max(0, 1 - (bead / 2) ** 2)) - 0.25;
    }
    const zigzag = v - 4.5 - (Math.abs((((x % 7) + 7) % 7) - 3.5) - 1.75) * 1.1;
    return rim + groove(zigzag, 0.65, 0.9);
  };
}

function sprigged(set: string): Profile {
  const motif = stampMotif(set, 15);
  return (x, y) => {
    const distance = motif(x, y - 4);
    const body = 1.5 * smoothstep(0.5, -2.4, distance);
    const detail = 0.22 * Math.cos(distance * 2.4) * smoothstep(-0.8, -1.6, distance);
    const seat = -0.12 * smoothstep(1.4, 0.2, distance) * smoothstep(-0.4, 0.3, distance);
    return body + detail + seat;
  };
}

function slipTrailed(variant: number, at: NoisePlace): Profile {
  const spirals = variant % 2 === 0;
  return (x, y) => {
    const rope = 0.85 + 0.15 * grain(at.x + x * 0.3, at.y + y * 0.3);
    const distance = spirals ? spiralDistance(x, y - 3) : vineDistance(x, y, at);
    const half = 1.25 * rope;
    return distance > half ? 0 : 1.15 * rope * Math.sqrt(1 - (distance / half) ** 2);
  };
}

function spiralDistance(x: number, y: number): number {
  const r = Math.hypot(x, y);
  if (r > 19) return r - 19;
  const turn = r - (Math.atan2(y, x) / (2 * Math.PI)) * 5.2;
  return Math.abs(turn - Math.round(turn / 5.2) * 5.2);
}

function vineDistance(x: number, y: number, at: NoisePlace): number {
  const bend = (shift: number) =>
    Math.abs(x - shift - 3.5 * Math.sin(y * 0.16 + shift) - grain(at.x, y * 0.1)) * 0.88;
  const row = Math.round(y / 9) * 9;
  const bud = Math.abs(Math.hypot(x - (row % 2 ? 9 : -9), y - row) - 1.6);
  return Math.min(bend(0), bend(-18), bend(18), bud);
}
