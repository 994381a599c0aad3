import { fc, test } from "@fast-check/vitest";
import sharp from "sharp";
import { describe, expect, it } from "vitest";
import { inspectPicture } from "../../src/photos/inspect.ts";
import { buildOrientationExif } from "./exif-block.ts";
import { addJpegMetadata, encodeTile, encodeVastPng, FORMATS } from "./pictures.ts";

async function faultOf(bytes: Uint8Array) {
  const inspection = await inspectPicture(bytes);
  return "fault" in inspection ? inspection.fault : undefined;
}

describe("a photograph is known by its content", () => {
  it.each(FORMATS)("%s is told whatever the file is called", async (format) => {
    const size = format === "heic" ? { width: 96, height: 64 } : { width: 240, height: 160 };
    expect(await inspectPicture(await encodeTile(format))).toEqual({
      facts: { format, ...size, traces: [] },
    });
  });

  it("a picture on its side has the width and height that people see", async () => {
    const turned = addJpegMetadata(await encodeTile("jpeg"), buildOrientationExif(6));
    expect(await inspectPicture(turned)).toMatchObject({ facts: { width: 160, height: 240 } });
  });
});

describe("what is no photograph is refused in plain words", () => {
  it("an empty file", async () => {
    expect(await faultOf(new Uint8Array())).toMatchInlineSnapshot(`
      {
        "code": "picture-empty",
        "hint": "Copy it from the camera or phone again; if it stays so, take a new photograph.",
        "message": "The photograph is empty: the file holds 0 bytes.",
      }
    `);
  });

  it("an SVG that calls itself a JPEG, before any of it is drawn", async () => {
    const svg = `<?xml version="1.0"?><svg xmlns="http://www.w3.org/2000/svg"><image href="x.png"/></svg>`;
    expect(await faultOf(Buffer.from(svg))).toMatchInlineSnapshot(`
      {
        "code": "picture-not-readable",
        "hint": "Save it as JPEG (or PNG, WebP, AVIF, TIFF, HEIC) and put that in its place.",
        "message": "This is an SVG drawing, whatever its name says, and not a photograph that can be shown.",
      }
    `);
  });

  it.each([
    ["text", "Tidewrack over soot"],
    ["a web page", "<!DOCTYPE html><title>404</title>"],
    ["a GIF", "GIF89a\x01\0\x01\0\0\0\0"],
    ["a PDF document", "%PDF-1.7\n"],
    ["a film", "\0\0\0\x14ftypqt  \0\0\0\0qt  "],
    ["a file of a kind that is not known", "\0\x01\x02\x03"],
  ])("%s", async (what, content) => {
    const fault = await faultOf(Buffer.from(content, "latin1"));
    expect(fault?.message).toBe(
      `This is ${what}, whatever its name says, and not a photograph that can be shown.`,
    );
  });

  it("a picture of 300 megapixels, without unpacking it", async () => {
    const vast = encodeVastPng(20_000, 15_000);
    const before = process.memoryUsage().rss;
    expect(await faultOf(vast)).toMatchInlineSnapshot(`
      {
        "code": "picture-too-large",
        "hint": "Make it smaller, for example 4000 pixels wide, and put that in its place.",
        "message": "The photograph has 300 megapixels (20000 by 15000); at most 120 megapixels are opened.",
      }
    `);
    expect(process.memoryUsage().rss - before).toBeLessThan(50e6);
  });

  it("a picture whose head is cut off", async () => {
    for (const format of FORMATS) {
      const head = (await encodeTile(format)).subarray(0, 24);
      expect(await faultOf(head), format).toBeDefined();
    }
  });

  it.each(FORMATS.filter((format) => format !== "tiff"))(
    "a %s that breaks off in the middle",
    async (format) => {
      const whole = await encodeTile(format);
      const fault = await faultOf(whole.subarray(0, Math.floor(whole.length * 0.7)));
      expect(fault?.code).toBe("picture-cut-short");
    },
  );
});

describe("hostile bytes", () => {
  test.prop([fc.uint8Array({ maxLength: 400 })], { numRuns: 300 })("never throw", async (bytes) => {
    expect(Object.keys(await inspectPicture(bytes))).toHaveLength(1);
  });

  test.prop(
    [
      fc.constantFrom(...FORMATS),
      fc.array(fc.tuple(fc.nat({ max: 600 }), fc.integer({ min: 0, max: 255 })), { maxLength: 8 }),
    ],
    { numRuns: 200 },
  )("in a real picture's head never throw", async (format, changes) => {
    const bytes = Buffer.from(await encodeTile(format, { width: 32, height: 24 }));
    for (const [at, byte] of changes) bytes[at % bytes.length] = byte;
    expect(Object.keys(await inspectPicture(bytes))).toHaveLength(1);
  });

  it("no other loader of the picture library can be reached", async () => {
    await inspectPicture(await encodeTile("png"));
    const svg = Buffer.from(`<svg xmlns="http://www.w3.org/2000/svg" width="9" height="9"/>`);
    await expect(sharp(svg).metadata()).rejects.toThrow(/unsupported/);
  });
});
