import { deflateSync } from "node:zlib";
import { describe, expect, it } from "vitest";
import { buildPlantedExif, buildPlantedXmp } from "./exif-block.ts";
import {
  addJpegMetadata,
  addPngChunks,
  addWebpMetadata,
  encodePlanted,
  encodeTile,
  FORMATS,
  tracesOf,
  xmpText,
} from "./pictures.ts";

const EVERYTHING = ["device", "notes", "owner", "place", "serial"];

describe("what a photograph gives away", () => {
  it.each(FORMATS)("is nothing in a plain %s", async (format) => {
    expect(await tracesOf(await encodeTile(format))).toEqual([]);
  });

  it.each(FORMATS)("is found in a %s from a phone", async (format) => {
    expect(await tracesOf(await encodePlanted(format))).toEqual(EVERYTHING);
  });

  it("is found where XMP alone tells it", async () => {
    const xmp = Buffer.from(buildPlantedXmp());
    const jpeg = addJpegMetadata(await encodeTile("jpeg"), undefined, xmp);
    const webp = addWebpMetadata(await encodeTile("webp"), undefined, xmp);
    const png = addPngChunks(await encodeTile("png"), [["iTXt", xmpText(xmp, { packed: true })]]);
    for (const [format, bytes] of Object.entries({ jpeg, png, webp })) {
      expect(await tracesOf(bytes), format).toEqual(["notes", "place", "serial"]);
    }
  });

  it("is found where an older program packed EXIF into a PNG's text", async () => {
    const exif = Buffer.concat([Buffer.from("Exif\0\0"), buildPlantedExif()]);
    const profile = `\nexif\n${exif.length}\n${exif.toString("hex").replace(/.{72}/g, "$&\n")}\n`;
    const text = Buffer.concat([
      Buffer.from("Raw profile type exif\0\0", "latin1"),
      deflateSync(Buffer.from(profile)),
    ]);
    const png = addPngChunks(await encodeTile("png"), [["zTXt", text]]);
    expect(await tracesOf(png)).toEqual(EVERYTHING);
  });

  it("is found in a second picture after the first one's end", async () => {
    const second = addJpegMetadata(await encodeTile("jpeg"), buildPlantedExif());
    const both = Buffer.concat([await encodeTile("jpeg"), second]);
    expect(await tracesOf(both)).toEqual(EVERYTHING);
  });

  it("is found in the film that a phone appends", async () => {
    const atom = Buffer.from("\0\0\0\x1e\xa9xyz\0\x12\x15\xc7+51.5000-000.1166/", "latin1");
    const jpeg = Buffer.concat([await encodeTile("jpeg"), atom]);
    expect(await tracesOf(jpeg)).toEqual(["notes", "place"]);
  });

  it("is no place where XMP names the property but leaves it empty", async () => {
    const xmp = Buffer.from(`<rdf:Description exif:GPSLatitude="" aux:SerialNumber=" "/>`);
    const jpeg = addJpegMetadata(await encodeTile("jpeg"), undefined, xmp);
    expect(await tracesOf(jpeg)).toEqual(["notes"]);
  });
});
