import { type Chart, fillChart } from "./chart.ts";
import { layCoatsOfLight, makeSpot, type Paint } from "./coat-light.ts";
import { linearFromHex } from "./colour-space.ts";
import { makePigment } from "./glaze-colour.ts";
import type { Coating } from "./glazing.ts";
import { clamp, type Grid, mix, num, smoothstep } from "./grid.ts";
import { conesBeyond, fluidity, unmelted } from "./melt.ts";
import { clouds, grain, noisePlace } from "./noise.ts";
import type { Skin } from "./skin.ts";
import { sowSpecks } from "./specks.ts";
import type { GlazeLook, TilePlan } from "./tile-plan.ts";

/**
 * Works out the colour of every place of the skin under its coats.
 *
 * @param claySpecks where iron lies in the clay, 0 to 1
 */
export function paintCoats(
  plan: TilePlan,
  skin: Skin,
  coatings: readonly Coating[],
  claySpecks: Grid | undefined,
): void {
  const { chart } = skin;
  const paints = preparePaints(chart, plan, coatings);
  const marble = rivulets(chart, plan);
  const mottle = meltMottle(chart, plan);
  const iron = linearFromHex(plan.clay.speck);
  const parts = [skin.red.data, skin.green.data, skin.blue.data] as const;
  const spot = makeSpot();
  for (let i = 0; i < marble.data.length; i++) {
    const speck = claySpecks ? num(claySpecks.data, i) : 0;
    for (let k = 0; k < 3; k++) {
      const own = num(parts[k] as Float32Array, i);
      spot.clay[k] = spot.seen[k] = mix(own, iron[k] as number, speck * 0.85);
    }
    spot.marble = num(marble.data, i);
    layCoatsOfLight(paints, i, spot);
    if (speck > 0 && spot.total > 0) bleed(spot.seen, iron, speck, spot.total);
    const shade = spot.total > 0.05 ? num(mottle.data, i) : 1;
    for (let k = 0; k < 3; k++) {
      (parts[k] as Float32Array)[i] = clamp((spot.seen[k] as number) * shade, 0.003, 0.95);
    }
  }
}

function preparePaints(chart: Chart, plan: TilePlan, coatings: readonly Coating[]): Paint[] {
  const variegated = plan.effects.includes("variegated");
  const speckled = plan.effects.includes("speckled");
  return coatings.map((coating, i) => {
    const { glaze } = coating;
    const seed = `${plan.code} ${glaze.id} ${i}`;
    const flow = fluidity(glaze, plan);
    const amount = floatAmount(glaze, plan, variegated);
    const speck = glaze.speck?.amount ?? 0;
    const strong = speckled && glaze.speck ? Math.max(0.35, speck) : speck;
    return {
      coating,
      pigment: makePigment(plan.bleeds ? { ...glaze, hiding: glaze.hiding * 0.4 } : glaze),
      flow,
      powder: unmelted(glaze, plan),
      raw: glaze.raw ? linearFromHex(glaze.raw) : undefined,
      floats: amount > 0 ? floatShare(chart, seed, amount, flow) : undefined,
      specks: strong > 0 ? sowSpecks(chart, seed, strong, 0.3) : undefined,
    };
  });
}

/** How much of a glaze's second colour floats: little where the melt never moved. */
function floatAmount(glaze: GlazeLook, plan: TilePlan, variegated: boolean): number {
  if (!glaze.float) return 0;
  const held = plan.faults.includes("underfired") ? 0.3 : 1;
  const moved = clamp(1 + conesBeyond(glaze, plan) / 1.5, 0.1, 1) * held;
  return clamp(glaze.float.amount + (variegated ? 0.25 : 0), 0, 1) * moved;
}

/** Where a glaze's second colour shows: clouds that a runny glaze draws out into rivulets. */
function floatShare(chart: Chart, seed: string, amount: number, flow: number): Grid {
  const at = noisePlace(`float ${seed}`);
  const stretch = 1 / (1 + 9 * flow * flow);
  return fillChart(chart, (x, y) => {
    const warp = 1.3 * clouds(at.y + x * 0.1, at.x + y * 0.05);
    const broad = clouds(at.x + x * (0.17 + 0.33 * flow) + warp * 0.4, at.y + y * 0.16 * stretch);
    const fine = clouds(at.y + x * (0.55 + 0.4 * flow), at.x + y * 0.55 * stretch + warp);
    return amount * smoothstep(-0.35, 0.55, broad * 0.75 + fine * 0.5);
  });
}

/** The fine unevenness of any melt: undissolved grains, small bubbles. */
function meltMottle(chart: Chart, plan: TilePlan): Grid {
  const at = noisePlace(`mottle ${plan.code}`);
  return fillChart(chart, (x, y) => {
    const fine =
      0.045 * grain(at.x + x * 3.9, at.y + y * 3.9) + 0.05 * clouds(at.y + x * 1.2, at.x + y * 1.2);
    const broad = 0.07 * clouds(at.x + x * 0.07, at.y + y * 0.055);
    const bubble = 0.1 * smoothstep(0.5, 0.72, grain(at.y - x * 2.6, at.x + y * 2.6));
    return 1 + fine + broad + bubble;
  });
}

/** Iron that melts through the glaze from below. */
function bleed(
  seen: [number, number, number],
  speck: readonly number[],
  spot: number,
  hidden: number,
): void {
  const share = spot * 0.62 * Math.exp(-hidden * 0.12);
  for (let k = 0; k < 3; k++) seen[k] = mix(seen[k] as number, (speck[k] as number) * 0.8, share);
}

/** How melting glazes marble: −1 to 1, drawn out downwards. */
function rivulets(chart: Chart, plan: TilePlan): Grid {
  const at = noisePlace(`rivulets ${plan.code}`);
  const strength = plan.effects.includes("variegated") ? 0.8 : 0.35;
  return fillChart(chart, (x, y) => {
    const warp = 0.8 * clouds(at.y + x * 0.08, at.x + y * 0.06);
    const streak = clouds(at.x + x * 0.42 + warp, at.y + y * 0.05);
    const mottle = clouds(at.y + x * 0.7, at.x + y * 0.5 + warp);
    return strength * (streak * 0.9 + mottle * 0.25);
  });
}
