/** By keyboard alone: everything is reached, in the order of the page, and it is seen where one is. */
import type { Page } from "playwright-core";
import { expect } from "vitest";
import { sections } from "../../templates/parts/sections.ts";
import { fileAddress, siteTest } from "../support/browser.ts";
import { smallSite } from "./built-sites.ts";

const site = smallSite();

/** Numbers everything on a page that somebody can act upon, and says how many there are. */
function numberControls(page: Page): Promise<number> {
  return page.evaluate(() => {
    const controls = [...document.querySelectorAll("a[href], button, input, select, summary")];
    const shown = controls.filter(
      (control) => control.checkVisibility() && !control.matches(":disabled"),
    );
    for (const [i, control] of shown.entries()) control.setAttribute("data-number", String(i));
    return shown.length;
  });
}

/** The number of what has the focus, and whether its look says so. */
function focused(page: Page): Promise<{ number: number; name: string; seen: boolean }> {
  return page.evaluate(() => {
    const element = document.activeElement ?? document.body;
    const marked = (each: Element | null) => {
      if (!each) return false;
      const { outlineStyle, outlineWidth, boxShadow } = getComputedStyle(each);
      const outlined = outlineStyle !== "none" && Number.parseFloat(outlineWidth) >= 1;
      return outlined || boxShadow !== "none";
    };
    const { width, height } = element.getBoundingClientRect();
    return {
      number: Number(element.getAttribute("data-number") ?? -1),
      name: element.outerHTML.slice(0, 120),
      seen: width > 0 && height > 0 && (marked(element) || marked(element.closest("label"))),
    };
  });
}

siteTest.for([
  "index.html",
  "tiles/ev-1.html",
  "glazes/liner.html",
  "colours.html",
  "firings/g-1.html",
])(
  "the tabulator reaches everything on %s in its order, and it is seen where one is",
  async (path, { open, serve }) => {
    const page = await open((await serve(site.folder)) + path);
    const controls = await numberControls(page);
    const reached: number[] = [];
    for (let presses = 0; presses < controls; presses += 1) {
      await page.keyboard.press("Tab");
      const { number, name, seen } = await focused(page);
      expect(seen, `the focus shows on ${name}`).toBe(true);
      reached.push(number);
    }
    expect(reached).toEqual(Array.from({ length: controls }, (_, i) => i));
  },
);

siteTest("the first stop skips what every page repeats", async ({ open, serve }) => {
  const page = await open(`${await serve(site.folder)}tiles/ev-1.html`);
  await page.keyboard.press("Tab");
  expect(await page.evaluate(() => document.activeElement?.textContent)).toBe("Skip to the page");
  await page.keyboard.press("Enter");
  await page.keyboard.press("Tab");
  expect(await page.evaluate(() => document.activeElement?.closest("main")?.id)).toBe("main");
});

siteTest(
  "the wall is narrowed down, and a tile opened, without a mouse",
  async ({ open, serve }) => {
    const root = await serve(site.folder);
    const page = await open(root, { viewport: { width: 1280, height: 900 } });
    await page.locator("select[name=surface]").focus();
    await page.keyboard.press("ArrowDown");
    await page.keyboard.press("Enter");
    await expect.poll(() => page.url()).toContain("surface=");
    await page.locator("#wall a").first().focus();
    await page.keyboard.press("Enter");
    await page.waitForURL(/\/tiles\/ev-\d\.html$/u);
  },
);

/** Runs in a page: how high its masthead is, and the ways in of it that are shown. */
function readMasthead() {
  const shown = [...document.querySelectorAll(".masthead nav a")].filter((way) =>
    way.checkVisibility(),
  );
  return {
    row: document.querySelector(".masthead")?.getBoundingClientRect().height,
    ways: shown.length,
    least: Math.min(...shown.map((way) => way.getBoundingClientRect().height)),
    here: shown.filter((way) => way.hasAttribute("aria-current")).map((way) => way.textContent),
  };
}

/** Runs in a page: two entries more than there are. */
function addTwoWays(): void {
  for (const name of ["Another", "One more yet"]) {
    const entry = document.createElement("li");
    const way = document.createElement("a");
    way.href = "care.html";
    way.textContent = name;
    entry.append(way);
    document.querySelector(".masthead ul")?.append(entry);
  }
}

/** What one row of it measures: a target of 44 px, the space around it and the rule beneath. */
const oneRow = 61;

siteTest("the masthead is one row on a desk, with room for two entries more", async ({ open }) => {
  const page = await open(fileAddress(site.folder, "care.html"), {
    viewport: { width: 832, height: 800 },
  });
  await page.evaluate(addTwoWays);
  const { row, ways, here } = await page.evaluate(readMasthead);
  expect([row, ways, here]).toEqual([oneRow, sections.length + 2, ["Care"]]);
  expect(await page.locator(".masthead button").isVisible()).toBe(false);
});

siteTest(
  "on a phone it is one row too, and unfolds by keyboard without a script, over a page that does not move",
  async ({ open }) => {
    const page = await open(fileAddress(site.folder, "care.html"), {
      viewport: { width: 320, height: 640 },
      javaScriptEnabled: false,
    });
    const heading = await page.locator("h1").boundingBox();
    expect(await page.evaluate(readMasthead)).toMatchObject({ row: oneRow, ways: 0 });
    await page.locator(".masthead button").focus();
    await page.keyboard.press("Enter");
    const { row, ways, least, here } = await page.evaluate(readMasthead);
    expect([row, ways, here]).toEqual([oneRow, sections.length, ["Care"]]);
    expect(least).toBeGreaterThanOrEqual(44);
    expect(await page.locator("h1").boundingBox()).toEqual(heading);
    await page.keyboard.press("Tab");
    await page.keyboard.press("Enter");
    await page.waitForURL(/index\.html$/u);
  },
);

siteTest(
  "a long name of a studio takes lines of its own, and none of it is cut",
  async ({ open }) => {
    const page = await open(fileAddress(site.folder, "care.html"), {
      viewport: { width: 320, height: 640 },
    });
    const name = page.locator(".masthead .studio");
    await name.evaluate((link) => {
      link.textContent = "The community pottery of Lower Marshwater, evening classes and open days";
    });
    const [words, menu] = [
      await name.boundingBox(),
      await page.locator(".masthead button").boundingBox(),
    ];
    expect(words?.height).toBeGreaterThan(60);
    expect((words?.x ?? 0) + (words?.width ?? 0)).toBeLessThanOrEqual(menu?.x ?? 0);
    expect(await name.evaluate((link) => link.scrollWidth - link.clientWidth)).toBe(0);
  },
);
