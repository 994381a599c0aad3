/** What pages and other programs read of a site beside its data files: scripts of data, sitemap, feed, and how to cite it. */
import type { Catalogue } from "../catalogue/types.ts";
import { makeFormScripts } from "./add.ts";
import { makeBesideScripts } from "./beside.ts";
import { makeCitation } from "./citation.ts";
import type { DataFile } from "./data/entry.ts";
import { makeFacetsScript } from "./facets.ts";
import { makeFeed } from "./feed.ts";
import { makeGridScripts } from "./grid.ts";
import type { Page } from "./page.ts";
import { furtherShards } from "./search-shards.ts";
import { makeSitemap } from "./sitemap.ts";

/**
 * The scripts of data, sitemap and feed of a site. Of an unlisted set there is no sitemap and no feed; its
 * wall can be filtered, its grid drawn and its tiles set side by side all the same.
 */
export function dataOf(catalogue: Catalogue, pages: readonly Page[]): readonly DataFile[] {
  const records = pages.filter(({ search }) => search !== null).length;
  const content = makeFacetsScript(catalogue, furtherShards(records));
  const scripts = [
    { path: "data/facets.js", content },
    ...makeGridScripts(catalogue),
    ...makeBesideScripts(catalogue),
    ...makeFormScripts(catalogue),
  ];
  if (catalogue.studio.unlisted) return scripts;
  const forOthers = [
    ...makeSitemap(catalogue.studio, pages),
    ...makeFeed(catalogue),
    makeCitation(catalogue.studio),
  ];
  return [...scripts, ...forOthers];
}
