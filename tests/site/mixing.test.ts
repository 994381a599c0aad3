/** The weighing sheet and the map in a real browser, opened from a folder. */
import type { Page } from "playwright-core";
import { expect } from "vitest";
import { photograph } from "../support/archive-folder.ts";
import { fileAddress, siteTest } from "../support/browser.ts";
import { smallSite } from "./built-sites.ts";

const leaden = [
  "---",
  "name: Leaden",
  "kind: glaze",
  "ingredients:",
  "  - {material: lead-bisilicate, parts: 70}",
  "  - {material: kaolin, parts: 30}",
  "additions:",
  "  - {material: copper-carbonate, parts: 8}",
  "---",
].join("\n");

const tile = [
  "---",
  "layers: [{glaze: liner, coats: 2}, {fired: g-1}]",
  "result: {surface: matte, faults: none}",
  "---",
].join("\n");

const site = smallSite({
  "recipes/glazes/leaden.md": leaden,
  "tiles/evening/EV-7.md": tile,
  "tiles/evening/EV-7.jpg": await photograph("#b9b2a4"),
});
const liner = () => fileAddress(site.folder, "glazes/liner.html");

const readings = (page: Page) => page.locator(".sheet-table td:first-child .scale-reading");

siteTest("a batch is weighed out by what the scale must read, to the gram", async ({ open }) => {
  const page = await open(liner());
  await page.getByLabel("grams").fill("250");
  expect(await readings(page).allTextContents()).toEqual(["100", "175", "225", "250"]);
  expect(await page.locator(".sheet-table td:first-child .adds").allTextContents()).toEqual([
    ...["+ 100", "+ 75", "+ 50", "+ 25"],
  ]);
  await page.getByLabel("the empty bucket reads").fill("412");
  expect(await readings(page).allTextContents()).toEqual(["512", "587", "637", "662"]);
  expect(await page.locator(".fixed-batch").first().isVisible()).toBe(false);
});

siteTest(
  "one material at a time is shown large, next by a tap or a key, and back",
  async ({ open }) => {
    const page = await open(liner(), { viewport: { width: 390, height: 844 }, hasTouch: true });
    const now = page.locator(".now-told");
    expect(await now.textContent()).toBe("400 gPotash feldspar+ 400 g · 1 of 4");
    await page.getByRole("button", { name: "It reads 400: next" }).tap();
    expect(await now.textContent()).toMatch(/^700 g/u);
    await page.keyboard.press("ArrowRight");
    expect(await now.textContent()).toMatch(/^900 g/u);
    await page.keyboard.press("ArrowLeft");
    await page.getByRole("button", { name: "Back" }).tap();
    expect(await now.textContent()).toMatch(/^400 g/u);
    expect(
      await page
        .locator(".now-told .scale-reading")
        .evaluate((e) => parseFloat(getComputedStyle(e).fontSize)),
    ).toBeGreaterThan(40);
  },
);

siteTest(
  "where a weighing is outlasts a page that was loaded again, and its batch cannot change",
  async ({ open }) => {
    const page = await open(liner());
    await page.getByLabel("grams").fill("500");
    const next = page.locator(".next-material");
    for (const _ of [1, 2]) await next.click();
    await page.reload();
    expect(await page.locator(".now-told").textContent()).toMatch(/^450 g/u);
    expect(await page.getByLabel("grams").isDisabled()).toBe(true);
    for (const _ of [3, 4]) await next.click();
    expect(await page.locator(".now-told").textContent()).toMatch(/^500Everything is in/u);
    await page.getByRole("button", { name: "Start again" }).click();
    expect(await page.getByLabel("grams").isDisabled()).toBe(false);
    expect(await page.locator(".now-told").textContent()).toMatch(/^200 g/u);
  },
);

siteTest("a batch is weighed out by the bucket, and tells its water", async ({ open }) => {
  const page = await open(liner());
  const told = page.locator(".sheet-told");
  await page.getByLabel("A batch").selectOption("bucket");
  await page.getByLabel("litres").fill("10");
  await page.getByLabel("specific gravity").fill("1.5");
  await page.getByLabel("dry density").fill("2.6");
  await page.getByLabel("more for loss").fill("0");
  // 1000 × 10 × 0.5 × 2.6 / 1.6 g dry, and the rest of 15 kg, 6,875 g, is water.
  expect(await told.textContent()).toContain("With 6,900 ml of water");
  expect(await readings(page).last().textContent()).toBe("8,125");
  await page.getByLabel("more for loss").fill("20");
  expect(await readings(page).last().textContent()).toBe("9,750");
  await page.getByLabel("specific gravity").fill("0.9");
  expect(await told.textContent()).toMatch(/^No such batch can be weighed/u);
  expect(await page.locator(".at-the-scale").isVisible()).toBe(false);
});

/** How many sheets of A4 a page is printed on. */
async function sheetsOf(page: Page): Promise<number> {
  const paper = await page.pdf({ format: "A4", preferCSSPageSize: true });
  return paper.toString("latin1").match(/\/Type \/Page\b(?!s)/gu)?.length ?? 0;
}

siteTest("a sheet is printed by itself, on one page, its cautions with it", async ({ open }) => {
  const page = await open(fileAddress(site.folder, "glazes/leaden.html"));
  await page.evaluate(() => {
    window.print = () => undefined;
  });
  await page.locator(".next-material").click();
  await page.getByRole("button", { name: "Print this sheet" }).click();
  await page.emulateMedia({ media: "print" });
  expect(await page.locator("h1").isVisible()).toBe(false);
  expect(await page.locator(".at-the-scale").isVisible()).toBe(false);
  expect(await page.locator(".weighing .caution.loud").first().isVisible()).toBe(true);
  expect(await page.locator(".weighing .on-paper").isVisible()).toBe(true);
  expect(await readings(page).first().isVisible()).toBe(true);
  expect(await sheetsOf(page)).toBe(1);
  await page.emulateMedia({ media: "screen" });
  expect(await page.locator("h1").isVisible()).toBe(true);
});

for (const javaScriptEnabled of [true, false])
  siteTest(
    `a glaze is printed on two pages, the second its sheet, ${javaScriptEnabled ? "with" : "without"} JavaScript`,
    async ({ open }) => {
      const page = await open(fileAddress(site.folder, "glazes/leaden.html"), {
        javaScriptEnabled,
      });
      expect(await sheetsOf(page)).toBe(2);
      await page.emulateMedia({ media: "print" });
      expect(
        await page.locator(".scale").evaluate((scale) => getComputedStyle(scale).breakBefore),
      ).toBe("page");
      expect(await page.locator(".chemistry").isVisible()).toBe(true);
    },
  );

siteTest("without JavaScript a sheet has the readings of three batches", async ({ open }) => {
  const page = await open(liner(), { javaScriptEnabled: false });
  expect(await page.locator(".sheet-table thead th").allTextContents()).toEqual([
    ...["100 g", "1 kg", "5 kg", "Material"],
  ]);
  const second = page.locator(".sheet-table tbody tr").nth(1);
  expect(await second.locator(".scale-reading:visible").allTextContents()).toEqual([
    ...["70", "700", "3,500"],
  ]);
  expect(await second.locator(".adds:visible").allTextContents()).toEqual([
    ...["+ 30", "+ 300", "+ 1,500"],
  ]);
});

for (const width of [390, 1280])
  siteTest(`a map fits a window ${width} px wide without scrolling sideways`, async ({ open }) => {
    const page = await open(fileAddress(site.folder, "maps/6.html"), {
      javaScriptEnabled: false,
      viewport: { width, height: 800 },
    });
    const drawing = page.locator(".ratio-map:visible");
    expect(await drawing.count()).toBe(1);
    const box = await drawing.boundingBox();
    expect(box?.width).toBeLessThanOrEqual(width);
    const text = await drawing.locator("text").first().boundingBox();
    expect(text?.height).toBeGreaterThan(12);
    expect(await page.getByText("gloss, not so here").isVisible()).toBe(true);
  });

for (const width of [320, 390, 1280]) {
  siteTest(`nothing on a mixer's pages runs out of a window ${width} px wide`, async ({ open }) => {
    for (const path of [
      "glazes/liner.html",
      "glazes/leaden.html",
      "maps/6.html",
      "materials/lead-bisilicate.html",
    ]) {
      const page = await open(fileAddress(site.folder, path), {
        viewport: { width, height: 800 },
      });
      const wide = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
      expect({ path, wide }).toEqual({ path, wide: 0 });
    }
  });
}
