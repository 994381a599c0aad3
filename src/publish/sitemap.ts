/** The sitemap, for search engines: the only file beside feed and canonical links that needs the site's address. */
import type { Catalogue } from "../catalogue/types.ts";
import type { DataFile } from "./data/entry.ts";
import type { Page } from "./page.ts";
import { escapeXml, rootOf } from "./xml.ts";

/** `sitemap.xml` of the pages that may be found; nothing where the studio has no address. */
export function makeSitemap(
  { address }: Catalogue["studio"],
  pages: readonly Page[],
): readonly DataFile[] {
  if (address === null) return [];
  const root = rootOf(address);
  const urls = pages
    .filter((page) => page.search !== null)
    .map((page) => `  <url><loc>${escapeXml(new URL(page.path, root).href)}</loc></url>`);
  const content = [
    '<?xml version="1.0" encoding="UTF-8"?>',
    '<urlset xmlns="http://www.sitemaps.org/schemas/sitemap/0.9">',
    ...urls,
    "</urlset>",
    "",
  ].join("\n");
  return [{ path: "sitemap.xml", content }];
}
