import type { Pixels } from "../../src/colour/region.ts";
import { hexToLinear, linearToSrgb } from "../../src/colour/srgb.ts";

/** How a painted photograph of a tile is made up. Lengths are shares of the picture. */
export interface TilePlan {
  glaze: string;
  /** A second glaze colour in stripes, so wide that it has about this share. */
  stripes?: { hex: string; share: number };
  /** The tile's half width; the rest is ground. */
  half?: number;
  /** A rim of bare clay inside the tile's outline. */
  bareRim?: number;
  /** A window's reflection: its half width, and how strong it is in its middle (1 burns out). */
  reflection?: { half: number; strength: number };
  /** Turned by so many degrees. */
  turned?: number;
  /** Standard deviation of the noise, in codes. */
  noise?: number;
}

const GROUND = "#8f8d89";
const CLAY = "#d8b48c";

/** Paints a photograph of a tile as a camera would see it: light adds up, noise comes last. */
export function photographTile(plan: TilePlan, width = 320, height = 240): Pixels {
  const data = new Uint8Array(width * height * 3);
  const noise = startNoise(plan.noise ?? 2);
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      const across = (x + 0.5) / width - 0.5;
      const down = ((y + 0.5) / height - 0.5) * (height / width);
      const light = lightAt(plan, across, down);
      for (let channel = 0; channel < 3; channel++) {
        const code = 255 * linearToSrgb(Math.min(1, light[channel] ?? 0)) + noise();
        data[(y * width + x) * 3 + channel] = Math.max(0, Math.min(255, Math.round(code)));
      }
    }
  }
  return { data, width, height };
}

function lightAt(plan: TilePlan, across: number, down: number): readonly number[] {
  const angle = ((plan.turned ?? 0) * Math.PI) / 180;
  const x = across * Math.cos(angle) + down * Math.sin(angle);
  const y = down * Math.cos(angle) - across * Math.sin(angle);
  const fromMiddle = Math.max(Math.abs(x), Math.abs(y));
  const half = plan.half ?? 0.4;
  if (fromMiddle > half) return hexToLinear(GROUND);
  if (fromMiddle > half - (plan.bareRim ?? 0)) return hexToLinear(CLAY);
  const added = reflectionAt(plan, x, y);
  return hexToLinear(glazeAt(plan, x)).map((light) => light + added);
}

function glazeAt({ glaze, stripes }: TilePlan, x: number): string {
  if (!stripes) return glaze;
  const place = (x * 12) % 1;
  return (place < 0 ? place + 1 : place) < stripes.share ? stripes.hex : glaze;
}

/** Soft towards its rim, and off the middle, as a window mostly is. */
function reflectionAt({ reflection }: TilePlan, x: number, y: number): number {
  if (!reflection) return 0;
  const { half, strength } = reflection;
  const distance = Math.hypot((x - 0.05) / half, (y + 0.04) / (half * 0.7));
  return strength * Math.min(1, Math.max(0, (1 - distance) * 4));
}

/** Normal noise, the same every time. */
function startNoise(deviation: number): () => number {
  let state = 99;
  const next = () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return (state + 1) / (2 ** 32 + 1);
  };
  return () => deviation * Math.sqrt(-2 * Math.log(next())) * Math.cos(2 * Math.PI * next());
}
