import { type Lab, linearToLab } from "./cielab.ts";
import { differenceCiede2000 } from "./difference.ts";
import { findGlazePixels } from "./glaze-pixels.ts";
import { type CardCorrection, correctByCard } from "./grey-card.ts";
import { familiesOnTile } from "./large-colours.ts";
import { type ColourName, nameColour } from "./name.ts";
import { oklabToLinear } from "./oklab.ts";
import { makePalette, type PaletteColour } from "./palette.ts";
import { type Crop, defaultCrop, layGrid, type Pixels } from "./region.ts";
import { meanOf, readSamples, type Samples, sampleAt, thinOut } from "./samples.ts";
import { linearToHex } from "./srgb.ts";

/** The colour of a tile's glaze, as its photograph shows it. */
export interface MeasuredColour {
  /** CIELAB under D65, two decimals: the mean, in OKLab, of the accepted pixels. */
  lab: Lab;
  /** The same colour in sRGB, `#rrggbb`; what sRGB cannot show is brought to its edge. */
  hex: string;
  /** What most would call its largest colour. */
  name: ColourName;
  /**
   * How lively the glaze is: the mean colour difference from the mean (MCDM; ASTM E2214), in
   * CIEDE2000, over the accepted pixels.
   */
  spread: number;
  palette: PaletteColour[];
  /** Share of the region's pixels that counted as glaze. */
  accepted: number;
  /** Share of the accepted pixels with a channel at its end: their true colour may lie beyond. */
  clipped: number;
  /** What became of the grey card; null where none is named. */
  greyCard: GreyCardUse | null;
}

export type GreyCardUse =
  | { used: true; exposure: "as-taken" | "corrected" | "not-a-grey-cards" }
  | { used: false; because: "burnt-out" | "coloured" | "dark" };

export interface MeasureOptions {
  /** What to measure; the middle half of the picture if left out. */
  crop?: Crop | undefined;
  /** Where a neutral grey card lies in the picture. */
  grey?: Crop | undefined;
}

/** Raised when the same pixels may give another colour than before. */
export const measuringVersion = 9;

/** With 8000 instead, 54 photographs change by 0.04 CIEDE2000 in the middle, 0.23 at most. */
const mostSamples = 5000;
const spreadSamples = 400;

/**
 * Measures the glaze on a photograph of a tile: reflections and bare edges are left out, and the
 * light is put right by a grey card where there is one. The same pixels give the same colour.
 */
export function measureColour(pixels: Pixels, options: MeasureOptions = {}): MeasuredColour {
  const card = options.grey ? correctByCard(pixels, options.grey) : undefined;
  const grid = layGrid(pixels, options.crop ?? defaultCrop, mostSamples);
  const matrix = card && "matrix" in card ? card.matrix : undefined;
  const samples = readSamples(pixels, grid, matrix);
  const glaze = findGlazePixels(samples);
  const mean = meanOf(samples, glaze);
  const lab = linearToLab(oklabToLinear(mean));
  const hex = linearToHex(oklabToLinear(mean));
  const palette = makePalette(samples, glaze);
  return {
    lab: [round(lab[0], 2), round(lab[1], 2), round(lab[2], 2)],
    hex,
    name: familiesOnTile({ palette, hex })[0] ?? nameColour(mean),
    spread: round(measureSpread(samples, glaze, lab), 2),
    palette,
    accepted: round(glaze.length / samples.white.length, 3),
    clipped: round(glaze.filter((index) => samples.clipped[index]).length / glaze.length, 3),
    greyCard: card ? describeUse(card) : null,
  };
}

function describeUse(card: CardCorrection): GreyCardUse {
  return "matrix" in card
    ? { used: true, exposure: card.exposure }
    : { used: false, because: card.unusable };
}

function measureSpread(samples: Samples, glaze: readonly number[], mean: Lab): number {
  const differences = thinOut(glaze, spreadSamples).map((index) =>
    differenceCiede2000(linearToLab(oklabToLinear(sampleAt(samples, index))), mean),
  );
  return differences.reduce((sum, difference) => sum + difference, 0) / differences.length;
}

/** Never gives a negative zero, which would differ from zero in a data file. */
function round(value: number, decimals: number): number {
  return Math.round(value * 10 ** decimals) / 10 ** decimals + 0;
}
