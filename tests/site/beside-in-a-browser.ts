/** Tiles and glazes side by side in a browser: chosen on other pages, sent as an address, enlarged in step. */
import type { Page } from "playwright-core";
import { expect } from "vitest";
import { fileAddress, siteTest } from "../support/browser.ts";
import type { BuiltSite } from "./built-sites.ts";

const large = { viewport: { width: 1280, height: 900 } };

const why = (page: Page) => page.locator("#beside .why").first().textContent();
const shown = (page: Page) => page.locator(".compare-heads .code").allTextContents();

/** Tests of what is side by side in the demonstration. */
export function testBeside(site: BuiltSite): void {
  siteTest("a tile's page leads to why the one beside it differs", async ({ open, serve }) => {
    const root = await serve(site.folder, "/studio/tests/");
    const page = await open(`${root}tiles/bl-01.html`, large);
    await page.locator(".one-change a", { hasText: "side by side" }).first().click();
    await page.waitForURL(/beside\.html\?tiles=BL-01,/u);
    await expect
      .poll(() => why(page))
      .toMatch(/^They differ in one thing: the atmosphere \(step 3\)\.$/u);
    expect(await shown(page)).toHaveLength(2);
    const marked = page.locator(".compare-line.step.differs");
    expect(await marked.count()).toBe(1);
    expect(await marked.textContent()).toContain("differs: the atmosphere");
    expect(await page.locator(".curves .curve").count()).toBeGreaterThan(0);
  });

  siteTest(
    "the way from what is one change apart leads to that alone, and is no part of the heading",
    async ({ open, serve }) => {
      const root = await serve(site.folder);
      const page = await open(`${root}tiles/ev-116.html`, large);
      const apart = page.locator("section[aria-labelledby='one-change']");
      const way = apart.locator("a", { hasText: "side by side" });
      expect(await way.getAttribute("href")).toMatch(/\?tiles=EV-116,EV-107$/u);
      expect(await apart.getByRole("heading", { level: 2 }).textContent()).toBe("One change apart");
      expect(await page.locator("#two-changes").count()).toBe(1);
    },
  );

  siteTest(
    "what is set beside on one page is kept on the next, and stands in the address",
    async ({ open, serve }) => {
      const root = await serve(site.folder);
      const page = await open(`${root}tiles/bl-01.html`, large);
      const button = page.locator("button.beside-button");
      await button.focus();
      await page.keyboard.press("Enter");
      await page.goto(`${root}tiles/bl-02.html`);
      await button.click();
      await page.goto(`${root}index.html`);
      await page.locator(".tray a").click();
      await page.waitForURL(`${root}beside.html?tiles=BL-01,BL-02`);
      await expect.poll(() => shown(page)).toEqual(["BL-01", "BL-02"]);
      await page.getByRole("textbox", { name: "Code" }).fill("ev-101");
      await page.keyboard.press("Enter");
      await expect.poll(() => shown(page)).toEqual(["BL-01", "BL-02", "EV-101"]);
      expect(page.url()).toBe(`${root}beside.html?tiles=BL-01,BL-02,ev-101`);
      await page.getByRole("button", { name: "Take away BL-02" }).click();
      await expect.poll(() => shown(page)).toEqual(["BL-01", "EV-101"]);
      await page.goBack();
      await expect.poll(() => shown(page)).toEqual(["BL-01", "BL-02", "EV-101"]);
      await page.getByRole("textbox", { name: "Code" }).fill("XX-9");
      await page.keyboard.press("Enter");
      await expect
        .poll(() => page.locator("#beside .told").textContent())
        .toBe("There is no tile XX-9 here.");
    },
  );

  siteTest("photographs are enlarged in step, by keyboard too", async ({ open }) => {
    const page = await open(`${fileAddress(site.folder, "beside.html")}?tiles=BL-01,BL-02`, large);
    const pictures = page.locator(".compare-heads img");
    await expect.poll(() => pictures.count()).toBe(2);
    await page.locator(".viewer-frame").first().focus();
    await page.keyboard.press("+");
    await page.keyboard.press("+");
    await page.keyboard.press("ArrowRight");
    const lies = () =>
      pictures.evaluateAll((all) => all.map((image) => (image as HTMLElement).style.transform));
    const [first, second] = await lies();
    expect(first).toMatch(/^translate\(-?\d.*scale\(1\.96/u);
    expect(second).toBe(first);
    await page.getByRole("button", { name: "whole" }).click();
    expect(new Set(await lies())).toEqual(new Set(["translate(0px, 0px) scale(1)"]));
  });

  siteTest(
    "glazes are side by side with recipes and formulas, on a phone",
    async ({ open, serve }) => {
      const address = `${await serve(site.folder)}beside.html?glazes=mist,chalk,soot,tidewrack`;
      const page = await open(address, { viewport: { width: 390, height: 800 } });
      await expect.poll(() => page.locator(".compare-heads .names").count()).toBe(4);
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(390);
      expect(await page.locator(".compare").textContent()).toContain("In stock");
      const ends = await page
        .locator(".compare .label")
        .evaluateAll((all) => all.map((label) => label.getBoundingClientRect().right));
      expect(Math.max(...ends)).toBeLessThanOrEqual(390);
    },
  );

  siteTest("the code of a firing is not taken for a tile's", async ({ open, serve }) => {
    const page = await open(`${await serve(site.folder)}firings/g-250928.html`, large);
    await page.waitForLoadState("networkidle");
    expect(await page.locator("button.beside-button").count()).toBe(0);
  });

  siteTest("without JavaScript it says what to do instead", async ({ open, serve }) => {
    const page = await open(`${await serve(site.folder)}beside.html`, { javaScriptEnabled: false });
    expect(await page.locator("main").textContent()).toContain("This page needs scripts");
    expect(await page.locator("#beside").isVisible()).toBe(false);
  });
}
