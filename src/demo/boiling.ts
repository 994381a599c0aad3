import type { Coating } from "./glazing.ts";
import { num, smoothstep } from "./grid.ts";
import { clouds, findCell, grain, makeCellHit, noisePlace } from "./noise.ts";
import { hashText, makeChance } from "./random.ts";
import type { Skin } from "./skin.ts";
import { coatsAt, darken, everywhere } from "./skin-marks.ts";
import type { TilePlan } from "./tile-plan.ts";

/** How one tile boiled. */
interface Boil {
  /** Share of the places that could hold a bubble that do. */
  readonly many: number;
  /** Millimetres from one such place to the next. */
  readonly apart: number;
  /** Radius of the largest, in millimetres. */
  readonly largest: number;
  /** Of a hundred: how many had healed to a dimple, and how many still stand as bubbles. */
  readonly healed: number;
  readonly closed: number;
}

/** Blisters: bubbles that stood, broke, or broke and healed, when the kiln was shut off. */
export function blister(plan: TilePlan, skin: Skin, coatings: readonly Coating[]): void {
  boil(plan, skin, coatings, {
    many: 0.3,
    apart: 3.4,
    largest: 1.25,
    healed: 25,
    closed: 40,
  });
}

/** A melt that was taken too far: each tile has its own mixture of dimples, craters and bubbles. */
export function boilOver(plan: TilePlan, skin: Skin, coatings: readonly Coating[]): void {
  const chance = makeChance(`boil ${plan.code}`);
  boil(plan, skin, coatings, {
    many: 0.03 + 0.09 * chance() ** 2,
    apart: 2.2 + 2.8 * chance(),
    largest: 0.5 + 0.8 * chance() ** 2,
    healed: 45 + 50 * chance(),
    closed: 30 * chance(),
  });
}

function boil(plan: TilePlan, skin: Skin, coatings: readonly Coating[], how: Boil): void {
  const at = noisePlace(`blister ${plan.code}`);
  const salt = hashText(`blister ${plan.code}`) & 0xffff;
  const hit = makeCellHit();
  everywhere(skin, (i, x, y) => {
    const coats = coatsAt(coatings, i);
    if (coats < 0.8) return;
    findCell(x / how.apart, y / how.apart, salt, hit);
    const here = how.many * (0.9 + 1.5 * clouds(at.x + x * 0.04, at.y + y * 0.04));
    if (hit.id > here) return;
    const chance = (hit.id * 7919) % 1;
    const size = how.largest * (0.25 + 0.75 * chance ** 2.2) * smoothstep(0.8, 2.2, coats);
    const angle = Math.atan2(hit.dy, hit.dx);
    const out = 1 + 0.22 * grain(at.x + hit.id * 911 + Math.cos(angle), at.y + Math.sin(angle));
    const d = (hit.nearest * how.apart) / (size * out);
    if (d > 1.9) return;
    const kind = ((hit.id * 4801) % 1) * 100;
    skin.height.data[i] = num(skin.height.data, i) + size * profile(kind, d, how);
    if (kind > how.healed + how.closed) darken(skin, i, 0.6 * smoothstep(0.85, 0.5, d));
  });
}

/** Height above the glaze at a distance, of a bubble of radius 1. */
function profile(kind: number, d: number, how: Boil): number {
  if (kind < how.healed)
    return -0.1 * Math.exp(-((d / 0.8) ** 2)) + 0.02 * Math.exp(-((d - 1.3) ** 2) * 6);
  if (kind < how.healed + how.closed) {
    const skirt = 0.12 * Math.exp(-(((d - 0.9) / 0.35) ** 2));
    return 0.36 * Math.sqrt(Math.max(0, 1 - d * d)) + skirt;
  }
  return 0.13 * Math.exp(-(((d - 1) / 0.2) ** 2)) - 0.25 * smoothstep(0.95, 0.55, d);
}
