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

type Line = readonly [number, number, number, number];

const ADVANCE = 6;

function glyphLines(letter: string, offset: number): Line[] {
  const lines: Line[] = [];
  for (const stroke of (STROKES[letter.toUpperCase()] ?? "").split(";")) {
    const points = [...stroke.matchAll(/(\d)(\d)/g)].map((m) => [Number(m[1]), Number(m[2])]);
    for (let i = 1; i < points.length; i++) {
      const [a, b] = [points[i - 1], points[i]];
      lines.push([offset + (a?.[0] ?? 0), a?.[1] ?? 0, offset + (b?.[0] ?? 0), b?.[1] ?? 0]);
    }
  }
  return lines;
}

/** How far a point lies from the nearest stroke of a word. */
export interface Lettering {
  /** Width of the word, where its capitals are `height` high. */
  readonly width: number;
  /** Distance in the same unit, from the word's lower left corner. */
  distance(x: number, y: number): number;
}

/** Sets a word (letters, figures, hyphens; anything else stays blank) in capitals of a height. */
export function setLettering(word: string, height: number): Lettering {
  const unit = height / 6;
  const letters = [...word].map((letter, i) => ({
    left: i * ADVANCE * unit,
    lines: glyphLines(letter, i * ADVANCE),
  }));
  return {
    width: (letters.length * ADVANCE - 2) * unit,
    distance(x, y) {
      let nearest = Number.POSITIVE_INFINITY;
      for (const letter of letters) {
        if (x < letter.left - 2 * unit || x > letter.left + 6 * unit) continue;
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
