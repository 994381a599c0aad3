import { fc, test } from "@fast-check/vitest";
import sharp from "sharp";
import { describe, expect, it } from "vitest";
import { linearToLab } from "../../src/colour/cielab.ts";
import { differenceCiede2000 } from "../../src/colour/difference.ts";
import { measureColour } from "../../src/colour/measure.ts";
import type { Crop, Pixels } from "../../src/colour/region.ts";
import { hexToLinear } from "../../src/colour/srgb.ts";
import { photographTile } from "./tiles.ts";

/** Paints of known colour, from white to black. */
const PAINTS = {
  white: "#e9e6dd",
  celadon: "#a8c0a6",
  "rutile blue": "#6f8fa8",
  ochre: "#b98a4b",
  "copper red": "#8c2f2c",
  tenmoku: "#33201a",
  black: "#1c1c1e",
};

function errorOf(pixels: Pixels, hex: string, crop?: Crop): number {
  return differenceCiede2000(measureColour(pixels, { crop }).lab, linearToLab(hexToLinear(hex)));
}

describe.each(Object.entries(PAINTS))("a tile of known paint: %s", (_, glaze) => {
  it("is measured within 2 without a reflection", () => {
    expect(errorOf(photographTile({ glaze }), glaze)).toBeLessThan(2);
  });

  it.each([
    ["that burns out", { half: 0.12, strength: 1 }],
    ["that is faint", { half: 0.12, strength: 0.25 }],
    ["over a third of what is measured", { half: 0.19, strength: 0.8 }],
  ])("is measured within 2 with a reflection %s", (_name, reflection) => {
    expect(errorOf(photographTile({ glaze, reflection }), glaze)).toBeLessThan(2);
  });

  it("is measured within 2 where the crop takes in bare clay and ground", () => {
    const pixels = photographTile({ glaze, half: 0.36, bareRim: 0.03 });
    expect(errorOf(pixels, glaze, [8, 2, 92, 98])).toBeLessThan(2);
  });

  it("is measured within 2 where the tile lies askew in its crop, with a reflection", () => {
    const plan = { glaze, half: 0.28, bareRim: 0.02, turned: 12 };
    const pixels = photographTile({ ...plan, reflection: { half: 0.08, strength: 0.9 } });
    expect(errorOf(pixels, glaze, [18, 8, 82, 92])).toBeLessThan(2);
  });
});

describe("the same tile from another file", () => {
  const plans = Object.entries(PAINTS).map(([name, glaze]) => ({
    name,
    plan: {
      glaze,
      stripes: { hex: "#c9a86a", share: 0.3 },
      reflection: { half: 0.1, strength: 1 },
    },
  }));

  it.each(plans)("is the same within 1 at half the size: $name", async ({ plan }) => {
    const whole = photographTile(plan, 640, 480);
    const half = await decode(open(whole).resize(320).png());
    expect(compare(whole, half)).toBeLessThan(1);
  });

  it.each(plans)("is the same within 1 at JPEG quality 70: $name", async ({ plan }) => {
    const whole = photographTile(plan);
    const jpeg = await decode(open(whole).jpeg({ quality: 70 }));
    expect(compare(whole, jpeg)).toBeLessThan(1);
  });
});

function open({ data, width, height }: Pixels) {
  return sharp(data, { raw: { width, height, channels: 3 } });
}

async function decode(image: ReturnType<typeof open>): Promise<Pixels> {
  const { data, info } = await sharp(await image.toBuffer())
    .raw()
    .toBuffer({ resolveWithObject: true });
  return { data, width: info.width, height: info.height };
}

function compare(one: Pixels, other: Pixels): number {
  return differenceCiede2000(measureColour(one).lab, measureColour(other).lab);
}

describe("what is measured", () => {
  it("is stated whole", () => {
    const plan = { glaze: "#6f8fa8", stripes: { hex: "#c9a86a", share: 0.25 } };
    expect(measureColour(photographTile(plan))).toMatchInlineSnapshot(`
      {
        "accepted": 1,
        "clipped": 0,
        "greyCard": null,
        "hex": "#86969c",
        "lab": [
          61.11,
          -4.51,
          -4.69,
        ],
        "name": "blue",
        "palette": [
          {
            "hex": "#6f8fa8",
            "share": 0.756,
          },
          {
            "hex": "#c9aa6a",
            "share": 0.244,
          },
        ],
        "spread": 13.13,
      }
    `);
  });

  it("is the same every time, and changes no pixel", () => {
    const pixels = photographTile({ glaze: "#8c2f2c", reflection: { half: 0.1, strength: 1 } });
    const before = Uint8Array.from(pixels.data);
    expect(measureColour(pixels)).toEqual(measureColour(pixels));
    expect(pixels.data).toEqual(before);
  });

  it("has the colours of a lively glaze in its palette, by share", () => {
    const plan = { glaze: "#6f8fa8", stripes: { hex: "#c9a86a", share: 0.25 } };
    const { palette, spread } = measureColour(photographTile(plan));
    expect(palette.map(({ share }) => share)).toEqual([
      expect.closeTo(0.75, 1),
      expect.closeTo(0.25, 1),
    ]);
    const wanted = ["#6f8fa8", "#c9a86a"];
    palette.forEach(({ hex }, at) => {
      const truth = linearToLab(hexToLinear(wanted[at] ?? ""));
      expect(differenceCiede2000(linearToLab(hexToLinear(hex)), truth)).toBeLessThan(2);
    });
    expect(spread).toBeGreaterThan(5);
    expect(measureColour(photographTile({ glaze: "#6f8fa8" })).spread).toBeLessThan(2);
  });

  it("leaves a lively glaze's own light parts in", () => {
    const plan = { glaze: "#3d4f5c", stripes: { hex: "#c8d2d6", share: 0.35 } };
    expect(measureColour(photographTile(plan)).accepted).toBeGreaterThan(0.95);
  });

  it("is put right by a grey card", () => {
    const pixels = photographTile({ glaze: "#8f6a45" });
    for (let at = 0; at < pixels.data.length; at += 3) {
      pixels.data[at + 2] = (pixels.data[at + 2] ?? 0) * 0.75;
    }
    const { width } = pixels;
    for (let y = 5; y < 20; y++) {
      for (let x = 5; x < 25; x++) pixels.data.set([119, 119, 89], (y * width + x) * 3);
    }
    const grey: Crop = [2, 3, 7, 7];
    const truth = linearToLab(hexToLinear("#8f6a45"));
    const corrected = measureColour(pixels, { grey });
    expect(corrected.greyCard).toMatchObject({ used: true });
    expect(differenceCiede2000(corrected.lab, truth)).toBeLessThan(3);
    expect(differenceCiede2000(measureColour(pixels).lab, truth)).toBeGreaterThan(4);
  });

  it("says that a grey card was of no use, and is then measured as it is", () => {
    const pixels = photographTile({ glaze: "#8f6a45" });
    pixels.data.fill(255, 0, 320 * 3 * 20);
    const { greyCard, lab } = measureColour(pixels, { grey: [2, 2, 6, 6] });
    expect(greyCard).toEqual({ used: false, because: "burnt-out" });
    expect(lab).toEqual(measureColour(pixels).lab);
  });

  it("tells how much of the glaze is clipped", () => {
    expect(measureColour(photographTile({ glaze: "#ff3010", noise: 0 })).clipped).toBeGreaterThan(
      0.9,
    );
    expect(measureColour(photographTile({ glaze: "#8f6a45" })).clipped).toBe(0);
  });

  test.prop([fc.uint8Array({ minLength: 48, maxLength: 768 })], { numRuns: 60 })(
    "is a colour whatever the pixels are",
    (bytes) => {
      const height = Math.floor(bytes.length / 12);
      const pixels = { data: bytes, width: 4, height };
      const { lab, spread, accepted, palette } = measureColour(pixels, { grey: [0, 0, 50, 50] });
      expect([...lab, spread, accepted].every(Number.isFinite)).toBe(true);
      expect(accepted).toBeGreaterThan(0);
      const shares = palette.reduce((sum, { share }) => sum + share, 0);
      expect(shares).toBeCloseTo(1, 2);
    },
  );

  it("is something even of a picture that is white all over, or one pixel large", () => {
    const white = { data: new Uint8Array(300).fill(255), width: 10, height: 10 };
    expect(measureColour(white)).toMatchObject({ hex: "#ffffff", accepted: 1, clipped: 1 });
    const pixel = { data: Uint8Array.from([140, 70, 30]), width: 1, height: 1 };
    expect(measureColour(pixel, { crop: [99, 99, 100, 100] })).toMatchObject({ hex: "#8c461e" });
  });
});
