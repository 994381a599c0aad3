/** Which of a photograph's sizes a browser takes: one that fills its place, and none much larger. */
import type { Page } from "playwright-core";
import { expect } from "vitest";
import { photograph } from "../support/archive-folder.ts";
import { siteTest } from "../support/browser.ts";
import { smallSite } from "./built-sites.ts";

const upright = () => photograph("#7a8894", 1500, 2000);
const site = smallSite({
  "tiles/evening/EV-1.jpg": await upright(),
  "tiles/evening/EV-1.detail.jpg": await upright(),
  "tiles/evening/EV-2.jpg": await upright(),
});

interface Shown {
  /** In pixels of the screen. */
  readonly place: number;
  readonly taken: number;
  /** Smallest first. */
  readonly offered: readonly number[];
}

function photographsOn(page: Page): Promise<Shown[]> {
  return page.locator("picture img").evaluateAll(async (images) => {
    const shown: Shown[] = [];
    for (const image of images as HTMLImageElement[]) {
      image.loading = "eager";
      await image.decode();
      const { srcset } = image.parentElement?.querySelector("source") ?? image;
      const offered = srcset.split(", ").map((one) => {
        const [url = "", width = ""] = one.split(" ");
        return { url: new URL(url, location.href).href, width: Number.parseInt(width, 10) };
      });
      shown.push({
        place: image.getBoundingClientRect().width * devicePixelRatio,
        taken: offered.find(({ url }) => url === image.currentSrc)?.width ?? 0,
        offered: offered.map(({ width }) => width).sort((a, b) => a - b),
      });
    }
    return shown;
  });
}

const screens = [
  [390, 1],
  [390, 2],
  [390, 3],
  [1280, 1],
  [1280, 1.5],
  [1280, 2],
] as const;

for (const [width, deviceScaleFactor] of screens) {
  siteTest(
    `on a screen of ${width} px at ${deviceScaleFactor} pixels a px the size that fills its place is taken`,
    async ({ open, serve }) => {
      const root = await serve(site.folder, "/");
      for (const path of ["index.html", "tiles/ev-1.html"]) {
        const page = await open(root + path, {
          viewport: { width, height: 900 },
          deviceScaleFactor,
        });
        const photographs = await photographsOn(page);
        expect(photographs.length).toBeGreaterThanOrEqual(2);
        for (const { place, taken, offered } of photographs) {
          const smallest = offered.find((each) => each >= place * 0.95) ?? offered.at(-1);
          expect(taken, `${path}, a place of ${place} among ${offered.join()}`).toBe(smallest);
        }
      }
    },
  );
}
