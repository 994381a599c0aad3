import { type Chart, fillChart } from "./chart.ts";
import { type Grid, smoothstep } from "./grid.ts";
import { findCell, makeCellHit } from "./noise.ts";
import { hashText } from "./random.ts";

/**
 * Sows specks of many sizes: 0 to 1 at each place.
 *
 * @param amount how thickly, 0 to 1
 * @param largest radius of the largest, in millimetres
 */
export function sowSpecks(chart: Chart, seed: string, amount: number, largest: number): Grid {
  const salt = hashText(seed) & 0xffff;
  const hit = makeCellHit();
  return fillChart(chart, (x, y) => {
    let dark = 0;
    for (const [cell, size] of [
      [2.6, largest],
      [1.1, largest * 0.45],
    ] as const) {
      findCell(x / cell, y / cell, salt + size * 100, hit);
      if (hit.id > amount * 0.75) continue;
      const radius = size * (0.3 + 0.9 * (hit.id / amount) ** 2);
      dark = Math.max(dark, smoothstep(radius, radius * 0.35, hit.nearest * cell));
    }
    return dark;
  });
}
