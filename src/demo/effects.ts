import { everyGlazed, growCrystals } from "./crystals.ts";
import type { Coating } from "./glazing.ts";
import { mix, num, smoothstep } from "./grid.ts";
import { clouds, grain, noisePlace } from "./noise.ts";
import type { Skin } from "./skin.ts";
import type { TilePlan } from "./tile-plan.ts";

/** What a result's effects add to the surface; those that are part of the melt are done there. */
export function growEffects(plan: TilePlan, skin: Skin, coatings: readonly Coating[]): void {
  if (plan.effects.includes("crystals")) growCrystals(plan, skin, coatings);
  if (plan.effects.includes("metallic")) makeMetallic(plan, skin, coatings);
  if (plan.effects.includes("lustre")) makeLustre(plan, skin, coatings);
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
