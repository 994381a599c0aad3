/** Nothing moves once it is painted, however late fonts and scripts come; the first photograph is asked for first. */
import type { Page } from "playwright-core";
import { expect } from "vitest";
import { siteTest } from "../support/browser.ts";
import { demoSite } from "./built-sites.ts";

const site = demoSite();

const pages = [
  "index.html",
  "tiles/bl-01.html",
  "glazes/chalk.html",
  "firings/g-250928.html",
  "surfaces/gloss.html",
  "add.html",
];

/**
 * Much less than 0.1, which is called good (web.dev, "Cumulative Layout Shift"). Where the fonts come
 * long after the first paint, a line of a card may break anew, and the row below it moves by that line.
 */
const still = { scripts: 0.02, fonts: 0.05 };

/** How long fonts and scripts are kept waiting, in milliseconds: long after the first paint. */
const late = 700;

async function keepWaiting(page: Page, kind: RegExp): Promise<void> {
  await page.route(kind, async (route) => {
    await new Promise((done) => setTimeout(done, late));
    await route.continue();
  });
}

interface Shift {
  readonly value: number;
  readonly moved: readonly string[];
}

/** Runs in a page: everything that moved since its first paint, and what it was. */
function readShifts(): Promise<Shift[]> {
  const nameOf = (node: Node | null) =>
    node instanceof Element ? `${node.localName}.${node.className}` : String(node?.textContent);
  return new Promise((done) => {
    new PerformanceObserver((list) => {
      const shifts = list.getEntries() as unknown as {
        value: number;
        sources: { node: Node | null }[];
      }[];
      done(
        shifts.map(({ value, sources }) => ({ value, moved: sources.map((s) => nameOf(s.node)) })),
      );
    }).observe({ type: "layout-shift", buffered: true });
    setTimeout(() => done([]), 300);
  });
}

for (const width of [390, 1280])
  for (const path of pages)
    for (const [what, kind] of [
      ["scripts", /\.js$/u],
      ["fonts", /\.woff2$/u],
    ] as const)
      siteTest(
        `${path} does not move at ${width} px when its ${what} come late`,
        async ({ open, serve }) => {
          const root = await serve(site.folder);
          const page = await open("about:blank", { viewport: { width, height: 850 } });
          await keepWaiting(page, kind);
          const answer = await page.goto(root + path, { waitUntil: "load" });
          expect(answer?.status()).toBe(200);
          await page.evaluate(() => document.fonts.ready);
          await page.waitForTimeout(200);
          const shifts = await page.evaluate(readShifts);
          const sum = shifts.reduce((all, { value }) => all + value, 0);
          expect(sum, JSON.stringify(shifts)).toBeLessThan(still[what]);
        },
      );

siteTest(
  "the measure sees what moves: the wall, where the finder's styles do not keep its place",
  async ({ open, serve }) => {
    const root = await serve(site.folder);
    const page = await open("about:blank", { viewport: { width: 390, height: 850 } });
    await keepWaiting(page, /\.js$/u);
    await page.route(/\.css$/u, async (route) => {
      const answer = await route.fetch();
      const body = (await answer.text()).replace(/\(scripting: ?enabled\)/gu, "(width: 0)");
      await route.fulfill({ response: answer, body });
    });
    await page.goto(root, { waitUntil: "load" });
    await page.waitForTimeout(200);
    const shifts = await page.evaluate(readShifts);
    expect(Math.max(...shifts.map(({ value }) => value))).toBeGreaterThan(0.1);
  },
);

for (const path of ["index.html", "tiles/bl-01.html", "glazes/chalk.html", "surfaces/gloss.html"])
  siteTest(
    `the first photograph of ${path} is asked for before all others`,
    async ({ open, serve }) => {
      const root = await serve(site.folder);
      const page = await open(root + path, { viewport: { width: 390, height: 850 } });
      const pictures = await page
        .locator("main img")
        .evaluateAll((images) =>
          (images as HTMLImageElement[]).map(({ fetchPriority, loading }) => [
            fetchPriority,
            loading === "lazy",
          ]),
        );
      expect(pictures[0]).toEqual(["high", false]);
      expect(pictures.slice(1).filter(([priority]) => priority === "high")).toEqual([]);
    },
  );
