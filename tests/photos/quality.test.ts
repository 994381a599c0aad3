import { describe, expect, it } from "vitest";
import { decodeLargest, takeSample } from "../../src/photos/decode.ts";
import type { Pixels } from "../../src/photos/pixels.ts";
import { judgePicture } from "../../src/photos/quality.ts";
import { openPixels, paintTile } from "./pictures.ts";

const LARGE = { width: 4000, height: 3000 };

async function sampleOf(image: ReturnType<typeof openPixels>): Promise<Pixels> {
  const decoded = await decodeLargest(await image.jpeg({ quality: 92 }).toBuffer(), "jpeg");
  if ("fault" in decoded) throw new Error(decoded.fault.message);
  return takeSample(decoded.pixels);
}

function codesFor(sample: Pixels, size = LARGE): string[] {
  return judgePicture(size, sample).map((warning) => warning.code);
}

/** A smooth glossy tile on plain ground: nothing sharp in it but its outline. */
function paintSmoothTile(width: number, height: number): Pixels {
  const data = new Uint8Array(width * height * 3);
  for (let at = 0; at < width * height; at++) {
    const [x, y] = [(at % width) / width, Math.floor(at / width) / height];
    const isTile = x > 0.2 && x < 0.8 && y > 0.2 && y < 0.8;
    data.set(isTile ? [50 + 60 * x, 90 + 40 * y, 130] : [176, 174, 170], at * 3);
  }
  return { data, width, height };
}

/** Noise of a dim room, the same every time. */
function addNoise(pixels: Pixels, deviation: number): Pixels {
  let state = 12345;
  const next = () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
  const data = pixels.data.map((value) => {
    const normal = Math.sqrt(-2 * Math.log(next() + 1e-9)) * Math.cos(2 * Math.PI * next());
    return Math.max(0, Math.min(255, Math.round(value + normal * deviation)));
  });
  return { ...pixels, data };
}

describe("a usable photograph draws no warning", () => {
  it("a patterned tile", async () => {
    expect(codesFor(await sampleOf(openPixels(paintTile(2000, 1500))))).toEqual([]);
  });

  it("a smooth tile with sharp edges, with and without noise", async () => {
    const tile = paintSmoothTile(2000, 1500);
    expect(codesFor(await sampleOf(openPixels(tile)))).toEqual([]);
    expect(codesFor(await sampleOf(openPixels(addNoise(tile, 12))))).toEqual([]);
  });

  it("a tile on ground that is burnt out while the tile is not", () => {
    const tile = paintSmoothTile(640, 480);
    const data = tile.data.map((value) => (value >= 170 ? 255 : value));
    expect(codesFor({ ...tile, data })).toEqual([]);
  });

  it("a black tile on grey ground", () => {
    const tile = paintSmoothTile(640, 480);
    const data = tile.data.map((value) => (value >= 170 ? value : 18));
    expect(codesFor({ ...tile, data })).toEqual([]);
  });
});

describe("a photograph that can be taken better draws a warning", () => {
  it("blurred, with and without noise", async () => {
    const tile = paintSmoothTile(2000, 1500);
    expect(codesFor(await sampleOf(openPixels(tile).blur(6)))).toEqual(["picture-blurred"]);
    const blurred = await openPixels(tile).blur(6).raw().toBuffer();
    const noisy = addNoise({ ...tile, data: blurred }, 12);
    expect(codesFor(await sampleOf(openPixels(noisy)))).toEqual(["picture-blurred"]);
  });

  it("too dark", () => {
    const tile = paintTile(640, 480);
    expect(codesFor({ ...tile, data: tile.data.map((value) => value / 4) })).toEqual([
      "picture-dark",
    ]);
  });

  it("burnt out in the middle", () => {
    const tile = paintTile(640, 480);
    expect(codesFor({ ...tile, data: tile.data.map((value) => Math.min(255, value * 4)) })).toEqual(
      ["picture-burnt-out"],
    );
  });

  it("smaller than most screens show it, with what to do about it", () => {
    expect(judgePicture({ width: 900, height: 700 }, paintTile(640, 480))).toMatchInlineSnapshot(`
      [
        {
          "code": "picture-small",
          "hint": "Send the original, with at least 1000 pixels on its long side; messengers shrink pictures.",
          "message": "The photograph is small: 900 by 700 pixels.",
        },
      ]
    `);
  });
});
