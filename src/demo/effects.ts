import { linearFromHex } from "./colour-space.ts";
import type { Coating } from "./glazing.ts";
import { clamp, mix, num, smoothstep } from "./grid.ts";
import { clouds, findCell, grain, makeCellHit, noisePlace } from "./noise.ts";
import { hashText } from "./random.ts";
import type { Skin } from "./skin.ts";
import type { TilePlan } from "./tile-plan.ts";

/** What a result's effects add to the surface; those that are part of the melt are done there. */
export function growEffects(plan: TilePlan, skin: Skin, coatings: readonly Coating[]): void {
  if (plan.effects.includes("crystals")) growCrystals(plan, skin, coatings);
  if (plan.effects.includes("metallic")) makeMetallic(plan, skin, coatings);
  if (plan.effects.includes("lustre")) makeLustre(plan, skin, coatings);
}

function everyGlazed(
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

/** Stars of needles that grew from seeds while the glaze cooled. */
function growCrystals(plan: TilePlan, skin: Skin, coatings: readonly Coating[]): void {
  const grower = coatings.findLast((coating) => coating.glaze.crystal)?.glaze.crystal;
  const [red, green, blue] = linearFromHex(grower?.colour ?? "#9a6a48");
  const largest = grower?.size ?? 0.7;
  const at = noisePlace(`crystals ${plan.code}`);
  const salt = hashText(`crystals ${plan.code}`) & 0xffff;
  const hit = makeCellHit();
  const cell = largest * 1.75;
  everyGlazed(skin, coatings, (i, x, y, coats) => {
    findCell(x / cell, y / cell, salt, hit);
    if (hit.id > 0.8) return;
    const size = largest * (0.3 + 0.95 * hit.id * hit.id);
    const d = hit.nearest * cell;
    if (d > size * 1.2) return;
    const angle = Math.atan2(hit.dy, hit.dx);
    const points = 5 + (Math.floor(hit.id * 23) % 4);
    const star = Math.abs(Math.cos((angle + hit.id * 40) * points * 0.5));
    const needles = grain(at.x + hit.id * 97 + angle * 4.5, at.y + (d / size) * 0.7);
    const edge = size * (0.5 + 0.42 * star ** 1.5 + 0.3 * needles);
    const inside = smoothstep(edge, edge * 0.4, d) * smoothstep(0.9, 1.8, coats);
    const fibres = 0.66 + 0.34 * needles + 0.15 * clouds(at.y + x * 2, at.x + y * 2);
    const share = clamp(inside * (fibres + 0.2 * smoothstep(0.3, 0.1, d / size)), 0, 0.85);
    skin.red.data[i] = mix(num(skin.red.data, i), red, share);
    skin.green.data[i] = mix(num(skin.green.data, i), green, share);
    skin.blue.data[i] = mix(num(skin.blue.data, i), blue, share);
    skin.roughness.data[i] = num(skin.roughness.data, i) + 0.12 * inside;
    skin.height.data[i] = num(skin.height.data, i) + 0.008 * inside * needles;
  });
}

function makeMetallic(plan: TilePlan, skin: Skin, coatings: readonly Coating[]): void {
  const at = noisePlace(`metal ${plan.code}`);
  everyGlazed(skin, coatings, (i, x, y, coats) => {
    const patch = smoothstep(-0.5, 0.5, clouds(at.x + x * 0.07, at.y + y * 0.07));
    const share = smoothstep(1.2, 3.5, coats) * (0.25 + 0.4 * patch);
    skin.metal.data[i] = Math.max(num(skin.metal.data, i), share);
    skin.roughness.data[i] = Math.max(num(skin.roughness.data, i), 0.2);
  });
}

function makeLustre(plan: TilePlan, skin: Skin, coatings: readonly Coating[]): void {
  const at = noisePlace(`lustre ${plan.code}`);
  const own = coatings.some((coating) => coating.glaze.metal);
  everyGlazed(skin, coatings, (i, x, y) => {
    const hue =
      2.2 * clouds(at.x + x * 0.03, at.y + y * 0.03) + 0.4 * grain(at.y + x * 0.1, at.x + y * 0.1);
    const metal = num(skin.metal.data, i);
    const film = own ? smoothstep(0.05, 0.4, metal) : 0.5;
    if (film === 0) return;
    const share = 0.5 * film;
    skin.red.data[i] = mix(num(skin.red.data, i), 0.42 + 0.2 * Math.sin(hue), share);
    skin.green.data[i] = mix(num(skin.green.data, i), 0.36 + 0.2 * Math.sin(hue + 2.1), share);
    skin.blue.data[i] = mix(num(skin.blue.data, i), 0.34 + 0.22 * Math.sin(hue + 4.2), share);
    skin.metal.data[i] = Math.max(metal, 0.3 * film);
  });
}
