/** The links of pages, read from their markup. */
import { readFile } from "node:fs/promises";
import { join, posix } from "node:path";
import { type BuiltSite, pagesOf } from "./built-sites.ts";

/** Where a link stands, and what it says. */
export interface PageLink {
  readonly page: string;
  /** As it is written. */
  readonly link: string;
  /** The file of the site that it names. */
  readonly file: string;
  /** What stands after `#`. */
  readonly fragment: string;
}

/** The path of the address that the archives of these tests are published at. */
export const publishedUnder = "/tests/";

/** Every link of every page to something else than the web: links, pictures, scripts, styles. */
export async function linksWithin(site: BuiltSite): Promise<readonly PageLink[]> {
  const links: PageLink[] = [];
  for (const page of pagesOf(site)) {
    const html = await readFile(join(site.folder, page), "utf8");
    for (const link of findLinks(html)) {
      if (/^(https?|mailto):/u.test(link)) continue;
      const [way = "", fragment = ""] = link.split("#");
      const path = decodeURIComponent(way.split("?")[0] ?? "");
      const fromRoot = path.startsWith(publishedUnder) ? path.slice(publishedUnder.length) : null;
      const file = path === "" ? page : (fromRoot ?? posix.join(posix.dirname(page), path));
      links.push({ page, link, file, fragment });
    }
  }
  return links;
}

/** Every address that a page's markup names, but for its own canonical one and its feed's. */
function findLinks(html: string): string[] {
  const markup = html.replace(/<link rel="(canonical|alternate)"[^>]*>/gu, "");
  const single = [
    ...markup.matchAll(/\s(?:href|src|action|poster)="([^"]*)"/gu),
    ...markup.matchAll(/http-equiv="refresh" content="\d+; ?url=([^"]*)"/gu),
  ].map(([, link = ""]) => link);
  const sets = [...markup.matchAll(/\s(?:srcset|imagesrcset)="([^"]*)"/gu)].flatMap(
    ([, set = ""]) => set.split(",").map((each) => each.trim().split(/\s/u)[0] ?? ""),
  );
  return [...single, ...sets].map((link) => link.replaceAll("&amp;", "&"));
}

/** The pages that can be reached from a page by links alone. */
export function reachedFrom(start: string, links: readonly PageLink[]): ReadonlySet<string> {
  const reached = new Set([start]);
  for (const page of reached)
    for (const link of links) if (link.page === page) reached.add(link.file);
  return reached;
}
