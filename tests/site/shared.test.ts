/** A set that was shared, opened from its folder as a parent does: no server, no network. */
import { rm } from "node:fs/promises";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, expect } from "vitest";
import { tilebook } from "../commands/tilebook.ts";
import { photograph, soundFiles, writeFolder } from "../support/archive-folder.ts";
import { fileAddress, siteTest } from "../support/browser.ts";

const record = (fields: readonly string[], notes = "") =>
  ["---", ...fields, "---", notes, ""].join("\n");

const long = "All day the kiln was slow to come down, and what ran had run by noon. ";

/** Tiles that are hard to lay on one sheet: no end of layers, of words, of wide letters. */
async function hardTiles() {
  const layers = Array.from(
    { length: 45 },
    (_, i) => `  - {glaze: soot, coats: 1, detail: no ${i}}`,
  );
  const notes = {
    "EV-11": Array.from({ length: 60 }, (_, i) => `${i + 1}. ${long}`).join("\n"),
    "EV-12": `${"釉".repeat(2500)}\n\n${"x".repeat(2000)}`,
    "EV-13": Array.from({ length: 40 }, (_, i) => `## ${i} ${long}\n\n> - ${long}`).join("\n\n"),
  };
  const result = "result: {surface: satin, faults: none, run: 3, again: changed}";
  const tiles = Object.entries(notes).map(([code, words]) => [
    `tiles/evening/${code}.md`,
    record(["layers:", ...layers, "  - {fired: g-1}", result], words),
  ]);
  const pictures = Object.keys(notes).map(async (code, i) => [
    `tiles/evening/${code}.jpg`,
    await photograph("#665544", i === 0 ? 400 : 900, 900),
  ]);
  return Object.fromEntries([...tiles, ...(await Promise.all(pictures))]);
}

let archive = "";
let folder = "";
beforeAll(async () => {
  archive = await writeFolder({ ...(await soundFiles()), ...(await hardTiles()) });
  folder = join(archive, "handed-on");
  const words = ["--archive", archive, "--out", folder, "--yes", "--quiet"];
  expect((await tilebook("share", "evening", ...words)).code).toBe(0);
});
afterAll(() => rm(archive, { recursive: true, force: true }));

/** What a page asks for that is not in the folder. */
function asksElsewhere(page: Page): string[] {
  const asked: string[] = [];
  const inside = pathToFileURL(folder).href;
  page.on("request", (request) => {
    const url = request.url();
    if (!url.startsWith(inside) && !url.startsWith("data:")) asked.push(url);
  });
  return asked;
}

siteTest(
  "what is shared opens from its folder: the wall narrows, a tile, a glaze and the grid work, and nothing is asked of anywhere else",
  async ({ open }) => {
    const page = await open(fileAddress(folder, "about.html"));
    const elsewhere = asksElsewhere(page);
    await page.goto(`${fileAddress(folder, "index.html")}?fault=running`);
    await expect
      .poll(() => page.locator("#wall li:visible .code").allInnerTexts())
      .toEqual(["EV-2"]);
    await page.locator("#wall li:visible a").first().click();
    await expect.poll(() => page.locator("#code").textContent()).toBe("EV-2");
    await page.getByRole("link", { name: "Soot" }).first().click();
    await expect.poll(() => page.locator("h1").textContent()).toBe("Soot");
    await page.goto(fileAddress(folder, "grid.html"));
    await expect.poll(() => page.locator("#grid .told").textContent()).toMatch(/tried at cone 6/u);
    await page.goto(fileAddress(folder, "sets/evening.html"));
    await page.getByRole("link", { name: "book", exact: true }).click();
    await expect.poll(() => page.locator(".leaf .book-title").textContent()).toBe("Evening class");
    expect(elsewhere).toEqual([]);
  },
);

siteTest(
  "each leaf of a book is one sheet of A4 and of Letter, so the numbers in its contents are right on paper",
  async ({ open }) => {
    const page = await open(fileAddress(folder, "book/evening.html"));
    const numbers: number[] = [];
    const listed: [string, number][] = [];
    for (let next: string | null = page.url(); next !== null; ) {
      await page.goto(next);
      const leaves = await page.locator(".leaf").count();
      for (const format of ["A4", "Letter"]) {
        const pdf = await page.pdf({ format, printBackground: true });
        expect(pdf.toString("latin1").match(/\/Type\s*\/Page\b/gu)).toHaveLength(leaves);
      }
      for (const id of await page.locator(".leaf").evaluateAll((all) => all.map(({ id }) => id)))
        numbers.push(Number(id.slice(2)));
      for (const line of await page.locator(".contents li").all()) {
        const [code = "", number] = await line.locator(".code").allInnerTexts();
        listed.push([code, Number(number)]);
        const href = (await line.locator("a").getAttribute("href")) ?? "";
        expect(href.endsWith(`#p-${number}`)).toBe(true);
      }
      for (const [code, number] of listed) {
        const leaf = page.locator(`#p-${number}`);
        if ((await leaf.count()) > 0)
          expect(await leaf.locator(".plate-number").textContent()).toBe(code);
      }
      const further = page.locator("nav.pages a[rel=next]");
      next =
        (await further.count()) > 0
          ? await further.evaluate((a: HTMLAnchorElement) => a.href)
          : null;
    }
    expect(numbers).toEqual(numbers.map((_, i) => i + 1));
    expect(listed.map(([code]) => code)).toEqual([
      "EV-1",
      "EV-2",
      "EV-3",
      "EV-11",
      "EV-12",
      "EV-13",
    ]);
  },
);
