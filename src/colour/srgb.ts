/** Red, green and blue of sRGB in light, not in codes: 0 is black, 1 is white. May lie outside. */
export type LinearRgb = readonly [red: number, green: number, blue: number];

/** Code (0 to 1) to light, by IEC 61966-2-1. */
export function srgbToLinear(code: number): number {
  return code <= 0.04045 ? code / 12.92 : ((code + 0.055) / 1.055) ** 2.4;
}

/** Light to code (0 to 1), by IEC 61966-2-1. */
export function linearToSrgb(light: number): number {
  return light <= 0.0031308 ? light * 12.92 : 1.055 * light ** (1 / 2.4) - 0.055;
}

/** Light for each of the 256 codes. */
export const lightOfCode: Float64Array = Float64Array.from({ length: 256 }, (_, code) =>
  srgbToLinear(code / 255),
);

/** Reads `#rrggbb`. Throws a RangeError for anything else: only colours of our own come here. */
export function hexToLinear(hex: string): LinearRgb {
  if (!/^#[0-9a-f]{6}$/i.test(hex)) throw new RangeError(`${hex} is no colour like #a0522d`);
  const light = (at: number) => srgbToLinear(Number.parseInt(hex.slice(at, at + 2), 16) / 255);
  return [light(1), light(3), light(5)];
}

/** Writes `#rrggbb`. What sRGB cannot show is brought to its edge, channel by channel. */
export function linearToHex(rgb: LinearRgb): string {
  const digits = rgb.map((light) => {
    const code = Math.round(255 * Math.min(1, Math.max(0, linearToSrgb(light))));
    return code.toString(16).padStart(2, "0");
  });
  return `#${digits.join("")}`;
}
