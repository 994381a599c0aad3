/** A tile with all that came of it in words, as pages of pairs and of what runs show it. */
import { firstWords } from "../../../templates/parts/markdown.ts";
import type { TestedTile } from "../../../templates/parts/pair-table.tsx";
import { cameOut, howItWentOn } from "../../../templates/words/tile/account.ts";
import type { CatalogueTile } from "../../catalogue/tiles.ts";
import type { Site } from "./site.ts";

/** No more letters of a maker's own words than this; the tile's own page has all of them. */
const mostLetters = 160;

export function testedTile(site: Site, tile: CatalogueTile): TestedTile | undefined {
  const [entry] = site.entries([tile.id]);
  if (!entry) return undefined;
  const nextTime = tile.results.findLast((result) => result.nextTime)?.nextTime ?? "";
  return {
    entry,
    how: howItWentOn(tile),
    came: cameOut(tile),
    line: firstWords(tile.notes, mostLetters),
    nextTime: firstWords(nextTime, mostLetters),
  };
}
