/** What a clay is, in words and figures. */

import type { ConeGap, NearestCone, ShadeGap } from "../../../src/catalogue/clay-gaps.ts";
import type { CatalogueClay } from "../../../src/catalogue/clays.ts";
import type { Shade } from "../../../src/terms/choices.ts";
import type { Cone } from "../../../src/terms/cones.ts";
import { capital, count } from "../english/numbers.ts";
import { coneRangeWords } from "../firing/cones.ts";

/** `Warm buff, for cones 5–7.` */
export function claySentence({ colour, cones, reclaim }: CatalogueClay): string {
  const told = [
    colour,
    cones && `for ${coneRangeWords(cones)}`,
    reclaim && "reclaimed: fire it as low as the studio’s lowest-firing clay",
  ];
  return `${capital(told.filter(Boolean).join(", ") || "Nothing more is recorded of this clay")}.`;
}

/** `Levels Buff`, `Brickyard Red, dark`: where the name does not say what it looks like. */
export function nameWithShade({ name, shade }: Pick<CatalogueClay, "name" | "shade">): string {
  if (shade === null || name.toLowerCase().includes(shade.shade)) return name;
  return `${name}, ${shade.shade}`;
}

/** What clays of one look are called together. */
export function shadeTitle(shade: Shade | null): string {
  return shade === null ? "How they look fired is not recorded" : `${capital(shade)} clays`;
}

function shadeWords(shade: CatalogueClay["shade"]): string {
  if (shade === null)
    return "its record does not say dark, buff or white, so it counts as none of them";
  return shade.by === "shade" ? shade.shade : `${shade.shade}, by the words of its colour`;
}

/** `No tile on dark clay at cone 6 yet; the nearest are at` and then `cone 10: 12 tiles`. */
export function shadeGapWords({ shade, nearest }: ShadeGap, cone: Cone): GapWords {
  return {
    told: `No tile on ${shade} clay at cone ${cone} yet.`,
    ...nearestWords(nearest),
  };
}

export function coneGapWords({ cone, nearest }: ConeGap): GapWords {
  return { told: `No tile of it at cone ${cone} yet.`, ...nearestWords(nearest) };
}

export interface GapWords {
  readonly told: string;
  /** The words of the link to the nearest. */
  readonly link: string;
  readonly url: string;
}

function nearestWords({ cone, url, tiles }: NearestCone): Omit<GapWords, "told"> {
  return { link: `The nearest: cone ${cone}, ${count(tiles, "tile")}`, url };
}

export function clayFacts({
  expansion,
  absorption,
  shade,
}: CatalogueClay): readonly (readonly [string, string])[] {
  const range = expansion?.between ? `, between ${expansion.between.join(" and ")} °C` : "";
  return [
    ["Fired", shadeWords(shade)],
    ["Expansion", expansion ? `${expansion.mean} × 10⁻⁶/°C${range}` : ""],
    ["Absorption", absorption === null ? "" : `${absorption} %`],
  ];
}
