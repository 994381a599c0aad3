import { type Matrix, multiply } from "./matrix.ts";
import type { LinearRgb } from "./srgb.ts";

/** OKLab: like CIELAB, but L from 0 to 1; means and distances taken in it look even. */
export type Oklab = readonly [L: number, a: number, b: number];

/** B. Ottosson, A perceptual color space for image processing (2020): sRGB light to cones. */
export const linearToCones: Matrix = [
  [0.4122214708, 0.5363325363, 0.0514459929],
  [0.2119034982, 0.6806995451, 0.1073969566],
  [0.0883024619, 0.2817188376, 0.6299787005],
];

/** The same: compressed cones to OKLab. */
export const conesToOklab: Matrix = [
  [0.2104542553, 0.793617785, -0.0040720468],
  [1.9779984951, -2.428592205, 0.4505937099],
  [0.0259040371, 0.7827717662, -0.808675766],
];

const oklabToCones: Matrix = [
  [1, 0.3963377774, 0.2158037573],
  [1, -0.1055613458, -0.0638541728],
  [1, -0.0894841775, -1.291485548],
];

const conesToLinear: Matrix = [
  [4.0767416621, -3.3077115913, 0.2309699292],
  [-1.2684380046, 2.6097574011, -0.3413193965],
  [-0.0041960863, -0.7034186147, 1.707614701],
];

export function linearToOklab(rgb: LinearRgb): Oklab {
  const [l, m, s] = multiply(linearToCones, rgb);
  return multiply(conesToOklab, [Math.cbrt(l), Math.cbrt(m), Math.cbrt(s)]);
}

export function oklabToLinear(lab: Oklab): LinearRgb {
  const [l, m, s] = multiply(oklabToCones, lab);
  return multiply(conesToLinear, [l ** 3, m ** 3, s ** 3]);
}
