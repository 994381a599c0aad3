import { num } from "./grid.ts";
import { grain, noisePlace } from "./noise.ts";
import type { Exposure } from "./photograph.ts";
import type { StudioHand } from "./studio-hand.ts";

/** Above this the highlights roll off instead of clipping. */
const SHOULDER = 0.72;

function encode(linear: number): number {
  const x = linear <= SHOULDER ? linear : rollOff(linear);
  return x <= 0.0031308 ? x * 12.92 : 1.055 * x ** (1 / 2.4) - 0.055;
}

function rollOff(linear: number): number {
  const room = 1 - SHOULDER;
  return SHOULDER + room * (1 - Math.exp(-(linear - SHOULDER) / room));
}

/** Turns linear light into sRGB bytes, as the camera of this hand gives them. */
export function developPicture(exposure: Exposure, hand: StudioHand, code: string): Uint8Array {
  const { width, height, data } = exposure;
  const bytes = new Uint8Array(data.length);
  const at = noisePlace(`sensor ${code}`);
  const gains = [hand.balance[0], 1, hand.balance[1]];
  for (let row = 0; row < height; row++) {
    for (let column = 0; column < width; column++) {
      const x = column / width - 0.5;
      const y = row / height - 0.5;
      const falloff = 1 - 0.16 * (x * x + y * y);
      const noise = 0.008 * grain(at.x + column * 0.61, at.y + row * 0.61);
      const point = (row * width + column) * 3;
      for (let k = 0; k < 3; k++) {
        const light = num(data, point + k) * hand.exposure * falloff * (gains[k] as number);
        bytes[point + k] = Math.round(255 * Math.min(1, Math.max(0, encode(light) + noise)));
      }
    }
  }
  return bytes;
}
