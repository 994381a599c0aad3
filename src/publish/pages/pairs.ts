/** Pages of one glaze over another. */
import { type GlazeInAPair, PairPage } from "../../../templates/pages/pair-page.tsx";
import { count } from "../../../templates/words/english/numbers.ts";
import type { CatalogueGlaze } from "../../catalogue/glazes.ts";
import type { CataloguePair } from "../../catalogue/pairs.ts";
import { idKey } from "../../terms/ids.ts";
import { definePage, type Page, type SearchEntry } from "../page.ts";
import type { Site } from "./site.ts";
import { pagesOfTiles, type TileList } from "./tile-lists.ts";

export function pairPages(site: Site): readonly Page[] {
  return site.catalogue.pairs.flatMap((pair) => pagesOfPair(site, pair));
}

/** So many tiles of the other way round; they have a page of their own. */
const tilesReversed = 14;

function pagesOfPair(site: Site, { tiles, ...pair }: CataloguePair): readonly Page[] {
  const over = site.catalogue.glazeById.get(idKey(pair.over.id));
  const under = site.catalogue.glazeById.get(idKey(pair.under.id));
  if (!over || !under) return [];
  const reversed = (pair.reverse === null ? undefined : site.pairs.get(pair.reverse))?.tiles ?? [];
  const list: TileList = {
    url: pair.url,
    title: `${over.name} over ${under.name}`,
    sentence: `${count(tiles.length, "tile")} with ${over.name} directly over ${under.name}.`,
    section: "glazes",
    loud: [over, under].map(({ name, hazards }) => ({ name, hazards })),
    groups: [{ title: "", items: tiles }],
    wall: null,
  };
  return pagesOfTiles(site, list, ({ groups, turn }) =>
    definePage({
      path: pair.url,
      component: PairPage,
      props: () => ({
        frame: site.frame(pair.url),
        pair,
        sentence: list.sentence,
        groups,
        turn,
        reversed: {
          tiles: reversed.length,
          shown: site.entries(reversed.slice(0, tilesReversed)),
        },
        glazes: { over: inAPair(over), under: inAPair(under) },
      }),
      search: (props) => searchPair(props.pair),
    }),
  );
}

function searchPair({ over: { name }, under }: Pick<CataloguePair, "over" | "under">): SearchEntry {
  const title = `${name} over ${under.name}`;
  return { title, kind: "Pair", words: title, picture: null };
}

/** What a page about two glazes needs of each. */
function inAPair({ id, name, url, hazards, chemistry }: CatalogueGlaze): GlazeInAPair {
  return { id, name, url, hazards, chemistry };
}
