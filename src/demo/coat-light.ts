import { linearFromHex } from "./colour-space.ts";
import { type Layer, layerOver, type Pigment, writeLayer } from "./glaze-colour.ts";
import type { Coating } from "./glazing.ts";
import { clamp, type Grid, mix, num, smoothstep } from "./grid.ts";
import type { Vec3 } from "./vector.ts";

/** A coating made ready for its light to be worked out. */
export interface Paint {
  readonly coating: Coating;
  readonly pigment: Pigment;
  readonly flow: number;
  /** 0 melted, 1 still the powder that was put on. */
  readonly powder: number;
  readonly raw: Vec3 | undefined;
  readonly floats: Grid | undefined;
  readonly specks: Grid | undefined;
}

type Colour = [number, number, number];

/** One place while its coats are added up; used again for every place. */
export interface Spot {
  readonly clay: Colour;
  /** What is seen from above of everything so far. */
  readonly seen: Colour;
  /** How melting glazes marble here: −1 to 1. */
  marble: number;
  /** Coats that lie here. */
  total: number;
  /** Coats weighted with how they flow. */
  fluid: number;
  /** Coats that melt together. */
  melt: number;
  readonly layer: Layer;
  /** All layers stirred together. */
  readonly blend: Layer;
}

export function makeSpot(): Spot {
  const none = () => ({ red: 0, green: 0, blue: 0, scattering: 0 });
  return {
    clay: [0, 0, 0],
    seen: [0, 0, 0],
    marble: 0,
    total: 0,
    fluid: 0,
    melt: 0,
    layer: none(),
    blend: none(),
  };
}

/** Lays every coat at place `i` over the clay that the spot shows. */
export function layCoatsOfLight(paints: readonly Paint[], i: number, spot: Spot): void {
  const { blend } = spot;
  blend.red = blend.green = blend.blue = blend.scattering = 0;
  spot.total = spot.fluid = spot.melt = 0;
  for (const paint of paints) {
    if (paint.flow > 0) spot.melt += num(paint.coating.thickness.data, i);
  }
  paints.forEach((paint, order) => {
    layCoat(paint, order, i, spot);
  });
  if (paints.length > 1 && spot.fluid > 0.3) {
    const share = (spot.fluid / spot.total) * (0.42 - 0.5 * spot.marble);
    stir(spot, clamp(share, 0, 0.8));
  }
}

function layCoat(paint: Paint, order: number, i: number, spot: Spot): void {
  const laid = num(paint.coating.thickness.data, i);
  if (laid < 0.02) return;
  const coats = order === 0 ? laid : laid * clamp(1 + spot.marble * 1.1 * paint.flow, 0.2, 2);
  const floating = paint.floats ? num(paint.floats.data, i) : 0;
  writeLayer(paint.pigment, coats, paint.flow > 0 ? spot.melt : coats, floating, spot.layer);
  if (spot.total === 0) wet(spot.seen, coats);
  overlay(spot.seen, spot.layer);
  if (paint.powder > 0) chalk(spot.seen, paint.raw, paint.powder * smoothstep(0.2, 1, coats));
  if (paint.specks) speckle(spot.seen, paint, num(paint.specks.data, i));
  spot.total += coats;
  spot.fluid += coats * Math.min(1, paint.flow);
  addLayer(spot.blend, spot.layer);
}

function addLayer(sum: Layer, layer: Layer): void {
  sum.red += layer.red;
  sum.green += layer.green;
  sum.blue += layer.blue;
  sum.scattering += layer.scattering;
}

/** Clay looks darker and fuller in colour under a melt, as a wet stone does. */
function wet(seen: Colour, coats: number): void {
  const power = 1 + 0.16 * Math.min(1, coats);
  for (let k = 0; k < 3; k++) seen[k] = (seen[k] as number) ** power;
}

function overlay(seen: Colour, layer: Layer): void {
  seen[0] = layerOver(layer.red, layer.scattering, seen[0]);
  seen[1] = layerOver(layer.green, layer.scattering, seen[1]);
  seen[2] = layerOver(layer.blue, layer.scattering, seen[2]);
}

/** What never melted is pale and chalky. */
function chalk(seen: Colour, raw: Vec3 | undefined, share: number): void {
  for (let k = 0; k < 3; k++) {
    const own = seen[k] as number;
    const powder = raw?.[k] ?? 0.42 + 0.5 * own;
    seen[k] = mix(own, powder, 0.62 * share);
  }
}

/** Layers that melt into each other look partly like their mixture. */
function stir({ seen, clay, blend }: Spot, share: number): void {
  seen[0] = mix(seen[0], layerOver(blend.red, blend.scattering, clay[0]), share);
  seen[1] = mix(seen[1], layerOver(blend.green, blend.scattering, clay[1]), share);
  seen[2] = mix(seen[2], layerOver(blend.blue, blend.scattering, clay[2]), share);
}

function speckle(seen: Colour, paint: Paint, spot: number): void {
  const colour = paint.coating.glaze.speck?.colour;
  if (!colour || spot === 0) return;
  const [r, g, b] = linearFromHex(colour);
  seen[0] = mix(seen[0], r, spot * 0.8);
  seen[1] = mix(seen[1], g, spot * 0.8);
  seen[2] = mix(seen[2], b, spot * 0.8);
}
