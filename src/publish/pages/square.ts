/** The square of a set, as its page shows it. */
import type { SetSquareView, SquareTile } from "../../../templates/parts/set-square.tsx";
import { squareSentence } from "../../../templates/words/tile/square.ts";
import { glazeUrl } from "../../catalogue/addresses.ts";
import type { Link } from "../../catalogue/link.ts";
import { squareOf } from "../../catalogue/square.ts";
import type { CatalogueTile } from "../../catalogue/tiles.ts";
import { tilesByCode } from "../../catalogue/tiles-by-code.ts";
import type { Site } from "./site.ts";

/** So many glazes across, and so many down: a studio's square has eight or ten. */
const mostGlazes = 10;

/** Null where a set is no square. */
export function setSquare(site: Site, codes: readonly string[]): SetSquareView | null {
  const square = squareOf(tilesByCode(site.catalogue, codes));
  if (!square) return null;
  const { tops, unders, rows } = square;
  const glazes = new Set([...tops, ...unders]);
  const shown = new Set([...tops.slice(0, mostGlazes), ...unders.slice(0, mostGlazes)]);
  return {
    tops: tops.slice(0, mostGlazes).map((id) => linkOf(site, id)),
    unders: unders.slice(0, mostGlazes).map((id) => linkOf(site, id)),
    rows: rows
      .slice(0, mostGlazes)
      .map((row) => row.slice(0, mostGlazes).map((tiles) => squareTile(site, tiles))),
    words: squareSentence(square),
    more: glazes.size - shown.size,
  };
}

function linkOf({ catalogue }: Site, id: string): Link {
  const { name = id, url = glazeUrl(id) } = catalogue.glazeById.get(id) ?? {};
  return { id, name, url };
}

function squareTile(site: Site, tiles: readonly CatalogueTile[]): SquareTile | null {
  const [tile] = site.entries(tiles.slice(0, 1).map(({ id }) => id));
  return tile ? { tile, more: tiles.length - 1 } : null;
}
