import { type Chart, fillChart } from "./chart.ts";
import type { ClayRelief } from "./clay-relief.ts";
import type { Coating } from "./glazing.ts";
import { blurGrid, clamp, type Grid, makeGrid, mix, num, smoothstep } from "./grid.ts";
import { COAT_MM, conesBeyond, fluidity } from "./melt.ts";
import { clouds, grain, noisePlace } from "./noise.ts";
import type { Skin } from "./skin.ts";
import type { TilePlan } from "./tile-plan.ts";

/** Gives the melt its own surface: how rough, how even, how thick it stands. */
export function finishSurface(
  plan: TilePlan,
  skin: Skin,
  relief: ClayRelief,
  coatings: readonly Coating[],
): void {
  coverSurface(plan, skin, coatings);
  raiseSurface(plan, skin, relief, coatings);
}

/** Roughness, glass and metal: those of whatever lies on top. */
function coverSurface(plan: TilePlan, skin: Skin, coatings: readonly Coating[]): void {
  const only = plan.surfaces.length === 1 ? plan.surfaces[0] : undefined;
  const glassy = coatings.some((coating) => coating.glaze.kind === "glaze");
  const [rough, glass, metal] = [skin.roughness.data, skin.glass.data, skin.metal.data];
  for (const coating of coatings) {
    const own = surfaceRoughness(coating, plan, only, glassy);
    const ownGlass = own > 0.6 ? 0.25 : 1;
    const ownMetal = coating.glaze.metal ?? 0;
    const coats = coating.thickness.data;
    for (let i = 0; i < coats.length; i++) {
      const share = smoothstep(0.1, 0.9, num(coats, i));
      if (share === 0) continue;
      rough[i] = clamp(mix(num(rough, i), own, share), 0.015, 0.95);
      glass[i] = mix(num(glass, i), ownGlass, share);
      metal[i] = mix(num(metal, i), ownMetal, share);
    }
  }
}

/** Height: the clay's relief, what lies on it, and how smoothly that melted. */
function raiseSurface(
  plan: TilePlan,
  skin: Skin,
  relief: ClayRelief,
  coatings: readonly Coating[],
): void {
  const { chart } = skin;
  const at = noisePlace(`finish ${plan.code}`);
  const swell = fillChart(
    chart,
    (x, y) =>
      grain(at.x + x * 0.28, at.y + y * 0.28) + 0.18 * grain(at.y + x * 0.8, at.x + y * 0.8),
  );
  const tooth = fillChart(
    chart,
    (x, y) => grain(at.y + x * 4.2, at.x + y * 4.2) + 0.8 * clouds(at.x + x * 1.3, at.y + y * 1.3),
  );
  const flow = Math.max(0, ...coatings.map((coating) => fluidity(coating.glaze, plan)));
  const laid = sumCoats(chart, coatings);
  const body = blurGrid(laid, (0.55 + 1.6 * flow) * chart.perMm);
  // A stiff melt keeps a skin like an orange's, a fluid one lies like water.
  const ripple = mix(0.0065, 0.0012, smoothstep(0.15, 0.75, flow));
  const height = skin.height.data;
  for (let i = 0; i < height.length; i++) {
    const coats = num(laid.data, i);
    const rough = num(skin.roughness.data, i);
    const smooth = smoothstep(0.15, 1.3, coats) * (1 - smoothstep(0.35, 0.75, rough));
    const fine = (0.0007 + 0.011 * smoothstep(0.1, 0.6, rough)) * (coats > 0.1 ? 1 : 0.3);
    height[i] =
      num(height, i) +
      mix(coats, num(body.data, i) * 0.8, smooth * 0.99) * COAT_MM +
      num(relief.tooth.data, i) * (1 - 0.94 * smooth) +
      ripple * num(swell.data, i) * smooth +
      fine * num(tooth.data, i);
  }
}

/** A glaze's own surface, where the result does not deny it. */
function firstListed(plan: TilePlan, own: string): string {
  return plan.surfaces.includes(own) ? own : (plan.surfaces[0] ?? own);
}

const ROUGHNESS: Readonly<Record<string, number>> = {
  gloss: 0.035,
  satin: 0.24,
  matte: 0.46,
  dry: 0.8,
};

function sumCoats(chart: Chart, coatings: readonly Coating[]): Grid {
  const sum = makeGrid(chart.width, chart.height);
  for (const { thickness } of coatings) {
    for (let i = 0; i < sum.data.length; i++)
      sum.data[i] = Math.min(8, num(sum.data, i) + num(thickness.data, i));
  }
  return sum;
}

function surfaceRoughness(
  coating: Coating,
  plan: TilePlan,
  only: string | undefined,
  glassy: boolean,
): number {
  const { glaze } = coating;
  const melts = glaze.kind === "glaze" || glaze.kind === "onglaze";
  const word = melts || !glassy ? (only ?? firstListed(plan, glaze.surface)) : "dry";
  const plain = ROUGHNESS[word] ?? 0.3;
  const beyond = conesBeyond(glaze, plan);
  return clamp(plain - Math.min(0, beyond) * (only ? 0.02 : 0.12), 0.02, 0.9);
}
