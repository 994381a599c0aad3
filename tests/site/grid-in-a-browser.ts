/** The grid in a browser: what was tried and what was not, by keyboard, on a phone, on paper, as a list. */
import { readFile } from "node:fs/promises";
import { join } from "node:path";
import type { Page } from "playwright-core";
import { expect } from "vitest";
import { fileAddress, siteTest } from "../support/browser.ts";
import type { BuiltSite } from "./built-sites.ts";

interface Tile {
  readonly id: string;
  readonly cone: string | null;
}

interface Pair {
  readonly over: string;
  readonly under: string;
  readonly url: string;
  readonly tiles: readonly string[];
}

const large = { viewport: { width: 1280, height: 900 } };
const phone = { viewport: { width: 390, height: 800 } };

const told = (page: Page) => page.locator("#grid .told").textContent();
const nameOfFocus = (page: Page) =>
  page.evaluate(() => document.activeElement?.getAttribute("aria-label") ?? "");

/** Tests of the grid of the demonstration. */
export function testGrid(site: BuiltSite): void {
  const read = async <T>(file: string): Promise<readonly T[]> =>
    JSON.parse(await readFile(join(site.folder, "data", file), "utf8"));

  async function pairsAt(cone: string): Promise<readonly Pair[]> {
    const tiles = await read<Tile>("tiles.json");
    const fired = new Set(tiles.filter((tile) => tile.cone === cone).map(({ id }) => id));
    return (await read<Pair>("grid.json")).filter((pair) => pair.tiles.some((id) => fired.has(id)));
  }

  for (const way of ["served", "opened from a folder"])
    siteTest(`the grid, ${way}, says what nobody has tried at cone 6`, async ({ open, serve }) => {
      const address =
        way === "served"
          ? `${await serve(site.folder, "/studio/tests/")}grid.html`
          : fileAddress(site.folder, "grid.html");
      const page = await open(address, large);
      const tried = await pairsAt("6");
      await expect.poll(() => told(page)).toMatch(/^\d+ of [\d,]+ pairs .* tried at cone 6\./u);
      const [, found = "", all = ""] = /^(\d+) of ([\d,]+)/u.exec((await told(page)) ?? "") ?? [];
      expect(Number(found)).toBe(tried.length);
      const rest = Number(all.replace(",", "")) - tried.length;
      expect((await told(page))?.replaceAll(",", "")).toContain(
        `Nobody has tried the other ${rest}`,
      );
      const empty = page.getByRole("button", { name: /: nobody has tried this at cone 6\./u });
      await empty.first().click();
      await expect
        .poll(() => page.locator("#grid .reading").textContent())
        .toContain("Nobody has tried this at cone 6.");
    });

  siteTest(
    "by keyboard each square has a name, and Enter opens its page",
    async ({ open, serve }) => {
      const root = await serve(site.folder);
      const [pair] = await pairsAt("6");
      const page = await open(`${root}grid.html?over=${pair?.over}&under=${pair?.under}`, large);
      const square = page.locator("#grid [data-place][tabindex='0']");
      await expect.poll(() => square.count()).toBe(1);
      await square.focus();
      const name = await nameOfFocus(page);
      expect(name).toMatch(/ over .+: .*[A-Z]+-\d+/u);
      await page.keyboard.press("ArrowRight");
      await page.keyboard.press("ArrowDown");
      expect(await nameOfFocus(page)).not.toBe(name);
      await page.keyboard.press("Control+End");
      const last = await nameOfFocus(page);
      expect(last).toMatch(/ alone: /u);
      await page.keyboard.press("ArrowRight");
      expect(await nameOfFocus(page)).toBe(last);
      const drawn = await page.locator("#grid [role=gridcell]").count();
      expect(drawn).toBeLessThan(450);
      await page.goto(`${root}grid.html?over=${pair?.over}&under=${pair?.under}`);
      await square.focus();
      await page.keyboard.press("Enter");
      await page.waitForURL(root + pair?.url);
      await page.goBack();
      await expect.poll(() => square.getAttribute("aria-label")).toBe(name);
    },
  );

  siteTest(
    "what is chosen stands in the address, and back leads to the last",
    async ({ open, serve }) => {
      const root = await serve(site.folder);
      const page = await open(`${root}grid.html`, large);
      await page.locator("#grid select[name=cone]").selectOption({ label: "8" });
      await expect.poll(() => told(page)).toContain("at cone 8");
      expect(page.url()).toBe(`${root}grid.html?cone=8`);
      await page.locator("#grid select[name=by]").selectOption({ label: "name" });
      const heads = page.locator("#grid .heads .head a");
      const names = await heads.allTextContents();
      expect(names).toEqual([...names].sort((a, b) => a.localeCompare(b, "en", { numeric: true })));
      await page.goBack();
      await page.goBack();
      await expect.poll(() => told(page)).toContain("at cone 6");
      await page.goto(`${root}grid.html?cone=06&clay=nobody`);
      await expect.poll(() => told(page)).toContain("at cone 06");
    },
  );

  siteTest(
    "on a phone squares are large enough to touch, and heads stay",
    async ({ open, serve }) => {
      const page = await open(`${await serve(site.folder)}grid.html`, phone);
      const squares = page.locator("#grid [role=gridcell] > *");
      await expect.poll(() => squares.count()).toBeGreaterThan(10);
      const box = await squares.first().boundingBox();
      expect(Math.min(box?.width ?? 0, box?.height ?? 0)).toBeGreaterThanOrEqual(44);
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(390);
      const head = page.locator("#grid .line .head").first();
      const before = await head.boundingBox();
      await page.locator("#grid .board").evaluate((board) => board.scrollTo(900, 0));
      await page.waitForTimeout(100);
      expect((await head.boundingBox())?.x).toBe(before?.x);
    },
  );

  siteTest("the grid prints on one sheet, with what was tried", async ({ open, serve }) => {
    const page = await open(`${await serve(site.folder)}grid.html`, large);
    await expect.poll(() => told(page)).toContain("at cone 6");
    const sheets = await page.pdf({ format: "A4", printBackground: true });
    expect(sheets.toString("latin1").match(/\/Type\s*\/Page\b/gu)).toHaveLength(1);
    const marks = await page.locator(".sheet-drawing :is(.ring, .cross)").count();
    expect(marks).toBeGreaterThanOrEqual((await pairsAt("6")).length);
  });

  siteTest(
    "without JavaScript every pair is in a list, under its cone",
    async ({ open, serve }) => {
      const root = await serve(site.folder);
      const page = await open(`${root}grid.html`, { javaScriptEnabled: false });
      expect(await page.locator("#grid").isVisible()).toBe(false);
      const links = await page
        .locator(".grid-list section", {
          has: page.getByRole("heading", { name: "Cone 6", exact: true }),
        })
        .locator("li a")
        .evaluateAll((all) => all.map((link) => (link as HTMLAnchorElement).href));
      expect(links.sort()).toEqual((await pairsAt("6")).map(({ url }) => root + url).sort());
    },
  );
}
