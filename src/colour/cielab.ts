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
export const xyzOfLinear: Matrix = [
  [506752 / 1228815, 87881 / 245763, 12673 / 70218],
  [87098 / 409605, 175762 / 245763, 12673 / 175545],
  [7918 / 409605, 87881 / 737289, 1001167 / 1053270],
];

export const linearOfXyz: Matrix = invert(xyzOfLinear);

/** White of sRGB: D65. */
export const whiteXyz: Xyz = multiply(xyzOfLinear, [1, 1, 1]);

/** Where the curve of CIELAB turns straight, as exact fractions (CIE 15:2018, section 8.2.1). */
const bend = 216 / 24389;
const slope = 24389 / 27;

export function linearToXyz(rgb: LinearRgb): Xyz {
  return multiply(xyzOfLinear, rgb);
}

export function xyzToLinear(xyz: Xyz): LinearRgb {
  return multiply(linearOfXyz, xyz);
}

export function xyzToLab([X, Y, Z]: Xyz): Lab {
  const [x, y, z] = [
    compress(X / whiteXyz[0]),
    compress(Y / whiteXyz[1]),
    compress(Z / whiteXyz[2]),
  ];
  return [116 * y - 16, 500 * (x - y), 200 * (y - z)];
}

export function labToXyz([L, a, b]: Lab): Xyz {
  const y = (L + 16) / 116;
  const [x, z] = [y + a / 500, y - b / 200];
  return [whiteXyz[0] * expand(x), whiteXyz[1] * expand(y), whiteXyz[2] * expand(z)];
}

export function linearToLab(rgb: LinearRgb): Lab {
  return xyzToLab(linearToXyz(rgb));
}

export function labToLinear(lab: Lab): LinearRgb {
  return xyzToLinear(labToXyz(lab));
}

function compress(ratio: number): number {
  return ratio > bend ? Math.cbrt(ratio) : (slope * ratio + 16) / 116;
}

function expand(value: number): number {
  return value ** 3 > bend ? value ** 3 : (116 * value - 16) / slope;
}
