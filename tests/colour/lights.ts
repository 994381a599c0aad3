import { whiteXyz, type Xyz, xyzToLinear } from "../../src/colour/cielab.ts";
import { invert, type Matrix, multiply } from "../../src/colour/matrix.ts";
import type { LinearRgb } from "../../src/colour/srgb.ts";

/**
 * A small world of light to check the grey card against: smooth surfaces, lit by black bodies, seen
 * by the CIE 1931 observer. Nothing in it knows how the correction works.
 */
export type Spectrum = (nanometres: number) => number;

/** C. Wyman, P.-P. Sloan, P. Shirley, JCGT 2/2 (2013): fits to the CIE 1931 observer (from memory). */
const OBSERVER: readonly Spectrum[] = [
  (l) =>
    1.056 * lobe(l, 599.8, 37.9, 31) +
    0.362 * lobe(l, 442, 16, 26.7) -
    0.065 * lobe(l, 501.1, 20.4, 26.2),
  (l) => 0.821 * lobe(l, 568.8, 46.9, 40.5) + 0.286 * lobe(l, 530.9, 16.3, 31.1),
  (l) => 1.217 * lobe(l, 437, 11.8, 36) + 0.681 * lobe(l, 459, 26, 13.8),
];

export function lobe(at: number, middle: number, below: number, above: number): number {
  return Math.exp(-0.5 * ((at - middle) / (at < middle ? below : above)) ** 2);
}

/** A step up at a wavelength: iron's browns and yellows reflect like that. */
export function step(middle: number, width: number): Spectrum {
  return (nanometres) => 1 / (1 + Math.exp((middle - nanometres) / width));
}

/** Planck's law, in arbitrary units. */
export function blackBody(kelvin: number): Spectrum {
  return (nanometres) => {
    const metres = nanometres * 1e-9;
    return metres ** -5 / (Math.exp(0.014388 / (metres * kelvin)) - 1);
  };
}

/** A white LED: a blue one under a broad glow. Shapes as such lamps have them; invented numbers. */
function led(blue: number, glow: number, below: number, above: number): Spectrum {
  return (l) => blue * lobe(l, 452, 9, 10) + lobe(l, glow, below, above);
}

/** Lamps that are no black bodies, by what stands on their box. */
export const LAMPS: Record<string, Spectrum> = {
  "a warm LED": led(0.35, 605, 55, 52),
  "a neutral LED": led(0.8, 575, 50, 62),
  "a cool LED": led(1.1, 560, 48, 65),
  "a three-band tube": (l) =>
    1.2 * lobe(l, 436, 5, 5) +
    2.2 * lobe(l, 545, 6, 6) +
    2.4 * lobe(l, 611, 6, 6) +
    0.15 * lobe(l, 580, 60, 60),
};

/** XYZ of a surface under a light, so that a perfect white has Y = 1. */
export function lightUp(reflectance: Spectrum, light: Spectrum): Xyz {
  let [x, y, z, white] = [0, 0, 0, 0];
  for (let l = 380; l <= 730; l += 5) {
    const [towardsX = 0, towardsY = 0, towardsZ = 0] = OBSERVER.map((lobes) => lobes(l) * light(l));
    x += towardsX * reflectance(l);
    y += towardsY * reflectance(l);
    z += towardsZ * reflectance(l);
    white += towardsY;
  }
  return [x / white, y / white, z / white];
}

const CAT02: Matrix = [
  [0.7328, 0.4296, -0.1624],
  [-0.7036, 1.6975, 0.0061],
  [0.003, 0.0136, 0.9834],
];

/**
 * The light of sRGB that a surface has in daylight, white brought to D65. The black body of 6504 K
 * stands for daylight; it is near enough that which adaptation (CIECAM02's here) does not matter.
 */
export function colourInDaylight(reflectance: Spectrum): LinearRgb {
  const daylight = blackBody(6504);
  const from = multiply(
    CAT02,
    lightUp(() => 1, daylight),
  );
  const to = multiply(CAT02, whiteXyz);
  const cones = multiply(CAT02, lightUp(reflectance, daylight));
  const [l, m, s] = cones.map((cone, at) => (cone * (to[at] ?? 0)) / (from[at] ?? 1));
  return xyzToLinear(multiply(invert(CAT02), [l ?? 0, m ?? 0, s ?? 0]));
}

/** What a camera balanced for daylight makes of a surface under a light. */
export function colourUnder(reflectance: Spectrum, light: Spectrum): LinearRgb {
  return xyzToLinear(lightUp(reflectance, light));
}
