/** A tile's whole way: from a pupil's phone into the archive, through the kiln, onto the site. */
import { readFile, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { zipSync } from "fflate";
import type { Page } from "playwright-core";
import { expect, onTestFinished } from "vitest";
import { openDesk } from "../../src/commands/serve/desk.ts";
import { siteServer } from "../../src/publish/site-server.tsx";
import { tilebook } from "../commands/tilebook.ts";
import { photograph, soundFiles, writeFolder } from "../support/archive-folder.ts";
import { siteTest } from "../support/browser.ts";
import { removeFolder } from "../support/remove-folder.ts";
import {
  handIn,
  type Open,
  openForm,
  photographOnItsSide,
  writeThreeLayers,
} from "./form-in-hands.ts";

const phone = { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true };

/** A class that begins: codes are reserved, jars are out, nobody has made a tile yet. */
async function beginClass(): Promise<string> {
  const archive = await writeFolder({
    ...(await soundFiles()),
    "tiles/autumn/set.md":
      "---\nname: Autumn class\nkind: class\ncodes: TB-101..TB-109\njars: {7: soot, 3: liner}\ndefaults: {clay: buff}\n---\n",
  });
  onTestFinished(() => removeFolder(archive));
  return archive;
}

/** The site as it is now, in the folder beside the archive that is published. */
async function publish(archive: string): Promise<string> {
  const site = join(archive, "site");
  expect(await tilebook("build", "--archive", archive, "--out", site)).toMatchObject({ code: 0 });
  return site;
}

/** A pupil writes her tile down without a connection; gives the zip that she hands in. */
async function writeOnPhone(open: Open, address: string): Promise<Uint8Array> {
  const hands = await openForm(open, address, phone);
  const { page, tap } = hands;
  await page.context().setOffline(true);
  await writeThreeLayers(hands, {
    set: /^Autumn class/u,
    maker: "m01",
    jars: ["7 Soot", "3 Liner", "7 Soot"],
  });
  await page.getByLabel("Take a photograph").setInputFiles({
    ...{ name: "IMG_1.jpg", mimeType: "image/jpeg" },
    buffer: await photographOnItsSide(),
  });
  await page.locator(".form-shown").waitFor();
  await tap("On");
  return zipSync(await handIn(hands));
}

/** The teacher's desk, as `serve` shows it. */
async function openTeachersDesk(archive: string): Promise<string> {
  const { desk } = await openDesk(archive);
  const failures: unknown[] = [];
  const server = siteServer(join(archive, "site"), {
    ...{ assets: new Map(), desk },
    failed: (error) => failures.push(error),
  });
  const port = await server.listen(0);
  onTestFinished(() => {
    server.close();
    expect(failures).toEqual([]);
  });
  return `http://localhost:${port}/desk`;
}

/** Tries again until the page says so. */
const eventually = (find: () => Promise<unknown>) => expect.poll(find, { timeout: 5000 });

async function load(page: Page): Promise<void> {
  await page.locator('[name="kiln"]').fill("Big electric");
  await page.locator('[name="cone"]').fill("6");
  await page.locator('[data-code="tb-101"] .tile-to-load').tap();
  await page.locator('[name="id"]').fill("g-9");
  await eventually(() => page.locator('[type="submit"]').isEnabled()).toBe(true);
  await page.locator('[type="submit"]').tap();
  await page.waitForURL(/load\/g-9$/u);
}

async function unload(page: Page): Promise<void> {
  await page.locator('[name="on"]').fill("2026-11-29");
  await page.locator(".lit button").tap();
  await eventually(() => page.locator(".tile-out .code").textContent()).toBe("TB-101");
  await page.locator('.surface [data-value="satin"]').tap();
  await page.locator('.faults [data-value="none"]').tap();
  await page.locator('.again [data-value="yes"]').tap();
  await page.locator('.unload-ways [type="submit"]').tap();
  await eventually(() => page.locator(".progress").textContent()).toMatch(/^1 of 1 is/u);
}

siteTest(
  "a tile is written down on a phone, received, loaded, unloaded and published, by hand nowhere",
  async ({ open, serve }) => {
    const archive = await beginClass();
    const empty = await publish(archive);
    const zip = await writeOnPhone(open, `${await serve(empty)}add.html`);
    const inbox = join(archive, "handed-in.zip");
    await writeFile(inbox, zip);
    expect(await tilebook("receive", "--archive", archive, "--yes", inbox)).toMatchObject({
      code: 0,
    });
    await writeFile(
      join(archive, "tiles/autumn/TB-101.jpg"),
      await photograph("#6b7f86", 600, 450),
    );

    const desk = await openTeachersDesk(archive);
    const page = await open(`${desk}/load`, phone);
    await load(page);
    await page.goto(`${desk}/unload/g-9`);
    await unload(page);

    const record = await readFile(join(archive, "tiles/autumn/TB-101.md"), "utf8");
    expect(record).toContain("{resist: wax, where: [centre]}");
    expect(record).toContain("result: {surface: satin, faults: none, again: yes}");
    const site = await publish(archive);
    const shown = await open(`${await serve(site)}tiles/tb-101.html`, phone);
    const words = (await shown.locator("main").allTextContents()).join(" ");
    for (const said of ["Autumn class", "Soot", "Wax", "Liner", "satin", "Big electric"])
      expect(words).toContain(said);
  },
);
