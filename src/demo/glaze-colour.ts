import { linearFromHex } from "./colour-space.ts";
import { clamp, mix, smoothstep } from "./grid.ts";
import type { GlazeLook } from "./tile-plan.ts";
import type { Vec3 } from "./vector.ts";

/**
 * Light in a coloured layer after Kubelka and Munk (Ein Beitrag zur Optik der Farbanstriche,
 * Zeitschrift für technische Physik 12, 1931): absorption K and scattering S for red, green and
 * blue, in units of one usual brushed coat.
 */
export interface Pigment {
  readonly thick: Optics;
  readonly thin: Optics;
  readonly pool: Optics;
  readonly float: Optics | undefined;
}

interface Optics {
  readonly absorption: Vec3;
  readonly scattering: number;
}

export function makePigment(glaze: GlazeLook): Pigment {
  return {
    thick: opticsOf(glaze.thick, glaze.hiding),
    thin: opticsOf(glaze.thin, glaze.hiding * 0.85),
    pool: opticsOf(glaze.pool ?? glaze.thick, glaze.hiding),
    float: glaze.float ? opticsOf(glaze.float.colour, glaze.hiding) : undefined,
  };
}

function opticsOf(hex: string, hiding: number): Optics {
  const scattering = 0.004 + 1.9 * hiding ** 1.8;
  const clear = (1 - hiding) ** 2;
  const absorb = (reflectance: number): number => {
    const r = clamp(reflectance, 0.004, 0.97);
    return (scattering * (1 - r) ** 2) / (2 * r) + (clear * -Math.log(r)) / 5;
  };
  const [red, green, blue] = linearFromHex(hex);
  return { absorption: [absorb(red), absorb(green), absorb(blue)], scattering };
}

/** Absorption (red, green, blue) and scattering of a whole thickness. */
export interface Layer {
  red: number;
  green: number;
  blue: number;
  scattering: number;
}

/**
 * Writes into `layer` what `coats` of a glaze do to light where it is part of a melt `melt` coats
 * thick, and `floating` of its second colour shows.
 */
export function writeLayer(
  pigment: Pigment,
  coats: number,
  melt: number,
  floating: number,
  layer: Layer,
): void {
  // Squared, because a little of a strong colour goes a long way.
  const share = smoothstep(0.3, 1.7, melt) ** 2;
  const deep = smoothstep(2.5, 4.8, coats);
  const { thick, thin, pool, float } = pigment;
  const part = (i: 0 | 1 | 2): number => {
    const own = mix(thin.absorption[i], thick.absorption[i], share);
    const shown = float ? mix(own, float.absorption[i], floating * share) : own;
    return mix(shown, pool.absorption[i], deep) * coats;
  };
  layer.red = part(0);
  layer.green = part(1);
  layer.blue = part(2);
  layer.scattering = mix(thin.scattering, thick.scattering, share) * coats;
}

/** Reflectance of a layer of total absorption K and scattering S over a ground. */
export function layerOver(absorption: number, scattering: number, ground: number): number {
  const a = 1 + absorption / scattering;
  const b = Math.sqrt(a * a - 1);
  const x = b * scattering;
  if (x > 12) return a - b;
  const e = Math.exp(-2 * x);
  const coth = (1 + e) / (1 - e + 1e-9);
  return (1 - ground * (a - b * coth)) / (a - ground + b * coth);
}
