/**
 * Publishes catalogues as a site: pages, pictures, data files, assets, the index for words. The
 * site of the whole archive stands at the root; each set that is reached only by its link has a
 * small site of its own beneath it.
 */
import { join } from "node:path";
import { readSiteAssets } from "./assets.ts";
import { linkInto, type Place, writeOrCarry } from "./carry.ts";
import { dataOf } from "./data-of-site.ts";
import { type FiledPage, filePages, fileUnder } from "./filed-page.ts";
import { makeFormWorker } from "./form-worker.ts";
import { openLedger } from "./ledger.ts";
import { withOwn } from "./own-assets.ts";
import { writeSearch } from "./search.ts";
import { pagesOf, pictureUrls, type SiteRequest } from "./site-request.ts";
import { openStaging } from "./staging.ts";
import { inTurns } from "./turns.ts";
import { writeData } from "./write-data.ts";
import { type PageCounts, writePages } from "./write-pages.ts";

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
interface FiledSite {
  readonly site: SiteRequest;
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
  effects.stage("write the data");
  for (const { catalogue, under } of sites) await writeData(catalogue, under, place);
  effects.stage("write pages");
  const filed: FiledSite[] = [];
  for (const site of sites) {
    const pages = await filePages(pagesOf(site).all(), site.under, place.ledger);
    filed.push({ site, pages });
  }
  const search = writeSearch(
    filed.map(({ site, pages }) => ({ under: site.under, pages })),
    place,
  );
  const ended = search.catch(() => undefined);
  try {
    const counts = await writePages(
      filed.flatMap(({ pages }) => pages),
      place,
      emptyFolder,
    );
    effects.stage("write pictures and styles");
    const assets = await readSiteAssets();
    for (const site of filed) await writeRest(site, assets, place, effects);
    effects.stage("index the words");
    return { ...counts, searchMade: await search };
  } finally {
    // Whoever gives up takes the folder away: nobody may still write there.
    await ended;
  }
}

/** Pictures, styles and scripts, sitemap and feed of a site. */
async function writeRest(
  { site, pages }: FiledSite,
  assets: ReadonlyMap<string, Uint8Array>,
  place: Place,
  { pictureFile }: PublishEffects,
): Promise<void> {
  const { under, catalogue } = site;
  await inTurns(pictureUrls(site), (url) =>
    linkInto(pictureFile(url), join(place.folder, fileUnder(under, url))),
  );
  const own = withOwn(assets, site);
  await inTurns(own, ([name, content]) =>
    writeOrCarry(place, fileUnder(under, `assets/${name}`), content),
  );
  const data = dataOf(
    catalogue,
    pages.map(({ page }) => page),
  );
  await inTurns([...data, ...makeFormWorker(site, own)], ({ path, content }) =>
    writeOrCarry(place, fileUnder(under, path), content),
  );
}
