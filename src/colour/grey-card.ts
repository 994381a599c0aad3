import { linearOfXyz, whiteXyz, type Xyz, xyzOfLinear } from "./cielab.ts";
import { chain, diagonal, invert, type Matrix, multiply, type Vector } from "./matrix.ts";
import { type Crop, layGrid, type Pixels } from "./region.ts";
import { lightOfCode } from "./srgb.ts";

/** What a grey card in the picture leads to: a matrix on the light of sRGB, or why there is none. */
export type CardCorrection =
  | { matrix: Matrix; exposure: "as-taken" | "corrected" | "not-a-grey-cards" }
  | { unusable: "burnt-out" | "coloured" | "dark" };

/**
 * The sharpened sensors in which the light is put right (the Sharp transform: S. Süsstrunk, J. Holm,
 * G.D. Finlayson, Proc. SPIE 4300 (2001) 172-183). Chosen by trial over the lamps that stand over
 * copy stands, not bulbs alone: the worst of fifteen glaze-like patches under a bulb of 2700 K, four
 * white LEDs and a three-band tube was off by 3.7 to 4.4 CIEDE2000, with Bradford's sensors by 4.1 to
 * 5.8, with CIECAM02's by more; guessing the lamp's spectrum from its hue halves the bulb's error and
 * makes LEDs worse.
 */
const sharp: Matrix = [
  [1.2694, -0.0988, -0.1706],
  [-0.8364, 1.8006, 0.0357],
  [0.0297, -0.0315, 1.0018],
];

/**
 * Cards sold as grey reflect from 18 per cent (mid grey of ISO 12232, code 118 in sRGB) to 21.6
 * (code 128). Within that nobody can tell the card from the exposure, so lightness is left alone;
 * outside, it is brought to the nearer end. A rule of our own.
 */
const cardLight = { least: 0.18, most: 0.216 };

/** Further off than one stop it is a neutral of another kind: then it tells the hue alone. */
const oneStop = 2;

/** Codes at which a channel may have been cut off. */
const burntOut = 250;
const dark = 12;

/** A lamp of 2500 K, as warm as household bulbs get, changes one sensor against another by this. */
const mostCast = 6;

const cardPixels = 1000;

/** Works out how the light of a picture must change for its grey card to be grey. */
export function correctByCard(pixels: Pixels, card: Crop): CardCorrection {
  const codes = medianCodes(pixels, card);
  if (Math.max(...codes) >= burntOut) return { unusable: "burnt-out" };
  if (Math.min(...codes) <= dark) return { unusable: "dark" };
  const found = multiply(xyzOfLinear, codes.map(lightOf) as unknown as Vector);
  const { luminance, exposure } = aimAt(found[1]);
  const wanted: Xyz = [whiteXyz[0] * luminance, whiteXyz[1] * luminance, whiteXyz[2] * luminance];
  const gains = divide(multiply(sharp, wanted), multiply(sharp, found));
  if (Math.max(...gains) / Math.min(...gains) > mostCast) return { unusable: "coloured" };
  return { matrix: matrixOfGains(gains), exposure };
}

function matrixOfGains(gains: Vector): Matrix {
  const toSensors = chain(xyzOfLinear, sharp);
  const fromSensors = chain(invert(sharp), linearOfXyz);
  return chain(chain(toSensors, diagonal(gains)), fromSensors);
}

function aimAt(luminance: number) {
  const { least, most } = cardLight;
  if (luminance < least / oneStop || luminance > most * oneStop) {
    return { luminance, exposure: "not-a-grey-cards" } as const;
  }
  const aim = Math.min(most, Math.max(least, luminance));
  return { luminance: aim, exposure: aim === luminance ? "as-taken" : "corrected" } as const;
}

/** The middle code of each channel: a scratch or a printed word on the card does not count. */
function medianCodes(pixels: Pixels, card: Crop): [number, number, number] {
  const { columns, rows } = layGrid(pixels, card, cardPixels);
  const median = (channel: number) => {
    const codes = rows.flatMap((y) =>
      columns.map((x) => pixels.data[(y * pixels.width + x) * 3 + channel] ?? 0),
    );
    return codes.sort((a, b) => a - b)[codes.length >> 1] ?? 0;
  };
  return [median(0), median(1), median(2)];
}

function lightOf(code: number): number {
  return lightOfCode[code] ?? 0;
}

function divide(above: Vector, below: Vector): Vector {
  return [above[0] / below[0], above[1] / below[1], above[2] / below[2]];
}
