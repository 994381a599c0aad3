/**
 * Sites that are not written yet. Each file is made when it is asked for, byte for byte as it will be
 * written, so that who works on an archive sees an edit long before the whole site is on the disk.
 */
import { dataOf } from "./data-of-site.ts";
import { makeFormWorker } from "./form-worker.ts";
import { withOwn } from "./own-assets.ts";
import { pagesOf, pictureUrls, type SiteRequest } from "./site-request.ts";
import { renderPage } from "./write-pages.ts";

/** A file of a site: what it holds, or where on this computer it lies. */
export type SiteFile = { readonly content: string | Uint8Array } | { readonly at: string };

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
  const { catalogue } = site;
  const pages = pagesOf(site);
  const own = withOwn(assets, site);
  let data: ReadonlyMap<string, { readonly content: string | Uint8Array }> | undefined;
  const findData = (path: string) => {
    data ??= new Map(
      [...dataOf(catalogue, pages.all()), ...makeFormWorker(site, own)].map((file) => [
        file.path,
        file,
      ]),
    );
    return data.get(path)?.content;
  };
  return (path) => {
    if (path.startsWith("pagefind/")) return "later";
    if (path.startsWith("pictures/"))
      return pictureUrls(site).has(path) ? { at: pictureFile(path) } : undefined;
    const page = pages.find(path);
    if (page) return { content: renderPage(page) };
    const content = path.startsWith("assets/")
      ? own.get(path.slice("assets/".length))
      : findData(path);
    return content === undefined ? undefined : { content };
  };
}
