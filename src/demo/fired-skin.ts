import type { Chart } from "./chart.ts";
import { fillChart } from "./chart.ts";
import { type ClayRelief, makeClayRelief } from "./clay-relief.ts";
import { linearFromHex } from "./colour-space.ts";
import { growEffects } from "./effects.ts";
import { showFaults, spoilCoats } from "./faults.ts";
import { type Layer, layerOver, makePigment, type Pigment, writeLayer } from "./glaze-colour.ts";
import { type Coating, glazeClay } from "./glazing.ts";
import { blurGrid, clamp, type Grid, makeGrid, mix, num, smoothstep } from "./grid.ts";
import { COAT_MM, conesBeyond, fluidity, meltGlaze, unmelted } from "./melt.ts";
import { clouds, findCell, grain, makeCellHit, noisePlace } from "./noise.ts";
import { hashText } from "./random.ts";
import type { Skin } from "./skin.ts";
import type { ClayLook, GlazeLook, TilePlan } from "./tile-plan.ts";

/** Makes, glazes and fires a tile: the skin that its record describes. */
export function fireTile(chart: Chart, plan: TilePlan): Skin {
  const relief = makeClayRelief(chart, plan);
  const glazed = glazeClay(chart, plan, relief);
  const coatings = meltGlaze(chart, plan, relief.height, glazed);
  spoilCoats(chart, plan, coatings);
  const skin = bareSkin(chart, plan, relief, glazed.scratches);
  const specks = clayspecks(chart, plan.clay, plan.code);
  toastFoot(chart, skin, coatings);
  paintCoats(chart, plan, skin, coatings, specks);
  finishSurface(chart, plan, skin, relief, coatings);
  growEffects(plan, skin, coatings);
  showFaults(plan, skin, coatings);
  return skin;
}

function bareSkin(chart: Chart, plan: TilePlan, relief: ClayRelief, scratches: Grid): Skin {
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
function toastFoot(chart: Chart, skin: Skin, coatings: readonly Coating[]): void {
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
function clayspecks(chart: Chart, clay: ClayLook, code: string): Grid | undefined {
  return clay.specks > 0 ? sowSpecks(chart, `specks ${code}`, clay.specks, 0.42) : undefined;
}

/** Specks of many sizes, the largest `largest` millimetres in radius. */
function sowSpecks(chart: Chart, seed: string, amount: number, largest: number): Grid {
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

interface Painted {
  readonly coating: Coating;
  readonly pigment: Pigment;
  readonly flow: number;
  /** 0 melted, 1 still the powder that was put on. */
  readonly powder: number;
  readonly floats: Grid | undefined;
  readonly specks: Grid | undefined;
}

function preparePaint(chart: Chart, plan: TilePlan, coatings: readonly Coating[]): Painted[] {
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
      pigment: makePigment(plan.bleeds ? { ...glaze, hiding: glaze.hiding * 0.6 } : glaze),
      flow,
      powder: unmelted(glaze, plan),
      floats: amount > 0 ? floatShare(chart, seed, amount, flow) : undefined,
      specks: strong > 0 ? sowSpecks(chart, seed, strong, 0.3) : undefined,
    };
  });
}

/** How much of a glaze's second colour floats: little where the melt never moved. */
function floatAmount(glaze: GlazeLook, plan: TilePlan, variegated: boolean): number {
  if (!glaze.float) return 0;
  const moved = clamp(1 + conesBeyond(glaze, plan) / 1.5, 0.1, 1);
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

function paintCoats(
  chart: Chart,
  plan: TilePlan,
  skin: Skin,
  coatings: readonly Coating[],
  claySpecks: Grid | undefined,
): void {
  const paints = preparePaint(chart, plan, coatings);
  const marble = rivulets(chart, plan);
  const mottle = meltMottle(chart, plan);
  const layer: Layer = { red: 0, green: 0, blue: 0, scattering: 0 };
  const blend: Layer = { red: 0, green: 0, blue: 0, scattering: 0 };
  const speck = linearFromHex(plan.clay.speck);
  const colours = [skin.red.data, skin.green.data, skin.blue.data] as const;
  const clay: [number, number, number] = [0, 0, 0];
  const seen: [number, number, number] = [0, 0, 0];
  for (let i = 0; i < marble.data.length; i++) {
    const spot = claySpecks ? num(claySpecks.data, i) : 0;
    for (let k = 0; k < 3; k++) {
      const own = num(colours[k] as Float32Array, i);
      clay[k] = seen[k] = mix(own, speck[k] as number, spot * 0.85);
    }
    const hidden = layLight(paints, i, num(marble.data, i), clay, seen, layer, blend);
    if (spot > 0 && hidden > 0) bleed(seen, speck, spot, hidden);
    const shade = hidden > 0.05 ? num(mottle.data, i) : 1;
    for (let k = 0; k < 3; k++) {
      (colours[k] as Float32Array)[i] = clamp((seen[k] as number) * shade, 0.003, 0.95);
    }
  }
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

/** Adds every coat's light at one place; returns how many coats lie there. */
function layLight(
  paints: readonly Painted[],
  i: number,
  marble: number,
  clay: readonly [number, number, number],
  seen: [number, number, number],
  layer: Layer,
  blend: Layer,
): number {
  blend.red = blend.green = blend.blue = blend.scattering = 0;
  let total = 0;
  let fluid = 0;
  let wet = false;
  let melt = 0;
  for (const paint of paints) if (paint.flow > 0) melt += num(paint.coating.thickness.data, i);
  for (const [index, paint] of paints.entries()) {
    let coats = num(paint.coating.thickness.data, i);
    if (coats < 0.02) continue;
    if (index > 0) coats *= clamp(1 + marble * 1.1 * paint.flow, 0.2, 2);
    const floating = paint.floats ? num(paint.floats.data, i) : 0;
    writeLayer(paint.pigment, coats, paint.flow > 0 ? melt : coats, floating, layer);
    if (!wet) {
      for (let k = 0; k < 3; k++) seen[k] = (seen[k] as number) ** (1 + 0.16 * Math.min(1, coats));
      wet = true;
    }
    overlay(seen, layer);
    if (paint.powder > 0) powder(seen, paint.powder * smoothstep(0.2, 1, coats));
    if (paint.specks) speckle(seen, paint, num(paint.specks.data, i));
    total += coats;
    fluid += coats * Math.min(1, paint.flow);
    blend.red += layer.red;
    blend.green += layer.green;
    blend.blue += layer.blue;
    blend.scattering += layer.scattering;
  }
  if (paints.length > 1 && fluid > 0.3)
    melted(seen, clay, blend, clamp((fluid / total) * (0.42 - 0.5 * marble), 0, 0.8));
  return total;
}

function overlay(seen: [number, number, number], layer: Layer): void {
  seen[0] = layerOver(layer.red, layer.scattering, seen[0]);
  seen[1] = layerOver(layer.green, layer.scattering, seen[1]);
  seen[2] = layerOver(layer.blue, layer.scattering, seen[2]);
}

/** What never melted is pale and chalky. */
function powder(seen: [number, number, number], share: number): void {
  for (let k = 0; k < 3; k++)
    seen[k] = mix(seen[k] as number, 0.42 + 0.5 * (seen[k] as number), 0.62 * share);
}

/** Layers that melt into each other look partly like their mixture. */
function melted(
  seen: [number, number, number],
  clay: readonly [number, number, number],
  blend: Layer,
  share: number,
): void {
  seen[0] = mix(seen[0], layerOver(blend.red, blend.scattering, clay[0]), share);
  seen[1] = mix(seen[1], layerOver(blend.green, blend.scattering, clay[1]), share);
  seen[2] = mix(seen[2], layerOver(blend.blue, blend.scattering, clay[2]), share);
}

function speckle(seen: [number, number, number], paint: Painted, spot: number): void {
  const colour = paint.coating.glaze.speck?.colour;
  if (!colour || spot === 0) return;
  const [r, g, b] = linearFromHex(colour);
  seen[0] = mix(seen[0], r, spot * 0.8);
  seen[1] = mix(seen[1], g, spot * 0.8);
  seen[2] = mix(seen[2], b, spot * 0.8);
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

/** Gives the melt its own surface: how rough, how even, how thick it stands. */
function finishSurface(
  chart: Chart,
  plan: TilePlan,
  skin: Skin,
  relief: ClayRelief,
  coatings: readonly Coating[],
): void {
  const at = noisePlace(`finish ${plan.code}`);
  const only = plan.surfaces.length === 1 ? plan.surfaces[0] : undefined;
  const glassy = coatings.some((coating) => coating.glaze.kind === "glaze");
  const roughs = coatings.map((coating) => surfaceRoughness(coating, plan, only, glassy));
  const skinWaves = fillChart(
    chart,
    (x, y) =>
      grain(at.x + x * 0.28, at.y + y * 0.28) + 0.18 * grain(at.y + x * 0.8, at.x + y * 0.8),
  );
  const tooth = fillChart(
    chart,
    (x, y) => grain(at.y + x * 4.2, at.x + y * 4.2) + 0.8 * clouds(at.x + x * 1.3, at.y + y * 1.3),
  );
  const flow = Math.max(0, ...coatings.map((coating) => fluidity(coating.glaze, plan)));
  const body = blurGrid(sumCoats(chart, coatings), (0.55 + 1.6 * flow) * chart.perMm);
  for (let i = 0; i < skin.height.data.length; i++) {
    let rough = num(skin.roughness.data, i);
    let glass = num(skin.glass.data, i);
    let metal = 0;
    let total = 0;
    coatings.forEach((coating, k) => {
      const coats = num(coating.thickness.data, i);
      if (coats < 0.02) return;
      const share = smoothstep(0.1, 0.9, coats);
      const own = roughs[k] as number;
      rough = mix(rough, own, share);
      glass = mix(glass, own > 0.6 ? 0.25 : 1, share);
      metal = mix(metal, coating.glaze.metal ?? 0, share);
      total += coats;
    });
    const smooth = smoothstep(0.15, 1.3, total) * (1 - smoothstep(0.35, 0.75, rough));
    const waves = 0.006 * num(skinWaves.data, i) * smooth;
    const fine =
      (0.0007 + 0.011 * smoothstep(0.1, 0.6, rough)) * num(tooth.data, i) * (total > 0.1 ? 1 : 0.3);
    skin.height.data[i] =
      num(skin.height.data, i) +
      mix(total, num(body.data, i) * 0.8, smooth * 0.99) * COAT_MM +
      num(relief.tooth.data, i) * (1 - 0.94 * smooth) +
      waves +
      fine;
    skin.roughness.data[i] = clamp(rough, 0.015, 0.95);
    skin.glass.data[i] = glass;
    skin.metal.data[i] = metal;
  }
}

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
