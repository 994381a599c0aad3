/** A teacher with three photographs: one with its label in the frame, two by order, one of them turned. */
import { readFile } from "node:fs/promises";
import { join } from "node:path";
import exifr from "exifr";
import sharp from "sharp";
import { expect } from "vitest";
import { examineArchive } from "../../../src/commands/examine/examine.ts";
import { photograph } from "../../support/archive-folder.ts";
import { siteTest } from "../../support/browser.ts";
import { frameWithCode } from "../../support/frame-with-code.ts";
import { openSmallDesk } from "../desk-opened.ts";

const tile =
  "---\nclay: buff\nlayers: [{fired: bisque}, {glaze: soot}]\nresult: {surface: satin}\n---\n";

const withPlace = async (picture: Buffer) =>
  sharp(picture)
    .withExif({
      IFD0: { Model: "Phone" },
      IFD3: { GPSLatitudeRef: "N", GPSLatitude: "51/1 30/1 0/1" },
    })
    .toBuffer();

siteTest(
  "three photographs of a camera are looked at on a contact sheet, one is turned, and all are written",
  async ({ open }) => {
    const { archive, port, failures } = await openSmallDesk({
      "tiles/evening/W-1.md": tile,
      "tiles/evening/W-2.md": tile,
      "tiles/evening/W-3.md": tile,
      "tiles/firings/g-2.md": "---\non: 2026-11-20\nkind: glaze\ntiles: {top: [W-1..W-3]}\n---\n",
    });
    const plain = await withPlace(await photograph("#6b7f86", 1200, 900));
    const says = ["https://eelgate.example/tiles/w-2.html"];
    const labelled = await withPlace(await frameWithCode({ says }));
    const page = await open(`http://localhost:${port}/desk/photographs/g-2`, {
      viewport: { width: 390, height: 844 },
      hasTouch: true,
    });
    await page.locator('[name="files"]').setInputFiles([
      { name: "DSC_0102.JPG", mimeType: "image/jpeg", buffer: plain },
      { name: "DSC_0100.JPG", mimeType: "image/jpeg", buffer: plain },
      { name: "DSC_0101.JPG", mimeType: "image/jpeg", buffer: labelled },
      { name: "notes.txt", mimeType: "text/plain", buffer: Buffer.from("W-1") },
    ]);
    const told = () => page.locator(".photographs-form .told").textContent();
    await expect.poll(told, { timeout: 15_000 }).toBe("3 photographs, each with a code.");
    expect(await page.locator(".log").textContent()).toMatch(/^notes\.txt This is text,/u);
    const fields = page.locator('.contact-sheet [name="code"]');
    const codes = await fields.evaluateAll((all) =>
      all.map((each) => (each as HTMLInputElement).value),
    );
    expect(codes).toEqual(["W-1", "W-2", "W-3"]);
    expect(await page.locator(".frame .words").allTextContents()).toEqual([
      "W-1, by the order of the load g-2.",
      "W-2, read in the frame.",
      "W-3, by the order of the load g-2.",
    ]);
    const isShown = (image: Element) => (image as HTMLImageElement).naturalWidth > 0;
    await expect.poll(() => page.locator(".frame img").first().evaluate(isShown)).toBe(true);

    await fields.nth(0).fill("W-3");
    await page.getByRole("button", { name: "Write these 3" }).tap();
    await expect.poll(told).toBe("1 written, 2 not: see beside them why.");
    expect(await page.locator(".frame .fault").first().textContent()).toBe(
      "Two photographs are to be W-3: change one of them.",
    );
    await fields.nth(0).fill("W-1");
    const turn = page.getByRole("button", { name: "Turn DSC_0102.JPG to the right" });
    await turn.focus();
    await page.keyboard.press("Enter");
    await page.getByRole("button", { name: "Write these 2" }).tap();
    await expect.poll(told).toBe("2 written.");

    const pictures = await Promise.all(
      ["W-1", "W-2", "W-3"].map((code) => readFile(join(archive, `tiles/evening/${code}.jpg`))),
    );
    const sizes = await Promise.all(
      pictures.map(async (each) => (await sharp(each).metadata()).width),
    );
    expect(sizes).toEqual([1200, 1000, 900]);
    for (const each of pictures) expect(await exifr.gps(each)).toBeUndefined();
    const quiet = { stage: () => {}, count: () => {}, done: () => {} } as never;
    const { problems } = await examineArchive(archive, join(archive, ".cache"), quiet, "headers");
    expect(problems.filter(({ severity }) => severity === "error")).toEqual([]);
    expect(failures).toEqual([]);
  },
);
