/** Six sheets of paper are typed up in a browser, by keyboard alone. */
import { readFile } from "node:fs/promises";
import { join } from "node:path";
import { expect } from "vitest";
import { tilebook } from "../commands/tilebook.ts";
import { openSmallDesk } from "../desk/desk-opened.ts";
import { barriersOn } from "../support/barriers.ts";
import { siteTest } from "../support/browser.ts";

const files = {
  "tiles/monday/set.md": "---\nname: Monday\ncodes: M-1..M-9\njars: {1: soot, 2: liner}\n---\n",
};

/** As they stand on six sheets: maker, layers, notes. A maker that is left out is the one before. */
const sheets = [
  ["m01", "1 x2; 2 x1 top", ""],
  ["", "1 x2; wax motif; 2 x2", ""],
  ["", "2 x3", "ran a little"],
  ["m02", "1 thin by dip; 2 rim", ""],
  ["", "like M-2", ""],
  ["", "2 x2; 1 top; wipe raised", "handle with care"],
] as const;

/** Keys for a tile: its layers and notes, and as many more as lead from field to field. */
const mostKeys = 26;

siteTest(
  "six paper rows are typed up by keyboard, each into a file of its own",
  { timeout: 60_000 },
  async ({ open }) => {
    const { archive, port } = await openSmallDesk(files);
    const page = await open(`http://localhost:${port}/desk/paper/monday`);
    let keys = 0;
    const type = async (text: string) => {
      keys += text.length;
      await page.keyboard.type(text);
    };
    const enter = async () => {
      keys += 1;
      await page.keyboard.press("Enter");
    };
    for (const [i, [maker, layers, notes]] of sheets.entries()) {
      await expect.poll(() => page.locator(":focus").inputValue()).toBe(`M-${i + 1}`);
      await enter();
      await type(maker);
      await enter();
      await type(layers);
      await enter();
      await page.locator("[name=notes]:focus").waitFor();
      await type(notes);
      await enter();
      await page.getByText(`Written: tiles/monday/M-${i + 1}.md.`).waitFor();
    }
    const read = (code: string) => readFile(join(archive, `tiles/monday/${code}.md`), "utf8");
    expect(await read("M-1")).toBe(
      "---\nmaker: m01\nlayers:\n  - {glaze: 1, coats: 2}\n  - {glaze: 2, coats: 1, where: top}\n---\n",
    );
    expect(await read("M-3")).toBe(
      "---\nmaker: m01\nlayers:\n  - {glaze: 2, coats: 3}\n---\nran a little\n",
    );
    expect((await read("M-5")).replace("m02", "m01")).toBe(await read("M-2"));
    expect(await read("M-6")).toContain(
      "  - {remove: wipe, where: raised}\n---\nhandle with care\n",
    );
    expect((await tilebook("check", "--archive", archive)).code).toBe(0);
    expect(keys / sheets.length).toBeLessThan(mostKeys);
    expect(await barriersOn(page)).toEqual([]);
    await page.setViewportSize({ width: 320, height: 700 });
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(320);
  },
);

siteTest(
  "what was understood is shown while it is typed, a fault at its word, and a row is undone",
  { timeout: 60_000 },
  async ({ open }) => {
    const { port } = await openSmallDesk(files);
    const page = await open(`http://localhost:${port}/desk/paper/monday`, { colorScheme: "dark" });
    const layers = page.locator("[name=layers]").first();
    for (const key of ["Enter", "Enter"]) await page.keyboard.press(key);
    await page.keyboard.type("1 x2; 2 tpo");
    await page.getByText("Soot: 2 coats").waitFor();
    await page.getByText("Did you mean “top”?").waitFor();
    expect(await page.locator(".fault mark").textContent()).toBe("tpo");
    expect(await page.locator(".drawn svg").count()).toBe(1);
    for (const key of ["Enter", "Enter"]) await page.keyboard.press(key);
    await page.locator("[name=layers]:focus").waitFor();
    expect(await layers.inputValue()).toBe("1 x2; 2 tpo");
    await page.keyboard.press("Escape");
    expect(await layers.inputValue()).toBe("");
    await page.keyboard.press("Escape");
    expect(await layers.inputValue()).toBe("1 x2; 2 tpo");
    expect(await page.locator(".written").count()).toBe(0);
  },
);
