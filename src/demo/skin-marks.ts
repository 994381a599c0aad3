import type { Coating } from "./glazing.ts";
import { mix, num } from "./grid.ts";
import type { Skin } from "./skin.ts";

/** Visits every place of a skin with its index and its place in millimetres. */
export function everywhere(skin: Skin, visit: (index: number, x: number, y: number) => void): void {
  const { chart } = skin;
  let i = 0;
  for (let row = 0; row < chart.height; row++) {
    const y = chart.extent.top - (row + 0.5) / chart.perMm;
    for (let column = 0; column < chart.width; column++) {
      visit(i++, chart.extent.left + (column + 0.5) / chart.perMm, y);
    }
  }
}

/** Takes a share of its light from a place. */
export function darken(skin: Skin, i: number, share: number): void {
  skin.red.data[i] = num(skin.red.data, i) * (1 - share);
  skin.green.data[i] = num(skin.green.data, i) * (1 - share);
  skin.blue.data[i] = num(skin.blue.data, i) * (1 - share);
}

/** Gives a place a share of a colour in linear light. */
export function tint(
  skin: Skin,
  i: number,
  colour: readonly [number, number, number],
  share: number,
): void {
  skin.red.data[i] = mix(num(skin.red.data, i), colour[0], share);
  skin.green.data[i] = mix(num(skin.green.data, i), colour[1], share);
  skin.blue.data[i] = mix(num(skin.blue.data, i), colour[2], share);
}

/** How many coats lie at a place, of all coatings together. */
export function coatsAt(coatings: readonly Coating[], i: number): number {
  let sum = 0;
  for (const { thickness } of coatings) sum += num(thickness.data, i);
  return sum;
}
