/** What programs read of a site: data files, sitemap and feed. */
import type { Catalogue } from "../catalogue/types.ts";
import { makeFormScripts } from "./add.ts";
import { makeBesideScripts } from "./beside.ts";
import { type DataFile, makeDataFiles } from "./data/files.ts";
import { makeFacetsScript } from "./facets.ts";
import { makeFeed } from "./feed.ts";
import { makeGridScripts } from "./grid.ts";
import type { Page } from "./page.ts";
import { furtherShards } from "./search-shards.ts";
import { makeSitemap } from "./sitemap.ts";

/**
 * The data files, sitemap and feed of a site. An unlisted set is absent from them; its wall can be
 * filtered, its grid drawn and its tiles set side by side all the same.
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
  const forOthers = [...makeSitemap(catalogue.studio, pages), ...makeFeed(catalogue)];
  return [...scripts, ...makeDataFiles(catalogue), ...forOthers];
}
