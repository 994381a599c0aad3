/**
 * Sites that are not written yet. Each file is made when it is asked for, byte for byte as it will be
 * written, so that who works on an archive sees an edit long before the whole site is on the disk.
 */
import { dataPath } from "../../templates/parts/sections.ts";
import type { Content } from "./data/entry.ts";
import { siteDataOf } from "./data/site-data.ts";
import { dataOf } from "./data-of-site.ts";
import { makeFormWorker } from "./form-worker.ts";
import { withOwn } from "./own-assets.ts";
import type { Page } from "./page.ts";
import { pagesOf, pictureUrls, type SiteRequest } from "./site-request.ts";
import { renderPage } from "./write-pages.ts";

/** A file of a site: what it holds, what makes it, or where on this computer it lies. */
export type SiteFile =
  | { readonly content: Content }
  | { readonly make: () => Promise<Content> }
  | { readonly at: string };

export interface UnwrittenSites {
  /**
   * A file by its path from the root of the whole; undefined where the sites have none of that name.
   * The index for words is `later`: it is made as a whole, and takes longest.
   */
  readonly find: (path: string) => SiteFile | "later" | undefined;
}

/** Where what goes into a site beside its records comes from. */
export interface SiteStores {
  /** By their paths beneath `assets/`. */
  readonly assets: ReadonlyMap<string, Uint8Array>;
  /** Where a prepared picture lies, by the address it has on the site. */
  readonly pictureFile: (url: string) => string;
}

/** The sites that `publishSites` would write of the same. */
export function unwrittenSites(sites: readonly SiteRequest[], stores: SiteStores): UnwrittenSites {
  const finders = sites
    .map((site) => ({
      under: site.under === "" ? "" : `${site.under}/`,
      find: fileFinder(site, stores),
    }))
    .sort((a, b) => b.under.length - a.under.length);
  return {
    find(path) {
      const own = finders.find(({ under }) => path.startsWith(under));
      return own?.find(path.slice(own.under.length));
    },
  };
}

function fileFinder(
  site: SiteRequest,
  { assets, pictureFile }: SiteStores,
): UnwrittenSites["find"] {
  const pages = pagesOf(site);
  const own = withOwn(assets, site);
  const findData = dataFinder(site, own);
  return (path) => {
    if (path.startsWith("pagefind/")) return "later";
    if (path.startsWith("pictures/"))
      return pictureUrls(site).has(path) ? { at: pictureFile(path) } : undefined;
    const page = pages.find(path);
    if (page) return pageFile(site, page);
    if (!path.startsWith("assets/")) return findData(path);
    const content = own.get(path.slice("assets/".length));
    return content === undefined ? undefined : { content };
  };
}

/** The page of the data says how long every file is, so these are made for it. */
function pageFile({ catalogue }: SiteRequest, page: Page): SiteFile {
  if (page.path !== dataPath) return { content: renderPage(page) };
  return {
    async make() {
      await siteDataOf(catalogue).measure();
      return renderPage(page);
    },
  };
}

/** Finds scripts of data, feed and sitemap, which are made together, and tables, each of which is made alone. */
function dataFinder(
  site: SiteRequest,
  own: ReturnType<typeof withOwn>,
): (path: string) => SiteFile | undefined {
  const { catalogue } = site;
  let files: ReadonlyMap<string, SiteFile> | undefined;
  const findTable = (path: string): SiteFile | undefined => {
    const { entries, make } = siteDataOf(catalogue);
    const entry = entries.find((each) => each.path === path);
    return entry && { make: () => make(entry) };
  };
  return (path) => {
    files ??= new Map(
      [...dataOf(catalogue, pagesOf(site).all()), ...makeFormWorker(site, own)].map((file) => [
        file.path,
        file,
      ]),
    );
    return files.get(path) ?? (path.startsWith("data/") ? findTable(path) : undefined);
  };
}
