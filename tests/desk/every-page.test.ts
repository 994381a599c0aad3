/** Every page of the desk keeps to the standard and is open to everyone, as those of a site are. */
import { describe, expect } from "vitest";
import { deskPages } from "../../src/desk/pages.ts";
import { barriersOn } from "../support/barriers.ts";
import { siteTest } from "../support/browser.ts";
import { markupFaultsOf } from "../support/markup.ts";
import { openSmallDesk } from "./desk-opened.ts";

const files = {
  "tiles/monday/set.md": "---\nname: Monday\ncodes: M-1..M-9\njars: {1: soot, 2: liner}\n---\n",
  "tiles/monday/M-1.md": "---\nlayers: [{glaze: soot, coats: 2}]\n---\n",
  "tiles/monday/M-2.md": "---\nlayers: [{glaze: soot}, {fired: g-m}]\n---\n",
  "tiles/firings/g-m.md": "---\nkind: glaze\ncone: 6\ntiles: [M-2]\n---\n",
};
const addresses = ["", ...deskPages.map(({ name }) => name)];

describe("every page of the desk", () => {
  siteTest("keeps to the HTML standard", async () => {
    const { ask } = await openSmallDesk(files);
    for (const name of addresses) {
      const { status, text } = await ask("GET", `/desk/${name}`);
      expect({ name, status, faults: await markupFaultsOf(text, name) }).toEqual({
        name,
        status: 200,
        faults: [],
      });
    }
  });

  siteTest("keeps nobody out, in light and dark, and never scrolls sideways", async ({ open }) => {
    const { port } = await openSmallDesk(files);
    const page = await open(`http://localhost:${port}/desk/`);
    for (const name of addresses) {
      for (const [width, colorScheme] of [
        [1280, "light"],
        [320, "dark"],
      ] as const) {
        await page.setViewportSize({ width, height: 800 });
        await page.emulateMedia({ colorScheme });
        await page.goto(`http://localhost:${port}/desk/${name}`);
        const scrolled = await page.evaluate(() => document.documentElement.scrollWidth);
        const found = { barriers: await barriersOn(page), scrolled };
        expect({ name, width, ...found }).toEqual({ name, width, barriers: [], scrolled: width });
      }
    }
  });
});
