/**
 * The one place that opens a browser for tests. `siteTest` is vitest's `test` with three things more:
 *
 * - `serve(folder, under)` serves a folder over http until the test ends, and gives its address;
 * - `open(address, options)` opens a page in a browser context of its own, with Playwright's options
 *   for one (`viewport`, `javaScriptEnabled`, `colorScheme`, ...); a script's uncaught error on any
 *   page so opened fails the test;
 * - `browser` is the browser itself, one for each file of tests.
 *
 * `fileAddress(folder, path)` is the address to open a page from a folder without any server.
 */
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { type Browser, type BrowserContextOptions, chromium, type Page } from "playwright-core";
import { expect, test } from "vitest";
import { findBrowser } from "./find-browser.ts";
import { type ServedFolder, serveFolder } from "./serve-folder.ts";

/** Starts a browser without a window. */
export function launchBrowser(executablePath: string = findBrowser().path): Promise<Browser> {
  return chromium.launch({ executablePath });
}

/** The file: address of a page in a folder. */
export function fileAddress(folder: string, path: string): string {
  return pathToFileURL(join(folder, path)).href;
}

export const siteTest = test
  .extend("browser", { scope: "file" }, async ({}, { onCleanup }) => {
    const browser = await launchBrowser();
    onCleanup(() => browser.close());
    return browser;
  })
  .extend("serve", async ({}, { onCleanup }) => {
    const served: ServedFolder[] = [];
    onCleanup(async () => {
      await Promise.all(served.map((folder) => folder.stop()));
    });
    return async (folder: string, under = "/"): Promise<string> => {
      const site = await serveFolder(folder, under);
      served.push(site);
      return site.address;
    };
  })
  .extend("open", async ({ browser }, { onCleanup }) => {
    const pages: Page[] = [];
    const scriptErrors: string[] = [];
    onCleanup(async () => {
      await Promise.all(pages.map((page) => page.context().close()));
      expect(scriptErrors).toEqual([]);
    });
    return async (address: string, options: BrowserContextOptions = {}): Promise<Page> => {
      const context = await browser.newContext(options);
      const page = await context.newPage();
      pages.push(page);
      page.on("pageerror", (error) => scriptErrors.push(`${page.url()}: ${error.message}`));
      await page.goto(address);
      return page;
    };
  });
