import { smoothstep } from "./grid.ts";
import { stampMotif } from "./motifs.ts";
import { grain, type NoisePlace, noisePlace } from "./noise.ts";
import { between, makeChance } from "./random.ts";

/** Height of a texture in millimetres at a place of the chart. */
export type Profile = (x: number, y: number) => number;

/** One time that a stamp was pressed into the clay. */
interface Press {
  readonly x: number;
  readonly y: number;
  /** Radians. */
  readonly turn: number;
  /** Millimetres in its middle. */
  readonly depth: number;
  /** Which side went in deeper, and by what share. */
  readonly tip: readonly [number, number];
}

/** The studio's reed stamp: a bundle of seven stalks bound together, half its width and height. */
const REEDS = [7.2, 11.4] as const;

/** Reed stamps, pressed one after the other as the maker of this tile liked to lay them. */
export function reedStamps(code: string): Profile {
  const chance = makeChance(`reeds ${code}`);
  const layouts = [rows, basket, strewn];
  const layout = layouts[Math.floor(chance() * layouts.length)] ?? rows;
  const presses = layout(chance);
  const at = noisePlace(`reeds ${code}`);
  return (x, y) => {
    let height = 0;
    for (const press of presses) {
      const inside = pressAt(press, x, y, at);
      if (inside !== undefined) height = Math.min(height * 0.45, inside);
    }
    return height;
  };
}

/** How deep one press goes at a place; undefined outside it. */
function pressAt(press: Press, x: number, y: number, at: NoisePlace): number | undefined {
  const dx = x - press.x;
  const dy = y - press.y;
  const u = dx * Math.cos(press.turn) + dy * Math.sin(press.turn);
  const v = dy * Math.cos(press.turn) - dx * Math.sin(press.turn);
  const box = Math.max(Math.abs(u) - REEDS[0], Math.abs(v) - REEDS[1]);
  if (box > 0) return undefined;
  const stalk = u + 0.35 * Math.sin(v * 0.27 + 1) + 0.15 * grain(v * 0.2, u * 0.5);
  const number = Math.round(stalk / 2.06);
  const round = Math.sqrt(Math.max(0, 1 - ((stalk - number * 2.06) / 1.06) ** 2));
  const joint = Math.abs(v - 5.5 * Math.sin(number * 2.4)) < 0.4 ? 0.3 : 0;
  const thick = 0.8 + 0.2 * Math.sin(number * 1.7);
  const lean = 1 + press.tip[0] * (u / REEDS[0]) + press.tip[1] * (v / REEDS[1]);
  const uneven = 0.85 + 0.3 * grain(at.x + x * 0.15, at.y + y * 0.15);
  const deep = press.depth * Math.max(0, lean) * uneven;
  return -deep * smoothstep(0, -0.5, box) * (0.12 + 0.88 * thick * round - joint);
}

function press(chance: () => number, x: number, y: number, turn: number): Press {
  return {
    x: x + between(chance, -1.1, 1.1),
    y: y + between(chance, -1.1, 1.1),
    turn: turn + between(chance, -0.09, 0.09),
    depth: between(chance, 0.55, 1.05),
    tip: [between(chance, -0.4, 0.4), between(chance, -0.35, 0.35)],
  };
}

/** Upright, row above row, every second row moved half a stamp along. */
function rows(chance: () => number): Press[] {
  return [0, 1, 2, 3].flatMap((row) =>
    [-2, -1, 0, 1, 2].map((column) =>
      press(chance, (column + (row % 2) / 2) * 15.6, 33 - row * 24, 0),
    ),
  );
}

/** Upright and lying in turn, as a basket is woven. */
function basket(chance: () => number): Press[] {
  return [0, 1, 2, 3, 4].flatMap((row) =>
    [-2, -1, 0, 1, 2].map((column) =>
      press(chance, column * 19.5, 38 - row * 19.5, (row + column) % 2 === 0 ? 0 : Math.PI / 2),
    ),
  );
}

/** Anyhow, one across another. */
function strewn(chance: () => number): Press[] {
  return Array.from({ length: 15 }, (_, i) =>
    press(
      chance,
      ((i % 3) - 1) * 19 + between(chance, -7, 7),
      36 - Math.floor(i / 3) * 18 + between(chance, -5, 5),
      between(chance, -0.9, 0.9),
    ),
  );
}

/** A round stamp that a set shares, all over. */
export function roundStamps(set: string, at: NoisePlace): Profile {
  const motif = stampMotif(set, 5.4);
  return (x, y) => {
    const column = Math.round(x / 17.5);
    const row = Math.round((y - 3) / 17.5);
    const turn = grain(at.x + column * 3.7, at.y + row * 5.1) * 1.4;
    const dx = x - column * 17.5 - 2.2 * grain(at.y + row * 2.3, column * 7.7);
    const dy = y - 3 - row * 17.5 - 2.2 * grain(at.x - row * 1.9, column * 4.1);
    const u = dx * Math.cos(turn) + dy * Math.sin(turn);
    const v = dy * Math.cos(turn) - dx * Math.sin(turn);
    const r = Math.hypot(u, v);
    const deep = 0.85 + 0.45 * grain(at.x + column * 9.1, at.y + row * 8.3);
    const seat =
      -deep * smoothstep(6.9, 6.5, r) + 0.14 * smoothstep(8.4, 7, r) * smoothstep(6.6, 7, r);
    return seat + 0.8 * smoothstep(0.25, -0.35, motif(u, v)) * smoothstep(6.9, 6.4, r);
  };
}
