import { engineVersion } from "./engine.ts";
import { hashOf } from "./hash.ts";

/** The widths in pixels that pages choose from. A picture is never enlarged to reach one. */
export const PICTURE_WIDTHS = [2000, 1280, 640, 320] as const;

/** No picture is made taller than this, however narrow it is: WebP ends at 16383 pixels. */
export const MAX_HEIGHT = 4000;

/** A size is left out where the next larger one is less than this many times as wide. */
const LEAST_STEP = 1.15;

/** Judging and measuring use the smallest picture made that is at least this wide. */
export const SAMPLE_WIDTH = 480;

/** What each size is written as: WebP, and JPEG for what cannot show it. */
export const OUTPUTS = [
  { format: "webp", extension: "webp", options: { quality: 80, effort: 2 } },
  { format: "jpeg", extension: "jpg", options: { quality: 80 } },
] as const;

export type OutputFormat = (typeof OUTPUTS)[number]["format"];

/** Raised when pictures are made otherwise than the settings here tell. */
const VERSION = 1;

/** The widths made of a picture that is `width` wide after the first step, widest first. */
export function chooseWidths(width: number): number[] {
  const smaller = PICTURE_WIDTHS.filter((other) => other * LEAST_STEP <= width);
  return [width, ...smaller];
}

/**
 * Names what is made from a source of this content by the present recipe. The same content gives
 * the same name; another recipe, or another version of the picture library, gives another.
 */
export function nameResult(sourceHash: string): string {
  const recipe = JSON.stringify([
    VERSION,
    PICTURE_WIDTHS,
    MAX_HEIGHT,
    LEAST_STEP,
    SAMPLE_WIDTH,
    OUTPUTS,
    engineVersion(),
  ]);
  return hashOf(`${recipe}\n${sourceHash}`);
}
