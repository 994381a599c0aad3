import { readFileSync } from "node:fs";
import { join } from "node:path";
import { crc32, deflateSync } from "node:zlib";
import sharp, { type Sharp } from "sharp";
import { readLocations } from "../../src/photos/containers/heif-items.ts";
import { findBox, parseBoxes } from "../../src/photos/containers/isobmff.ts";
import type { PictureFormat } from "../../src/photos/format.ts";
import { inspectPicture } from "../../src/photos/inspect.ts";
import type { Pixels } from "../../src/photos/pixels.ts";
import {
  buildPlantedExif,
  buildPlantedXmp,
  buildTiff,
  type Directory,
  long,
  PLANTED,
  short,
} from "./exif-block.ts";

export const FORMATS: PictureFormat[] = ["avif", "heic", "jpeg", "png", "tiff", "webp"];

/**
 * HEIC cannot be written here, so two small ones are kept. Both show four fields: #a0522d, #466e8c
 * above #c8bea0, #3c5a3c. `place-turned.heic` is in Display P3, turned by its `irot` property (90°
 * anticlockwise, added by hand), with EXIF and XMP that give place, device, serial and owner. They
 * were made with libheif's example encoder and ExifTool.
 */
export function readFixture(name: "place-turned.heic" | "plain.heic"): Buffer {
  return readFileSync(join(import.meta.dirname, "fixtures", name));
}

/** A tile with a fine stamped pattern on grey ground: sharp edges, nothing burnt out. */
export function paintTile(width: number, height: number): Pixels {
  const data = new Uint8Array(width * height * 3);
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      data.set(colourAt(x / width, y / height, (x >> 3) + (y >> 3)), (y * width + x) * 3);
    }
  }
  return { data, width, height };
}

function colourAt(x: number, y: number, check: number): [number, number, number] {
  const isTile = x > 0.15 && x < 0.85 && y > 0.15 && y < 0.85;
  if (!isTile) return [150, 150, 148];
  return check % 2 === 0 ? [70, 110, 140] : [110, 140, 160];
}

export function openPixels({ data, width, height }: Pixels): Sharp {
  return sharp(data, { raw: { width, height, channels: 3 } });
}

/** One picture in a format, with no metadata. */
export async function encodeTile(
  format: PictureFormat,
  { width = 240, height = 160 } = {},
): Promise<Buffer> {
  if (format === "heic") return readFixture("plain.heic");
  const picture = openPixels(paintTile(width, height));
  if (format === "tiff") return picture.tiff({ compression: "none" }).toBuffer();
  return picture.toFormat(format, { quality: 90 }).toBuffer();
}

/** One picture in a format that gives away place, device, serial number and owner. */
export async function encodePlanted(format: PictureFormat): Promise<Buffer> {
  if (format === "heic") return readFixture("place-turned.heic");
  if (format === "avif") return encodePlantedAvif();
  const plain = await encodeTile(format);
  const [exif, xmp] = [buildPlantedExif(), Buffer.from(buildPlantedXmp())];
  if (format === "jpeg") return addJpegMetadata(plain, exif, xmp);
  if (format === "png")
    return addPngChunks(plain, [
      ["eXIf", exif],
      ["iTXt", xmpText(xmp)],
    ]);
  if (format === "webp") return addWebpMetadata(plain, exif, xmp);
  return encodePlantedTiff();
}

/** A HEIC that says its notes stand where, in truth, its description of the picture does. */
export async function encodeOddHeic(): Promise<Buffer> {
  const heic = Buffer.from(await encodePlanted("heic"));
  const start = locationsOf(heic).at(-1)?.extents[0]?.start ?? 0;
  const written = Buffer.alloc(4);
  written.writeUInt32BE(start);
  heic.writeUInt32BE(start - 230, heic.indexOf(written));
  return heic;
}

/** Two pictures in one file. */
export async function encodePages(format: "tiff" | "webp"): Promise<Buffer> {
  const pages = await Promise.all(
    [openPixels(paintTile(24, 16)), openPixels(paintTile(24, 16)).negate()].map((page) =>
      page.png().toBuffer(),
    ),
  );
  return sharp(pages, { join: { animated: true } })
    .toFormat(format)
    .toBuffer();
}

/** Where the items of an AVIF or HEIC lie. */
export function locationsOf(bytes: Buffer) {
  const meta = findBox(parseBoxes(bytes, 0, bytes.length).parts, "meta");
  const iloc = meta && findBox(parseBoxes(bytes, meta.bodyStart + 4, meta.end).parts, "iloc");
  return iloc ? readLocations(bytes, iloc).locations : [];
}

function encodePlantedAvif(): Promise<Buffer> {
  return openPixels(paintTile(240, 160))
    .withExif({
      IFD0: { Make: PLANTED.make, Model: PLANTED.model, ImageDescription: PLANTED.thumbnail },
      IFD2: { CameraOwnerName: PLANTED.owner, BodySerialNumber: PLANTED.serial },
      IFD3: {
        GPSLatitudeRef: "N",
        GPSLatitude: `51/1 30/1 ${PLANTED.seconds.join("/")}`,
        GPSLongitudeRef: "W",
        GPSLongitude: "0/1 7/1 0/1",
      },
    })
    .avif({ quality: 60, effort: 0 })
    .toBuffer();
}

/** EXIF and XMP in segments of their own after the start of the image. */
export function addJpegMetadata(jpeg: Buffer, exif?: Buffer, xmp?: Buffer): Buffer {
  const segments: Buffer[] = [];
  if (exif) segments.push(jpegSegment(0xe1, Buffer.concat([Buffer.from("Exif\0\0"), exif])));
  if (xmp) {
    const heading = Buffer.from("http://ns.adobe.com/xap/1.0/\0");
    segments.push(jpegSegment(0xe1, Buffer.concat([heading, xmp])));
  }
  return Buffer.concat([jpeg.subarray(0, 2), ...segments, jpeg.subarray(2)]);
}

export function jpegSegment(marker: number, body: Buffer): Buffer {
  const head = Buffer.from([0xff, marker, 0, 0]);
  head.writeUInt16BE(body.length + 2, 2);
  return Buffer.concat([head, body]);
}

const PNG_HEADER_END = 8 + 25;

/** Chunks straight after a PNG's header. */
export function addPngChunks(png: Buffer, chunks: [string, Buffer][]): Buffer {
  const added = chunks.map(([name, body]) => pngChunk(name, body));
  return Buffer.concat([png.subarray(0, PNG_HEADER_END), ...added, png.subarray(PNG_HEADER_END)]);
}

export function pngChunk(name: string, body: Buffer): Buffer {
  const named = Buffer.concat([Buffer.from(name, "latin1"), body]);
  const chunk = Buffer.alloc(named.length + 8);
  chunk.writeUInt32BE(body.length, 0);
  named.copy(chunk, 4);
  chunk.writeUInt32BE(crc32(named), named.length + 4);
  return chunk;
}

/** The body of an international text chunk, packed or not. */
export function xmpText(xmp: Buffer, { packed = false } = {}): Buffer {
  const heading = `XML:com.adobe.xmp\0${packed ? "\x01" : "\0"}\0\0\0`;
  return Buffer.concat([Buffer.from(heading, "latin1"), packed ? deflateSync(xmp) : xmp]);
}

/** An extended WebP around the simple one's picture. */
export function addWebpMetadata(webp: Buffer, exif?: Buffer, xmp?: Buffer): Buffer {
  const { width, height } = { width: 240, height: 160 };
  const extended = Buffer.alloc(10);
  extended[0] = (exif ? 0x08 : 0) + (xmp ? 0x04 : 0);
  extended.writeUIntLE(width - 1, 4, 3);
  extended.writeUIntLE(height - 1, 7, 3);
  const body = Buffer.concat([
    Buffer.from("WEBP"),
    webpChunk("VP8X", extended),
    webp.subarray(12),
    ...(exif ? [webpChunk("EXIF", exif)] : []),
    ...(xmp ? [webpChunk("XMP ", xmp)] : []),
  ]);
  return webpChunk("RIFF", body);
}

function webpChunk(name: string, body: Buffer): Buffer {
  const head = Buffer.from(`${name}\0\0\0\0`, "latin1");
  head.writeUInt32LE(body.length, 4);
  return Buffer.concat([head, body, Buffer.alloc(body.length % 2)]);
}

/** Chunks behind the picture of an extended WebP, whose flags tell of none. */
export function addWebpChunks(webp: Buffer, chunks: [string, Buffer][]): Buffer {
  const plain = addWebpMetadata(webp);
  const added = chunks.map(([name, body]) => webpChunk(name, body));
  return webpChunk("RIFF", Buffer.concat([plain.subarray(8), ...added]));
}

/** A TIFF is itself an EXIF structure: the picture's tags stand among the others. */
function encodePlantedTiff(): Buffer {
  return withPixels((tags) => buildPlantedExif(tags));
}

/** A TIFF with its picture, and what is to stand beside it. */
export function encodePlainTiff(
  beside: { more?: Directory; gps?: Directory; next?: Directory } = {},
): Buffer {
  const { more = new Map(), gps, next } = beside;
  return withPixels((tags) => buildTiff(new Map([...tags, ...more]), undefined, gps, next));
}

function withPixels(build: (tags: Directory) => Buffer): Buffer {
  const { data, width, height } = paintTile(240, 160);
  const at = (pixelsAt: number) =>
    build(
      new Map([
        [256, long(width)],
        [257, long(height)],
        [258, short(8, 8, 8)],
        [259, short(1)],
        [262, short(2)],
        [273, long(pixelsAt)],
        [277, short(3)],
        [278, long(height)],
        [279, long(data.length)],
      ]),
    );
  return Buffer.concat([at(at(0).length), data]);
}

/** A PNG of one bit a pixel, all black: many megapixels in few bytes. */
export function encodeVastPng(width: number, height: number): Buffer {
  const header = Buffer.alloc(13);
  header.writeUInt32BE(width, 0);
  header.writeUInt32BE(height, 4);
  header[8] = 1;
  const rows = deflateSync(Buffer.alloc(height * (1 + Math.ceil(width / 8))), { level: 1 });
  return Buffer.concat([
    Buffer.from("\x89PNG\r\n\x1a\n", "latin1"),
    pngChunk("IHDR", header),
    pngChunk("IDAT", rows),
    pngChunk("IEND", Buffer.alloc(0)),
  ]);
}

/** What a photograph gives away. */
export async function tracesOf(bytes: Uint8Array): Promise<readonly string[]> {
  const inspection = await inspectPicture(bytes);
  if ("fault" in inspection) throw new Error(inspection.fault.message);
  return inspection.facts.traces;
}
