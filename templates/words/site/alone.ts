/** What a site that shows one set alone says of that, so that no figure on it is taken for the studio's. */
import type { CatalogueStudio } from "../../../src/catalogue/studio.ts";
import { count } from "../english/numbers.ts";

/** `These pages show Evening class alone.` What it rests on, and what is not there. */
export function aloneSentence({ set }: NonNullable<CatalogueStudio["alone"]>): string {
  return `These pages show ${set.name} alone: every count and figure rests on its own tiles, since other tests of the studio are not here.`;
}

/** `18 of 24 tiles are shown here`; null where all are. */
export function shownSentence(shown: number, tiles: number): string | null {
  if (shown >= tiles) return null;
  const are = shown === 1 ? "is" : "are";
  return `${shown} of ${count(tiles, "tile")} ${are} shown here.`;
}

/** What is left out of what families are given. */
export const leftOutForFamilies =
  "Left out are tiles without a photograph, tiles that nobody would make again, and notes that were not marked to be shown.";
