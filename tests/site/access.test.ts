/** Every kind of page is open to everyone: by eye, by ear, in light and dark, small and large, on paper. */
import type { Page } from "playwright-core";
import { beforeAll, describe, expect } from "vitest";
import { seriousBarriersOn } from "../support/barriers.ts";
import { siteTest } from "../support/browser.ts";
import { demoSite, pageOfEachKind } from "./built-sites.ts";

const site = demoSite();
let pages: readonly string[];
beforeAll(async () => {
  const kinds = await pageOfEachKind(site);
  pages = kinds.filter((page) => !page.startsWith("s/"));
});

const wcag = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"];

/** Of a long list the first dozen stand for all. */
const repeated = ["li", "tr", "g"].map((element) => `main ${element}:nth-child(n + 13)`);

/** The colours alone are others in the dark. */
const inDark = { rules: ["color-contrast"], except: repeated };
const inLight = { standards: wcag, except: repeated };

describe.each([390, 1280])("on a screen %d px wide", (width) => {
  siteTest(
    "axe finds nothing serious on any kind of page, in light and in dark",
    async ({ open, serve }) => {
      const root = await serve(site.folder, "/tests/");
      const page = await open(`${root}about.html`, { viewport: { width, height: 800 } });
      for (const path of pages) {
        await page.emulateMedia({ colorScheme: "light" });
        await page.goto(root + path);
        expect(await seriousBarriersOn(page, inLight), `${path} in light`).toEqual([]);
        await page.emulateMedia({ colorScheme: "dark" });
        expect(await seriousBarriersOn(page, inDark), `${path} in dark`).toEqual([]);
      }
    },
    240_000,
  );
});

siteTest("axe finds a barrier where there is one", async ({ open, serve }) => {
  const page = await open(`${await serve(site.folder)}about.html`);
  await page.evaluate(() => {
    document.body.append(document.createElement("button"));
    for (const words of document.querySelectorAll("p")) words.style.color = "#888";
  });
  expect((await seriousBarriersOn(page, inLight)).join()).toContain("button-name");
  expect((await seriousBarriersOn(page, inDark)).join()).toContain("color-contrast");
});

siteTest("nothing scrolls sideways at 320 px, and nothing is cut off", async ({ open, serve }) => {
  const root = await serve(site.folder);
  const page = await open(`${root}about.html`, { viewport: { width: 320, height: 640 } });
  const wide: string[] = [];
  for (const path of pages) {
    await page.goto(root + path);
    const width = await page.evaluate(() => document.documentElement.scrollWidth);
    if (width > 320) wide.push(`${path}: ${width} px`);
  }
  expect(wide).toEqual([]);
});

siteTest("a tile's page prints on one sheet, with the code on it", async ({ open, serve }) => {
  const root = await serve(site.folder);
  const page = await open(`${root}tiles/ev-101.html`);
  const sheets = await page.pdf({ format: "A4", printBackground: true });
  expect(sheets.toString("latin1").match(/\/Type\s*\/Page\b/gu)).toHaveLength(1);
});

/** Runs in a page: marks everything that shows a letter beyond ASCII, with all that opens open, and says what it shows. */
function markSigns(): string[] {
  for (const folded of document.querySelectorAll("details")) folded.open = true;
  const texts: string[] = [];
  for (const element of document.querySelectorAll("body *")) {
    const own = [...element.childNodes].filter(({ nodeType }) => nodeType === Node.TEXT_NODE);
    const text = own.map(({ textContent }) => textContent).join("");
    if (!/[^\n -~]/u.test(text) || !element.checkVisibility()) continue;
    element.setAttribute("data-signs", "");
    texts.push(text);
  }
  return texts;
}

/** What of a page is drawn with fonts that are the visitor's own. */
async function drawnWithOthers(page: Page): Promise<readonly string[]> {
  const texts = await page.evaluate(markSigns);
  await page.evaluate(() => document.fonts.ready);
  const session = await page.context().newCDPSession(page);
  await session.send("DOM.enable");
  await session.send("CSS.enable");
  const { root } = await session.send("DOM.getDocument", { depth: 0 });
  const { nodeIds } = await session.send("DOM.querySelectorAll", {
    nodeId: root.nodeId,
    selector: "[data-signs]",
  });
  const others: string[] = [];
  for (const [i, nodeId] of nodeIds.entries()) {
    const { fonts } = await session.send("CSS.getPlatformFontsForNode", { nodeId });
    const foreign = fonts.filter(({ isCustomFont }) => !isCustomFont);
    others.push(...foreign.map(({ familyName }) => `${texts[i]} (${familyName})`));
  }
  await session.detach();
  return others;
}

siteTest(
  "every sign on every kind of page is drawn with the site's own fonts",
  { timeout: 240_000 },
  async ({ open, serve }) => {
    const root = await serve(site.folder, "/tests/");
    const page = await open(`${root}about.html`);
    await page.evaluate(() => {
      document.querySelector("h1")?.append(" \u2603");
    });
    expect((await drawnWithOthers(page)).join()).toContain("\u2603");
    for (const path of pages) {
      await page.goto(root + path);
      expect(await drawnWithOthers(page), path).toEqual([]);
    }
  },
);
