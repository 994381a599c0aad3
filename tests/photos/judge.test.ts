import { mkdtemp, utimes, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import sharp from "sharp";
import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import * as decode from "../../src/photos/decode.ts";
import { judgePictures } from "../../src/photos/judge.ts";
import { preparePictures } from "../../src/photos/prepare.ts";
import { removeFolder } from "../support/remove-folder.ts";
import { encodeTile, FORMATS, openPixels, paintTile } from "./pictures.ts";

let root: string;
let cacheDir: string;

beforeEach(async () => {
  root = await mkdtemp(join(tmpdir(), "tilebook-judge-"));
  cacheDir = join(root, "cache");
});

afterEach(async () => {
  vi.restoreAllMocks();
  await removeFolder(root);
});

async function writeSource(name: string, bytes: Uint8Array) {
  const path = join(root, name);
  await writeFile(path, bytes);
  const before = new Date(Date.now() - 3_600_000);
  await utimes(path, before, before);
  return { key: name, path };
}

async function poorPictures() {
  const tile = openPixels(paintTile(1200, 900));
  const field = { create: { width: 600, height: 500, channels: 3, background: "#334" } } as const;
  const ground = { create: { width: 1200, height: 900, channels: 3, background: "#bbb" } } as const;
  const sharpField = await sharp(ground)
    .composite([{ input: field }])
    .png()
    .toBuffer();
  const blurred = sharp(sharpField).blur(8);
  const dark = openPixels(paintTile(1200, 900)).linear(0.2, 0);
  return [
    await writeSource("blurred.jpg", await blurred.jpeg().toBuffer()),
    await writeSource("dark.png", await dark.png().toBuffer()),
    await writeSource("good.jpg", await tile.jpeg({ quality: 92 }).toBuffer()),
    ...(await Promise.all(
      FORMATS.map(async (format) => writeSource(`small.${format}`, await encodeTile(format))),
    )),
  ];
}

const codesByKey = (judged: Awaited<ReturnType<typeof judgePictures>>) =>
  Object.fromEntries(
    judged.map((one) => [
      one.key,
      "fault" in one ? [one.fault.code] : one.warnings.map(({ code }) => code),
    ]),
  );

describe("photographs judged without making pictures", () => {
  it("are warned of for what their makers can do better", async () => {
    const codes = codesByKey(await judgePictures(await poorPictures(), { cacheDir }));
    expect(codes).toMatchObject({
      "blurred.jpg": ["picture-blurred"],
      "dark.png": ["picture-dark"],
      "good.jpg": [],
      "small.heic": ["picture-small"],
      "small.tiff": ["picture-small"],
    });
  });

  it("are judged as those are that are prepared, in every format", async () => {
    const sources = await poorPictures();
    const judged = await judgePictures(sources, { cacheDir });
    const prepared = await preparePictures(sources, { cacheDir: join(root, "another") });
    expect(judged.map((one) => "warnings" in one && one.warnings)).toEqual(
      prepared.map((one) => "picture" in one && one.picture.warnings),
    );
  });

  it("are opened once, and not at all where a build has prepared them", async () => {
    const sources = await poorPictures();
    const opened = vi.spyOn(decode, "decodeLargest");
    const first = await judgePictures(sources, { cacheDir });
    expect(opened).toHaveBeenCalledTimes(sources.length);
    expect(await judgePictures(sources, { cacheDir })).toEqual(first);
    expect(opened).toHaveBeenCalledTimes(sources.length);
    await preparePictures(sources, { cacheDir });
    opened.mockClear();
    expect(await judgePictures(sources, { cacheDir })).toEqual(first);
    expect(opened).not.toHaveBeenCalled();
  });

  it("are measured as well where that is asked for, on the same opening, and remembered", async () => {
    const source = await writeSource("tile.jpg", await encodeTile("jpeg"));
    const read = vi.fn(({ width }: { width: number }) => ({ width }));
    const sources = [{ ...source, reading: { id: "width", read } }];
    const opened = vi.spyOn(decode, "decodeLargest");
    for (const _ of ["opened", "remembered"])
      expect(await judgePictures(sources, { cacheDir })).toMatchObject([
        { key: "tile.jpg", reading: { width: 240 } },
      ]);
    expect(opened).toHaveBeenCalledTimes(1);
    expect(read).toHaveBeenCalledTimes(1);
    expect(await preparePictures(sources, { cacheDir })).toMatchObject([
      { picture: { reading: { width: 240 } } },
    ]);
  });

  it("are told of where damage lies so deep that only opening shows it", async () => {
    const bytes = await encodeTile("png", { width: 1200, height: 900 });
    const middle = Math.floor(bytes.length / 2);
    bytes.fill(0x55, middle, middle + 400);
    const source = await writeSource("damaged.png", bytes);
    for (const _ of ["opened", "remembered"])
      expect(codesByKey(await judgePictures([source], { cacheDir }))).toEqual({
        "damaged.png": ["picture-damaged"],
      });
  });
});
