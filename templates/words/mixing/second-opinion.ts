/** What is published of the figures that a mixer looks for first: a second opinion, after the tiles. */

import type { SeenOutcome } from "../../../src/catalogue/mixing/companies.ts";
import { surfacesOf } from "../../../src/catalogue/mixing/maps.ts";
import type { MixFigure } from "../../../src/chemistry/mix-figures.ts";
import type { RatioRegion } from "../../../src/chemistry/stull.ts";
import { ratioField, ratioRegion } from "../../../src/chemistry/stull.ts";
import { codesInShort, listed } from "../english/numbers.ts";

/**
 * None of it is a pass or a fail: the lines were drawn for one kind of glaze at one cone.
 *
 * @param value the glaze's own figure
 * @param seen what its own tiles came out as
 */
export function secondOpinion(
  figure: MixFigure,
  value: number | null,
  seen: readonly SeenOutcome[],
): string {
  if (figure === "silicaToAlumina") return ofSilica(value, seen);
  if (figure === "alkaliToEarth")
    return "Second opinion: Seger’s cones 4 to 10 and Stull’s glazes of 1912 were made with 0.30 : 0.70 (from memory). That was their starting point, not a limit. Zinc and lead are not counted.";
  return "Second opinion: none. No published limit for boron in glazes like these was found that could be checked against its source.";
}

function ofSilica(value: number | null, seen: readonly SeenOutcome[]): string {
  const made = `A second opinion, for glazes of 0.3 potash and 0.7 lime at ${ratioField.cone}: matte below 5, semi-matte to 6, gloss above (R. T. Stull 1912, ${ratioField.tag}; he says “bright”). Others have satin from 5 to 7 and gloss from 7 to 10 (W. Carty, as quoted on a potters’ mailing list in 2007).`;
  return value === null ? made : [made, yieldWords(value, seen)].filter(Boolean).join(" ");
}

/** What the old lines call a glaze, in the words of the tiles. */
export const regionWords: Readonly<Record<RatioRegion, string>> = {
  bright: "gloss",
  matte: "matte",
  "semi-matte": "semi-matte",
};

/** Where tiles and lines disagree, the tiles are believed. */
function yieldWords(value: number, seen: readonly SeenOutcome[]): string {
  const region = ratioRegion(value);
  const surfaces = seen.filter(({ outcome }) => outcome !== "crazed");
  const called: readonly string[] = surfacesOf[region];
  const against = surfaces.filter(({ outcome }) => !called.includes(outcome));
  if (against.length === 0) return "";
  const told = listed(against.map(({ outcome, tiles }) => `${outcome} (${codesInShort(tiles)})`));
  return `By Stull’s lines this one would be ${regionWords[region]}. On the tiles here it is ${told}: believe the tiles.`;
}
