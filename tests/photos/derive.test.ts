import sharp from "sharp";
import { describe, expect, it } from "vitest";
import { decodeLargest, takeSample } from "../../src/photos/decode.ts";
import { type DerivedFile, derivePictures } from "../../src/photos/derive.ts";
import type { PictureFormat } from "../../src/photos/format.ts";
import type { Pixels } from "../../src/photos/pixels.ts";
import { chooseWidths } from "../../src/photos/recipe.ts";
import { buildOrientationExif } from "./exif-block.ts";
import {
  addJpegMetadata,
  encodePlanted,
  encodeTile,
  FORMATS,
  openPixels,
  readFixture,
  tracesOf,
} from "./pictures.ts";
import { findSecrets } from "./secrets.ts";

async function filesOf(bytes: Uint8Array, format: PictureFormat): Promise<readonly DerivedFile[]> {
  const derived = await derivePictures(bytes, format);
  if ("fault" in derived) throw new Error(derived.fault.message);
  return derived.files;
}

async function pixelsOf(bytes: Uint8Array, format: PictureFormat): Promise<Pixels> {
  const decoded = await decodeLargest(bytes, format);
  if ("fault" in decoded) throw new Error(decoded.fault.message);
  return decoded.pixels;
}

function colourAt({ data, width, height }: Pixels, x: number, y: number): number[] {
  const at = (Math.floor(y * height) * width + Math.floor(x * width)) * 3;
  return [...data.subarray(at, at + 3)];
}

function expectNear(found: number[], wanted: number[], tolerance: number): void {
  const worst = Math.max(...wanted.map((value, index) => Math.abs(value - (found[index] ?? 999))));
  expect(worst, `${found} for ${wanted}`).toBeLessThanOrEqual(tolerance);
}

describe("the sizes made of a photograph", () => {
  it("are the listed widths in both formats, widest first, in the picture's proportions", async () => {
    const files = await filesOf(await encodeTile("jpeg", { width: 2400, height: 1600 }), "jpeg");
    expect(files.map(({ width, height, format }) => `${width}x${height} ${format}`)).toEqual([
      "2000x1333 webp",
      "2000x1333 jpeg",
      "1280x853 webp",
      "1280x853 jpeg",
      "640x427 webp",
      "640x427 jpeg",
      "320x214 webp",
      "320x214 jpeg",
    ]);
    for (const { bytes, format, width, height } of files) {
      expect(await sharp(bytes).metadata()).toMatchObject({ format, width, height });
    }
  });

  it("never enlarge it, and leave out a size that is hardly smaller", () => {
    expect(chooseWidths(2000)).toEqual([2000, 1280, 640, 320]);
    expect(chooseWidths(1290)).toEqual([1290, 640, 320]);
    expect(chooseWidths(200)).toEqual([200]);
  });

  it("keep a very tall picture within what WebP can hold", async () => {
    const tall = await sharp({
      create: { width: 400, height: 20_000, channels: 3, background: "#886644" },
    })
      .png()
      .toBuffer();
    const [largest] = await filesOf(tall, "png");
    expect(largest).toMatchObject({ width: 80, height: 4000 });
  });

  it("are the same bytes every time", async () => {
    const source = await encodeTile("webp");
    expect(await filesOf(source, "webp")).toEqual(await filesOf(source, "webp"));
  });
});

describe("what a photograph gives away", () => {
  it.each(FORMATS)("is in none of the pictures made of a %s", async (format) => {
    const planted = await encodePlanted(format);
    expect(await tracesOf(planted)).toContain("place");
    for (const { bytes } of await filesOf(planted, format)) {
      expect(await tracesOf(bytes)).toEqual([]);
      expect(findSecrets(bytes)).toEqual([]);
      const { exif, icc, iptc, orientation, xmp } = await sharp(bytes).metadata();
      expect([exif, icc, iptc, orientation, xmp]).toEqual(Array(5).fill(undefined));
    }
  });

  it.each(FORMATS)("was planted in the %s to begin with", async (format) => {
    expect(findSecrets(await encodePlanted(format)).length).toBeGreaterThanOrEqual(3);
  });
});

describe("decoding", () => {
  it("turns a picture the way up that it was taken", async () => {
    const source = await openPixels(paintFields()).png().toBuffer();
    const jpeg = await sharp(source).jpeg({ quality: 100 }).toBuffer();
    const turned = addJpegMetadata(jpeg, buildOrientationExif(6));
    const pixels = await pixelsOf(turned, "jpeg");
    expect([pixels.width, pixels.height]).toEqual([64, 96]);
    expectNear(colourAt(pixels, 0.75, 0.25), [160, 82, 45], 3);
  });

  it("turns a HEIC as its own turning says, and only once", async () => {
    const pixels = await pixelsOf(readFixture("place-turned.heic"), "heic");
    expect([pixels.width, pixels.height]).toEqual([64, 96]);
    expectNear(colourAt(pixels, 0.25, 0.25), [70, 110, 140], 2);
    expectNear(colourAt(pixels, 0.25, 0.75), [160, 82, 45], 2);
  });

  it.each(FORMATS.filter((format) => format !== "heic"))(
    "brings a wide-gamut %s to the colours of sRGB",
    async (format) => {
      const wide = openPixels(paintFields()).withIccProfile("p3");
      const lossless = { quality: 100, lossless: true, chromaSubsampling: "4:4:4" };
      const bytes = await wide.toFormat(format, lossless).toBuffer();
      expect((await sharp(bytes).metadata()).icc).toBeDefined();
      expectNear(colourAt(await pixelsOf(bytes, format), 0.25, 0.25), [160, 82, 45], 2);
    },
  );

  it("gives three channels of eight bits for grey, sixteen bits, four inks and opacity", async () => {
    const field = {
      create: { width: 40, height: 30, channels: 3 as const, background: "#a0522d" },
    };
    const clear = { r: 160, g: 82, b: 45, alpha: 0 };
    const sources: [Buffer, PictureFormat, number[], number][] = [
      [await sharp(field).toColourspace("b-w").png().toBuffer(), "png", [104, 104, 104], 3],
      [await sharp(field).toColourspace("rgb16").png().toBuffer(), "png", [160, 82, 45], 1],
      [await sharp(field).toColourspace("cmyk").jpeg().toBuffer(), "jpeg", [160, 82, 45], 30],
      [
        await sharp({ create: { ...field.create, channels: 4, background: clear } })
          .png()
          .toBuffer(),
        "png",
        [255, 255, 255],
        0,
      ],
    ];
    for (const [bytes, format, wanted, tolerance] of sources) {
      const pixels = await pixelsOf(bytes, format);
      expect(pixels.data).toHaveLength(40 * 30 * 3);
      expectNear(colourAt(pixels, 0.5, 0.5), wanted, tolerance);
    }
  });

  it("gives the sample that the sizes pass through on their way", async () => {
    const source = await encodeTile("jpeg", { width: 2400, height: 1600 });
    const derived = await derivePictures(source, "jpeg");
    const sample = await takeSample(await pixelsOf(source, "jpeg"));
    expect(derived).toHaveProperty("sample", sample);
    expect(sample.width).toBe(640);
  });

  it.each(FORMATS)("of a %s that breaks off is a fault", async (format) => {
    const whole = await encodeTile(format, { width: 600, height: 400 });
    const cut = whole.subarray(0, Math.floor(whole.length * 0.7));
    expect(await decodeLargest(cut, format)).toMatchObject({
      fault: { code: expect.stringMatching(/^picture-(cut-short|damaged)$/) },
    });
  });
});

/** Four fields, the upper left one #a0522d. */
function paintFields(): Pixels {
  const [width, height] = [96, 64];
  const data = new Uint8Array(width * height * 3);
  for (let at = 0; at < width * height; at++) {
    const isLeft = at % width < width / 2;
    const isUpper = at < (width * height) / 2;
    data.set(isLeft && isUpper ? [160, 82, 45] : [70, 110, 140], at * 3);
  }
  return { data, width, height };
}
