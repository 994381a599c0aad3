import { makeChance, pick } from "./random.ts";
import type { TilePlan } from "./tile-plan.ts";

/** Signed distance in millimetres to a figure around the origin, about `size` from middle to edge; negative inside. */
export type Motif = (x: number, y: number) => number;

type MotifMaker = (size: number) => Motif;

function ellipse(x: number, y: number, halfX: number, halfY: number): number {
  return (Math.hypot(x / halfX, y / halfY) - 1) * Math.min(halfX, halfY);
}

/** Distance to a stroke from (ax, ay) to (bx, by). */
function stroke(x: number, y: number, ax: number, ay: number, bx: number, by: number): number {
  const dx = bx - ax;
  const dy = by - ay;
  const t = Math.min(1, Math.max(0, ((x - ax) * dx + (y - ay) * dy) / (dx * dx + dy * dy)));
  return Math.hypot(x - ax - t * dx, y - ay - t * dy);
}

const leaf: MotifMaker = (size) => (x, y) => {
  const bend = x - 0.012 * (y * y) + 0.1 * size;
  const half = size * 1.15;
  const radius = half * 1.25;
  const offset = Math.sqrt(radius * radius - half * half);
  const blade = Math.hypot(Math.abs(bend) + offset, y - size * 0.15) - radius;
  const stem = Math.max(Math.abs(bend) - 0.8, Math.abs(y + size * 1.1) - size * 0.35);
  return Math.min(Math.max(blade, 0.35 - Math.abs(bend)), stem);
};

const flower =
  (petals: number): MotifMaker =>
  (size) =>
  (x, y) => {
    const r = Math.hypot(x, y);
    const edge = size * (0.68 + 0.32 * Math.cos(Math.atan2(y, x) * petals));
    const heart = Math.abs(r - size * 0.24) - 0.5;
    return Math.max((r - edge) * 0.7, -heart);
  };

const moon: MotifMaker = (size) => (x, y) =>
  Math.max(Math.hypot(x, y) - size, size * 0.82 - Math.hypot(x - size * 0.42, y - size * 0.2));

const fish: MotifMaker = (size) => (x, y) => {
  const body = Math.hypot(x * 0.8, Math.abs(y) + size * 0.55) - size * 0.98;
  const tail = Math.max(Math.abs(y) - (x - size * 0.75) * 0.9, x - size * 1.35, size * 0.75 - x);
  const eye = size * 0.07 - Math.hypot(x + size * 0.6, y - size * 0.08);
  return Math.max(Math.min(body, tail), eye);
};

/** A long fish with an open, toothed jaw. */
const pike: MotifMaker = (size) => (x, y) => {
  const s = size * 1.45;
  const along = Math.min(1, Math.max(-1, x / s));
  const body =
    Math.abs(y) - s * 0.24 * Math.sqrt(Math.max(0, 1 - along * along)) * (1 - 0.25 * along);
  const ends = Math.abs(x) - s * 0.94;
  const tail = Math.max(Math.abs(y) - (x - s * 0.66) * 0.95, x - s * 1.08, s * 0.66 - x);
  const fin = Math.max(
    Math.abs(x - s * 0.42) - s * 0.14 + (Math.abs(y) - s * 0.2) * 0.6,
    Math.abs(y) - s * 0.38,
  );
  const tooth = 0.55 * (Math.abs((((x % 2) + 2) % 2) - 1) - 0.5);
  const jaw = x < -s * 0.4 ? 0.35 - Math.abs(y + s * 0.03 + tooth) : -9;
  const eye = s * 0.045 - Math.hypot(x + s * 0.52, y - s * 0.1);
  return Math.max(Math.min(Math.max(body * 0.8, ends), tail, fin), jaw, eye);
};

const crow: MotifMaker = (size) => (x, y) => {
  const turn = 0.45;
  const u = x * Math.cos(turn) + y * Math.sin(turn);
  const v = y * Math.cos(turn) - x * Math.sin(turn);
  const body = ellipse(u, v, size * 0.72, size * 0.36);
  const head = Math.hypot(x - size * 0.6, y - size * 0.58) - size * 0.25;
  const neck = stroke(x, y, size * 0.3, size * 0.25, size * 0.58, size * 0.5) - size * 0.22;
  const beak = Math.max(
    Math.abs(y - size * 0.55 + (x - size * 0.7) * 0.22) - (size * 1.12 - x) * 0.3,
    size * 0.7 - x,
  );
  const tail = stroke(u, v, -size * 0.5, -size * 0.02, -size * 1.15, size * 0.02) - size * 0.13;
  const leg = (shift: number) =>
    stroke(x, y, shift * size, -size * 0.25, (shift + 0.06) * size, -size * 0.85) - size * 0.035;
  const toes = stroke(x, y, -size * 0.08, -size * 0.85, size * 0.38, -size * 0.85) - size * 0.03;
  const eye = size * 0.045 - Math.hypot(x - size * 0.65, y - size * 0.62);
  return Math.max(Math.min(body, head, neck, beak, tail, leg(0.02), leg(0.2), toes), eye);
};

const frog: MotifMaker = (size) => (x, y) => {
  const side = Math.abs(x);
  const body = ellipse(x, y + size * 0.05, size * 0.44, size * 0.6);
  const head = ellipse(x, y - size * 0.58, size * 0.4, size * 0.3);
  const eye = Math.hypot(side - size * 0.28, y - size * 0.82) - size * 0.14;
  const thigh = stroke(side, y, size * 0.3, -size * 0.35, size * 0.82, -size * 0.12) - size * 0.15;
  const shin = stroke(side, y, size * 0.82, -size * 0.12, size * 0.55, -size * 0.75) - size * 0.1;
  const foot = stroke(side, y, size * 0.55, -size * 0.75, size * 0.98, -size * 0.86) - size * 0.07;
  const arm = stroke(side, y, size * 0.32, size * 0.3, size * 0.72, size * 0.12) - size * 0.08;
  const hand = stroke(side, y, size * 0.72, size * 0.12, size * 0.85, size * 0.42) - size * 0.06;
  return Math.min(body, head, eye, thigh, shin, foot, arm, hand);
};

const reeds: MotifMaker = (size) => (x, y) => {
  let nearest = 99;
  for (const [foot, lean, high] of [
    [-0.5, -0.12, 0.95],
    [0.05, 0.06, 1.25],
    [0.52, 0.2, 0.75],
  ] as const) {
    const bend = (foot + lean * ((y / size + 1.2) / 2) ** 2 * 2) * size;
    const stem = Math.max(Math.abs(x - bend) - 0.65, y - size * high, -y - size * 1.3);
    const head = ellipse(x - bend, y - size * (high - 0.05), 1.7, size * 0.3);
    const blade = Math.max(
      Math.abs(x - bend - (y + size * 1.2) * 0.22) - 0.12 * (size * 0.35 - y) * 0.5,
      y - size * 0.35,
      -y - size * 1.2,
    );
    nearest = Math.min(nearest, stem, head, blade);
  }
  return nearest;
};

const eels: MotifMaker = (size) => (x, y) => {
  const eel = (shift: number, phase: number) => {
    const half = size * 0.12 * Math.sqrt(Math.max(0.02, (size * 1.25 - x) / (size * 2.4)));
    return Math.max(
      Math.abs(y - shift * size - size * 0.24 * Math.sin((x / size) * 2.9 + phase)) * 0.8 - half,
      Math.abs(x) - size * 1.25,
    );
  };
  return Math.min(eel(0.55, 0), eel(0, 2), eel(-0.55, 4));
};

const cross: MotifMaker = (size) => (x, y) =>
  Math.max(
    Math.min(Math.abs(x), Math.abs(y)) - size * 0.16,
    Math.max(Math.abs(x), Math.abs(y)) - size * 1.6,
  );

const rings: MotifMaker = (size) => (x, y) => {
  const r = Math.hypot(x, y);
  return Math.min(Math.abs(r - size * 0.85) - size * 0.13, r - size * 0.38);
};

const hills: MotifMaker = (size) => (x, y) => {
  const ridge = (shift: number, high: number) =>
    y - high + Math.abs(x - shift) * 0.75 + 0.4 * Math.sin(x * 0.9);
  const land = Math.min(ridge(-size * 0.35, size * 0.75), ridge(size * 0.5, size * 0.35));
  const sun = Math.hypot(x - size * 0.55, y - size * 0.8) - size * 0.24;
  return Math.min(Math.max(land * 0.75, -y - size * 0.8, Math.abs(x) - size * 1.25), sun);
};

/** Figures that makers name in their own words. */
const NAMED: Readonly<Record<string, MotifMaker>> = {
  pike,
  crow,
  frog,
  reed: reeds,
  eel: eels,
  fish,
  leaf,
  moon,
  cross,
};

/** Finds a figure that somebody's words name. */
export function findMotifName(words: string): string | undefined {
  return Object.keys(NAMED).find((name) => new RegExp(`\\b${name}s?\\b`, "i").test(words));
}

/** The figure that a tile's words name, or the one that its maker comes back to. */
export function planMotif(plan: TilePlan, size: number): Motif {
  const named = plan.motif === undefined ? undefined : NAMED[plan.motif];
  return (
    named ?? pick(makeChance(`motif ${plan.maker}`), [leaf, flower(5), moon, fish, rings, hills])
  )(size);
}

/** The figure on a stamp that a set shares. */
export function stampMotif(set: string, size: number): Motif {
  return pick(makeChance(`stamp ${set}`), [flower(5), flower(8), rings, moon])(size);
}
