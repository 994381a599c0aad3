import { findBareEdges } from "./bare-edges.ts";
import { indicesOf, join } from "./marks.ts";
import { findReflections } from "./reflections.ts";
import type { Samples } from "./samples.ts";

/** Where the rules leave less of the region than this, they are mistaken. */
const leastGlaze = 0.1;

/**
 * Which samples show the glaze: all but reflections and bare edges. Takes for granted that glaze
 * free of reflections covers more than half of the region. Where the rules leave less than a tenth
 * of it, everything but pure white counts; where all is white, all does.
 */
export function findGlazePixels(samples: Samples): number[] {
  const reflections = findReflections(samples);
  const glaze = indicesOf(join(reflections, findBareEdges(samples, reflections)), 0);
  if (glaze.length >= leastGlaze * samples.white.length) return glaze;
  const notWhite = indicesOf(samples.white, 0);
  return notWhite.length > 0 ? notWhite : indicesOf(samples.white, 1);
}
