import type { Coating } from "./glazing.ts";
import { num, smoothstep } from "./grid.ts";
import { type CellHit, clouds, findCell, grain, makeCellHit, noisePlace } from "./noise.ts";
import { hashText } from "./random.ts";
import type { Skin } from "./skin.ts";
import { darken, everywhere } from "./skin-marks.ts";
import type { TilePlan } from "./tile-plan.ts";

/** A net of cracks in the glass. Lengths in millimetres. */
interface CrazeNet {
  /** Width of a mesh of the first cracks. */
  readonly mesh: number;
  readonly width: number;
  readonly dark: number;
  /** Share of the meshes that younger cracks cross. */
  readonly crossed: number;
  /** How far smoke went into the glaze on either side. */
  readonly stain: number;
}

const FINE_CRAZING: CrazeNet = {
  mesh: 9,
  width: 0.07,
  dark: 0.3,
  crossed: 0.8,
  stain: 0,
};
/** Smoke blackens the cracks. */
const RAKU_CRACKLE: CrazeNet = {
  mesh: 14,
  width: 0.22,
  dark: 0.9,
  crossed: 0.62,
  stain: 0.7,
};

/** Cracks in the glaze: they lie in the glass, so that its surface stays as it is. */
export function craze(plan: TilePlan, skin: Skin, coatings: readonly Coating[]): void {
  const raku = plan.steps.some((step) => step.does === "fire" && step.kind === "raku");
  const net = raku ? RAKU_CRACKLE : FINE_CRAZING;
  const distance = crackDistance(plan.code, net);
  const at = noisePlace(`craze tone ${plan.code}`);
  everywhere(skin, (i, x, y) => {
    let coats = 0;
    for (const { thickness } of coatings) coats += num(thickness.data, i);
    if (coats < 0.8) return;
    const held = smoothstep(0.8, 1.6, coats);
    const tone = 0.85 + 0.4 * clouds(at.x + x * 0.06, at.y + y * 0.06);
    const line = distance(x, y);
    const width = net.width * (0.8 + 0.5 * grain(at.y + x * 0.2, at.x + y * 0.2));
    const crack = smoothstep(width, width * 0.15, line);
    const smoke = 0.3 * Math.exp(-line / Math.max(0.01, net.stain)) * (net.stain > 0 ? 1 : 0);
    darken(skin, i, Math.max(net.dark * crack * tone, smoke * tone) * held);
  });
}

/**
 * How far a place lies from the nearest crack. The first cracks run far; each mesh between them then
 * cracked by itself, so that younger cracks end on older ones.
 */
function crackDistance(code: string, net: CrazeNet): (x: number, y: number) => number {
  const at = noisePlace(`craze ${code}`);
  const salt = hashText(`craze ${code}`) & 0xffff;
  const hit = makeCellHit();
  const lean = 0.35 * grain(at.x, at.y);
  return (x, y) => {
    const wx = x + lean * y + 1.1 * clouds(at.x + x * 0.12, at.y + y * 0.12);
    const wy = y * 0.8 + 1.1 * clouds(at.y + x * 0.12, at.x + y * 0.12);
    let nearest = gap(wx, wy, net.mesh, salt, hit);
    const mesh = hit.id;
    if (mesh > net.crossed) return nearest;
    nearest = Math.min(
      nearest,
      gap(wx, wy, net.mesh * 0.52, salt + 1 + Math.floor(mesh * 9001), hit),
    );
    if (hit.id > 0.45) return nearest;
    return Math.min(
      nearest,
      gap(wx, wy, net.mesh * 0.3, salt + 7 + Math.floor(hit.id * 7001), hit) + net.width * 0.25,
    );
  };
}

/** Distance to the line half way between the two nearest seeds. */
function gap(x: number, y: number, mesh: number, salt: number, hit: CellHit): number {
  findCell(x / mesh, y / mesh, salt, hit);
  return ((hit.second - hit.nearest) * mesh) / 1.6;
}
