/** The tile form in the hands of a pupil, each touch and key of whom is counted. */
import { readFile } from "node:fs/promises";
import { unzipSync } from "fflate";
import type { Page } from "playwright-core";
import sharp from "sharp";

/** A phone held upright. */
export const phone = { viewport: { width: 390, height: 780 }, hasTouch: true, isMobile: true };

/** A day of the evening class. */
const aTuesday = new Date("2026-11-24T18:30:00");

/** A page in the hands of a pupil: what she touches and types is counted. */
export interface Hands {
  readonly page: Page;
  readonly tap: (name: string | RegExp) => Promise<void>;
  readonly type: (label: string, text: string) => Promise<void>;
  readonly counted: () => { readonly touches: number; readonly keys: number };
}

function handsOn(page: Page): Hands {
  let [touches, keys] = [0, 0];
  return {
    page,
    tap: async (name) => {
      touches += 1;
      await page
        .getByRole("button", { name, exact: typeof name === "string" })
        .first()
        .tap();
    },
    type: async (label, text) => {
      touches += 1;
      keys += text.length;
      await page.getByLabel(label).first().tap();
      await page.keyboard.type(text);
    },
    counted: () => ({ touches, keys }),
  };
}

export type Open = (address: string, options?: object) => Promise<Page>;

/** Opens the form, and waits until it can do everything. */
export async function openForm(
  open: Open,
  address: string,
  options: object = phone,
): Promise<Hands> {
  const page = await open("about:blank", options);
  await page.clock.setFixedTime(aTuesday);
  await page.goto(address);
  await page.waitForFunction(() => "tilebookZip" in globalThis);
  return handsOn(page);
}

/** A photograph that lies on its side, 12 megapixels, of which its dark half is the upper one; it knows its place. */
export function photographOnItsSide(): Promise<Buffer> {
  const half = {
    create: { width: 2000, height: 3000, channels: 3 as const, background: "#202020" },
  };
  return sharp({ create: { width: 4000, height: 3000, channels: 3, background: "#e0e0e0" } })
    .composite([{ input: half, left: 0, top: 0 }])
    .jpeg()
    .withExif({
      IFD0: { Make: "Camera", Model: "Phone 7", Artist: "Wren Ashdown" },
      IFD3: { GPSLatitudeRef: "N", GPSLatitude: "51/1 30/1 0/1", GPSLongitude: "0/1 7/1 0/1" },
    })
    .withMetadata({ orientation: 6 })
    .toBuffer();
}

/** Hands the tile in, and opens the zip. */
export async function handIn({ page, tap }: Hands): Promise<Record<string, Uint8Array>> {
  const coming = page.waitForEvent("download");
  await tap("Download the tile");
  return unzipSync(await readFile(await (await coming).path()));
}

/** What a tile is made with: its set, its maker's key, and the jars of its three layers. */
export interface ThreeLayers {
  readonly set: RegExp;
  readonly maker: string;
  readonly jars: readonly [lowest: string, middle: string, top: string];
}

const ofTuesday: ThreeLayers = {
  set: /^Tuesday evening/u,
  maker: "m04",
  jars: ["2 Soot", "3 Tidewrack", "5 Sky"],
};

/** Three layers and wax, up to the photograph; on a tile of the demonstration where nothing is said. */
export async function writeThreeLayers(
  { tap, type, page }: Hands,
  { set, maker, jars: [lowest, middle, top] }: ThreeLayers = ofTuesday,
): Promise<void> {
  await tap(set);
  await type("Who glazed it", maker);
  await tap("On to the layers");
  await tap(lowest);
  await tap("2");
  await tap("brush");
  await tap("Next step");
  await tap("Wax");
  await page.locator(".tile-outline [data-area=centre]").tap();
  await tap("Next step");
  await tap(middle);
  await tap("1");
  await tap("dip");
  await tap("Next step");
  await tap(top);
  await tap("1");
  await tap("trail");
  await tap("That was all");
}
