import { type Chart, fillChart } from "./chart.ts";
import type { ClayRelief } from "./clay-relief.ts";
import { linearFromHex } from "./colour-space.ts";
import type { Coating } from "./glazing.ts";
import { blurGrid, clamp, type Grid, makeGrid, num, smoothstep } from "./grid.ts";
import { clouds, grain, noisePlace } from "./noise.ts";
import type { Skin } from "./skin.ts";
import { sowSpecks } from "./specks.ts";
import type { ClayLook, TilePlan } from "./tile-plan.ts";

/** The skin of a fired tile without any glaze. */
export function bareSkin(chart: Chart, plan: TilePlan, relief: ClayRelief, scratches: Grid): Skin {
  const at = noisePlace(`body ${plan.code}`);
  const bare = linearFromHex(plan.clay.bare);
  const coarse = 0.35 + plan.clay.grog;
  const shade = fillChart(chart, (x, y) => {
    const broad = 0.06 * clouds(at.x + x * 0.05, at.y + y * 0.05);
    const fine =
      0.05 * grain(at.x + x * 3.1, at.y + y * 3.1) + 0.05 * clouds(at.y + x * 0.8, at.x + y * 0.8);
    const pale = 0.16 * smoothstep(0.42, 0.6, grain(at.y + x * 1.7, at.x - y * 1.7));
    const dark = 0.2 * smoothstep(0.45, 0.65, grain(at.x - x * 1.9, at.y + y * 1.9));
    return 1 + broad + fine + coarse * (pale - dark);
  });
  const tint = (part: number): Grid => {
    const grid = makeGrid(chart.width, chart.height);
    for (let i = 0; i < grid.data.length; i++) grid.data[i] = part * num(shade.data, i);
    return grid;
  };
  const height = makeGrid(chart.width, chart.height);
  for (let i = 0; i < height.data.length; i++) {
    height.data[i] = num(relief.height.data, i) - num(scratches.data, i);
  }
  return {
    chart,
    red: tint(bare[0]),
    green: tint(bare[1]),
    blue: tint(bare[2]),
    height,
    roughness: makeGrid(chart.width, chart.height, 0.9),
    glass: makeGrid(chart.width, chart.height, 0.12),
    metal: makeGrid(chart.width, chart.height),
  };
}

/** Bare clay is toasted where glaze ends beside it. */
export function toastFoot(chart: Chart, skin: Skin, coatings: readonly Coating[]): void {
  const cover = makeGrid(chart.width, chart.height);
  for (const { glaze, thickness } of coatings) {
    if (glaze.kind !== "glaze") continue;
    for (let i = 0; i < cover.data.length; i++) {
      cover.data[i] = Math.max(num(cover.data, i), clamp(num(thickness.data, i), 0, 1));
    }
  }
  const near = blurGrid(cover, 1.3 * chart.perMm);
  for (let i = 0; i < near.data.length; i++) {
    const toast = num(near.data, i) * (1 - num(cover.data, i));
    skin.red.data[i] = num(skin.red.data, i) * (1 - 0.12 * toast);
    skin.green.data[i] = num(skin.green.data, i) * (1 - 0.3 * toast);
    skin.blue.data[i] = num(skin.blue.data, i) * (1 - 0.45 * toast);
  }
}

/** Iron in the clay: 0 to 1 at each place. */
export function sowClaySpecks(chart: Chart, clay: ClayLook, code: string): Grid | undefined {
  return clay.specks > 0 ? sowSpecks(chart, `specks ${code}`, clay.specks, 0.42) : undefined;
}
