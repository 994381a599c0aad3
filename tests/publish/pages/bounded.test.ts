/** No page grows with the archive, and none of what a page leaves out is lost. */
import { posix } from "node:path";
import { describe, expect, test } from "vitest";
import { renderPage } from "../../../src/publish/write-pages.ts";
import { catalogueOf } from "../../bench/catalogue-run.ts";
import { makeLargeArchive } from "../../bench/large-archive.ts";
import { listPages } from "../../support/list-pages.ts";

/** A phone loads and lays out so much without a wait that anybody minds. */
const mostBytes = 150_000;
const mostElements = 1_500;
const mostAtHome = 100_000;
/** Of which a KB is what its head says to programs. */
const mostOfATile = 16_500;

interface Measured {
  readonly path: string;
  readonly bytes: number;
  readonly elements: number;
  /** Where its links lead, from the root. */
  readonly links: readonly string[];
}

function measurePages(tiles: number): readonly Measured[] {
  return listPages(catalogueOf(makeLargeArchive(tiles))).map((page) => {
    const html = renderPage(page);
    return {
      path: page.path,
      bytes: Buffer.byteLength(html),
      elements: html.match(/<[a-z]/gu)?.length ?? 0,
      links: [...html.matchAll(/<a [^>]*?href="([^"#?]+)/gu)].map(([, link = ""]) =>
        posix.join(posix.dirname(page.path), link),
      ),
    };
  });
}

/** `clays` of `clays/buff~2.html`; a page at the root is a kind of its own. */
function kindOf({ path }: Measured): string {
  const folder = posix.dirname(path);
  return folder === "." ? path.replace(/-\d+\.html$/u, ".html") : folder;
}

function largestByKind(pages: readonly Measured[]): ReadonlyMap<string, Measured> {
  const largest = new Map<string, Measured>();
  for (const page of pages) {
    const kind = kindOf(page);
    if (page.bytes > (largest.get(kind)?.bytes ?? 0)) largest.set(kind, page);
  }
  return largest;
}

/** All pages that links lead to, beginning at home. */
function reachedFromHome(pages: readonly Measured[]): ReadonlySet<string> {
  const byPath = new Map(pages.map((page) => [page.path, page]));
  const reached = new Set(["index.html"]);
  for (const path of reached)
    for (const link of byPath.get(path)?.links ?? []) if (byPath.has(link)) reached.add(link);
  return reached;
}

describe("the pages of a large archive", () => {
  const small = measurePages(2_000);
  const large = measurePages(4_000);

  test("are each small enough for a phone", () => {
    const tooLarge = [...small, ...large]
      .filter(({ bytes, elements }) => bytes > mostBytes || elements > mostElements)
      .map(({ path, bytes, elements }) => `${path}: ${bytes} bytes, ${elements} elements`);
    expect(tooLarge).toEqual([]);
    expect(large.find(({ path }) => path === "index.html")?.bytes).toBeLessThan(mostAtHome);
  });

  test("hold a tile in 16.5 KB, in the middle of all", () => {
    const tiles = large.filter((page) => kindOf(page) === "tiles").map(({ bytes }) => bytes);
    expect(tiles.length).toBeGreaterThan(3_000);
    const middle = tiles.sort((a, b) => a - b)[Math.floor(tiles.length / 2)];
    expect(middle).toBeLessThan(mostOfATile);
  });

  test("are no larger than those of an archive of half its tiles, once their lists are full", () => {
    const before = largestByKind(small);
    const grown = [...largestByKind(large)].flatMap(([kind, { path, bytes }]) => {
      const most = Math.max(50_000, 1.15 * (before.get(kind)?.bytes ?? 0));
      return bytes > most ? [`${path}: ${bytes} bytes, not ${Math.round(most)}`] : [];
    });
    expect(grown).toEqual([]);
  });

  test("are all reached from home by links, every tile among them, without a script", () => {
    const reached = reachedFromHome(large);
    const missed = large.filter(({ path }) => !reached.has(path)).map(({ path }) => path);
    const meant = (path: string) => path === "404.html" || /^tiles\/old-\d+\.html$/u.test(path);
    expect(missed.filter((path) => !meant(path))).toEqual([]);
  });
});
