/** Tiles that a reader of one may want to see next. */
import type { TilePageProps } from "../../../templates/pages/tile-props.ts";
import { count } from "../../../templates/words/english/numbers.ts";
import { unwrittenWords } from "../../../templates/words/tile/likeness.ts";
import type { CatalogueTile } from "../../catalogue/tiles.ts";
import { unknownAspects } from "../../likeness/alike.ts";
import { idKey } from "../../terms/ids.ts";
import type { Site } from "./site.ts";

/** So many cards in a strip, so many strips; what they leave out is a link away. */
const [longestStrip, mostStrips] = [4, 2];

/** Strips of tiles with the same glazes over one another, else with the same glaze. */
export function relatedTiles(site: Site, tile: CatalogueTile): TilePageProps["related"] {
  const strips = tile.pairs.map(({ over, under, pair }) => ({
    title: `${over.name} over ${under.name}, elsewhere`,
    url: pair,
    codes: site.pairs.get(pair)?.tiles ?? [],
  }));
  const glaze = tile.top && site.catalogue.glazeById.get(idKey(tile.top.id));
  if (glaze) strips.push({ title: `${glaze.name} alone`, url: glaze.url, codes: glaze.alone });
  const filled = strips
    .map(({ codes, ...strip }) => ({ ...strip, codes: codes.filter((code) => code !== tile.id) }))
    .filter(({ codes }) => codes.length > 0);
  return filled.map(({ title, url, codes }, i) => ({
    title,
    url,
    of: codes.length,
    tiles: i < mostStrips ? site.entries(codes.slice(0, longestStrip)) : [],
  }));
}

/**
 * How often this was made and fired, and is marked to be made again; null where this tile is the
 * only one. What nobody wrote down is named, since it may have differed.
 */
export function replicatesSentence(site: Site, tile: CatalogueTile): string | null {
  const same = site.replicates(tile).filter((twin) => twin.again !== null);
  if (same.length < 2) return null;
  const yes = same.filter((twin) => twin.again === "yes").length;
  const made = `${count(same.length, "tile")} made and fired alike; ${yes} marked “again: yes”`;
  return [made, unwrittenWords(unknownAspects(tile.makeUp))].filter(Boolean).join("; ");
}
