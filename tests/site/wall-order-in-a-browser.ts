/** The order of the wall in a browser: chosen by keyboard, sent as an address, beside a colour. */
import { readFile } from "node:fs/promises";
import { join } from "node:path";
import type { Page } from "playwright-core";
import { expect } from "vitest";
import { compareIds } from "../../src/terms/ids.ts";
import { siteTest } from "../support/browser.ts";
import type { BuiltSite } from "./built-sites.ts";
import { codesOnTheWall, found } from "./whole-wall.ts";

const large = { viewport: { width: 1280, height: 900 } };

const order = (page: Page) => page.getByLabel("In order of");

/** Tests of the orders that the wall of the demonstration can have. */
export function testOrderOfWall(site: BuiltSite): void {
  siteTest(
    "the longest run comes first where that order is chosen, by keyboard alone, and stands in the address",
    async ({ open, serve }) => {
      const root = await serve(site.folder, "/studio/tests/");
      const page = await open(`${root}?cone=6`, large);
      const byCode = await codesOnTheWall(page);
      await order(page).focus();
      await page.keyboard.press("r");
      await page.keyboard.press("Enter");
      await expect.poll(() => page.url()).toBe(`${root}?cone=6&sort=run`);
      const runs = await runsOf(await codesOnTheWall(page));
      const known = runs.filter((run) => run !== null);
      expect(known).toEqual(known.toSorted((a, b) => b - a));
      const lacking = runs.length - known.length;
      expect(lacking).toBeGreaterThan(1);
      expect(runs.slice(known.length).every((run) => run === null)).toBe(true);
      expect(await found(page)).toContain(
        `tiles, the longest run first. ${lacking} tiles have no run recorded; they come last.`,
      );
      await page.goBack();
      expect(await codesOnTheWall(page)).toEqual(byCode);
      expect(await order(page).inputValue()).toBe("code");
    },
  );

  async function runsOf(codes: readonly string[]): Promise<(number | null)[]> {
    const script = await readFile(join(site.folder, "data/facets.js"), "utf8");
    const facets = JSON.parse(script.slice(script.indexOf("{"), script.lastIndexOf("}") + 1));
    return codes.map((code) => facets.ran[facets.codes.indexOf(code)]);
  }

  siteTest(
    "the wall of a sent address is in its order, and beside a colour it can still be by code",
    async ({ open, serve }) => {
      const root = await serve(site.folder);
      const page = await open(`${root}?sort=date`, large);
      expect(await found(page)).toMatch(/^All \d+ tiles, the newest first\./u);
      expect(await page.locator("#wall .apart").first().textContent()).toMatch(/^\d+ \w+ \d{4}$/u);
      await page.locator("input[type=color]").fill("#546966");
      expect(page.url()).toBe(`${root}?near=546966`);
      expect(await order(page).inputValue()).toBe("near");
      await order(page).selectOption("code");
      expect(page.url()).toBe(`${root}?near=546966&sort=code`);
      const codes = await codesOnTheWall(page);
      expect(codes).toEqual(codes.toSorted(compareIds));
      expect(await found(page)).toContain(
        ", by code. Below each code, how far its colour is from blue-green #546966.",
      );
      expect(await page.locator("#wall .apart").first().textContent()).toMatch(/^\d+ apart$/u);
    },
  );
}
