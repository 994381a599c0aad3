import { invert, type Matrix, multiply, type Vector } from "./matrix.ts";
import type { LinearRgb } from "./srgb.ts";

/** CIE XYZ under D65, 2° observer; Y of white is 1. */
export type Xyz = Vector;

/** CIELAB under D65, 2° observer. */
export type Lab = readonly [L: number, a: number, b: number];

/**
 * The primaries of sRGB (IEC 61966-2-1; white x 0.3127, y 0.3290) in CIE XYZ, as the exact
 * fractions of CSS Color Module Level 4, section 18.
 */
export const LINEAR_TO_XYZ: Matrix = [
  [506752 / 1228815, 87881 / 245763, 12673 / 70218],
  [87098 / 409605, 175762 / 245763, 12673 / 175545],
  [7918 / 409605, 87881 / 737289, 1001167 / 1053270],
];

export const XYZ_TO_LINEAR: Matrix = invert(LINEAR_TO_XYZ);

/** White of sRGB: D65. */
export const WHITE: Xyz = multiply(LINEAR_TO_XYZ, [1, 1, 1]);

/** Where the curve of CIELAB turns straight, as exact fractions (CIE 15:2018, section 8.2.1). */
const BEND = 216 / 24389;
const SLOPE = 24389 / 27;

export function linearToXyz(rgb: LinearRgb): Xyz {
  return multiply(LINEAR_TO_XYZ, rgb);
}

export function xyzToLinear(xyz: Xyz): LinearRgb {
  return multiply(XYZ_TO_LINEAR, xyz);
}

export function xyzToLab([X, Y, Z]: Xyz): Lab {
  const [x, y, z] = [compress(X / WHITE[0]), compress(Y / WHITE[1]), compress(Z / WHITE[2])];
  return [116 * y - 16, 500 * (x - y), 200 * (y - z)];
}

export function labToXyz([L, a, b]: Lab): Xyz {
  const y = (L + 16) / 116;
  const [x, z] = [y + a / 500, y - b / 200];
  return [WHITE[0] * expand(x), WHITE[1] * expand(y), WHITE[2] * expand(z)];
}

export function linearToLab(rgb: LinearRgb): Lab {
  return xyzToLab(linearToXyz(rgb));
}

export function labToLinear(lab: Lab): LinearRgb {
  return xyzToLinear(labToXyz(lab));
}

function compress(ratio: number): number {
  return ratio > BEND ? Math.cbrt(ratio) : (SLOPE * ratio + 16) / 116;
}

function expand(value: number): number {
  return value ** 3 > BEND ? value ** 3 : (116 * value - 16) / SLOPE;
}
