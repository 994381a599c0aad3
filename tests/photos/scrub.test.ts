import { fc, test } from "@fast-check/vitest";
import sharp from "sharp";
import { describe, expect, it, vi } from "vitest";
import { decodeLargest } from "../../src/photos/decode.ts";
import type { PictureFormat } from "../../src/photos/format.ts";
import { inspectPicture } from "../../src/photos/inspect.ts";
import { scrubPicture } from "../../src/photos/scrub/scrub.ts";
import {
  buildOrientationExif,
  buildPlantedExif,
  buildPlantedXmp,
  PLANTED,
  text,
} from "./exif-block.ts";
import {
  addJpegMetadata,
  addPngChunks,
  addWebpMetadata,
  encodeOddHeic,
  encodePages,
  encodePlainTiff,
  encodePlanted,
  encodeTile,
  FORMATS,
  jpegSegment,
  openPixels,
  paintTile,
  tracesOf,
} from "./pictures.ts";
import { findSecrets } from "./secrets.ts";

vi.setConfig({ testTimeout: 60_000 });

const planted = new Map<PictureFormat, Promise<Buffer>>();

/** Coding an AVIF takes a while, so hundreds of tries share one. */
function plantedOnce(format: PictureFormat): Promise<Buffer> {
  const coded = planted.get(format) ?? encodePlanted(format);
  planted.set(format, coded);
  return coded;
}

async function scrubbed(bytes: Uint8Array) {
  const result = await scrubPicture(bytes);
  if (result.outcome !== "scrubbed") throw new Error(result.outcome);
  return result;
}

async function pixelsOf(bytes: Uint8Array, format: PictureFormat) {
  const decoded = await decodeLargest(bytes, format);
  if ("fault" in decoded) throw new Error(decoded.fault.message);
  return decoded.pixels;
}

// ITU-T T.871, section 10.1: what almost every JPEG begins with; from the standard's text.
it("a JPEG's own head, as most programs write it, is no note: it stays, and nothing is told", async () => {
  const bare = await encodeTile("jpeg");
  const jfif = Buffer.from("JFIF\0\x01\x02\x01\0\x48\0\x48\0\0", "latin1");
  const headed = Buffer.concat([bare.subarray(0, 2), jpegSegment(0xe0, jfif), bare.subarray(2)]);
  expect(await scrubPicture(headed)).toEqual({ outcome: "clean" });
  expect(await tracesOf(headed)).toEqual([]);
});

describe("a photograph that gives something away", () => {
  it.each(FORMATS)("gives nothing away after scrubbing: %s", async (format) => {
    const { bytes, removed } = await scrubbed(await encodePlanted(format));
    expect(removed).toEqual(["device", "notes", "owner", "place", "serial"]);
    expect(await inspectPicture(bytes)).toMatchObject({ facts: { format, traces: [] } });
    const secrets = [...Object.values(PLANTED), "Oxbowcam", "SN-12345", "OWNER-M07", "GPSLatitude"];
    for (const secret of secrets.filter((one) => typeof one === "string")) {
      expect(Buffer.from(bytes).includes(secret), secret).toBe(false);
    }
  });

  it.each(FORMATS)("is the same picture to the last bit: %s", async (format) => {
    const planted = await encodePlanted(format);
    const { bytes } = await scrubbed(planted);
    expect(await pixelsOf(bytes, format)).toEqual(await pixelsOf(planted, format));
  });

  it.each(FORMATS)("is clean when it is looked at again: %s", async (format) => {
    const { bytes } = await scrubbed(await encodePlanted(format));
    expect(await scrubPicture(bytes)).toEqual({ outcome: "clean" });
  });
});

describe("what a picture needs stays", () => {
  it("its way up", async () => {
    const xmp = Buffer.from(buildPlantedXmp());
    const exif = buildOrientationExif(6);
    const turned: Partial<Record<PictureFormat, Buffer>> = {
      jpeg: addJpegMetadata(await encodeTile("jpeg"), exif, xmp),
      png: addPngChunks(await encodeTile("png"), [
        ["eXIf", exif],
        ["tEXt", Buffer.concat([Buffer.from("XML:com.adobe.xmp\0"), xmp])],
      ]),
      webp: addWebpMetadata(await encodeTile("webp"), exif, xmp),
    };
    for (const [format, planted] of Object.entries(turned)) {
      const { bytes, removed } = await scrubbed(planted);
      expect(removed, format).toContain("place");
      expect((await sharp(bytes).metadata()).orientation, format).toBe(6);
      expect(await inspectPicture(bytes)).toMatchObject({
        facts: { width: 160, height: 240, traces: [] },
      });
    }
  });

  it("its colour profile", async () => {
    const exif = { IFD3: { GPSLatitude: "51/1 30/1 0/1", GPSLatitudeRef: "N" } };
    for (const format of ["avif", "jpeg", "png", "webp"] as const) {
      const planted = await openPixels(paintTile(240, 160))
        .withIccProfile("p3")
        .withExif(exif)
        .toFormat(format)
        .toBuffer();
      const { bytes } = await scrubbed(planted);
      expect((await sharp(bytes).metadata()).icc, format).toBeDefined();
      expect(await pixelsOf(bytes, format)).toEqual(await pixelsOf(planted, format));
    }
  });

  it("the sixteen bits and the wide colours of a TIFF", async () => {
    const deep = await openPixels(paintTile(240, 160))
      .withIccProfile("p3")
      .toColourspace("rgb16")
      .withXmp(buildPlantedXmp())
      .tiff({ compression: "none" })
      .toBuffer();
    const { bytes } = await scrubbed(deep);
    expect(await sharp(bytes).metadata()).toMatchObject({ depth: "ushort", space: "rgb16" });
    const samplesOf = (file: Uint8Array) => sharp(file).raw({ depth: "ushort" }).toBuffer();
    expect((await samplesOf(bytes)).equals(await samplesOf(deep))).toBe(true);
  });
});

describe("what follows a picture's end goes", () => {
  it("a second picture with its own place, and a film", async () => {
    const second = addJpegMetadata(await encodeTile("jpeg"), buildPlantedExif());
    const film = Buffer.from("\0\0\0\x1e\xa9xyz\0\x12\x15\xc7+51.5000-000.1166/", "latin1");
    const plain = await encodeTile("jpeg");
    const { bytes } = await scrubbed(Buffer.concat([plain, second, film]));
    expect(bytes).toHaveLength(plain.length);
  });

  it("remarks and what programs noted", async () => {
    const jpeg = addJpegMetadata(await encodeTile("jpeg"), buildPlantedExif());
    const noted = Buffer.concat([
      jpeg.subarray(0, 2),
      jpegSegment(0xfe, Buffer.from("taken at home")),
      jpegSegment(0xed, Buffer.from("Photoshop 3.0\0 at home")),
      jpeg.subarray(2),
    ]);
    expect(Buffer.from((await scrubbed(noted)).bytes).includes("at home")).toBe(false);
  });
});

describe("an AVIF or HEIC is scrubbed by what its picture needs", () => {
  it("whatever its notes say of where they stand", async () => {
    const odd = await encodeOddHeic();
    const { bytes } = await scrubbed(odd);
    expect(findSecrets(bytes)).toEqual([]);
    expect(await pixelsOf(bytes, "heic")).toEqual(await pixelsOf(odd, "heic"));
  });

  it("and a film behind it goes", async () => {
    const film = Buffer.from("\0\0\0\x1e\xa9xyz\0\x12\x15\xc7+51.5000-000.1166/", "latin1");
    const { bytes, removed } = await scrubbed(Buffer.concat([await encodeTile("heic"), film]));
    expect(removed).toEqual(["notes", "place"]);
    expect(Buffer.from(bytes).equals(await encodeTile("heic"))).toBe(true);
  });
});

describe("what cannot be scrubbed is said", () => {
  it("a photograph that gives nothing away is left alone", async () => {
    for (const format of FORMATS) {
      expect(await scrubPicture(await encodeTile(format))).toEqual({ outcome: "clean" });
    }
  });

  it("a file that is no photograph is a fault", async () => {
    expect(await scrubPicture(Buffer.from("text"))).toMatchObject({
      outcome: "fault",
      fault: { code: "picture-not-readable" },
    });
  });

  it("a file with several pictures, none of which may be lost", async () => {
    const apng = addPngChunks(await encodeTile("png"), [["acTL", Buffer.alloc(8)]]);
    for (const bytes of [apng, await encodePages("tiff"), await encodePages("webp")]) {
      expect(await tracesOf(bytes)).toEqual(["notes"]);
      expect(await scrubPicture(bytes)).toEqual({
        outcome: "fault",
        fault: {
          code: "picture-not-scrubbed",
          message:
            "More than one picture is in the file, or it is built so that nothing can be taken out without risk to the picture.",
          hint: "Save it as JPEG without its location (phones offer that when sharing), and put that in its place.",
        },
      });
    }
  });

  it("a TIFF whose places are of a type that cannot hold them", async () => {
    const odd = Buffer.from(encodePlainTiff({ more: new Map([[270, text("at home")]]) }));
    const entry = Buffer.from([0x11, 1, 4, 0, 1, 0, 0, 0]); // StripOffsets: one long
    odd.writeUInt16LE(1, odd.indexOf(entry) + 2);
    odd.writeUInt32LE(4, odd.indexOf(Buffer.from([0x11, 1, 1, 0])) + 4);
    expect(await scrubPicture(odd)).toMatchObject({ outcome: "fault" });
  });

  test.prop(
    [
      fc.constantFrom<PictureFormat>("avif", "heic", "jpeg", "png", "tiff", "webp"),
      fc.array(fc.tuple(fc.nat({ max: 900 }), fc.integer({ min: 0, max: 255 })), { maxLength: 6 }),
    ],
    { numRuns: 90 },
  )(
    "a damaged head never throws, and never gives a scrubbed picture that is not the same",
    async (format, changes) => {
      const bytes = Buffer.from(await plantedOnce(format));
      for (const [at, byte] of changes) bytes[at % bytes.length] = byte;
      const result = await scrubPicture(bytes);
      if (result.outcome === "scrubbed") {
        expect(await inspectPicture(result.bytes)).toMatchObject({ facts: { format, traces: [] } });
        const [after, before] = [
          await pixelsOf(result.bytes, format),
          await pixelsOf(bytes, format),
        ];
        expect(Buffer.compare(after.data, before.data)).toBe(0);
      }
    },
  );
});
