/** `tilebook crop` in a browser: frames are dragged, a colour is measured, numbers are written. */
import { readFile, writeFile } from "node:fs/promises";
import { join } from "node:path";
import type { Locator, Page } from "playwright-core";
import sharp from "sharp";
import { expect } from "vitest";
import { tilebook } from "../commands/tilebook.ts";
import { openStand } from "../copystand/stand.ts";
import { barriersOn } from "../support/barriers.ts";
import { siteTest } from "../support/browser.ts";

/** Blue on the left, brown on the right, and a mid grey card at the bottom left. */
async function photographed(): Promise<Buffer> {
  const part = (background: string, width: number, height: number) => ({
    create: { width, height, channels: 3 as const, background },
  });
  return sharp(part("#24488c", 800, 600))
    .composite([
      { input: part("#8a5a30", 400, 600), left: 400, top: 0 },
      { input: part("#777777", 80, 60), left: 40, top: 520 },
    ])
    .jpeg({ quality: 95 })
    .toBuffer();
}

async function openEvening() {
  const stand = await openStand({ "tiles/evening/EV-1.jpg": await photographed() }, ["evening"]);
  return { ...stand, address: `http://localhost:${stand.port}/` };
}

const frame = (page: Page, label: string) => page.getByRole("application", { name: label });
const sentence = (page: Page) => page.locator(".sentence");

/** Drags from the middle of an element, so many per cent of the photograph. */
async function drag(page: Page, what: Locator, across: number, down: number): Promise<void> {
  const [from, stage] = await Promise.all([
    what.boundingBox(),
    page.locator(".stage").boundingBox(),
  ]);
  if (!from || !stage) throw new Error("There is nothing to drag.");
  const [x, y] = [from.x + from.width / 2, from.y + from.height / 2];
  await page.mouse.move(x, y);
  await page.mouse.down();
  await page.mouse.move(x + 5, y + 5);
  await page.mouse.move(x + (across / 100) * stage.width, y + (down / 100) * stage.height);
  await page.mouse.up();
}

async function edgesOf(page: Page, part: "crop" | "grey"): Promise<number[]> {
  const inputs = page.locator(`fieldset[name="${part}"] input`);
  return inputs.evaluateAll((all) => all.map((input) => Number((input as HTMLInputElement).value)));
}

siteTest(
  "a frame that is dragged measures another colour, and is written into the set",
  { timeout: 60_000 },
  async ({ open }) => {
    const { address, archive } = await openEvening();
    const page = await open(address, { viewport: { width: 1280, height: 900 } });
    await page.getByText("EV-1, 1 of 2").waitFor();
    await page.locator(".stage img").evaluate((img: HTMLImageElement) => img.decode());
    await drag(page, frame(page, "glaze").locator(".corner.right.bottom"), -30, 0);
    await drag(page, frame(page, "glaze"), -10, -5);
    expect(await edgesOf(page, "crop")).toEqual([15, 20, 35, 70]);
    await expect.poll(() => sentence(page).textContent()).toMatch(/^Blue, as photographed/u);

    await drag(page, frame(page, "glaze"), 50, 0);
    expect(await edgesOf(page, "crop")).toEqual([65, 20, 85, 70]);
    await expect.poll(() => sentence(page).textContent()).toMatch(/^Brown, as photographed/u);
    const brown = await page.locator(".hex").textContent();

    await page.getByRole("button", { name: "Add a frame for the grey card" }).click();
    await drag(page, frame(page, "grey card").locator(".corner.right.top"), -2, 4);
    await drag(page, frame(page, "grey card"), 2, 0);
    expect(await edgesOf(page, "grey")).toEqual([6, 88, 16, 96]);
    await expect.poll(() => sentence(page).textContent()).toMatch(/grey card/u);
    await expect.poll(() => page.locator(".hex").textContent()).toMatch(/^#/u);
    expect(brown).toMatch(/^#8/u);

    expect(await page.getByLabel("the set Evening class (tiles/evening/set.md)").isChecked()).toBe(
      true,
    );
    const before = await readFile(join(archive, "tiles/evening/set.md"), "utf8");
    await page.getByRole("button", { name: "Write them down" }).click();
    await page
      .getByText(
        "Written into tiles/evening/set.md: where the glaze lies and where the grey card lies.",
      )
      .waitFor();
    const after = await readFile(join(archive, "tiles/evening/set.md"), "utf8");
    const written = ", photo: {crop: [65, 20, 85, 70], grey: [6, 88, 16, 96]}";
    expect(after).toContain(written);
    expect(after.replace(written, "")).toBe(before);
    expect(await page.locator(".told pre").textContent()).toContain(written);
    expect(await page.locator(".holds").textContent()).toContain("what the set Evening class says");
    const { code, out } = await tilebook("check", "--archive", archive);
    expect({ code, out }).toMatchObject({ code: 0, out: expect.stringContaining("No errors") });
  },
);

siteTest("everything can be done by keyboard alone", { timeout: 60_000 }, async ({ open }) => {
  const { address, archive } = await openEvening();
  const page = await open(address, { viewport: { width: 1280, height: 900 } });
  await page.getByText("EV-1, 1 of 2").waitFor();
  const tabTo = async (goal: Locator) => {
    for (let left = 40; left > 0; left -= 1) {
      await page.keyboard.press("Tab");
      if (await goal.evaluate((element) => element === document.activeElement)) return;
    }
    throw new Error("The keyboard does not lead there.");
  };
  await tabTo(page.getByRole("button", { name: "next" }));
  await page.keyboard.press("Enter");
  await page.getByText("EV-2, 2 of 2").waitFor();
  await tabTo(frame(page, "glaze"));
  const outline = await frame(page, "glaze").evaluate(
    (element) => getComputedStyle(element).outlineWidth,
  );
  expect(outline).toBe("4px");
  for (const key of ["ArrowLeft", "ArrowLeft", "ArrowDown", "Shift+ArrowRight", "Shift+ArrowUp"])
    await page.keyboard.press(key);
  expect(await edgesOf(page, "crop")).toEqual([23, 26, 74, 75]);
  await tabTo(page.getByRole("button", { name: "Add a frame for the grey card" }));
  await page.keyboard.press("Enter");
  await page.keyboard.press("Shift+Tab");
  await page.keyboard.type("99.5");
  await tabTo(page.locator('input[value="set"]'));
  await page.keyboard.press("ArrowDown");
  await tabTo(page.getByRole("button", { name: "Write them down" }));
  await page.keyboard.press("Enter");
  await page.getByText("Written into tiles/evening/EV-2.md").waitFor();
  expect(await readFile(join(archive, "tiles/evening/EV-2.md"), "utf8")).toContain(
    "photo: {crop: [23, 26, 74, 75], grey: [4, 84, 16, 99.5]}",
  );
});

siteTest("a finger drags a frame on a small screen", { timeout: 60_000 }, async ({ open }) => {
  const { address } = await openEvening();
  const page = await open(address, { viewport: { width: 390, height: 844 }, hasTouch: true });
  await page.getByText("EV-1, 1 of 2").waitFor();
  await page.locator(".stage img").evaluate((img: HTMLImageElement) => img.decode());
  await page.locator(".stage").scrollIntoViewIfNeeded();
  const client = await page.context().newCDPSession(page);
  const box = await frame(page, "glaze").boundingBox();
  const stage = await page.locator(".stage").boundingBox();
  if (!box || !stage) throw new Error("There is nothing to drag.");
  const at = (across: number) => [
    { x: box.x + box.width / 2 + (across / 100) * stage.width, y: box.y + box.height / 2 },
  ];
  const touch = (type: "touchStart" | "touchMove" | "touchEnd", across?: number) =>
    client.send("Input.dispatchTouchEvent", {
      type,
      touchPoints: across === undefined ? [] : at(across),
    });
  await touch("touchStart", 0);
  await touch("touchMove", 5);
  await touch("touchMove", 20);
  await touch("touchEnd");
  await expect.poll(() => edgesOf(page, "crop")).toEqual([45, 25, 95, 75]);
});

siteTest.for([
  [1280, "light"],
  [1280, "dark"],
  [390, "light"],
  [320, "dark"],
] as const)(
  "at %d px, in %s, axe finds nothing and nothing scrolls sideways",
  { timeout: 60_000 },
  async ([width, colorScheme], { open }) => {
    const { address } = await openEvening();
    const page = await open(address, { viewport: { width, height: 844 }, colorScheme });
    await page.getByRole("button", { name: "Add a frame for the grey card" }).click();
    await page.locator(".strip img").first().waitFor();
    await expect.poll(() => sentence(page).textContent()).toMatch(/grey/u);
    expect(await barriersOn(page)).toEqual([]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(width);
  },
);

siteTest("a refusal is told, and the frames in hand stay", async ({ open }) => {
  const { address, archive } = await openEvening();
  const page = await open(address, { viewport: { width: 1280, height: 900 } });
  await page.getByText("EV-1, 1 of 2").waitFor();
  await frame(page, "glaze").press("ArrowLeft");
  const file = join(archive, "tiles/evening/set.md");
  await writeFile(file, (await readFile(file, "utf8")).replace("Evening class", "Monday class"));
  await page.getByRole("button", { name: "Write them down" }).click();
  await page.getByText("was changed after it was read here, so nothing was written").waitFor();
  expect(await edgesOf(page, "crop")).toEqual([24, 25, 74, 75]);
  await page.getByLabel("the set Monday class").waitFor();
  await page.getByRole("button", { name: "Write them down" }).click();
  await page.getByText("Written into tiles/evening/set.md: where the glaze lies.").waitFor();
});
