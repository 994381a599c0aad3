/** The weighing sheet and the map in a real browser, opened from a folder. */
import { expect, vi } from "vitest";
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

siteTest("a batch is weighed out by grams, with a running total", async ({ open }) => {
  const page = await open(liner());
  await page.getByLabel("grams").fill("250");
  const columns = page.locator(".sheet-table tbody tr td:nth-last-child(-n + 2)");
  expect(await columns.allTextContents()).toEqual([
    ...["100", "100", "75.0", "175", "50.0", "225", "25.0", "250"],
  ]);
  expect(await page.locator(".fixed-batch").first().isVisible()).toBe(false);
});

siteTest("a batch is weighed out by the bucket, and tells its water", async ({ open }) => {
  const page = await open(liner());
  await page.getByLabel("A batch").selectOption("bucket");
  await page.getByLabel("litres").fill("10");
  await page.getByLabel("specific gravity").fill("1.5");
  await page.getByLabel("dry density").fill("2.6");
  await page.getByLabel("more for loss").fill("0");
  // 1000 × 10 × 0.5 × 2.6 / 1.6 g dry, and the rest of 15 kg, 6,875 g, is water.
  expect(await page.locator(".sheet-told").textContent()).toContain("With 6,900 ml of water");
  expect(await page.locator(".sheet-table tfoot").textContent()).toContain("8,125");
  await page.getByLabel("more for loss").fill("20");
  expect(await page.locator(".sheet-table tfoot").textContent()).toContain("9,750");
  await page.getByLabel("specific gravity").fill("0.9");
  expect(await page.locator(".sheet-told").textContent()).toMatch(/^No such batch can be weighed/u);
});

siteTest("a sheet is printed by itself, on one page, its cautions with it", async ({ open }) => {
  const page = await open(fileAddress(site.folder, "glazes/leaden.html"));
  await page.evaluate(() => {
    window.print = () => undefined;
  });
  await page.getByRole("button", { name: "Print this sheet" }).click();
  await page.emulateMedia({ media: "print" });
  expect(await page.locator("h1").isVisible()).toBe(false);
  expect(await page.locator(".weighing .caution.loud").first().isVisible()).toBe(true);
  expect(await page.locator(".on-paper").isVisible()).toBe(true);
  const paper = await page.pdf({ format: "A4", preferCSSPageSize: true });
  expect(paper.toString("latin1").match(/\/Type \/Page\b(?!s)/gu)).toHaveLength(1);
  await page.emulateMedia({ media: "screen" });
  expect(await page.locator("h1").isVisible()).toBe(true);
});

siteTest("without JavaScript a sheet stands for three batches", async ({ open }) => {
  const page = await open(liner(), { javaScriptEnabled: false });
  expect(await page.locator(".sheet-table thead th").allTextContents()).toEqual([
    ...["Material", "Parts", "100 g", "1 kg", "5 kg"],
  ]);
  const first = page.locator(".sheet-table tbody tr").first();
  expect(await first.locator("td:visible").allTextContents()).toEqual([
    ...["40", "40.0", "400", "2,000"],
  ]);
  expect(await page.getByRole("checkbox", { name: "Whiting: weighed" }).isVisible()).toBe(true);
});

siteTest(
  "the old lines lie over a map only when asked for, without JavaScript",
  async ({ open }) => {
    const page = await open(fileAddress(site.folder, "maps/6.html"), { javaScriptEnabled: false });
    const words = page.getByText("The lines are old guidance, not a rule");
    expect(await words.isVisible()).toBe(false);
    await page.getByLabel("Show the old ratio lines").check();
    await vi.waitFor(async () => expect(await words.isVisible()).toBe(true));
    expect(await page.getByText("gloss, not so here").isVisible()).toBe(true);
  },
);

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
