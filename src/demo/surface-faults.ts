import { blister, boilOver } from "./boiling.ts";
import { craze } from "./crazing.ts";
import type { Coating } from "./glazing.ts";
import { mix, num, smoothstep } from "./grid.ts";
import { clouds, findCell, grain, makeCellHit, noisePlace } from "./noise.ts";
import { hashText } from "./random.ts";
import type { Skin } from "./skin.ts";
import { coatsAt, darken, everywhere, tint } from "./skin-marks.ts";
import type { TilePlan } from "./tile-plan.ts";

type ShowFault = (plan: TilePlan, skin: Skin, coatings: readonly Coating[]) => void;

const SHOWN_FAULTS: Readonly<Record<string, ShowFault>> = {
  crazing: craze,
  blistering: blister,
  overfired: boilOver,
  bloating: bloat,
  "kiln-crumbs": dropCrumbs,
  cloudy: cloud,
  dunting: (plan, skin) => crack(plan, skin, 0.16),
};

const SHOWN_FATES: Readonly<Record<string, ShowFault>> = {
  cracked: (plan, skin) => crack(plan, skin, 0.3),
  broken: (plan, skin) => crack(plan, skin, 0.85),
  exploded: (plan, skin) => crack(plan, skin, 0.85),
  stuck: stickToShelf,
};

/** Faults that show on the finished surface, and the fate of a tile that is not whole. */
export function showFaults(plan: TilePlan, skin: Skin, coatings: readonly Coating[]): void {
  for (const fault of new Set(plan.faults)) SHOWN_FAULTS[fault]?.(plan, skin, coatings);
  SHOWN_FATES[plan.fate ?? ""]?.(plan, skin, coatings);
}

function bloat(plan: TilePlan, skin: Skin): void {
  const salt = hashText(`bloat ${plan.code}`) & 0xffff;
  const hit = makeCellHit();
  everywhere(skin, (i, x, y) => {
    findCell(x / 15, y / 15, salt, hit);
    if (hit.id > 0.45) return;
    const d = hit.nearest * 15;
    const size = 2.5 + 7 * hit.id;
    const alone = smoothstep(0, 4, (hit.second - hit.nearest) * 15);
    skin.height.data[i] = num(skin.height.data, i) + 1.2 * alone * Math.exp(-((d / size) ** 2) * 2);
  });
}

/** Bits of kiln wash and brick that fell on the melt. */
function dropCrumbs(plan: TilePlan, skin: Skin): void {
  const at = noisePlace(`crumbs ${plan.code}`);
  const salt = hashText(`crumbs ${plan.code}`) & 0xffff;
  const hit = makeCellHit();
  everywhere(skin, (i, x, y) => {
    findCell(x / 7, y / 7, salt, hit);
    if (hit.id > 0.06) return;
    const size = 0.4 + 8 * hit.id;
    const d = hit.nearest * 7 + 0.35 * clouds(at.x + x * 1.2, at.y + y * 1.2);
    const crumb = smoothstep(size, size * 0.75, d);
    tint(skin, i, hit.id > 0.02 ? [0.36, 0.13, 0.06] : [0.16, 0.09, 0.05], crumb);
    skin.height.data[i] =
      num(skin.height.data, i) + 0.6 * crumb * (0.7 + 0.5 * clouds(at.y + x * 1.5, at.x + y * 1.5));
    skin.roughness.data[i] = mix(num(skin.roughness.data, i), 0.9, crumb);
    skin.glass.data[i] = mix(num(skin.glass.data, i), 0.1, crumb);
  });
}

function cloud(plan: TilePlan, skin: Skin, coatings: readonly Coating[]): void {
  const at = noisePlace(`cloud ${plan.code}`);
  everywhere(skin, (i, x, y) => {
    const coats = smoothstep(0.8, 4, coatsAt(coatings, i));
    const milk = smoothstep(-0.5, 0.6, clouds(at.x + x * 0.05, at.y + y * 0.05));
    tint(skin, i, [0.62, 0.64, 0.66], 0.38 * milk * coats);
  });
}

/** A crack right across, `half` millimetres to either side. */
function crack(plan: TilePlan, skin: Skin, half: number): void {
  const at = noisePlace(`crack ${plan.code}`);
  const lean = grain(at.x, at.y) * 0.9;
  everywhere(skin, (i, x, y) => {
    const path =
      y - 6 - lean * x - 5 * grain(at.x + x * 0.045, at.y) - 0.8 * clouds(at.y + x * 0.3, at.x);
    const d = Math.abs(path);
    const wide = half * (1 + 0.4 * grain(at.x + x * 0.2, at.y));
    const gap = smoothstep(wide + 0.12, wide, d);
    const lip = smoothstep(wide + 0.8, wide, d) * (half > 0.5 ? 1 : 0);
    if (lip > 0)
      tint(
        skin,
        i,
        [0.48, 0.4, 0.3],
        0.6 * lip * smoothstep(-0.2, 0.4, clouds(at.x + x * 0.8, at.y + y * 0.8)),
      );
    darken(skin, i, 0.93 * gap);
    skin.height.data[i] = num(skin.height.data, i) - Math.min(2.5, half * 6) * gap;
    skin.glass.data[i] = num(skin.glass.data, i) * (1 - gap);
  });
}

/** Shelf wash and a torn edge along the foot. */
function stickToShelf(plan: TilePlan, skin: Skin): void {
  const at = noisePlace(`stuck ${plan.code}`);
  const { face, extent } = skin.chart;
  const shelf = plan.shape === "l-shape" ? extent.bottom + 2 : face.bottom;
  everywhere(skin, (i, x, y) => {
    const reach = 1.4 + 1.6 * grain(at.x + x * 0.1, at.y) + clouds(at.y + x * 0.4, at.x + y * 0.4);
    const torn = smoothstep(0.3, -0.3, y - shelf - reach);
    const grit = torn * smoothstep(-0.25, 0.25, clouds(at.x + x * 0.3, at.y + y * 0.3));
    const pale = 0.8 + 0.35 * clouds(at.y + x * 0.9, at.x + y * 0.9);
    tint(skin, i, [0.56 * pale, 0.48 * pale, 0.38 * pale], 0.9 * grit);
    skin.height.data[i] =
      num(skin.height.data, i) + grit * (0.3 + 0.35 * clouds(at.y + x * 1.1, at.x + y * 1.1));
    skin.roughness.data[i] = mix(num(skin.roughness.data, i), 0.95, grit);
    skin.glass.data[i] = mix(num(skin.glass.data, i), 0.08, grit);
  });
}
