/** The tile form on a phone: a tile is written down without a connection, and handed in. */
import { readFileSync } from "node:fs";
import { cp, readFile, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { strFromU8 } from "fflate";
import sharp from "sharp";
import { expect } from "vitest";
import { project } from "../house/files.ts";
import { tracesOf } from "../photos/pictures.ts";
import { writeFolder } from "../support/archive-folder.ts";
import { fileAddress, siteTest } from "../support/browser.ts";
import { removeFolder } from "../support/remove-folder.ts";
import { examine } from "../support/site-in-memory.ts";
import type { BuiltSite } from "./built-sites.ts";
import { handIn, openForm, phone, photographOnItsSide, writeThreeLayers } from "./form-in-hands.ts";

/** The texts of the demonstration, by their paths. */
function demoTexts(files: readonly string[]): Record<string, string> {
  return Object.fromEntries(files.map((file) => [file, readFileSync(join(project, file), "utf8")]));
}

const surroundings = [
  "studio.yaml",
  "tiles/evening/set.md",
  "recipes/clays/buff-stoneware.md",
  ...["chalk", "eider", "hoarfrost", "mist", "moss", "mussel", "oilskin", "plum", "rosehip"].map(
    (id) => `recipes/glazes/${id}.md`,
  ),
  ...["sky", "soot", "tidewrack"].map((id) => `recipes/glazes/${id}.md`),
];

/** Tests of the form of the demonstration. */
export function testForm(site: BuiltSite): void {
  siteTest(
    "a tile with three layers, wax and a photograph is written down offline and handed in",
    async ({ open, serve }) => {
      const hands = await openForm(open, `${await serve(site.folder, "/studio/tests/")}add.html`);
      const { page, tap } = hands;
      await page.context().setOffline(true);
      await writeThreeLayers(hands);
      const photograph = await photographOnItsSide();
      await page.getByLabel("Take a photograph").setInputFiles({
        name: "IMG_1.jpg",
        mimeType: "image/jpeg",
        buffer: photograph,
      });
      await page.locator(".form-shown").waitFor();
      await tap("On");
      expect(await page.locator(".form-stack .what").allTextContents()).toEqual([
        ...["Soot", "Wax resist", "Tidewrack", "Sky"],
      ]);
      const files = await handIn(hands);
      expect(Object.keys(files)).toEqual([
        "tiles/evening/EV-134.md",
        "tiles/evening/EV-134.before.jpg",
      ]);
      const record = strFromU8(files["tiles/evening/EV-134.md"] ?? new Uint8Array());
      expect(record).toBe(`---
glazed: 2026-11-24
maker: m04
layers:
  - {glaze: soot, coats: 2, by: brush}
  - {resist: wax, where: [centre]}
  - {glaze: tidewrack, coats: 1, by: dip}
  - {glaze: sky, coats: 1, by: trail}
---
`);
      const { problems } = examine({
        ...demoTexts(surroundings),
        "tiles/evening/EV-134.md": record,
      });
      expect(problems.filter(({ file }) => file === "tiles/evening/EV-134.md")).toEqual([]);
      const picture = Buffer.from(files["tiles/evening/EV-134.before.jpg"] ?? []);
      const { width, height, exif, orientation } = await sharp(picture).metadata();
      expect([width, height, exif, orientation]).toEqual([2250, 3000, undefined, undefined]);
      expect(await tracesOf(photograph)).toEqual(expect.arrayContaining(["device", "place"]));
      expect(await tracesOf(picture)).toEqual([]);
      const [above] = await sharp(picture)
        .extract({ left: 9, top: 9, width: 1, height: 1 })
        .raw()
        .toBuffer();
      expect(above).toBeLessThan(60);
      // Besides, one on the outline, one that asks for the camera, and one on the camera.
      const { touches, keys } = hands.counted();
      expect(touches + 3).toBeLessThanOrEqual(22);
      expect(keys).toBeLessThanOrEqual(3);
    },
  );

  siteTest(
    "“Finish and clear” leaves nothing for the next pupil, who is offered the next code",
    async ({ open, serve }) => {
      const hands = await openForm(open, `${await serve(site.folder)}add.html`);
      const { page, tap, type } = hands;
      await writeThreeLayers(hands);
      await tap("Without a photograph");
      await type("Notes", "Secret of mine.");
      await handIn(hands);
      await tap("Another like this");
      expect(await page.locator(".form-places .code").textContent()).toBe("EV-135");
      expect(await page.locator(".form-stack .what").count()).toBe(4);
      await tap("Hand in");
      expect(await page.getByLabel("Notes").inputValue()).toBe("");
      await handIn(hands);
      await tap("Finish and clear");
      await page.reload();
      await page.waitForFunction(() => "tilebookZip" in globalThis);
      const kept = await page.evaluate(() => JSON.stringify({ ...localStorage }));
      for (const told of ["m04", "soot", "Secret"]) expect(kept).not.toContain(told);
      await tap(/^Tuesday evening/u);
      expect(await page.getByLabel("Code on its back").inputValue()).toBe("EV-136");
      expect(await page.getByLabel("Who glazed it").inputValue()).toBe("");
    },
  );

  siteTest(
    "after one visit the form opens offline, and a new build is shown from the second visit on",
    async ({ open, serve }) => {
      const copy = await writeFolder({});
      try {
        for (const part of ["add.html", "add-worker.js", "assets", "data/add.js", "data/add"])
          await cp(join(site.folder, part), join(copy, part), { recursive: true });
        const address = `${await serve(copy, "/studio/tests/")}add.html`;
        const { page } = await openForm(open, address);
        const ready = () =>
          page.evaluate(async () => (await navigator.serviceWorker.ready).active?.state);
        await expect.poll(ready).toBe("activated");
        await page.context().setOffline(true);
        await page.goto(`${address}?set=evening`);
        expect(await page.locator("h1").textContent()).toBe("Add a tile");
        await page.waitForFunction(() => "tilebookZip" in globalThis);
        await page.context().setOffline(false);
        for (const [file, old, now] of [
          ["add.html", "<h1>Add a tile</h1>", "<h1>New build</h1>"],
          ["add-worker.js", '"sum":"', '"sum":"x'],
        ] as const) {
          const text = await readFile(join(copy, file), "utf8");
          await writeFile(join(copy, file), text.replace(old, now));
        }
        const names = () => page.evaluate(() => caches.keys());
        const [before] = await names();
        await page.goto(address);
        await expect.poll(names, { timeout: 20_000 }).not.toContain(before);
        expect(await names()).toHaveLength(1);
        await page.goto(address);
        expect(await page.locator("h1").textContent()).toBe("New build");
      } finally {
        await removeFolder(copy);
      }
    },
  );

  siteTest("a draft outlives a closed tab, and says whose it may be", async ({ open, serve }) => {
    const hands = await openForm(open, `${await serve(site.folder)}add.html`);
    const { page, tap } = hands;
    await writeThreeLayers(hands);
    await page.getByLabel("Take a photograph").setInputFiles({
      ...{ name: "a.png", mimeType: "image/png" },
      buffer: await sharp({ create: { width: 60, height: 40, channels: 3, background: "#777" } })
        .png()
        .toBuffer(),
    });
    await page.locator(".form-shown").waitFor();
    await page.reload();
    expect(await page.locator(".form-restored").textContent()).toBe(
      "This tile was begun on 24 November at 18:30 and not handed in. Not yours? Clear it",
    );
    expect(await page.locator(".form-stack .what").count()).toBe(4);
    await tap("Photo");
    await page.locator(".form-shown").waitFor();
    await tap("Clear it");
    await expect
      .poll(() => page.locator(".form-told").textContent())
      .toBe("Cleared. Nothing of that tile is left here.");
    expect(await page.locator(".form-restored").count()).toBe(0);
  });

  siteTest(
    "steps are moved and taken out by keyboard, and areas ticked",
    async ({ open, serve }) => {
      const { page } = await openForm(open, `${await serve(site.folder)}add.html`, {});
      const press = async (name: string | RegExp) => {
        await page
          .getByRole("button", { name, exact: typeof name === "string" })
          .first()
          .focus();
        await page.keyboard.press("Enter");
      };
      await press(/^Tuesday evening/u);
      await press("On to the layers");
      await press("2 Soot");
      await page.locator(".form-where summary").focus();
      await page.keyboard.press("Enter");
      await page.getByLabel("rim", { exact: true }).focus();
      await page.keyboard.press("Space");
      await press("Next step");
      await press("3 Tidewrack");
      await press("Earlier");
      const stack = () => page.locator(".form-step").allInnerTexts();
      expect((await stack()).map((text) => text.replace(/\s+/gu, " ").trim())).toEqual([
        ...["Tidewrack", "Soot at the rim"],
      ]);
      await press("Take out");
      expect(await stack()).toHaveLength(1);
    },
  );

  siteTest("a set's page leads to the form with the set chosen", async ({ open, serve }) => {
    const page = await open(`${await serve(site.folder)}sets/thursday.html`, phone);
    await page.getByRole("link", { name: "Add a tile to this set" }).tap();
    await expect.poll(() => page.getByLabel("Code on its back").inputValue()).toMatch(/^TH-2/u);
  });

  siteTest("the layers of another tile are copied, from a folder too", async ({ open }) => {
    const { page, tap, type } = await openForm(open, fileAddress(site.folder, "add.html"));
    await tap(/^Tuesday evening/u);
    await tap("On to the layers");
    await page.getByText("Like another tile").tap();
    await type("Its code", "ev-107");
    await tap("Copy its layers");
    await expect.poll(() => page.locator(".form-step").count()).toBeGreaterThan(1);
    expect(await page.locator(".form-told").textContent()).toContain("EV-107 are copied");
  });

  siteTest(
    "what is no picture, and too large a word, is told and harms nothing",
    async ({ open, serve }) => {
      const { page, tap } = await openForm(open, `${await serve(site.folder)}add.html`);
      await tap(/^Tuesday evening/u);
      await page.getByLabel("Code on its back").fill("<img src=x onerror=alert(1)>");
      expect(await page.locator(".form-fault").first().textContent()).toContain(
        "This cannot be a code",
      );
      await page.getByLabel("Who glazed it").fill("Wren Ashdown");
      expect(await page.locator(".form-fault").nth(1).textContent()).toContain("A key is one word");
      await tap("Photo");
      await page.getByLabel("Choose one").setInputFiles({
        ...{ name: "a.jpg", mimeType: "image/jpeg" },
        buffer: Buffer.from("<svg xmlns='http://www.w3.org/2000/svg' onload='alert(1)'/>"),
      });
      await expect
        .poll(() => page.getByRole("status").first().textContent())
        .toContain("cannot open that file as a picture");
      await tap("Hand in");
      await page.getByLabel("Notes").fill(`${"x".repeat(10_240)}\u202e<script>alert(1)</script>`);
      expect(await page.getByRole("button", { name: "Download the tile" }).isDisabled()).toBe(true);
      await expect.poll(() => page.locator(".form-findings").textContent()).toContain("Put right");
      expect(await page.locator("#add script").count()).toBe(0);
    },
  );

  siteTest(
    "without JavaScript it says how to write a tile down on paper",
    async ({ open, serve }) => {
      const page = await open(`${await serve(site.folder)}add.html`, { javaScriptEnabled: false });
      expect(await page.locator("main").textContent()).toContain("Write the tile on paper");
      await page.getByRole("link", { name: /^Tuesday evening/u }).click();
      expect(page.url()).toMatch(/notes\/evening\.html$/u);
    },
  );
}
