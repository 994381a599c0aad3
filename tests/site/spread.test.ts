/** What is laid out covers nothing else: a tile's photograph on a desk, the labels of charts anywhere. */
import { expect } from "vitest";
import { siteTest } from "../support/browser.ts";
import { demoSite } from "./built-sites.ts";
import { findLabelsOnThings } from "./chart-labels.ts";

const site = demoSite();

siteTest(
  "the photograph stays in view beside the account, and ends with it",
  async ({ open, serve }) => {
    const root = await serve(site.folder);
    const page = await open(`${root}tiles/ev-107.html`, { viewport: { width: 1280, height: 850 } });
    const placesAt = (selector: string) =>
      page.evaluate((asked) => {
        document.querySelector(asked)?.scrollIntoView();
        const edge = (of: string, side: "top" | "bottom") =>
          document.querySelector(of)?.getBoundingClientRect()[side] ?? Number.NaN;
        return {
          photograph: [edge(".plates .plate", "top"), edge(".plates .plate", "bottom")],
          after: edge(".one-change", "top"),
        };
      }, selector);
    const beside = await placesAt(".outcome");
    expect(beside.photograph[0]).toBe(0);
    const past = await placesAt("#one-change");
    expect(past.after).toBeLessThan(100);
    expect(past.photograph[1]).toBeLessThanOrEqual(past.after);
  },
);

/** A page for each kind of chart: those with most in them. */
const charts: readonly (readonly [chart: string, page: string])[] = [
  [".ratio-map", "maps/6.html"],
  [".firing-chart, .accounts", "firings/g-260419.html"],
  [".kiln-chart", "kilns/the-wardrobe.html"],
  [".tile-curve", "tiles/bl-01.html"],
  [".tile-curve", "tiles/gr-101.html"],
  [".company-line", "glazes/ditchwater.html"],
  [".melt-path", "pairs/shrimp--over--hoarfrost.html"],
  [".triangle", "blends/saltern-cobalt--saltern-iron--saltern-rutile.html"],
];

siteTest(
  "the labels of charts are upright, and none is on a line or on another",
  async ({ open, serve }) => {
    const root = await serve(site.folder);
    const page = await open("about:blank");
    await page.route(/\.(?:webp|jpe?g)$/u, (route) => route.abort());
    const found: string[] = [];
    for (const [chart, path] of charts) {
      await page.goto(root + path);
      for (const width of [390, 1280]) {
        await page.setViewportSize({ width, height: 900 });
        expect(await page.locator(chart).count()).toBeGreaterThan(0);
        const labels = await page.evaluate(findLabelsOnThings, chart);
        found.push(...labels.map((label) => `${path} at ${width}: ${label}`));
      }
    }
    expect(found).toEqual([]);
  },
);

siteTest("what a page says is printed with it, but on a tile's card", async ({ open, serve }) => {
  const root = await serve(site.folder);
  const page = await open("about:blank");
  await page.emulateMedia({ media: "print" });
  for (const [path, words] of [
    ["kilns/the-wardrobe.html", "The Wardrobe"],
    ["clays/buff-stoneware~2.html", "page 2 of"],
    ["glazes/eider.html", "Feels like an egg"],
    ["tiles/sp-04.html", "Again: no"],
  ] as const) {
    await page.goto(root + path);
    const printed = page.locator("main").getByText(words).filter({ visible: true });
    expect(await printed.count(), path).toBeGreaterThan(0);
  }
  expect(await page.locator(".account .kiln").isVisible()).toBe(false);
});
