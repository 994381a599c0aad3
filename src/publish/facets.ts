/** Makes the file that the wall is filtered with. */
import { trustSentence } from "../../templates/words/colour/measured.ts";
import { formatDay } from "../../templates/words/english/numbers.ts";
import { outcomeLine } from "../../templates/words/tile/card.ts";
import { namesTopFirst } from "../../templates/words/tile/stack.ts";
import type { ColourTrust } from "../catalogue/colours/trust.ts";
import type { CatalogueTile } from "../catalogue/tiles.ts";
import type { Catalogue } from "../catalogue/types.ts";
import { type FacetName, facetNames } from "../terms/facets.ts";
import { rounded } from "./data/numbers.ts";
import { type FacetValue, facetsOfTiles } from "./facet-values.ts";
import type { FacetColumn, Facets, HundredthsColumn, Trust } from "./facets-file.ts";
import { outcomeOf } from "./pages/site.ts";
import { thumbnailUrl } from "./pages/tiles.ts";

/**
 * @param shards the folders of all indexes for words but the first
 */
export function makeFacets(catalogue: Catalogue, shards: readonly string[] = []): Facets {
  const { tiles } = catalogue;
  const [titles, names] = inDictionary(tiles.map(namesTopFirst));
  const [came, outcomes] = inDictionary(tiles.map((tile) => outcomeLine(outcomeOf(tile))));
  const valuesOf = facetsOfTiles(catalogue);
  return {
    codes: tiles.map((tile) => tile.id),
    urls: tiles.map((tile) => tile.url),
    titles,
    names,
    came,
    outcomes,
    ran: tiles.map(({ run }) => run),
    ...daysOf(tiles),
    pictures: tiles.map((tile) => thumbnailUrl(tile) ?? ""),
    columns: Object.fromEntries(
      facetNames.map((name) => [name, makeColumn(tiles, valuesOf[name])]),
    ) as Record<FacetName, FacetColumn>,
    lab: [labColumn(tiles, 0), labColumn(tiles, 1), labColumn(tiles, 2)],
    trust: makeTrust(catalogue.trust),
    shards,
  };
}

/** The days on which tiles were glazed, as places in the order of the calendar. */
function daysOf(tiles: readonly CatalogueTile[]): Pick<Facets, "glazed" | "days"> {
  const days = [...new Set(tiles.flatMap(({ glazed }) => glazed ?? []))].sort();
  const placeOf = new Map(days.map((day, i) => [day, i]));
  return {
    glazed: tiles.map(({ glazed }) => (glazed === null ? null : (placeOf.get(glazed) ?? null))),
    days: days.map(formatDay),
  };
}

/** Each text as its place among all that occur, and these. */
function inDictionary(texts: readonly string[]): [places: number[], words: string[]] {
  const words = [...new Set(texts)];
  const placeOf = new Map(words.map((word, i) => [word, i]));
  return [texts.map((text) => placeOf.get(text) ?? 0), words];
}

/** The facets as a classic script, which a page opened from a folder can load as well. */
export function makeFacetsScript(catalogue: Catalogue, shards: readonly string[]): string {
  return `self.tilebookFacets=${JSON.stringify(makeFacets(catalogue, shards))};\n`;
}

function labColumn(tiles: readonly CatalogueTile[], axis: 0 | 1 | 2): HundredthsColumn {
  return tiles.map(({ colour }) => colour && Math.round(colour.lab[axis] * 100));
}

function makeTrust(trust: ColourTrust | null): Trust {
  return { difference: trust && rounded(trust.difference, 2), sentence: trustSentence(trust) };
}

function makeColumn(tiles: readonly CatalogueTile[], { order, of }: FacetValue): FacetColumn {
  const found = new Map<string, string>();
  const perTile = tiles.map((tile) => {
    const values = of(tile);
    for (const { key, label } of values) found.set(key, label);
    return [...new Set(values.map(({ key }) => key))];
  });
  const keys = [...found.keys()].sort((a, b) => order(a, b, found));
  const placeOf = new Map(keys.map((key, i) => [key, i]));
  const combinations: number[][] = [];
  const known = new Map<string, number>();
  const rows = perTile.map((own) => {
    const places = own.map((key) => placeOf.get(key) ?? 0).sort((a, b) => a - b);
    const sign = places.join();
    const place = known.get(sign) ?? combinations.push(places) - 1;
    known.set(sign, place);
    return place;
  });
  return { keys, labels: keys.map((key) => found.get(key) ?? key), combinations, tiles: rows };
}
