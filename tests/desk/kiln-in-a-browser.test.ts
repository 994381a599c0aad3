/** A teacher with a phone and one with a keyboard: six tiles go into the kiln and come out again. */
import { readFile, writeFile } from "node:fs/promises";
import { join } from "node:path";
import type { Page } from "playwright-core";
import { expect, onTestFinished, vi } from "vitest";
import { examineArchive } from "../../src/commands/examine/examine.ts";
import { openDesk } from "../../src/commands/serve/desk.ts";
import { tabletServer } from "../../src/commands/serve/tablet.ts";
import { guestPass } from "../../src/local-server/guest-pass.ts";
import { siteServer } from "../../src/publish/site-server.tsx";
import { photograph, writeFolder } from "../support/archive-folder.ts";
import { siteTest } from "../support/browser.ts";
import { removeFolder } from "../support/remove-folder.ts";

const codes = ["A-1", "A-2", "A-3", "A-4", "A-5", "A-6"];
const tile = (clay: string) =>
  `---\nclay: ${clay}\nlayers:\n  - fired: bisque\n  - {glaze: soot, coats: 2}\n---\n`;

/** As few as it takes: what a tile may ask of a hand, and of a keyboard. */
const mostTouches = 4;
const mostKeys = 6;

async function openKiln() {
  const picture = await photograph("#6b7f86", 600, 450);
  const archive = await writeFolder({
    "studio.yaml": "format: 1\nstudio: Eelgate Pottery\n",
    "recipes/clays/buff.md": "---\nname: Buff\ncones: 5-9\n---\n",
    "recipes/clays/red.md": "---\nname: Red\ncones: 06-03\n---\n",
    "recipes/glazes/soot.md":
      "---\nname: Soot\nkind: glaze\nbought: {maker: Oxbow}\ncones: 5-6\n---\n",
    "tiles/evening/set.md": "---\nname: Evening\n---\n",
    "tiles/evening/R-1.md": tile("red"),
    ...Object.fromEntries(codes.map((code) => [`tiles/evening/${code}.md`, tile("buff")])),
    ...Object.fromEntries(codes.slice(1).map((code) => [`tiles/evening/${code}.jpg`, picture])),
    "tiles/firings/g-261020.md":
      "---\non: 2026-10-20\nkind: glaze\nkiln: Drum\natmosphere: oxidation\ncone: 6\n---\n",
  });
  const door = { addresses: [], pass: guestPass(Date.now) };
  const { desk, onTablet } = await openDesk(archive, undefined, door);
  const failures: unknown[] = [];
  const server = siteServer(join(archive, "no-site"), {
    ...{ assets: new Map(), desk },
    failed: (error) => failures.push(error),
  });
  const tabletDesk = onTablet();
  const place = { door, hosts: ["127.0.0.1"] };
  const guest = await tabletServer(place, server.workBeside(tabletDesk), tabletDesk.token);
  const [port, guestPort] = [await server.listen(0), await guest.listen(0)];
  onTestFinished(async () => {
    guest.close();
    server.close();
    await removeFolder(archive);
    expect(failures).toEqual([]);
  });
  const tablet = `http://127.0.0.1:${guestPort}`;
  return { archive, picture, address: `http://localhost:${port}/desk`, tablet };
}

/** Tries again until the page says so. */
const eventually = (find: () => Promise<unknown>) => expect.poll(find, { timeout: 5000 });

const textOf = (page: Page, selector: string) => page.locator(selector).textContent();

siteTest(
  "a load of six is ticked, warned of and written, then unloaded by touch and by keys",
  async ({ open }) => {
    const { archive, picture, address } = await openKiln();
    const phone = { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true };
    const page = await open(`${address}/load`, phone);

    await page.locator(".last-time button").tap();
    expect(await page.locator('[name="cone"]').inputValue()).toBe("6");
    for (const code of ["A-1", "A-2", "A-3", "R-1"])
      await page.locator(`[data-code="${code.toLowerCase()}"] .tile-to-load`).tap();
    await page.getByRole("radio", { name: "bottom" }).check();
    for (const code of ["A-4", "A-5", "A-6"])
      await page.locator(`[data-code="${code.toLowerCase()}"] .tile-to-load`).tap();
    await eventually(() => textOf(page, ".sum")).toBe("7 tiles. One cannot stay in as it is.");
    expect(await textOf(page, '[data-code="r-1"] .minded')).toMatch(
      /^Stop R-1 may melt onto the shelf/u,
    );
    expect(await page.locator('[type="submit"]').isDisabled()).toBe(true);
    await page.locator('[data-code="r-1"] .tile-to-load').tap();
    await eventually(() => textOf(page, ".sum")).toBe(
      "6 tiles. Nothing in the records speaks against it.",
    );
    await page.locator('[name="id"]').fill("g-1");
    await eventually(() => page.locator('[type="submit"]').isEnabled()).toBe(true);
    await page.locator('[type="submit"]').tap();
    await page.waitForURL(/load\/g-1$/u);
    await eventually(() => textOf(page, ".told")).toBe("Written: tiles/firings/g-1.md.");
    expect(await readFile(join(archive, "tiles/firings/g-1.md"), "utf8")).toBe(
      "---\nkind: glaze\nkiln: Drum\natmosphere: oxidation\ncone: 6\ntiles: {top: [A-1..A-3], bottom: [A-4..A-6]}\n---\n",
    );

    await page.goto(`${address}/unload/g-1`);
    await page.locator('[name="on"]').fill("2026-11-29");
    await page.locator(".lit button").tap();
    await eventually(() => page.locator(".unload-form").isVisible()).toBe(true);
    await page
      .locator('[name="photograph"]')
      .setInputFiles({ name: "IMG_2045.JPG", mimeType: "image/jpeg", buffer: picture });
    await eventually(() => textOf(page, ".told")).toBe("A-1: Written: tiles/evening/A-1.jpg.");
    let touches = 0;
    const tap = async (selector: string) => {
      touches += 1;
      await page.locator(selector).tap();
    };
    for (const code of ["A-1", "A-2", "A-3"]) {
      await eventually(() => textOf(page, ".tile-out .code")).toBe(code);
      await tap('.surface [data-value="satin"]');
      await tap('.faults [data-value="none"]');
      await tap('.again [data-value="yes"]');
      await tap('.unload-ways [type="submit"]');
    }
    await eventually(() => textOf(page, ".tile-out .code")).toBe("A-4");
    expect(touches / 3).toBeLessThanOrEqual(mostTouches);
    expect(await readFile(join(archive, "tiles/evening/A-3.md"), "utf8")).toContain(
      "result: {surface: satin, faults: none, again: yes}",
    );

    const desk = await open(`${address}/unload/g-1`);
    let keys = 0;
    const press = async (...all: readonly string[]) => {
      for (const key of all) await desk.keyboard.press(key);
      keys += all.length;
    };
    await eventually(() => textOf(desk, ".tile-out .code")).toBe("A-4");
    await press("2", "f", "b", "Enter", "n", "Enter");
    await eventually(() => textOf(desk, ".tile-out .code")).toBe("A-5");
    await press("4", "0", "r", "3", "Enter");
    await eventually(() => textOf(desk, ".tile-out .code")).toBe("A-6");
    await press("u");
    await eventually(() => textOf(desk, ".tile-out .code")).toBe("A-5");
    expect(await readFile(join(archive, "tiles/evening/A-5.md"), "utf8")).toBe(tile("buff"));
    keys = 0;
    await press("1", "0", "c", "Enter");
    await eventually(() => textOf(desk, ".tile-out .code")).toBe("A-6");
    await press("x", "e", "Enter", "Enter");
    await eventually(() => textOf(desk, ".progress")).toMatch(/^6 of 6 are written down\./u);
    expect(keys / 2).toBeLessThanOrEqual(mostKeys);

    const results = await Promise.all(
      codes.map((code) => readFile(join(archive, `tiles/evening/${code}.md`), "utf8")),
    );
    expect(results.map((text) => text.split("\n").at(-3))).toEqual([
      ...["A-1", "A-2", "A-3"].map(() => "result: {surface: satin, faults: none, again: yes}"),
      "result: {surface: gloss, faults: bloating, again: no}",
      "result: {surface: dry, faults: none, again: changed}",
      "fate: stuck",
    ]);
    const quiet = { stage: () => {}, count: () => {}, done: () => {} } as never;
    const { problems } = await examineArchive(archive, join(archive, ".cache"), quiet, "headers");
    expect(problems.filter(({ severity }) => severity === "error")).toEqual([]);
  },
);

siteTest(
  "a tile that somebody else wrote meanwhile is told of, and nothing is written over",
  async ({ open }) => {
    const { archive, address } = await openKiln();
    await writeFile(
      join(archive, "tiles/firings/g-2.md"),
      "---\non: 2026-11-29\nkind: glaze\ntiles: {top: [A-1]}\n---\n",
    );
    const page = await open(`${address}/unload/g-2`);
    const now = tile("buff").replace("---\n", "---\nfate: lost\n");
    await writeFile(join(archive, "tiles/evening/A-1.md"), now);
    await page.keyboard.press("1");
    await page.keyboard.press("Enter");
    await eventually(() => textOf(page, ".trouble")).toMatch(
      /^tiles\/evening\/A-1.md was changed after this page read it, so nothing was written\./u,
    );
    expect(await readFile(join(archive, "tiles/evening/A-1.md"), "utf8")).toBe(now);
  },
);

siteTest(
  "a tablet comes in by the code that the desk shows, writes, and is put out by a new code",
  async ({ open }) => {
    const said = vi.spyOn(console, "error").mockImplementation(() => undefined);
    onTestFinished(() => said.mockRestore());
    const { archive, address, tablet } = await openKiln();
    const teacher = await open(`${address}/`);
    const code = (await textOf(teacher, ".for-a-tablet .code")) ?? "";
    const page = await open(`${tablet}/desk/unload/g-261020`);
    const type = async (typed: string) => {
      await page.locator("#code").fill(typed);
      await page.locator('[type="submit"]').click();
    };
    await type(code.startsWith("0") ? "100000" : "000000");
    expect(await textOf(page, ".became")).toBe("That is not the code. 4 tries are left.");
    await type(code);
    await page.waitForURL(`${tablet}/desk/`);
    await page.goto(`${tablet}/desk/load`);
    await page.locator(".last-time button").click();
    for (const each of ["A-1", "A-2"])
      await page.locator(`[data-code="${each.toLowerCase()}"] .tile-to-load`).click();
    await page.locator('[name="id"]').fill("g-9");
    await eventually(() => page.locator('[type="submit"]').isEnabled()).toBe(true);
    await page.locator('[type="submit"]').click();
    await page.waitForURL(/load\/g-9$/u);
    expect(await readFile(join(archive, "tiles/firings/g-9.md"), "utf8")).toContain("A-1");
    await teacher.reload();
    await teacher.locator(".new-code").click();
    await eventually(() => teacher.locator(".for-a-tablet .code").count()).toBe(1);
    await page.goto(`${tablet}/desk/load`);
    expect(await textOf(page, "h1")).toBe("Type the code.");
  },
);
