import { between, makeChance } from "./random.ts";

/** Single-line capitals and figures on a grid four wide and six high; strokes apart by ";". */
const STROKES: Readonly<Record<string, string>> = {
  A: "00 26 40;12 32",
  B: "00 06 36 45 44 33 42 41 30 00;03 33",
  C: "41 30 10 01 05 16 36 45",
  D: "00 06 26 45 41 20 00",
  E: "40 00 06 46;03 33",
  F: "00 06 46;03 33",
  G: "45 36 16 05 01 10 30 41 43 23",
  H: "00 06;40 46;03 43",
  I: "10 30;20 26;16 36",
  J: "01 10 20 31 36",
  K: "00 06;46 03 40",
  L: "06 00 40",
  M: "00 06 23 46 40",
  N: "00 06 40 46",
  O: "10 01 05 16 36 45 41 30 10",
  P: "00 06 36 45 44 33 03",
  Q: "10 01 05 16 36 45 41 30 10;22 40",
  R: "00 06 36 45 44 33 03;23 40",
  S: "01 10 30 41 42 33 13 04 05 16 36 45",
  T: "20 26;06 46",
  U: "06 01 10 30 41 46",
  V: "06 20 46",
  W: "06 10 23 30 46",
  X: "00 46;06 40",
  Y: "06 23 46;23 20",
  Z: "06 46 00 40",
  "0": "10 01 05 16 36 45 41 30 10",
  "1": "05 26 20;10 30",
  "2": "05 16 36 45 44 00 40",
  "3": "05 16 36 45 44 33 42 41 30 10 01;13 33",
  "4": "30 36 02 42",
  "5": "46 06 03 33 42 41 30 10 01",
  "6": "45 36 16 05 01 10 30 41 42 33 03",
  "7": "06 46 20",
  "8": "13 04 05 16 36 45 44 33 13 02 01 10 30 41 42 33",
  "9": "01 10 30 41 45 36 16 05 04 13 43",
  "-": "13 33",
};

/** Letters and figures that a hand draws round. */
const ROUND = /[BCDGJOPQRSU0235689]/;

type Point = readonly [number, number];
type Line = readonly [number, number, number, number];

const ADVANCE = 6;

/** How somebody writes. */
export interface Handwriting {
  /** Sideways for every unit upwards. */
  readonly slant: number;
  /** Width of a letter: 1 as tall ones are wide. */
  readonly wide: number;
  /** How unlike each other letters are, 0 to 1. */
  readonly careless: number;
}

/** The handwriting of whoever goes by a name or a code. */
export function findHandwriting(name: string): Handwriting {
  const chance = makeChance(`handwriting ${name}`);
  return {
    slant: between(chance, -0.06, 0.3),
    wide: between(chance, 0.8, 1.08),
    careless: between(chance, 0.75, 1.3),
  };
}

function strokesOf(letter: string): Point[][] {
  const rounding = ROUND.test(letter) ? 0.25 : 0.1;
  return (STROKES[letter] ?? "").split(";").map((stroke) => {
    const corners = [...stroke.matchAll(/(\d)(\d)/g)].map(
      (m): Point => [Number(m[1]), Number(m[2])],
    );
    return cutCorners(cutCorners(corners, rounding), rounding);
  });
}

/** A line whose corners are cut, as a hand does that does not stop at them. */
function cutCorners(points: readonly Point[], share: number): Point[] {
  const first = points[0];
  const last = points.at(-1);
  if (!first || !last || points.length < 3) return [...points];
  const cut = points.slice(1).flatMap((to, i): Point[] => {
    const from = points[i] ?? to;
    const at = (t: number): Point => [
      from[0] + (to[0] - from[0]) * t,
      from[1] + (to[1] - from[1]) * t,
    ];
    return [at(share), at(1 - share)];
  });
  return [first, ...cut.slice(1, -1), last];
}

/** One letter as it came out this time, its lower left corner at (left, 0). */
function writeLetter(
  letter: string,
  left: number,
  hand: Handwriting,
  chance: () => number,
): Line[] {
  const loose = hand.careless;
  const tall = 1 + between(chance, -0.1, 0.08) * loose;
  const turn = between(chance, -0.09, 0.09) * loose;
  const lift = between(chance, -0.4, 0.4) * loose;
  const bend = between(chance, -0.35, 0.35) * loose;
  const place = ([x, y]: Point): Point => {
    const u = x * hand.wide + hand.slant * y + bend * Math.sin(y * 0.55);
    const v = y * tall + 0.18 * loose * Math.sin(x * 1.1 + bend * 9);
    return [
      left + u * Math.cos(turn) - v * Math.sin(turn),
      lift + u * Math.sin(turn) + v * Math.cos(turn),
    ];
  };
  return strokesOf(letter).flatMap((stroke) => {
    const points = stroke.map(place);
    return points.slice(1).map(([x, y], i): Line => {
      const [ax, ay] = points[i] ?? [x, y];
      return [ax, ay, x, y];
    });
  });
}

/** How far a point lies from the nearest stroke of a word. */
export interface Lettering {
  /** Width of the word, where its capitals are about `height` high. */
  readonly width: number;
  /** Distance in the same unit, from the word's lower left corner. */
  distance(x: number, y: number): number;
}

/**
 * Writes a word (letters, figures, hyphens; anything else stays blank) by hand, in capitals of about
 * a height.
 *
 * @param seed what is written on: no two come out the same
 */
export function writeByHand(
  word: string,
  height: number,
  hand: Handwriting,
  seed: string,
): Lettering {
  const unit = height / 6;
  const chance = makeChance(`written ${word} ${seed}`);
  let left = 0;
  const letters = [...word.toUpperCase()].map((letter) => {
    const written = { left, lines: writeLetter(letter, left, hand, chance) };
    left += ADVANCE * hand.wide + between(chance, -0.7, 0.5) * hand.careless;
    return written;
  });
  return {
    width: (left - 2) * unit,
    distance(x, y) {
      let nearest = Number.POSITIVE_INFINITY;
      for (const letter of letters) {
        if (x / unit < letter.left - 3 || x / unit > letter.left + 9) continue;
        for (const line of letter.lines) {
          nearest = Math.min(nearest, lineDistance(line, x / unit, y / unit));
        }
      }
      return nearest * unit;
    },
  };
}

function lineDistance([ax, ay, bx, by]: Line, x: number, y: number): number {
  const dx = bx - ax;
  const dy = by - ay;
  const t = Math.min(1, Math.max(0, ((x - ax) * dx + (y - ay) * dy) / (dx * dx + dy * dy)));
  return Math.hypot(x - ax - t * dx, y - ay - t * dy);
}
