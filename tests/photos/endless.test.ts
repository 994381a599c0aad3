/** Pictures made to cost endless time or memory. Each is refused in words, or read within its limits. */
import { deflateSync } from "node:zlib";
import { describe, expect, it, vi } from "vitest";
import { inspectPicture } from "../../src/photos/inspect.ts";
import {
  largestNotes,
  largestPicture,
  largestUnpacked,
  mostBoxes,
  mostChunks,
  mostSegments,
} from "../../src/terms/limits.ts";
import { addPngChunks, addWebpChunks, encodeTile, jpegSegment, tracesOf } from "./pictures.ts";

vi.setConfig({ testTimeout: 60_000 });

const [jpeg, png, webp, heic] = await Promise.all([
  encodeTile("jpeg"),
  encodeTile("png"),
  encodeTile("webp"),
  encodeTile("heic"),
]);

async function faultOf(bytes: Uint8Array): Promise<string> {
  const inspection = await inspectPicture(bytes);
  if ("facts" in inspection) throw new Error("no fault");
  const { code, message, hint } = inspection.fault;
  expect(hint).not.toBe("");
  return `${code}: ${message}`;
}

const refused = (what: string) =>
  `picture-too-much: The photograph's file holds more than ${what}, which no camera writes, so it was not read to its end.`;

const packed = (content: Buffer) =>
  Buffer.concat([Buffer.from("Comment\0\0"), deflateSync(content, { level: 1 })]);

describe("more than any studio's picture holds is refused", () => {
  it("a packed text that unpacks to more than the limit", async () => {
    const spaces = Buffer.alloc(largestUnpacked + 1, " ");
    const bytes = addPngChunks(png, [["zTXt", packed(spaces)]]);
    expect(await faultOf(bytes)).toBe(refused("16 MB of packed notes"));
  });

  it("many packed texts, each of them small enough", async () => {
    const chunk: [string, Buffer] = ["zTXt", packed(Buffer.alloc(largestUnpacked / 10, " "))];
    expect(await faultOf(addPngChunks(png, Array(300).fill(chunk)))).toBe(
      refused("16 MB of packed notes"),
    );
  });

  it("segments, chunks and boxes without end", async () => {
    const segments = Array(mostSegments).fill(jpegSegment(0xfe, Buffer.alloc(0)));
    const many = Buffer.concat([jpeg.subarray(0, 2), ...segments, jpeg.subarray(2)]);
    expect(await faultOf(many)).toBe(refused("4,000 segments"));
    const chunks = Array(mostChunks).fill(["teXt", Buffer.alloc(0)]);
    expect(await faultOf(addPngChunks(png, chunks))).toBe(refused("60,000 chunks"));
    expect(await faultOf(addWebpChunks(webp, chunks))).toBe(refused("60,000 chunks"));
    const box = Buffer.from("\0\0\0\x08free");
    expect(await faultOf(Buffer.concat([heic, ...Array(mostBoxes).fill(box)]))).toBe(
      refused("8,000 boxes"),
    );
  });

  it("passes over the picture without end", async () => {
    const scan = jpeg.indexOf(Buffer.from([0xff, 0xda]));
    const end = jpeg.subarray(-2);
    const pass = jpeg.subarray(scan, scan + 2 + jpeg.readUInt16BE(scan + 2));
    const large = Buffer.from(jpeg);
    const frame = large.indexOf(Buffer.from([0xff, 0xc0]));
    large.writeUInt16BE(10_000, frame + 5);
    large.writeUInt16BE(10_000, frame + 7);
    const many = Buffer.concat([large.subarray(0, scan), ...Array(25).fill(pass), end]);
    expect(await faultOf(many)).toBe(refused("24 passes for a picture of its size"));
  });

  it("a file larger than any picture's", async () => {
    const large = Buffer.concat([jpeg, Buffer.alloc(largestPicture)]);
    expect(await faultOf(large)).toMatch(/^picture-too-large: The photograph's file has 150 MB;/);
  });

  it("data beside the picture larger than any phone's film", async () => {
    expect(await faultOf(Buffer.concat([jpeg, Buffer.alloc(largestNotes + 1)]))).toBe(
      refused("40,000,000 bytes beside the picture itself"),
    );
  });
});

describe("what repeats without end is read in one go", () => {
  it.each([
    ["a film's key", "location.ISO6709", ["notes"]],
    ["the name of a property", "exif:GPS", ["notes"]],
    ["a property that is left empty", 'exif:GPSLatitude="" ', ["notes"]],
    ["the head of EXIF", "II*\0\x08\0\0\0", ["notes"]],
    ["a dataset's head", "\x1c\x02\x5a\x7f\xff", ["notes"]],
    ["digits", "1", ["notes"]],
    ["digits and full stops", "1.11111 ", ["place"]],
    ["signs and digits", "+1111.1-", ["notes"]],
    ["degrees", "51\xb030'1", ["notes"]],
    ["spaces", " ", ["notes"]],
  ])("%s", async (_, words, traces) => {
    const many = Buffer.from(words.repeat(4_000_000 / words.length), "latin1");
    expect(await tracesOf(Buffer.concat([jpeg, many]))).toEqual(expect.arrayContaining(traces));
    const hidden = addPngChunks(png, [["zTXt", packed(many)]]);
    expect(await tracesOf(hidden)).toEqual(expect.arrayContaining(traces));
  });

  it("directories of EXIF that lead to themselves and to each other", async () => {
    const exif = Buffer.alloc(60_000);
    exif.write("MM\0*", 0, "latin1");
    exif.writeUInt32BE(8, 4);
    for (let at = 8; at + 2 + 12 * 3 + 4 < exif.length; at += 42) {
      exif.writeUInt16BE(3, at);
      for (const [index, tag] of [0x8769, 0x8825, 0x014a].entries()) {
        const entry = at + 2 + index * 12;
        exif.writeUInt16BE(tag, entry);
        exif.writeUInt16BE(4, entry + 2);
        exif.writeUInt32BE(tag === 0x014a ? 0xffff : 1, entry + 4);
        exif.writeUInt32BE(8 + ((at * 7 + index) % 1000) * 42, entry + 8);
      }
      exif.writeUInt32BE(8, at + 38);
    }
    expect(await tracesOf(addPngChunks(png, [["eXIf", exif]]))).toContain("notes");
  });
});
