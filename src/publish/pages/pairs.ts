/** Pages of one glaze over another. */
import { type GlazeInAPair, PairPage } from "../../../templates/pages/pair-page.tsx";
import type { SwapsView } from "../../../templates/parts/swaps.tsx";
import { count } from "../../../templates/words/english/numbers.ts";
import {
  besidesOfSwap,
  noMeltSentence,
  onTopSentence,
  orderSentence,
} from "../../../templates/words/glaze/pair.ts";
import type { CatalogueGlaze } from "../../catalogue/glazes.ts";
import type { Link } from "../../catalogue/link.ts";
import type { CataloguePair } from "../../catalogue/pairs.ts";
import { orderOf } from "../../catalogue/pairs-order.ts";
import { pairTable } from "../../catalogue/pairs-table.ts";
import type { CatalogueTile } from "../../catalogue/tiles.ts";
import { idKey } from "../../terms/ids.ts";
import { definePage, type Page, type SearchEntry } from "../page.ts";
import { type ShownTable, shownTable, viewTable } from "./pair-table.ts";
import type { Site } from "./site.ts";
import { pagesOfTiles, type TileList } from "./tile-lists.ts";

export function pairPages(site: Site): readonly Page[] {
  return site.catalogue.pairs.flatMap((pair) => pagesOfPair(site, pair));
}

/** So many comparisons of the two orders are shown with their photographs. */
const mostSwaps = 4;

function pagesOfPair(site: Site, pair: CataloguePair): readonly Page[] {
  const over = site.catalogue.glazeById.get(idKey(pair.over.id));
  const under = site.catalogue.glazeById.get(idKey(pair.under.id));
  if (!over || !under) return [];
  const { tiles, ...told } = pair;
  const reversed = (pair.reverse === null ? undefined : site.pairs.get(pair.reverse))?.tiles ?? [];
  const table = shownTable(pairTable(site.catalogue, pair, reversed));
  const shown = codesOf(table);
  const names = { over: over.name, under: under.name };
  const list = listOf(pair, [over, under], shown);
  return pagesOfTiles(site, list, ({ groups, turn }) =>
    definePage({
      path: pair.url,
      component: PairPage,
      props: () => ({
        frame: site.frame(pair.url),
        pair: told,
        sentence: list.sentence,
        table: viewTable(site, table, names),
        swaps: viewSwaps(site, pair, reversed, names),
        others: groups.flatMap(({ items }) => items).filter(({ id }) => !shown.includes(id)),
        turn,
        reversed: reversed.length,
        lead: site.lead([...shown, ...tiles]),
        noMelt: noMeltSentence([over, under].map(whyNoMelt)),
        glazes: { over: inAPair(over), under: inAPair(under) },
      }),
      search: (props) => searchPair(props.pair),
    }),
  );
}

/** All tiles of a pair, those first that its table shows. */
function listOf(
  { url, tiles }: CataloguePair,
  [over, under]: readonly [CatalogueGlaze, CatalogueGlaze],
  shown: readonly string[],
): TileList {
  const inTable = new Set(shown);
  return {
    url,
    title: `${over.name} over ${under.name}`,
    sentence: `${count(tiles.length, "tile")} with ${over.name} directly over ${under.name}.`,
    section: "glazes",
    loud: [over, under].map(({ name, hazards }) => ({ name, hazards })),
    groups: [{ title: "", items: [...shown, ...tiles.filter((code) => !inTable.has(code))] }],
    firstOfEach: Math.max(1, shown.length),
    wall: null,
  };
}

/** The tiles of this order that a table shows. */
function codesOf({ circumstances }: ShownTable): readonly string[] {
  const tiles = circumstances.flatMap(({ rows }) => rows.flatMap(({ asNamed }) => asNamed.shown));
  return tiles.map(({ id }) => id);
}

function viewSwaps(
  site: Site,
  pair: CataloguePair,
  reversed: readonly string[],
  names: { readonly over: string; readonly under: string },
): SwapsView {
  const order = orderOf(site.catalogue, pair, reversed);
  const shown = order.swaps.slice(0, mostSwaps).map(({ tile, other, beside }) => ({
    tiles: [
      { tile: linkOf(tile), words: onTopSentence(names.over, tile) },
      { tile: linkOf(other), words: onTopSentence(names.under, other) },
    ],
    besides: besidesOfSwap(beside, site.catalogue.trust),
  }));
  return {
    sentence: orderSentence(order, names, reversed.length),
    shown,
    more: order.swaps.length - shown.length,
  };
}

function linkOf({ id, url }: CatalogueTile): Link {
  return { id, name: id, url };
}

function searchPair({ over: { name }, under }: Pick<CataloguePair, "over" | "under">): SearchEntry {
  const title = `${name} over ${under.name}`;
  return { title, kind: "Pair", words: title, picture: null };
}

/** What a page about two glazes needs of each. */
function inAPair({ id, name, url, hazards, chemistry }: CatalogueGlaze): GlazeInAPair {
  return { id, name, url, hazards, chemistry };
}

/** Slips and washes make no melt, and of what is bought nobody here knows the analysis. */
function whyNoMelt({ name, kind, chemistry, whyNoChemistry }: CatalogueGlaze) {
  return { name, kind, isKnown: chemistry !== null, why: whyNoChemistry };
}
