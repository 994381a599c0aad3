/** Finding tiles on the wall in a browser: by choices, by words, by the address that somebody sent. */
import { readFile } from "node:fs/promises";
import { join } from "node:path";
import type { Page } from "playwright-core";
import { expect } from "vitest";
import { fileAddress, siteTest } from "../support/browser.ts";
import type { BuiltSite } from "./built-sites.ts";
import { codesOnTheWall, found } from "./whole-wall.ts";

interface Tile {
  readonly id: string;
  readonly cone: string | null;
  readonly clay: string | null;
  readonly surface: readonly string[];
}

const codesOn = async (page: Page) => (await codesOnTheWall(page)).sort();

/** Chooses a value of a list by the beginning of its words, wherever on the page the list is. */
async function choose(page: Page, name: string, words: string): Promise<string> {
  const list = page.locator(`select[name=${name}]`);
  const labels = await list.locator("option").allTextContents();
  const label = labels.find((each) => each.startsWith(words)) ?? `no ${words}`;
  await list.selectOption({ label });
  return label;
}

const large = { viewport: { width: 1280, height: 900 } };

const isSatinAt6 = ({ cone, surface }: Tile) => cone === "6" && surface.includes("satin");

/** Tests of the wall of the demonstration and of its finder. */
export function testWall(site: BuiltSite): void {
  async function tilesWhere(holds: (tile: Tile) => boolean): Promise<string[]> {
    const tiles = JSON.parse(
      await readFile(join(site.folder, "data/tiles.json"), "utf8"),
    ) as Tile[];
    return tiles
      .filter(holds)
      .map(({ id }) => id)
      .sort();
  }

  siteTest(
    "a choice shows the tiles that it told of, and stands in the address",
    async ({ open, serve }) => {
      const root = await serve(site.folder, "/studio/tests/");
      const page = await open(root, large);
      const expected = await tilesWhere(({ cone }) => cone === "6");
      expect(await choose(page, "cone", "6 ·")).toBe(`6 · ${expected.length}`);
      expect(page.url()).toBe(`${root}?cone=6`);
      expect(await codesOn(page)).toEqual(expected);
      const satin = expected.length - (await tilesWhere((tile) => isSatinAt6(tile))).length;
      expect(satin).toBeGreaterThan(0);
      await choose(page, "surface", "satin surface");
      expect(await codesOn(page)).toEqual(await tilesWhere(isSatinAt6));
    },
  );

  siteTest(
    "an address that was sent shows the same view, and back leads through the choices",
    async ({ open, serve }) => {
      const root = await serve(site.folder);
      const page = await open(`${root}?cone=6&surface=satin`, large);
      const both = await tilesWhere(isSatinAt6);
      expect(await codesOn(page)).toEqual(both);
      await choose(page, "cone", "any");
      const satin = await tilesWhere(({ surface }) => surface.includes("satin"));
      expect(await codesOn(page)).toEqual(satin);
      await page.goBack();
      expect(page.url()).toBe(`${root}?cone=6&surface=satin`);
      expect(await codesOn(page)).toEqual(both);
      await page.goForward();
      expect(await codesOn(page)).toEqual(satin);
      await page.reload();
      expect(await codesOn(page)).toEqual(satin);
    },
  );

  siteTest(
    "what an address asks that the archive does not know is left out",
    async ({ open, serve }) => {
      const page = await open(`${await serve(site.folder)}?cone=66&nothing=x&clay=`, large);
      const all = await tilesWhere(() => true);
      expect(await found(page)).toBe(`All ${all.length} tiles`);
    },
  );

  siteTest("where nothing is left, it tells what to let go", async ({ open, serve }) => {
    const page = await open(`${await serve(site.folder)}?cone=6&words=xyzzy`, large);
    await page.locator(".loosen button", { hasText: "xyzzy" }).click();
    expect(await codesOn(page)).toEqual(await tilesWhere(({ cone }) => cone === "6"));
  });

  siteTest.for(["/", "/studio/tests/"])(
    "a word from the notes finds its tile, of a site under %s",
    async (under, { open, serve }) => {
      const root = await serve(site.folder, under);
      const page = await open(root, large);
      const asked: string[] = [];
      page.on("request", (request) => asked.push(new URL(request.url()).pathname));
      await page.getByRole("searchbox").fill("jar for once deeper bottom edge");
      await expect.poll(() => found(page), { timeout: 10_000 }).toMatch(/^[1-4] of /u);
      expect(await codesOn(page)).toContain("EV-101");
      expect(asked.some((path) => path.startsWith(`${under}pagefind/`))).toBe(true);
      expect(page.url()).toContain("words=");
    },
  );

  siteTest("nothing is loaded for words before somebody types", async ({ open, serve }) => {
    const page = await open(await serve(site.folder), large);
    await page.waitForLoadState("networkidle");
    const loaded = await page.evaluate(() =>
      performance.getEntriesByType("resource").map(({ name }) => name),
    );
    expect(loaded.some((name) => name.includes("facets.js"))).toBe(true);
    expect(loaded.filter((name) => name.includes("pagefind"))).toEqual([]);
  });

  siteTest(
    "a tile's code and Enter lead to the tile, however the code is written",
    async ({ open, serve }) => {
      const root = await serve(site.folder);
      const page = await open(root, large);
      await page.getByRole("searchbox").fill("ev 103");
      await page.getByRole("searchbox").press("Enter");
      await page.waitForURL(`${root}tiles/ev-103.html`);
    },
  );

  siteTest(
    "opened from a folder, names are found and it is told what was not searched",
    async ({ open }) => {
      const page = await open(fileAddress(site.folder, "index.html"), large);
      await page.getByRole("searchbox").fill("tidewrack");
      await expect.poll(() => found(page)).toMatch(/^\d+ of \d+ tiles.*Only codes and names/su);
      await choose(page, "cone", "6 ·");
      expect(page.url()).toContain("cone=6");
    },
  );

  siteTest(
    "on a phone the choices stand in a sheet that tells how many tiles it will leave",
    async ({ open, serve }) => {
      const page = await open(await serve(site.folder), { viewport: { width: 390, height: 800 } });
      await page.getByRole("button", { name: "Narrow down" }).click();
      await choose(page, "cone", "6 ·");
      const expected = await tilesWhere(({ cone }) => cone === "6");
      await page.getByRole("button", { name: `Show ${expected.length} tiles` }).click();
      expect(await page.getByRole("dialog").isVisible()).toBe(false);
      expect(await codesOn(page)).toEqual(expected);
    },
  );

  siteTest(
    "a further page of the wall shows its own tiles, and finds among all of them",
    async ({ open, serve }) => {
      const root = await serve(site.folder, "/studio/tests/");
      const page = await open(`${root}wall-2.html`, large);
      const all = await tilesWhere(() => true);
      expect(await found(page)).toBe(`All ${all.length} tiles`);
      const own = await codesOn(page);
      expect(own.length).toBeLessThan(60);
      expect(await page.locator("nav.pages [aria-current]").textContent()).toBe("2");
      await choose(page, "cone", "6 ·");
      expect(page.url()).toBe(`${root}wall-2.html?cone=6`);
      expect(await page.locator("nav.pages").isVisible()).toBe(false);
      expect(await codesOn(page)).toEqual(await tilesWhere(({ cone }) => cone === "6"));
      await page.goBack();
      expect(await codesOn(page)).toEqual(own);
      expect(await page.locator("nav.pages").isVisible()).toBe(true);
    },
  );

  siteTest(
    "a card of another page has its drawing and what came out once it is in sight",
    async ({ open, serve }) => {
      const root = await serve(site.folder, "/studio/tests/");
      const page = await open(root, large);
      const home = await codesOn(page);
      await page.goto(`${root}?surface=matte`);
      const code = (await codesOn(page)).find((each) => !home.includes(each)) ?? "no such tile";
      const card = page.locator("#wall li", { hasText: code }).first();
      await card.scrollIntoViewIfNeeded();
      await expect.poll(() => card.locator("svg.layers").count(), { timeout: 10_000 }).toBe(1);
      expect(await card.locator(".came").textContent()).toContain("matte");
    },
  );
}
