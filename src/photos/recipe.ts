import { engineVersion } from "./engine.ts";
import { hashOf } from "./hash.ts";

/** The widths in pixels that pages choose from. A picture is never enlarged to reach one. */
export const pictureWidths = [2000, 1280, 640, 320] as const;

/** No picture is made taller than this, however narrow it is: WebP ends at 16383 pixels. */
export const maxHeight = 4000;

/** A size is left out where the next larger one is less than this many times as wide. */
const leastStep = 1.15;

/** Judging and measuring use the smallest picture made that is at least this wide. */
export const sampleWidth = 480;

/** What each size is written as: WebP, and JPEG for what cannot show it. */
export const outputs = [
  { format: "webp", extension: "webp", options: { quality: 80, effort: 2 } },
  { format: "jpeg", extension: "jpg", options: { quality: 80 } },
] as const;

export type OutputFormat = (typeof outputs)[number]["format"];

/** Raised when pictures are made otherwise than the settings here tell. */
const version = 1;

/** The widths made of a picture that is `width` wide after the first step, widest first. */
export function chooseWidths(width: number): number[] {
  const smaller = pictureWidths.filter((other) => other * leastStep <= width);
  return [width, ...smaller];
}

/**
 * Names what is made from a source of this content by the present recipe. The same content gives
 * the same name; another recipe, or another version of the picture library, gives another.
 */
export function nameResult(sourceHash: string): string {
  const recipe = JSON.stringify([
    version,
    pictureWidths,
    maxHeight,
    leastStep,
    sampleWidth,
    outputs,
    engineVersion(),
  ]);
  return hashOf(`${recipe}\n${sourceHash}`);
}
