/** The tile form where it ends on the repository's page for a new file: what opens there, and what is said to be done next. */
import { readFile } from "node:fs/promises";
import type { Page } from "playwright-core";
import { expect } from "vitest";
import { tracesOf } from "../photos/pictures.ts";
import { siteTest } from "../support/browser.ts";
import type { BuiltSite } from "./built-sites.ts";
import {
  type Hands,
  type Open,
  openForm,
  photographOnItsSide,
  writeThreeLayers,
} from "./form-in-hands.ts";

/** What the form asked the browser to open. */
const opened = (page: Page) =>
  page.evaluate(() => (globalThis as unknown as { opened: readonly unknown[][] }).opened);

/** Opens the form of a studio whose members propose tiles in its repository; no window opens. */
function openFormOf(repository: string, open: Open, address: string): Promise<Hands> {
  return openForm(async (first, options) => {
    // What a worker fetches would not be answered here.
    const page = await open(first, { ...options, serviceWorkers: "block" });
    await page.addInitScript(() => {
      const windows: unknown[][] = [];
      Object.assign(globalThis, {
        opened: windows,
        open: (...asked: unknown[]) => {
          windows.push(asked);
          return null;
        },
      });
    });
    await page.route("**/data/add.js", async (route) => {
      const text = await (await route.fetch()).text();
      const handingIn = `"handingIn":${JSON.stringify({ by: "new-file", repository })}`;
      await route.fulfill({
        contentType: "text/javascript",
        body: text.replace(/"handingIn":\{[^}]*\}/u, () => handingIn),
      });
    });
    return page;
  }, address);
}

const stepsOf = (page: Page) => page.locator(".form-there li").allTextContents();

const waysOf = (page: Page) =>
  page.locator(".form-ways a").evaluateAll((all) => all.map((a) => (a as HTMLAnchorElement).href));

/** Tests of the form of the demonstration. */
export function testNewFile(site: BuiltSite): void {
  siteTest(
    "the new file opens with its record, and the form says how the photograph gets into the same request",
    async ({ open, serve }) => {
      const root = await serve(site.folder, "/tests/");
      const hands = await openFormOf(
        "https://github.com/eelgate/tests.git",
        open,
        `${root}add.html`,
      );
      const { page, tap } = hands;
      await writeThreeLayers(hands);
      await page.getByLabel("Take a photograph").setInputFiles({
        ...{ name: "IMG_1.jpg", mimeType: "image/jpeg" },
        buffer: await photographOnItsSide(),
      });
      await page.locator(".form-shown").waitFor();
      await tap("On");
      const saved = page.waitForEvent("download");
      await tap("Open the new file");
      const photograph = await saved;
      expect(photograph.suggestedFilename()).toBe("EV-134.before.jpg");
      expect(await tracesOf(await readFile(await photograph.path()))).toEqual([]);
      const [[address, ...how] = []] = await opened(page);
      expect(how).toEqual(["_blank", "noopener"]);
      const { origin, pathname, searchParams } = new URL(String(address));
      expect(origin + pathname).toBe("https://github.com/eelgate/tests/new/HEAD");
      expect(searchParams.get("filename")).toBe("tiles/evening/EV-134.md");
      expect(searchParams.get("value")).toContain("- {glaze: soot, coats: 2, by: brush}\n");
      await page.getByRole("heading", { name: "Finish it there" }).waitFor();
      expect(await page.locator(".form-what[role=status]").textContent()).toBe(
        "The new file is open in another tab. It is not handed in until you have done this there:",
      );
      expect(await stepsOf(page)).toEqual([
        "Commit the new file. If you are asked, propose it and create a pull request: that is how the studio gets to see it.",
        "The request names the branch that it comes from. Open that branch, and in it the folder tiles/evening.",
        "There choose “Add file”, then “Upload files”. Drop EV-134.before.jpg, and commit it to the same branch. The request then has both.",
      ]);
      expect(await waysOf(page)).toEqual([
        address,
        "https://github.com/eelgate/tests/pulls",
        `${root}guide/hand-in-by-the-forge.html`,
      ]);
      const again = page.waitForEvent("download");
      await tap("Save the photograph again");
      expect((await again).suggestedFilename()).toBe("EV-134.before.jpg");
    },
  );

  siteTest(
    "without a photograph there is one thing to do, and a reload loses nothing of it",
    async ({ open, serve }) => {
      const address = `${await serve(site.folder)}add.html`;
      const hands = await openFormOf("https://codeberg.org/eelgate/tests", open, address);
      const { page, tap } = hands;
      await writeThreeLayers(hands);
      await tap("Without a photograph");
      await tap("Open the new file");
      await page.locator(".form-there").waitFor();
      const [[there] = []] = await opened(page);
      expect(String(there)).toContain("https://codeberg.org/eelgate/tests/_new/main?filename=");
      await page.reload();
      await expect.poll(() => waysOf(page)).toHaveLength(3);
      expect((await waysOf(page))[0]).toBe(there);
      expect(await stepsOf(page)).toHaveLength(1);
    },
  );

  siteTest.for([
    [
      "a record too long for an address",
      "https://github.com/eelgate/tests",
      "x".repeat(9000),
      "The record is too long for the address of a new file. EV-134.zip was downloaded in its place: hand that in.",
    ],
    [
      "a repository of no known forge",
      "https://git.example/eelgate/tests",
      "It ran.",
      "This repository has no page that can be filled in from here. EV-134.zip was downloaded: hand that in.",
    ],
  ] as const)(
    "%s is downloaded, and the form says why",
    async ([, repository, notes, said], { open, serve }) => {
      const hands = await openFormOf(repository, open, `${await serve(site.folder)}add.html`);
      const { page, tap } = hands;
      await writeThreeLayers(hands);
      await tap("Without a photograph");
      await page.getByLabel("Notes").fill(notes);
      const coming = page.waitForEvent("download");
      await tap("Open the new file");
      expect((await coming).suggestedFilename()).toBe("EV-134.zip");
      await expect.poll(() => page.locator(".form-what[role=status]").textContent()).toBe(said);
      expect(await page.locator("h2").first().textContent()).toBe("Handed in");
      expect(await opened(page)).toEqual([]);
      expect(await page.locator(".form-there").count()).toBe(0);
    },
  );
}
