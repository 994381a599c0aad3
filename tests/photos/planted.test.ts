/** Whatever is planted beside a picture, wherever that may stand, is gone to the last byte. */
import { fc, test } from "@fast-check/vitest";
import { describe, expect, vi } from "vitest";
import { decodeLargest } from "../../src/photos/decode.ts";
import type { PictureFormat } from "../../src/photos/format.ts";
import { scrubPicture } from "../../src/photos/scrub/scrub.ts";
import { blob, buildTiff, text } from "./exif-block.ts";
import { addHeifItem } from "./heif-block.ts";
import {
  addPngChunks,
  addWebpChunks,
  encodePlainTiff,
  encodeTile,
  jpegSegment,
  tracesOf,
  xmpText,
} from "./pictures.ts";

vi.setConfig({ testTimeout: 120_000 });

const plain = {
  avif: await encodeTile("avif", { width: 24, height: 16 }),
  heic: await encodeTile("heic"),
  jpeg: await encodeTile("jpeg"),
  png: await encodeTile("png"),
  webp: await encodeTile("webp"),
};

type Plant = (secret: Buffer, number: number) => Buffer;

const jpegAfter = (at: number, ...segments: Buffer[]) =>
  Buffer.concat([plain.jpeg.subarray(0, at), ...segments, plain.jpeg.subarray(at)]);
const beforeScan = plain.jpeg.indexOf(Buffer.from([0xff, 0xda]));
const exifOf = (secret: Buffer) => buildTiff(new Map([[0x9c9b, blob(secret)]]));
const letters = (number: number) =>
  String.fromCharCode(...[0, 5, 10, 15].map((shift) => 0x61 + ((number >> shift) % 26)));

/** A chunk that need not be known, by the case of its letters (W3C PNG, section 5.4). */
const chunkName = (number: number) =>
  letters(number).replace(/^(..)(.)/, (_, two, third) => two + third.toUpperCase());

/** Tags that a picture's own directory has; any other may hold anything. */
const anyTag = (number: number) => 40_000 + (number % 20_000);

const plants: Readonly<Record<PictureFormat, readonly Plant[]>> = {
  jpeg: [
    (secret, number) => jpegAfter(2, jpegSegment(0xe0 + (number % 16), secret)),
    (secret, number) =>
      jpegAfter(beforeScan, jpegSegment([0xfe, 0xe7, 0xed][number % 3] ?? 0xfe, secret)),
    (secret) =>
      jpegAfter(2, jpegSegment(0xe1, Buffer.concat([Buffer.from("Exif\0\0"), exifOf(secret)]))),
    (secret) =>
      jpegAfter(
        2,
        jpegSegment(0xe2, Buffer.concat([Buffer.from("ICC_PROFILE\0\x01\x01"), secret])),
      ),
    (secret) =>
      jpegAfter(
        2,
        jpegSegment(0xee, Buffer.concat([Buffer.from("Adobe\0\x64\0\0\0\0\x01"), secret])),
      ),
    (secret) => jpegAfter(beforeScan, jpegSegment(0xdc, secret)),
    (secret) => Buffer.concat([plain.jpeg, secret]),
    (secret) => Buffer.concat([plain.jpeg, jpegAfter(2, jpegSegment(0xfe, secret))]),
  ],
  png: [
    (secret, number) => addPngChunks(plain.png, [[chunkName(number), secret]]),
    (secret) => addPngChunks(plain.png, [["iTXt", xmpText(secret)]]),
    (secret) => addPngChunks(plain.png, [["eXIf", exifOf(secret)]]),
    (secret) =>
      addPngChunks(plain.png, [
        ["pHYs", secret],
        ["bKGD", secret],
        ["iCCP", secret],
      ]),
    (secret) => Buffer.concat([plain.png, secret]),
  ],
  webp: [
    (secret, number) => addWebpChunks(plain.webp, [[letters(number), secret]]),
    (secret) =>
      addWebpChunks(plain.webp, [
        ["EXIF", exifOf(secret)],
        ["XMP ", secret],
      ]),
    (secret) => addWebpChunks(plain.webp, [["ICCP", secret]]),
    (secret) => Buffer.concat([plain.webp, secret]),
  ],
  tiff: [
    (secret, number) => encodePlainTiff({ more: new Map([[anyTag(number), blob(secret)]]) }),
    (secret) =>
      encodePlainTiff({
        more: new Map([
          [270, text(secret.toString("latin1"))],
          [34675, blob(secret)],
        ]),
      }),
    (secret) => encodePlainTiff({ gps: new Map([[0x1c, blob(secret)]]) }),
    (secret) => Buffer.concat([encodePlainTiff(), secret]),
  ],
  avif: heifPlants(plain.avif),
  heic: heifPlants(plain.heic),
};

function heifPlants(picture: Buffer): Plant[] {
  const box = (name: string, body: Buffer) => {
    const head = Buffer.from(`\0\0\0\0${name}`, "latin1");
    head.writeUInt32BE(body.length + 8, 0);
    return Buffer.concat([head, body]);
  };
  return [
    (secret, number) => addHeifItem(picture, letters(number), secret),
    (secret) => addHeifItem(picture, "Exif", secret),
    (secret) => addHeifItem(picture, "mime", secret),
    (secret, number) => Buffer.concat([picture, box(letters(number), secret)]),
    (secret) => Buffer.concat([picture, box("mdat", secret)]),
    (secret) => Buffer.concat([picture, secret]),
  ];
}

async function pixelsOf(bytes: Uint8Array, format: PictureFormat) {
  const decoded = await decodeLargest(bytes, format);
  if ("fault" in decoded) throw new Error(decoded.fault.message);
  return Buffer.from(decoded.pixels.data);
}

const secrets = fc
  .array(fc.integer({ min: 0x41, max: 0x5a }), { minLength: 8, maxLength: 200 })
  .map((codes) => Buffer.from(codes));

test("a chunk of a PNG that is shorter than it must be is no chunk, and what it holds goes", async () => {
  const secret = Buffer.from("AAAAAAAA");
  const scrubbing = await scrubPicture(addPngChunks(plain.png, [["pHYs", secret]]));
  if (scrubbing.outcome !== "scrubbed") throw new Error(scrubbing.outcome);
  expect(Buffer.from(scrubbing.bytes).includes(secret)).toBe(false);
});

describe.each([
  ["jpeg", 60],
  ["png", 40],
  ["webp", 40],
  ["tiff", 40],
  ["avif", 30],
  ["heic", 6],
] as const)("what is planted in a %s", (format, numRuns) => {
  test.prop([secrets, fc.nat({ max: 2 ** 20 }), fc.nat({ max: plants[format].length - 1 })], {
    numRuns,
  })(
    "is told, and gone to the last byte; the picture is the same",
    async (secret, number, which) => {
      const planted = plants[format][which]?.(secret, number) ?? secret;
      expect(await tracesOf(planted)).toContain("notes");
      const scrubbing = await scrubPicture(planted);
      if (scrubbing.outcome !== "scrubbed") throw new Error(JSON.stringify(scrubbing));
      const { bytes } = scrubbing;
      expect(Buffer.from(bytes).includes(secret)).toBe(false);
      expect(await scrubPicture(bytes)).toEqual({ outcome: "clean" });
      expect((await pixelsOf(bytes, format)).equals(await pixelsOf(planted, format))).toBe(true);
    },
  );
});
