/** Finding tiles by a colour on the wall: one that is picked, that of a tile, one that was sent. */
import { readFile } from "node:fs/promises";
import { join } from "node:path";
import type { Page } from "playwright-core";
import { expect } from "vitest";
import { reach } from "../../src/browser/wall/near.ts";
import { type Lab, linearToLab } from "../../src/colour/cielab.ts";
import { differenceCiede2000 } from "../../src/colour/difference.ts";
import { hexToLinear } from "../../src/colour/srgb.ts";
import { barriersOn } from "../support/barriers.ts";
import { fileAddress, siteTest } from "../support/browser.ts";
import { demoSite } from "./built-sites.ts";
import { codesOnTheWall } from "./whole-wall.ts";

const site = demoSite();

interface Tile {
  readonly id: string;
  readonly url: string;
  readonly cone: string | null;
  readonly surface: readonly string[];
  readonly colour: { readonly lab: Lab } | null;
}

async function readTiles(): Promise<readonly Tile[]> {
  return JSON.parse(await readFile(join(site.folder, "data/tiles.json"), "utf8"));
}

async function tileOf(id: string): Promise<Tile & { readonly colour: { readonly lab: Lab } }> {
  const tile = (await readTiles()).find((each) => each.id === id);
  if (!tile?.colour) throw new Error(`${id} has no measured colour`);
  return { ...tile, colour: tile.colour };
}

/** The codes of measured tiles, nearest first, as the published colours have them. */
async function nearestTo(lab: Lab, holds: (tile: Tile) => boolean = () => true) {
  return (await readTiles())
    .flatMap((tile) =>
      tile.colour && holds(tile)
        ? [{ tile, apart: differenceCiede2000(lab, tile.colour.lab) }]
        : [],
    )
    .sort((a, b) => a.apart - b.apart)
    .map(({ tile }) => tile.id);
}

const lookOf = (hex: string) => linearToLab(hexToLinear(hex));
const codesOn = codesOnTheWall;
const found = (page: Page) => page.locator("#found p").first().textContent();
const picker = (page: Page) => page.getByLabel("near", { exact: false }).and(page.locator("input"));
const large = { viewport: { width: 1280, height: 900 } };

const isMatteAt6 = ({ cone, surface }: Tile) => cone === "6" && surface.includes("matte");

siteTest(
  "the colour of a tile, in an address that was sent, orders what the other choices leave",
  async ({ open, serve }) => {
    const { colour } = await tileOf("EV-103");
    const root = await serve(site.folder, "/studio/tests/");
    const page = await open(`${root}?like=ev-103&cone=6`, large);
    const expected = await nearestTo(colour.lab, ({ cone }) => cone === "6");
    expect(expected[0]).toBe("EV-103");
    expect(await codesOn(page)).toEqual(expected);
    expect(await page.locator("#wall .apart").first().textContent()).toBe("the tile itself");
    expect(await page.locator("#wall .apart").last().textContent()).toMatch(/^\d+ apart$/u);

    const count = (await nearestTo(colour.lab, isMatteAt6)).length;
    const surfaces = page.locator("select[name=surface]");
    await surfaces.selectOption({ label: `matte surface · ${count}` });
    expect(new URL(page.url()).searchParams.toString()).toBe("cone=6&surface=matte&like=EV-103");
    expect(await codesOn(page)).toEqual(await nearestTo(colour.lab, isMatteAt6));
    await page.goBack();
    expect(await codesOn(page)).toEqual(expected);
  },
);

siteTest(
  "a picked colour stands in the address, and back leads to what was there before",
  async ({ open, serve }) => {
    const root = await serve(site.folder);
    const page = await open(root, large);
    const before = await codesOn(page);
    await picker(page).fill("#546966");
    expect(page.url()).toBe(`${root}?near=546966`);
    expect(await codesOn(page)).toEqual(await nearestTo(lookOf("#546966")));
    await picker(page).fill("#a03020");
    expect(page.url()).toBe(`${root}?near=a03020`);
    expect(await codesOn(page)).toEqual(await nearestTo(lookOf("#a03020")));
    await page.goBack();
    expect(page.url()).toBe(`${root}?near=546966`);
    expect(await codesOn(page)).toEqual(await nearestTo(lookOf("#546966")));
    await page.goBack();
    expect(page.url()).toBe(root);
    expect(await codesOn(page)).toEqual(before);
    expect(await page.locator("#wall .apart").count()).toBe(0);
  },
);

siteTest(
  "while a hand goes on picking, each colour takes the place of the one before",
  async ({ open, serve }) => {
    const root = await serve(site.folder);
    const page = await open(root, large);
    const visits = await page.evaluate(() => history.length);
    for (const hex of ["#546966", "#55706c", "#566f90"]) {
      await picker(page).evaluate((input: HTMLInputElement, value) => {
        input.value = value;
        input.dispatchEvent(new Event("input", { bubbles: true }));
      }, hex);
      await expect.poll(() => page.url()).toBe(`${root}?near=${hex.slice(1)}`);
    }
    await picker(page).dispatchEvent("change");
    expect(await page.evaluate(() => history.length)).toBe(visits + 1);
    await page.goBack();
    expect(page.url()).toBe(root);
  },
);

siteTest(
  "it tells the colour asked for, what was never measured, and which difference means nothing",
  async ({ open, serve }) => {
    const page = await open(`${await serve(site.folder)}?near=546966`, large);
    const tiles = await readTiles();
    const measured = tiles.filter(({ colour }) => colour !== null).length;
    expect(measured).toBeLessThan(tiles.length);
    expect(await found(page)).toBe(
      `${measured} of ${tiles.length} tiles, nearest first to blue-green #546966. ` +
        `${tiles.length - measured} others have no measured colour. show all`,
    );
    const swatch = page.locator("#found .asked");
    expect(await swatch.evaluate((each) => getComputedStyle(each).backgroundColor)).toBe(
      "rgb(84, 105, 102)",
    );
    expect(await page.locator("#found .trust").textContent()).toContain(
      "a smaller difference means nothing",
    );
  },
);

/** The stand-ins for photographs of tiles made alike are of all colours: here they agree within 6. */
async function trustWithin6(page: Page): Promise<void> {
  await page.route("**/data/facets.js", async (route) => {
    const script = await readFile(join(site.folder, "data/facets.js"), "utf8");
    const body = script.replace(/"trust":\{"difference":[\d.]+/u, '"trust":{"difference":6');
    await route.fulfill({ body, contentType: "text/javascript" });
  });
}

siteTest(
  "lines divide the tiles that are as good as the same, those further apart, and those farther off",
  async ({ open, serve }) => {
    const root = await serve(site.folder);
    const page = await open(`${root}about.html`, large);
    await trustWithin6(page);
    await page.goto(`${root}?like=EV-103`);
    const { colour } = await tileOf("EV-103");
    const apart = (await readTiles()).flatMap((tile) =>
      tile.colour ? [differenceCiede2000(colour.lab, tile.colour.lab)] : [],
    );
    const same = apart.filter((each) => each < 6).length;
    const within = apart.filter((each) => each < reach).length;
    expect(within).toBeLessThan(apart.length);
    expect(same).toBeGreaterThan(1);
    expect(same).toBeLessThan(apart.length);
    const lines = await page.locator("#wall > li").evaluateAll((items) =>
      items.flatMap((item, place) => {
        return item.className === "line" ? [[place, item.textContent]] : [];
      }),
    );
    expect(lines).toEqual([
      [0, "As good as the same here"],
      [same + 1, "Further apart"],
      [within + 2, "Farther off: most people would give it another name"],
    ]);
  },
);

siteTest("where no tile is as good as the same, it is told", async ({ open, serve }) => {
  const root = await serve(site.folder);
  const page = await open(`${root}about.html`, large);
  await trustWithin6(page);
  await page.goto(`${root}?near=00ff00`);
  const [nearest = ""] = await nearestTo(lookOf("#00ff00"));
  const { colour } = await tileOf(nearest);
  expect(differenceCiede2000(lookOf("#00ff00"), colour.lab)).toBeGreaterThan(6);
  expect(differenceCiede2000(lookOf("#00ff00"), colour.lab)).toBeGreaterThan(reach);
  expect(await page.locator("#wall > li.line").allTextContents()).toEqual([
    "Farther off: most people would give it another name",
  ]);
  expect(await page.locator("#found .trust").textContent()).toMatch(/\. No tile is that near\.$/u);
});

siteTest(
  "what an address asks for that is no colour, or no tile's, is left out",
  async ({ open, serve }) => {
    const root = await serve(site.folder);
    const page = await open(root, large);
    const all = await codesOn(page);
    for (const search of ["?near=blue", "?near=54696", "?like=XX-999", "?like="]) {
      await page.goto(root + search);
      expect(await codesOn(page), search).toEqual(all);
      expect(await found(page), search).toBe(`All ${(await readTiles()).length} tiles`);
    }
  },
);

siteTest("without a mouse, a colour is reached, and cleared", async ({ open, serve }) => {
  const root = await serve(site.folder);
  const page = await open(`${root}?near=546966&cone=6`, large);
  await page.locator("select[name=shade]").focus();
  await page.keyboard.press("Tab");
  const focused = page.locator(":focus");
  expect(await focused.getAttribute("type")).toBe("color");
  expect(await focused.inputValue()).toBe("#546966");
  const outline = await page
    .locator(".near .field")
    .evaluate((field) => getComputedStyle(field).outlineStyle);
  expect(outline).toBe("solid");
  await page.keyboard.press("Tab");
  expect(await focused.textContent()).toBe("clear the colour");
  await page.keyboard.press("Enter");
  expect(page.url()).toBe(`${root}?cone=6`);
  expect(await focused.getAttribute("type")).toBe("color");
  await expect.poll(() => page.getByRole("button", { name: "clear the colour" }).count()).toBe(0);
});

siteTest(
  "where nothing is left, letting the colour go is offered with what it would leave",
  async ({ open, serve }) => {
    const unmeasured = (await readTiles()).find(({ colour }) => colour === null);
    const root = await serve(site.folder);
    const page = await open(`${root}?near=546966&words=${unmeasured?.id}`, large);
    expect(await codesOn(page)).toEqual([]);
    await page.getByRole("button", { name: "without the colour asked for: 1 tile" }).click();
    expect(await codesOn(page)).toEqual([unmeasured?.id]);
    expect(page.url()).toBe(`${root}?words=${unmeasured?.id}`);
  },
);

siteTest(
  "the neighbours of a tile that is opened are those in the order of the colour",
  async ({ open, serve }) => {
    const root = await serve(site.folder);
    const page = await open(`${root}?near=546966&cone=6`, large);
    const [, second = "", third = ""] = await codesOn(page);
    await page.locator("#wall a", { hasText: second }).click();
    await page.waitForURL(`${root}${(await tileOf(second)).url}`);
    await page.locator("a.enlarge").first().click();
    await page.keyboard.press("ArrowRight");
    await page.waitForURL(`${root}${(await tileOf(third)).url}#*`);
  },
);

siteTest("on a phone the colour is picked and cleared in the sheet", async ({ open, serve }) => {
  const root = await serve(site.folder);
  const page = await open(root, { viewport: { width: 390, height: 800 } });
  await page.getByRole("button", { name: "Narrow down" }).click();
  await page.getByRole("dialog").locator("input[type=color]").fill("#546966");
  const expected = await nearestTo(lookOf("#546966"));
  await page.getByRole("button", { name: `Show ${expected.length} tiles` }).click();
  expect(await codesOn(page)).toEqual(expected);
  await page.getByRole("button", { name: "Narrow down" }).click();
  await page.getByRole("dialog").getByRole("button", { name: "clear the colour" }).click();
  expect(page.url()).toBe(root);
});

siteTest("opened from a folder, a colour orders the tiles too", async ({ open }) => {
  const page = await open(`${fileAddress(site.folder, "index.html")}?like=EV-103`, large);
  const { colour } = await tileOf("EV-103");
  expect(await codesOn(page)).toEqual(await nearestTo(colour.lab));
  await picker(page).fill("#546966");
  expect(page.url()).toContain("?near=546966");
});

siteTest.for([
  [390, "light"],
  [390, "dark"],
  [1280, "light"],
  [1280, "dark"],
] as const)(
  "axe finds nothing on %d px in %s where a colour was asked for",
  async ([width, colorScheme], { open, serve }) => {
    const page = await open(`${await serve(site.folder)}?like=EV-103`, {
      viewport: { width, height: 800 },
      colorScheme,
    });
    if (width < 960) await page.getByRole("button", { name: "Narrow down" }).click();
    expect(await barriersOn(page, { except: ["#wall li:nth-child(n + 13)"] })).toEqual([]);
  },
);
