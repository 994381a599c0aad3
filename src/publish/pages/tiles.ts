/** A page for each tile, and one for each code that a tile had before. */
import { MovedPage } from "../../../templates/pages/moved-page.tsx";
import { TilePage } from "../../../templates/pages/tile-page.tsx";
import { smallFile } from "../../../templates/parts/photograph.tsx";
import { tied } from "../../../templates/words/english/numbers.ts";
import { programmeSentences } from "../../../templates/words/firing/programme.ts";
import { firingsOf } from "../../catalogue/kilns/tile-firings.ts";
import type { Link } from "../../catalogue/link.ts";
import type { CatalogueTile } from "../../catalogue/tiles.ts";
import { definePage, type Page, type SearchEntry } from "../page.ts";
import { oneChangeGroups, twoChanges } from "./one-change.ts";
import { recordFoot } from "./record-foot.ts";
import { relatedTiles, replicatesSentence } from "./related.ts";
import { wordsOfTile } from "./search-words.ts";
import type { Site } from "./site.ts";

export function tilePages(site: Site): readonly Page[] {
  const { tiles } = site.catalogue;
  return [
    ...tiles.map((tile, i) => tilePage(site, tile, tiles[i - 1], tiles[i + 1])),
    ...movedPages(site),
  ];
}

function toLink(tile: CatalogueTile | undefined): Link | null {
  return tile ? { id: tile.id, name: tile.id, url: tile.url } : null;
}

function tilePage(
  site: Site,
  tile: CatalogueTile,
  before: CatalogueTile | undefined,
  after: CatalogueTile | undefined,
): Page {
  return definePage({
    path: tile.url,
    component: TilePage,
    props: () => ({
      frame: site.frame(tile.url),
      tile,
      names: site.names(tile),
      view: site.view(tile),
      unit: site.catalogue.studio.temperature,
      before: toLink(before),
      after: toLink(after),
      oneChange: oneChangeGroups(site, tile),
      twoChanges: twoChanges(site, tile),
      related: relatedTiles(site, tile),
      programmes: programmesOf(site, tile),
      record: replicatesSentence(site, tile),
      foot: recordFoot(site, tile.url, tile.id),
      story: site.catalogue.records.get(tile.url)?.story ?? null,
      recipesSince: site.catalogue.recipesSince.get(tile.url) ?? [],
    }),
    search: (props) => searchTile(props.tile, props.names),
  });
}

function searchTile(tile: CatalogueTile, names: string): SearchEntry {
  return {
    title: names ? `${tile.id}: ${names}` : tile.id,
    kind: "Tile",
    words: wordsOfTile(tile, names),
    picture: thumbnailUrl(tile),
  };
}

function programmesOf({ catalogue, firings }: Site, tile: CatalogueTile) {
  return firingsOf(tile.steps).flatMap(({ page }) => {
    const programme = page && firings.get(page.id)?.programme;
    if (!programme) return [];
    const sentences = programmeSentences(programme.segments, catalogue.studio.temperature);
    return [{ firing: page.id, words: tied(`${sentences.join(". ")}.`) }];
  });
}

/** The small picture of a tile's result, for a wall. */
export function thumbnailUrl(tile: CatalogueTile): string | null {
  const picture = tile.pictures.find(({ role }) => role === "result");
  return (picture && smallFile(picture)?.url) ?? null;
}

function movedPages(site: Site): readonly Page[] {
  return site.catalogue.moved.map(({ from, url, to }) =>
    definePage({
      path: url,
      component: MovedPage,
      props: () => ({ frame: site.frame(url), from, to }),
      search: null,
    }),
  );
}
