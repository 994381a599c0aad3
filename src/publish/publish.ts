/**
 * Publishes catalogues as a site: pages, pictures, data files, assets, the index for words. The
 * site of the whole archive stands at the root; each set that is reached only by its link has a
 * small site of its own beneath it.
 */
import { join } from "node:path";
import type { Catalogue } from "../catalogue/types.ts";
import { readSiteAssets } from "./assets.ts";
import { linkInto, type Place, writeOrCarry } from "./carry.ts";
import { type DataFile, makeDataFiles } from "./data/files.ts";
import { makeFacetsScript } from "./facets.ts";
import { makeFeed } from "./feed.ts";
import { type FiledPage, filePages, fileUnder } from "./filed-page.ts";
import { makeGridScripts } from "./grid.ts";
import { openLedger } from "./ledger.ts";
import type { Page } from "./page.ts";
import { listPages } from "./pages/all.ts";
import type { SitePlace } from "./pages/site.ts";
import { writeSearch } from "./search.ts";
import { furtherShards } from "./search-shards.ts";
import { makeSitemap } from "./sitemap.ts";
import { openStaging } from "./staging.ts";
import { type PageCounts, writePages } from "./write-pages.ts";

export interface SiteRequest extends SitePlace {
  readonly catalogue: Catalogue;
}

/** What tells of the work while it is done. */
export interface PublishEffects {
  /** Called with the name of each stage as it begins. */
  readonly stage: (name: string) => void;
  /** Where a prepared picture lies, by the address it has on the site. */
  readonly pictureFile: (url: string) => string;
}

export interface Published extends PageCounts {
  readonly searchMade: boolean;
}

/** A site with its pages, before anything of it is written. */
interface FiledSite extends SiteRequest {
  readonly pages: readonly FiledPage[];
}

/**
 * Writes all sites into a folder, which takes the place of the last one only when all is done.
 *
 * @param siteFolder a folder that `checkSiteFolder` has approved
 * @param cacheDir where it is remembered of what the files of the last site were made
 */
export async function publishSites(
  sites: readonly SiteRequest[],
  siteFolder: string,
  cacheDir: string,
  effects: PublishEffects,
): Promise<Published> {
  const staging = await openStaging(siteFolder);
  try {
    const { folder, last, emptyFolder } = staging;
    const place = { folder, last, ledger: await openLedger(cacheDir, siteFolder) };
    const published = await writeSites(sites, place, emptyFolder, effects);
    await place.ledger.store(folder);
    effects.stage("put the site in place");
    await staging.publish();
    return published;
  } catch (error) {
    await staging.discard();
    throw error;
  }
}

/** Words are indexed by another process, while this one renders and writes. */
async function writeSites(
  sites: readonly SiteRequest[],
  place: Place,
  emptyFolder: string,
  effects: PublishEffects,
): Promise<Published> {
  effects.stage("write pages");
  const filed = sites.map((site) => ({
    ...site,
    pages: filePages(listPages(site.catalogue, site), site.under, place.ledger),
  }));
  const search = writeSearch(filed, place);
  const ended = search.catch(() => undefined);
  try {
    const counts = await writePages(
      filed.flatMap(({ pages }) => pages),
      place,
      emptyFolder,
    );
    effects.stage("write pictures, data and styles");
    const assets = await readSiteAssets();
    for (const site of filed) writeRest(site, assets, place, effects);
    effects.stage("index the words");
    return { ...counts, searchMade: await search };
  } finally {
    // Whoever gives up takes the folder away: nobody may still write there.
    await ended;
  }
}

/** Pictures, styles and scripts, and data files of a site. */
function writeRest(
  { catalogue, under, pages }: FiledSite,
  assets: ReadonlyMap<string, Uint8Array>,
  place: Place,
  { pictureFile }: PublishEffects,
): void {
  const pictures = catalogue.tiles.flatMap((tile) => tile.pictures);
  const urls = new Set(pictures.flatMap((picture) => picture.files.map((file) => file.url)));
  for (const url of urls) linkInto(pictureFile(url), join(place.folder, fileUnder(under, url)));
  for (const [name, content] of assets)
    writeOrCarry(place, fileUnder(under, `assets/${name}`), content);
  for (const { path, content } of dataOf(
    catalogue,
    pages.map(({ page }) => page),
  ))
    writeOrCarry(place, fileUnder(under, path), content);
}

/** The data files, sitemap and feed of a site: an unlisted set is absent from them; its wall can be filtered, and its grid drawn, all the same. */
export function dataOf(catalogue: Catalogue, pages: readonly Page[]): readonly DataFile[] {
  const records = pages.filter(({ search }) => search !== null).length;
  const content = makeFacetsScript(catalogue, furtherShards(records));
  const scripts = [{ path: "data/facets.js", content }, ...makeGridScripts(catalogue)];
  if (catalogue.studio.unlisted) return scripts;
  const forOthers = [...makeSitemap(catalogue.studio, pages), ...makeFeed(catalogue)];
  return [...scripts, ...makeDataFiles(catalogue), ...forOthers];
}
