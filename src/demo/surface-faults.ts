import type { Coating } from "./glazing.ts";
import { mix, num, smoothstep } from "./grid.ts";
import { clouds, findCell, grain, makeCellHit, noisePlace } from "./noise.ts";
import { hashText } from "./random.ts";
import type { Skin } from "./skin.ts";
import type { TilePlan } from "./tile-plan.ts";

type ShowFault = (plan: TilePlan, skin: Skin, coatings: readonly Coating[]) => void;

const SHOWN_FAULTS: Readonly<Record<string, ShowFault>> = {
  crazing: (plan, skin, coatings) =>
    craze(plan, skin, coatings, isRaku(plan) ? RAKU_CRACKLE : FINE_CRAZING),
  blistering: (plan, skin, coatings) => blister(plan, skin, coatings, 0.3),
  overfired: (plan, skin, coatings) => blister(plan, skin, coatings, 0.045),
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

type At = (index: number, x: number, y: number) => void;

function everywhere(skin: Skin, visit: At): void {
  const { chart } = skin;
  let i = 0;
  for (let row = 0; row < chart.height; row++) {
    const y = chart.extent.top - (row + 0.5) / chart.perMm;
    for (let column = 0; column < chart.width; column++) {
      visit(i++, chart.extent.left + (column + 0.5) / chart.perMm, y);
    }
  }
}

function darken(skin: Skin, i: number, share: number): void {
  skin.red.data[i] = num(skin.red.data, i) * (1 - share);
  skin.green.data[i] = num(skin.green.data, i) * (1 - share);
  skin.blue.data[i] = num(skin.blue.data, i) * (1 - share);
}

function tint(
  skin: Skin,
  i: number,
  colour: readonly [number, number, number],
  share: number,
): void {
  skin.red.data[i] = mix(num(skin.red.data, i), colour[0], share);
  skin.green.data[i] = mix(num(skin.green.data, i), colour[1], share);
  skin.blue.data[i] = mix(num(skin.blue.data, i), colour[2], share);
}

function coatsAt(coatings: readonly Coating[], i: number): number {
  let sum = 0;
  for (const { thickness } of coatings) sum += num(thickness.data, i);
  return sum;
}

interface CrazeNet {
  readonly mesh: number;
  readonly width: number;
  readonly dark: number;
  /** Share of the meshes that no finer cracks cross. */
  readonly whole: number;
}

const FINE_CRAZING: CrazeNet = { mesh: 6.5, width: 0.14, dark: 0.42, whole: 0.3 };
/** Smoke blackens the cracks. */
const RAKU_CRACKLE: CrazeNet = { mesh: 8.5, width: 0.34, dark: 0.9, whole: 0.55 };

function isRaku(plan: TilePlan): boolean {
  return plan.steps.some((step) => step.does === "fire" && step.kind === "raku");
}

/** A net of fine cracks in the glaze, finer where it lies thick. */
function craze(plan: TilePlan, skin: Skin, coatings: readonly Coating[], net: CrazeNet): void {
  const at = noisePlace(`craze ${plan.code}`);
  const salt = hashText(`craze ${plan.code}`) & 0xffff;
  const hit = makeCellHit();
  everywhere(skin, (i, x, y) => {
    const coats = coatsAt(coatings, i);
    if (coats < 1) return;
    const wx = x + 0.9 * clouds(at.x + x * 0.2, at.y + y * 0.2);
    const wy = y + 0.9 * clouds(at.y + x * 0.2, at.x + y * 0.2);
    findCell(wx / net.mesh, wy / net.mesh, salt, hit);
    let line = (hit.second - hit.nearest) * net.mesh;
    if (hit.id > net.whole) {
      findCell((wx * 2.1) / net.mesh, (wy * 2.1) / net.mesh, salt + 9, hit);
      line = Math.min(line, ((hit.second - hit.nearest) * net.mesh) / 2.1 + 0.03);
    }
    const dark = smoothstep(net.width, net.width * 0.2, line) * smoothstep(1, 2, coats);
    darken(skin, i, net.dark * dark);
    skin.height.data[i] = num(skin.height.data, i) - 0.012 * dark;
  });
}

function blister(plan: TilePlan, skin: Skin, coatings: readonly Coating[], many: number): void {
  const at = noisePlace(`blister ${plan.code}`);
  const salt = hashText(`blister ${plan.code}`) & 0xffff;
  const hit = makeCellHit();
  everywhere(skin, (i, x, y) => {
    if (coatsAt(coatings, i) < 0.8) return;
    findCell(x / 3.4, y / 3.4, salt, hit);
    if (hit.id > many + 0.5 * many * clouds(at.x + x * 0.06, at.y + y * 0.06)) return;
    const share = hit.id / many;
    const size = 0.35 + 0.85 * share * share;
    const d = (hit.nearest * 3.4) / size;
    if (d > 1.35) return;
    const burst = share > 0.45;
    const dome = burst
      ? 0.24 * Math.exp(-(((d - 0.95) / 0.22) ** 2)) - 0.22 * smoothstep(0.85, 0.5, d)
      : 0.4 * Math.sqrt(Math.max(0, 1 - d * d));
    skin.height.data[i] = num(skin.height.data, i) + dome * size;
    if (burst) darken(skin, i, 0.55 * smoothstep(0.85, 0.45, d));
  });
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
  const { face } = skin.chart;
  everywhere(skin, (i, x, y) => {
    const reach = 1.4 + 1.6 * grain(at.x + x * 0.1, at.y) + clouds(at.y + x * 0.4, at.x + y * 0.4);
    const torn = smoothstep(0.3, -0.3, y - face.bottom - reach);
    const grit = torn * smoothstep(-0.25, 0.25, clouds(at.x + x * 0.3, at.y + y * 0.3));
    const pale = 0.8 + 0.35 * clouds(at.y + x * 0.9, at.x + y * 0.9);
    tint(skin, i, [0.56 * pale, 0.48 * pale, 0.38 * pale], 0.9 * grit);
    skin.height.data[i] =
      num(skin.height.data, i) + grit * (0.3 + 0.35 * clouds(at.y + x * 1.1, at.x + y * 1.1));
    skin.roughness.data[i] = mix(num(skin.roughness.data, i), 0.95, grit);
    skin.glass.data[i] = mix(num(skin.glass.data, i), 0.08, grit);
  });
}
