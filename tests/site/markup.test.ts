/** What stands in the pages, read as files: markup by the standard, and links that lead somewhere. */
import { readFile } from "node:fs/promises";
import { join, posix } from "node:path";
import sharp from "sharp";
import { describe, expect, test } from "vitest";
import { markupFaultsOf } from "../support/markup.ts";
import {
  type BuiltSite,
  demoSite,
  leadsOn,
  pageOfEachKind,
  pagesOf,
  smallSite,
} from "./built-sites.ts";
import { linksWithin, type PageLink, publishedUnder, reachedFrom } from "./links.ts";

const sites: Readonly<Record<string, BuiltSite>> = {
  "a small archive": smallSite(),
  "the demonstration archive": demoSite(),
};

test.each(Object.entries(sites))(
  "no page of %s shows the last bits of a sum, which another Node may reckon otherwise",
  async (_, site) => {
    const finer = /\d\.\d{7,}/u;
    const found: string[] = [];
    for (const page of pagesOf(site)) {
      const html = await readFile(join(site.folder, page), "utf8");
      if (finer.test(html)) found.push(page);
    }
    expect(found).toEqual([]);
  },
);

test("the markup's check finds what breaks the standard", async () => {
  const page = '<!doctype html><html lang="en"><head><title>x</title></head><body>';
  expect(await markupFaultsOf(`${page}<p><div></div></p></body></html>`, "x.html")).not.toEqual([]);
});

/** What a page's head says to programs: its addresses, whole, and the picture of its card. */
function headOf(html: string) {
  const card = new Map(
    [...html.matchAll(/<meta property="og:([^"]+)" content="([^"]*)"/gu)].map(
      ([, property = "", said = ""]) => [property, said] as const,
    ),
  );
  const [, data = "null"] =
    /<script type="application\/ld\+json">(.*?)<\/script>/su.exec(html) ?? [];
  const addresses = [...card.values(), ...textsIn(JSON.parse(data))].filter((said) =>
    /^https?:\/\/\S+$/u.test(said),
  );
  const address = card.get("image");
  const size = `${card.get("image:width")} × ${card.get("image:height")}`;
  return { addresses, picture: address === undefined ? null : { address, size } };
}

function decodeXml(text: string): string {
  return text.replace(/&#(\d+);/gu, (_, code) => String.fromCodePoint(Number(code)));
}

function textsIn(value: unknown): readonly string[] {
  if (typeof value === "string") return [value];
  return value !== null && typeof value === "object" ? Object.values(value).flatMap(textsIn) : [];
}

/** A host shows it for whatever address leads nowhere. */
const isShownAnywhere = (page: string) => posix.basename(page) === "404.html";

describe.each(Object.entries(sites))("in the site of %s", (_, site) => {
  const read = (page: string) => readFile(join(site.folder, page), "utf8");

  test("every kind of page keeps to the HTML standard, those that lead on among them", async () => {
    const pages = new Set(await pageOfEachKind(site));
    for (const page of pagesOf(site)) if (await leadsOn(site, page)) pages.add(page);
    expect(pages.size).toBeGreaterThan(20);
    for (const page of pages)
      expect(await markupFaultsOf(await read(page), page), page).toEqual([]);
  });

  test("every link within the site is relative and names a file that is there", async () => {
    const links = await linksWithin(site);
    expect(links.length).toBeGreaterThan(1000);
    const isWhole = ({ link }: PageLink) => /^\/|^[a-z]+:|\/$/u.test(link);
    expect(links.filter((link) => isWhole(link) && !isShownAnywhere(link.page))).toEqual([]);
    const files = new Set(site.files);
    expect(links.filter(({ file }) => !files.has(file))).toEqual([]);
  });

  test("the page for an address that leads nowhere leads home from any depth", async () => {
    const links = (await linksWithin(site)).filter(({ page }) => isShownAnywhere(page));
    expect(links.map(({ file }) => file)).toEqual(
      expect.arrayContaining(["index.html", "assets/not-found.css"]),
    );
    const relative = links.filter(({ link }) => !link.startsWith(publishedUnder));
    expect(relative.filter(({ link }) => link !== "#main")).toEqual([]);
  });

  test("every link to a part of a page finds that part", async () => {
    const ids = new Map<string, string>();
    for (const page of pagesOf(site)) ids.set(page, await read(page));
    const lost = (await linksWithin(site)).filter(
      ({ file, fragment }) => fragment !== "" && !ids.get(file)?.includes(` id="${fragment}"`),
    );
    expect(lost).toEqual([]);
  });

  test("every file that styles ask for is there", async () => {
    const styles = site.files.filter((file) => /assets\/.+\.css$/u.test(file));
    expect(styles.length).toBeGreaterThan(0);
    for (const file of styles) {
      const asked = [...(await read(file)).matchAll(/url\(["']?([^"')]+)["']?\)/gu)]
        .map(([, url = ""]) => url)
        .filter((url) => !/^(data:|#)/u.test(url))
        .map((url) => posix.join(posix.dirname(file), url));
      expect(asked.filter((url) => !site.files.includes(url))).toEqual([]);
    }
  });

  test("every address in the heads of pages names a file that is there, pictures at their true sizes", async () => {
    const heads = await Promise.all(pagesOf(site).map(async (page) => headOf(await read(page))));
    const named = heads.flatMap(({ addresses }) => addresses);
    const within = named.filter((address) => new URL(address).pathname.startsWith(publishedUnder));
    expect(within.length).toBeGreaterThan(100);
    const files = new Set(site.files);
    const fileOf = (address: string) =>
      decodeURIComponent(new URL(address).pathname.slice(publishedUnder.length));
    expect(within.map(fileOf).filter((file) => !files.has(file))).toEqual([]);
    const pictures = new Map(
      heads.flatMap(({ picture }) => (picture ? [[picture.address, picture]] : [])),
    );
    expect(pictures.size).toBeGreaterThan(0);
    for (const { address, size } of pictures.values()) {
      const bytes = await readFile(join(site.folder, fileOf(address)));
      const { format, width, height } = await sharp(bytes).metadata();
      expect({ format, size: `${width} × ${height}` }, address).toEqual({ format: "jpeg", size });
    }
  });

  test("the feed's entries show photographs that are there", async () => {
    const feed = await read("feed.xml");
    const shown = [...feed.matchAll(/<content type="html">(.*)<\/content>/gu)].map(
      ([, said = ""]) => decodeXml(said),
    );
    const addresses = shown.map(
      (html) =>
        /^<p><img src="([^"]+)" alt="[^"]+" width="\d+" height="\d+"\/><\/p>$/u.exec(html)?.[1] ??
        html,
    );
    expect(addresses.length).toBeGreaterThan(0);
    const files = new Set(site.files.map((file) => publishedUnder + file));
    expect(addresses.filter((address) => !files.has(new URL(address).pathname))).toEqual([]);
  });

  test("every page can be reached from the first by links alone, and no unlisted one", async () => {
    const reached = reachedFrom("index.html", await linksWithin(site));
    const missed = [];
    for (const page of pagesOf(site).filter((each) => !reached.has(each))) {
      if (page.startsWith("s/") || page === "404.html") continue;
      if (!(await leadsOn(site, page))) missed.push(page);
    }
    expect(missed).toEqual([]);
    expect([...reached].filter((page) => page.startsWith("s/"))).toEqual([]);
  });
});
