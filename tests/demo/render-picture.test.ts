import sharp from "sharp";
import { describe, expect, it } from "vitest";
import { renderPicture } from "../../src/demo/render-picture.ts";
import type { Step } from "../../src/demo/tile-plan.ts";
import { coat, fire, plan } from "./trial-plan.ts";

const WIDTH = 90;

/** Mean lightness, 0 to 255, of a part of the picture in per cent. */
async function lightness(picture: Buffer, left: number, top: number): Promise<number> {
  const part = await sharp(picture)
    .extract({
      left: Math.round((left / 100) * WIDTH),
      top: Math.round((top / 100) * WIDTH * (4 / 3)),
      width: 6,
      height: 6,
    })
    .greyscale()
    .raw()
    .toBuffer();
  return part.reduce((sum, value) => sum + value, 0) / part.length;
}

describe("a rendered picture", () => {
  it("is the same bytes for the same record", async () => {
    const [first, second] = [plan([coat("all"), fire]), plan([coat("all"), fire])];
    expect(await renderPicture(first, WIDTH)).toEqual(await renderPicture(second, WIDTH));
  });

  it("shows glaze where the record says, and bare clay elsewhere", async () => {
    const picture = await renderPicture(plan([coat("top"), fire]), WIDTH);
    expect(await lightness(picture, 40, 25)).toBeLessThan(90);
    expect(await lightness(picture, 40, 65)).toBeGreaterThan(150);
  });

  it("leaves clay bare under wax", async () => {
    const wax: Step = { does: "resist", material: "wax", cross: false, where: ["bottom"] };
    const picture = await renderPicture(plan([wax, coat("all"), fire]), WIDTH);
    expect(await lightness(picture, 40, 20)).toBeLessThan(90);
    expect(await lightness(picture, 40, 65)).toBeGreaterThan(150);
  });

  it("carries no metadata", async () => {
    const { exif, icc, xmp, format } = await sharp(
      await renderPicture(plan([fire]), WIDTH),
    ).metadata();
    expect({ exif, icc, xmp, format }).toEqual({ format: "jpeg" });
  });
});
