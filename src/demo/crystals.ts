import { linearFromHex } from "./colour-space.ts";
import type { Coating } from "./glazing.ts";
import { clamp, mix, num, smoothstep } from "./grid.ts";
import { clouds, findCell, grain, makeCellHit, noisePlace } from "./noise.ts";
import { hashText } from "./random.ts";
import type { Skin } from "./skin.ts";
import type { GlazeLook, TilePlan } from "./tile-plan.ts";

type Crystal = NonNullable<GlazeLook["crystal"]>;

/** What crystals are taken for where a glaze's appearance does not say. */
const COMMON: Crystal = { colour: "#9a6a48", size: 0.5 };

/** Larger crystals than this grow as discs of needles, smaller ones as flecks. */
const DISC = 1;

/** Visits every place where glaze lies, with its place in millimetres and its coats. */
export function everyGlazed(
  skin: Skin,
  coatings: readonly Coating[],
  visit: (i: number, x: number, y: number, coats: number) => void,
): void {
  const { chart } = skin;
  for (let i = 0; i < skin.height.data.length; i++) {
    let coats = 0;
    for (const { thickness } of coatings) coats += num(thickness.data, i);
    if (coats < 0.6) continue;
    const row = Math.floor(i / chart.width);
    const x = chart.extent.left + (i - row * chart.width + 0.5) / chart.perMm;
    visit(i, x, chart.extent.top - (row + 0.5) / chart.perMm, coats);
  }
}

/** Crystals that grew from seeds while the glaze cooled, until each met its neighbour. */
export function growCrystals(plan: TilePlan, skin: Skin, coatings: readonly Coating[]): void {
  const crystal = coatings.findLast((coating) => coating.glaze.crystal)?.glaze.crystal ?? COMMON;
  const colour = linearFromHex(crystal.colour);
  const grow = crystal.size >= DISC ? discs(plan, crystal) : flecks(plan, crystal);
  const parts = [skin.red.data, skin.green.data, skin.blue.data] as const;
  everyGlazed(skin, coatings, (i, x, y, coats) => {
    const { body, light } = grow(x, y);
    const share = clamp(body * smoothstep(0.9, 1.8, coats), 0, 0.9);
    if (share === 0) return;
    parts.forEach((part, k) => {
      part[i] = mix(num(part, i), (colour[k] as number) * light, share);
    });
    skin.roughness.data[i] = mix(num(skin.roughness.data, i), 0.3, 0.7 * share);
    skin.height.data[i] = num(skin.height.data, i) + 0.004 * share * (light - 1);
  });
}

/** What a crystal does at a place: how far it hides the glass, and how brightly it answers the light. */
interface Grown {
  body: number;
  light: number;
}

/**
 * Discs of fine needles around a seed, as zinc silicate grows: a fan one way shines while the one
 * across it is dull, rings tell how the kiln cooled, and where two meet they stop in a straight line.
 */
function discs(plan: TilePlan, { size }: Crystal): (x: number, y: number) => Grown {
  const at = noisePlace(`crystals ${plan.code}`);
  const salt = hashText(`crystals ${plan.code}`) & 0xffff;
  const hit = makeCellHit();
  const cell = size * 2.1;
  const grown: Grown = { body: 0, light: 1 };
  return (x, y) => {
    const wx = x + 0.35 * clouds(at.x + x * 0.3, at.y + y * 0.3);
    const wy = y + 0.35 * clouds(at.y + x * 0.3, at.x + y * 0.3);
    findCell(wx / cell, wy / cell, salt, hit);
    const sown = hit.id < 0.5 + 0.5 * grain(at.x + x * 0.045, at.y + y * 0.045);
    const chance = (hit.id * 37.7) % 1;
    const radius = size * (0.3 + 1.1 * chance * chance);
    const d = hit.nearest * cell;
    grown.body = 0;
    if (!sown || d > radius * 1.25) return grown;
    const angle = Math.atan2(hit.dy, hit.dx);
    const turn = hit.id * 61;
    const feather =
      0.16 * grain(at.x + turn + Math.cos(angle) * 2.4, at.y + Math.sin(angle) * 2.4) +
      0.1 * grain(at.y + turn + Math.cos(angle) * 9, at.x + Math.sin(angle) * 9);
    const edge = radius * (0.95 + feather);
    const wall = smoothstep(0.02, 0.14, (hit.second - hit.nearest) * cell);
    const needles = grain(
      at.x + turn + Math.cos(angle) * 17,
      at.y + Math.sin(angle) * 17 + d * 0.25,
    );
    const rings =
      0.12 * Math.cos((d / radius) * (7 + 6 * chance)) * smoothstep(0.15, 0.6, d / radius);
    const fan = Math.cos((angle - turn) * 2);
    grown.body =
      (0.5 + 0.22 * needles + rings + 0.16 * fan) * smoothstep(edge, edge - 0.22, d) * wall;
    grown.body += 0.25 * Math.exp(-((d / 0.16) ** 2));
    grown.light = 1 + 0.2 * fan + 0.18 * needles;
    return grown;
  };
}

/** Flecks that gather in some places and stay away from others, no two of one outline. */
function flecks(plan: TilePlan, { size, few }: Crystal): (x: number, y: number) => Grown {
  const at = noisePlace(`crystals ${plan.code}`);
  const salt = hashText(`crystals ${plan.code}`) & 0xffff;
  const hit = makeCellHit();
  const grown: Grown = { body: 0, light: 1 };
  const many = few ? 0.02 : 0.55;
  const fleck = (x: number, y: number, scale: number, shift: number): number => {
    const wx = x + 0.8 * scale * clouds(at.x + (x * 0.45) / scale, at.y + (y * 0.45) / scale);
    const wy = y + 0.8 * scale * clouds(at.y + (x * 0.45) / scale, at.x + (y * 0.45) / scale);
    findCell(wx / (2.2 * scale), wy / (2.2 * scale), salt + shift, hit);
    const here = many + 0.45 * clouds(at.x - x * 0.07 + shift, at.y - y * 0.05);
    if (hit.id > here) return 0;
    const radius = scale * (0.3 + 0.7 * ((hit.id * 53.3) % 1) ** 2);
    const soft = smoothstep(radius, radius * 0.35, hit.nearest * 2.2 * scale);
    return soft * (0.55 + 0.45 * grain(at.y + (x * 2.2) / scale, at.x + (y * 2.2) / scale));
  };
  return (x, y) => {
    const frost = few ? 0 : 0.6 * fleck(x, y, size * 0.38, 31);
    grown.body = Math.max(0.95 * fleck(x, y, size, 0), 0.8 * fleck(x, y, size * 0.6, 17), frost);
    grown.light = 0.92 + 0.16 * grain(at.x + x * 3.1, at.y + y * 3.1);
    return grown;
  };
}
