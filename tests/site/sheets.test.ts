/** Sheets for a class: what comes out of a printer can be written on, and read by a phone. */
import jsqr from "jsqr";
import sharp from "sharp";
import { expect } from "vitest";
import { siteTest } from "../support/browser.ts";
import { demoSite } from "./built-sites.ts";

const site = demoSite();

/** A bundler finds the function itself under the name that Node keeps in `default`. */
const readCode = ("default" in jsqr ? jsqr.default : jsqr) as typeof jsqr.default;

/** CSS's own measure: 96 px an inch, 25.4 mm an inch. */
const pxOfMillimetre = 96 / 25.4;

siteTest(
  "a label's QR code is 15 mm wide or more on paper, and a second library reads the tile's address",
  async ({ open, serve }) => {
    const page = await open(`${await serve(site.folder)}labels/evening.html`);
    await page.emulateMedia({ media: "print", colorScheme: "dark" });
    const codes = page.locator(".labels .qr-code");
    for (const [i, tile] of ["ev-101", "ev-102"].entries()) {
      const code = codes.nth(i);
      const modules = await code.evaluate((svg) => {
        const [, dark] = svg.querySelectorAll("path");
        return dark?.getBoundingClientRect().width ?? 0;
      });
      expect(modules / pxOfMillimetre).toBeGreaterThan(15);
      const { data, info } = await sharp(await code.screenshot())
        .resize({ width: 300 })
        .ensureAlpha()
        .raw()
        .toBuffer({ resolveWithObject: true });
      const read = readCode(new Uint8ClampedArray(data), info.width, info.height);
      expect(read?.data).toMatch(new RegExp(`^https://.+/tiles/${tile}\\.html$`, "u"));
    }
  },
);

siteTest(
  "24 labels print on one sheet, notes four to a sheet, and the shelf list on one",
  async ({ open, serve }) => {
    const root = await serve(site.folder);
    const page = await open(`${root}about.html`);
    const sheetsOf = async (path: string) => {
      await page.goto(root + path);
      const pdf = await page.pdf({ format: "A4", printBackground: true });
      return pdf.toString("latin1").match(/\/Type\s*\/Page\b/gu)?.length;
    };
    expect(await sheetsOf("labels/evening.html")).toBe(1);
    expect(await sheetsOf("notes/evening.html")).toBe(6);
    expect(await sheetsOf("shelf/evening.html")).toBe(1);
  },
);

siteTest("a set leads to its sheets, with codes that no tile has yet", async ({ open, serve }) => {
  const page = await open(`${await serve(site.folder)}sets/evening.html`);
  await page.getByRole("link", { name: "notes sheets" }).click();
  await page.getByRole("link", { name: "next" }).click();
  expect(await page.locator(".notes-sheets h2").allInnerTexts()).toContain("EV-140");
  expect(await page.locator(".notes-sheets u").allInnerTexts()).toContain("9");
});
