/**
 * Publishes catalogues as a site: pages, pictures, data files, assets, the index for words. The
 * site of the whole archive stands at the root; each set that is reached only by its link has a
 * small site of its own beneath it.
 */
import { join } from "node:path";
import type { Catalogue } from "../catalogue/types.ts";
import { writeAssets } from "./assets.ts";
import { linkInto, writeOrCarry } from "./carry.ts";
import { type DataFile, makeDataFiles } from "./data/files.ts";
import { makeFacetsScript } from "./facets.ts";
import { makeFeed } from "./feed.ts";
import type { Page } from "./page.ts";
import { listPages } from "./pages/all.ts";
import type { SitePlace } from "./pages/site.ts";
import { writeSearch } from "./search.ts";
import { makeSitemap } from "./sitemap.ts";
import { openStaging, type Staging } from "./staging.ts";
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

/** Where one of the sites is made. */
type Place = Pick<Staging, "folder" | "last" | "emptyFolder">;

/**
 * Writes all sites into a folder, which takes the place of the last one only when all is done.
 *
 * @param siteFolder a folder that `checkSiteFolder` has approved
 */
export async function publishSites(
  sites: readonly SiteRequest[],
  siteFolder: string,
  effects: PublishEffects,
): Promise<Published> {
  const staging = await openStaging(siteFolder);
  try {
    const counts = [];
    for (const site of sites) {
      counts.push(await publishOne(site, within(staging, site.under), effects));
    }
    effects.stage("put the site in place");
    await staging.publish();
    return counts.reduce(addCounts);
  } catch (error) {
    await staging.discard();
    throw error;
  }
}

function within(staging: Staging, under: string): Place {
  const { folder, last, emptyFolder } = staging;
  return { folder: join(folder, under), last: last && join(last, under), emptyFolder };
}

function addCounts(a: Published, b: Published): Published {
  return {
    written: a.written + b.written,
    carriedOver: a.carriedOver + b.carriedOver,
    searchMade: a.searchMade || b.searchMade,
  };
}

async function publishOne(
  { catalogue, ...place }: SiteRequest,
  target: Place,
  effects: PublishEffects,
): Promise<Published> {
  effects.stage("write pages");
  const pages = listPages(catalogue, place);
  const counts = await writePages(pages, target, target.emptyFolder);
  effects.stage("write pictures, data and styles");
  await writePictures(catalogue, target, effects);
  await writeAssets(target);
  for (const { path, content } of dataOf(catalogue, pages)) {
    await writeOrCarry(target, path, content);
  }
  effects.stage("index the words");
  return { ...counts, searchMade: await writeSearch(pages, target) };
}

/** The data files, sitemap and feed of a site: an unlisted set is absent from them; its wall can be filtered all the same. */
export function dataOf(catalogue: Catalogue, pages: readonly Page[]): readonly DataFile[] {
  const facets = { path: "data/facets.js", content: makeFacetsScript(catalogue) };
  if (catalogue.studio.unlisted) return [facets];
  const forOthers = [...makeSitemap(catalogue.studio, pages), ...makeFeed(catalogue)];
  return [facets, ...makeDataFiles(catalogue), ...forOthers];
}

async function writePictures(
  catalogue: Catalogue,
  target: Place,
  { pictureFile }: PublishEffects,
): Promise<void> {
  const pictures = catalogue.tiles.flatMap((tile) => tile.pictures);
  const urls = new Set(pictures.flatMap((picture) => picture.files.map((file) => file.url)));
  for (const url of urls) await linkInto(pictureFile(url), join(target.folder, url));
}
