/** Pages of glazes. */

import { loudWords } from "../../../templates/mixing/hazards.tsx";
import {
  type GlazeOnItsPage,
  GlazePage,
  onlyGlaze,
  type Pairings,
  withOthers,
} from "../../../templates/pages/glaze-page.tsx";
import { capital, count } from "../../../templates/words/english/numbers.ts";
import { coneRangeWords } from "../../../templates/words/firing/cones.ts";
import { glazeKind, glazeSentence } from "../../../templates/words/glaze/glaze.ts";
import { pairingsUrl } from "../../catalogue/addresses.ts";
import type { CatalogueGlaze } from "../../catalogue/glazes.ts";
import type { Link } from "../../catalogue/link.ts";
import { companiesOf } from "../../catalogue/mixing/companies.ts";
import { kindsOfGlaze } from "../../terms/choices.ts";
import { idSlug } from "../../terms/ids.ts";
import { definePage, type Page, type SearchEntry } from "../page.ts";
import { pagesOfLines } from "./line-lists.ts";
import { mapsByGlaze } from "./mixing.ts";
import { recordFoot } from "./record-foot.ts";
import { wordsOfGlaze } from "./search-words.ts";
import type { Site } from "./site.ts";
import { stripPages, stripsOnItsPage, viewStrips } from "./strips.ts";
import { pagesOfTiles, type TileList, wallWith } from "./tile-lists.ts";
import type { Group } from "./turning.ts";

export function glazePages(site: Site): readonly Page[] {
  const { glazes } = site.catalogue;
  const maps = mapsByGlaze(site);
  return [
    ...listOfGlazes(site),
    ...glazes.flatMap((glaze) => glazePage(site, glaze, maps.get(glaze.id) ?? [])),
    ...glazes.flatMap((glaze) => pagesOfPairings(site, glaze)),
    ...glazes.flatMap((glaze) => stripPages(site, glaze)),
  ];
}

/** So many tiles of a glaze alone, and as many of the others, on its own page. */
const tilesOfAGlaze = 12;

/** So many where strips show some of them already: a row on a desk, two on a phone. */
const tilesBesideStrips = 4;

function glazePage(site: Site, glaze: CatalogueGlaze, maps: readonly Link[]): readonly Page[] {
  const { name, url, hazards } = glaze;
  const strips = stripsOnItsPage(site, glaze);
  const list: TileList = {
    url,
    title: name,
    sentence: `${count(glaze.tiles.length, "tile")} with ${name}.`,
    section: "glazes",
    loud: [{ name, hazards }],
    groups: tilesWith(glaze),
    firstOfEach: strips.length > 0 ? tilesBesideStrips : tilesOfAGlaze,
    wall: wallWith({ glaze: idSlug(glaze.id) }),
  };
  return pagesOfTiles(site, list, (tiles) =>
    definePage({
      path: url,
      component: GlazePage,
      props: () => ({
        frame: site.frame(url),
        glaze: onItsPage(glaze),
        ...tiles,
        trust: site.catalogue.trust,
        maps,
        strips: viewStrips(site, glaze, strips),
        foot: recordFoot(site, url, name),
        story: site.catalogue.records.get(url)?.recipe ?? null,
        companies: companiesOf(glaze, site.catalogue.companies),
      }),
      search: (props) => searchGlaze(props.glaze),
    }),
  );
}

function searchGlaze(glaze: GlazeOnItsPage): SearchEntry {
  const words = `${glazeSentence(glaze)} ${wordsOfGlaze(glaze)}`;
  return { title: glaze.name, kind: capital(glazeKind(glaze.kind)), words, picture: null };
}

/** Those on which it is alone first, since they show what it is. */
function tilesWith({ alone, tiles }: CatalogueGlaze): readonly Group<string>[] {
  const isAlone = new Set(alone);
  return [
    { title: onlyGlaze, items: alone },
    { title: withOthers, items: tiles.filter((code) => !isAlone.has(code)) },
  ].filter(({ items }) => items.length > 0);
}

/** A glaze with no more of its pairs than its page names, and the way to the others. */
function onItsPage(glaze: CatalogueGlaze): GlazeOnItsPage {
  const { tiles, alone: _, over, under, ...told } = glaze;
  return {
    ...told,
    tiles: tiles.length,
    over: pairingsOf(glaze, "over"),
    under: pairingsOf(glaze, "under"),
  };
}

/** So many of the glazes that it was tried with are named on its own page, those with most tiles. */
const pairingsNamed = 20;

function pairingsOf(glaze: CatalogueGlaze, which: "over" | "under"): Pairings {
  const pairs = glaze[which];
  const byUse = [...pairs].sort((a, b) => b.tiles - a.tiles);
  const named = new Set(byUse.slice(0, pairingsNamed));
  return {
    named: pairs.filter((pair) => named.has(pair)),
    of: pairs.length,
    url: pairingsUrl(glaze.url, which),
  };
}

/** All glazes that one was tried with, where its own page does not name them all. */
function pagesOfPairings(site: Site, glaze: CatalogueGlaze): readonly Page[] {
  return (["over", "under"] as const).flatMap((which) => {
    const pairs = glaze[which];
    if (pairs.length <= pairingsNamed) return [];
    const items = pairs.map(({ glaze: other, pair, tiles }) => ({
      name: other.name,
      url: pair,
      told: count(tiles, "tile"),
    }));
    return pagesOfLines(site, {
      url: pairingsUrl(glaze.url, which),
      title: `${glaze.name} ${which}`,
      many: "glazes",
      sentence: `${count(pairs.length, "glaze")} that ${glaze.name} was directly ${which}.`,
      section: "glazes",
      groups: [{ title: "", items }],
      empty: "",
    });
  });
}

function listOfGlazes(site: Site): readonly Page[] {
  const groups = kindsOfGlaze.map((kind) => ({
    title: capital(glazeKind(kind)),
    items: site.catalogue.glazes
      .filter((glaze) => glaze.kind === kind)
      .map((glaze) => ({
        name: glaze.name,
        url: glaze.url,
        told: [
          loudWords(glaze.hazards),
          glaze.cones && coneRangeWords(glaze.cones),
          glaze.surface,
          count(glaze.tiles.length, "tile"),
        ]
          .filter(Boolean)
          .join(", "),
        colour: glaze.shownAs?.colour.hex ?? null,
      })),
  }));
  return pagesOfLines(site, {
    url: "glazes/index.html",
    title: "Glazes",
    many: "glazes",
    sentence:
      "Everything that is put on clay here, bought or mixed, each with the colour it measured alone; hatched where that is not known.",
    section: "glazes",
    groups,
    empty: "No glazes yet. Add a record in recipes/glazes/ and it shows here.",
  });
}
