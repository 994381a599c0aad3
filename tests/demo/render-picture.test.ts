import sharp from "sharp";
import { describe, expect, it } from "vitest";
import { renderPicture } from "../../src/demo/render-picture.ts";
import type { GlazeLook, Step, TilePlan } from "../../src/demo/tile-plan.ts";

const WIDTH = 90;

const black: GlazeLook = {
  id: "black",
  kind: "glaze",
  range: [4, 5],
  thick: "#17171a",
  thin: "#6b4026",
  hiding: 0.95,
  flow: 0.1,
  surface: "matte",
  weight: 1,
};

function coat(where: string): Step {
  return {
    does: "coat",
    glaze: black,
    fade: undefined,
    coats: 1,
    cover: undefined,
    by: "dip",
    where: [where],
    thickness: 1,
  };
}

const fire: Step = { does: "fire", kind: "glaze", heat: 5, atmosphere: "oxidation" };

function plan(steps: readonly Step[]): TilePlan {
  return {
    code: "ZZ-1",
    set: "trial",
    maker: "m01",
    clay: { bare: "#e6ddcc", speck: "#8a7050", specks: 0, grog: 0.2 },
    bleeds: false,
    texture: "smooth",
    shape: "flat",
    angle: 90,
    steps,
    surfaces: ["matte"],
    effects: [],
    faults: [],
    run: 0,
    fate: undefined,
    scratched: undefined,
    card: undefined,
    motif: undefined,
    figure: undefined,
  };
}

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
