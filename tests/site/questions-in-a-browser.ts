/** What a glaze and a set answer without scripts: the strips of one thing that changed, and a set's square. */
import { expect } from "vitest";
import { siteTest } from "../support/browser.ts";
import type { BuiltSite } from "./built-sites.ts";

const large = { viewport: { width: 1280, height: 900 } };

/** Tests of strips and squares of the demonstration. */
export function testQuestions(site: BuiltSite): void {
  siteTest.for([
    [
      "marigold",
      "By coats",
      ["2 coats", "3 coats"],
      "Too thin with 2 coats, no fault found with 3 coats.",
    ],
    [
      "tidewrack",
      "By cooling",
      ["left to cool", "cooled slowly"],
      "Gloss when left to cool, gloss and satin when cooled slowly.",
    ],
  ] as const)(
    "from the wall, the page of %s answers what one thing did: %s",
    async ([glaze, heading, values, answer], { open, serve }) => {
      const page = await open(await serve(site.folder), { ...large, javaScriptEnabled: false });
      await page.goto(`${new URL(page.url()).origin}/glazes/${glaze}.html`);
      const strip = page.locator(".strips .question", {
        has: page.getByRole("heading", { name: heading }),
      });
      expect(await strip.locator(".cell .value").allTextContents()).toEqual(values);
      expect(await strip.locator(".cell a.code, .cell > a").count()).toBeGreaterThan(1);
      expect(await strip.locator(".along").textContent()).toContain(answer);
      expect(await strip.locator(".along").textContent()).toMatch(
        /it may be chance|a hint, no rule/u,
      );
    },
  );

  siteTest(
    "a set laid over and under shows as its square, which scrolls within itself under heads that stay",
    async ({ open, serve }) => {
      const root = await serve(site.folder);
      const page = await open(`${root}sets/over-and-under.html`, {
        viewport: { width: 390, height: 800 },
        javaScriptEnabled: false,
      });
      const square = page.locator(".set-square");
      const tops = await square.locator("thead th").allTextContents();
      expect(tops).toHaveLength(8);
      expect(await square.locator("tbody th").allTextContents()).toEqual(tops);
      const [soot, mist] = [tops.indexOf("Soot"), tops.indexOf("Mist")];
      const at = (down: number, across: number) =>
        square.locator("tbody tr").nth(down).locator("td").nth(across);
      expect(await at(soot, mist).locator(".code").textContent()).toBe("GR-27");
      expect(await at(soot, mist).locator(".came").textContent()).toBe(
        "ran 14\u00a0mm, again: yes",
      );
      expect(await at(soot, soot).locator(".code").textContent()).toBe("GR-22");
      expect(await at(mist, tops.indexOf("Lagoon")).textContent()).toBe("none made");

      await at(mist, mist).scrollIntoViewIfNeeded();
      const scrolled = await square.locator(".square-scroll").evaluate((box) => {
        const { left, top } = box.getBoundingClientRect();
        const head = box.querySelectorAll("thead th")[6]?.getBoundingClientRect();
        const side = box.querySelectorAll("tbody th")[6]?.getBoundingClientRect();
        return {
          by: box.scrollLeft,
          head: (head?.top ?? 99) - top,
          side: (side?.left ?? 99) - left,
        };
      });
      expect(scrolled.by).toBeGreaterThan(100);
      expect(Math.abs(scrolled.head)).toBeLessThan(12);
      expect(Math.abs(scrolled.side)).toBeLessThan(12);
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(390);
    },
  );
}
