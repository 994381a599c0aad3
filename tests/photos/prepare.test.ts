import { rename, stat } from "node:fs/promises";
import { join } from "node:path";
import { describe, expect, it, vi } from "vitest";
import type { Pixels } from "../../src/photos/pixels.ts";
import { type PictureSource, preparePictures } from "../../src/photos/prepare.ts";
import { openSeen } from "../../src/photos/seen.ts";
import { entryFolder } from "../../src/photos/store.ts";
import { encodePlanted, encodeTile } from "./pictures.ts";
import { prepareOne, settle, useWorkFolder, work, writeSource } from "./work-folder.ts";

useWorkFolder();

describe("a photograph made ready", () => {
  it("has its size, its average colour, its warnings and its files", async () => {
    const path = await writeSource("TB-014.jpg", await encodeTile("jpeg"));
    expect(await prepareOne({ key: "TB-014", path })).toEqual({
      format: "jpeg",
      width: 240,
      height: 160,
      traces: [],
      name: expect.stringMatching(/^[0-9a-f]{64}$/),
      placeholder: expect.stringMatching(/^#7[0-9a-f]8[0-9a-f]9[0-9a-f]$/),
      warnings: [expect.objectContaining({ code: "picture-small" })],
      files: [
        {
          width: 240,
          height: 160,
          format: "webp",
          file: expect.stringMatching(/^\w{12}-240.webp$/),
        },
        {
          width: 240,
          height: 160,
          format: "jpeg",
          file: expect.stringMatching(/^\w{12}-240.jpg$/),
        },
      ],
    });
  });

  it("has names that its content alone decides", async () => {
    const tile = await encodeTile("jpeg");
    const first = await prepareOne({ key: "a", path: await writeSource("a.jpg", tile) });
    const second = await prepareOne({ key: "b", path: await writeSource("b.png", tile) });
    const other = await encodeTile("jpeg", { width: 250, height: 160 });
    const third = await prepareOne({ key: "c", path: await writeSource("c.jpg", other) });
    expect(second.files).toEqual(first.files);
    expect(third.name).not.toBe(first.name);
  });

  it("is a fault where it cannot be used, and the others are made all the same", async () => {
    const cut = (await encodeTile("tiff")).subarray(0, 60_000);
    const sources = [
      { key: "empty", path: await writeSource("empty.jpg", "") },
      { key: "cut", path: await writeSource("cut.tif", cut) },
      { key: "good", path: await writeSource("good.png", await encodeTile("png")) },
    ];
    for (const _ of ["first", "again"]) {
      expect(await preparePictures(sources, { cacheDir: work.cacheDir })).toMatchObject([
        { key: "empty", fault: { code: "picture-empty" } },
        { key: "cut", fault: { code: "picture-damaged" } },
        { key: "good", picture: { format: "png" } },
      ]);
    }
  });

  it("that is missing makes the whole call fail, since the machine did", async () => {
    const gone = { key: "gone", path: join(work.root, "gone.jpg") };
    await expect(preparePictures([gone], { cacheDir: work.cacheDir })).rejects.toThrow("ENOENT");
  });

  it("is reported as it is done", async () => {
    const path = await writeSource("a.jpg", await encodeTile("jpeg"));
    const seen: string[] = [];
    await preparePictures(
      [
        { key: "a", path },
        { key: "b", path },
      ],
      {
        cacheDir: work.cacheDir,
        onProgress: ({ done, total }) => seen.push(`${done} of ${total}`),
      },
    );
    expect(seen).toEqual(["1 of 2", "2 of 2"]);
  });
});

describe("what is remembered", () => {
  it("is not made or measured again, even in another place", async () => {
    const read = vi.fn((pixels: Pixels) => ({ width: pixels.width }));
    const source = (path: string) => ({ key: "a", path, reading: { id: "width 1", read } });
    const path = await writeSource("a.jpg", await encodeTile("jpeg"));
    const first = await prepareOne(source(path));
    const made = await stat(entryFolder(work.cacheDir, first.name));
    await rename(path, join(work.root, "b.jpg"));
    expect(await prepareOne(source(join(work.root, "b.jpg")))).toEqual(first);
    expect(await stat(entryFolder(work.cacheDir, first.name))).toEqual(made);
    expect(first.reading).toEqual({ width: 240 });
    expect(read).toHaveBeenCalledTimes(1);
  });

  it("is measured again when something else is asked for, on the same pixels", async () => {
    const path = await writeSource(
      "a.jpg",
      await encodeTile("jpeg", { width: 2400, height: 1600 }),
    );
    const read = ({ data, width }: Pixels) => [width, ...data.subarray(3000, 3030)];
    const first = await prepareOne({ key: "a", path, reading: { id: "one", read } });
    const second = await prepareOne({ key: "a", path, reading: { id: "two", read } });
    expect(second.reading).toEqual(first.reading);
  });

  it("is found in less than three milliseconds of work a photograph", async () => {
    const tile = await encodeTile("jpeg", { width: 1400, height: 900 });
    const sources: PictureSource<never>[] = [];
    for (let index = 0; index < 30; index++) {
      const bytes = Buffer.concat([tile, Buffer.from(`${index}`)]);
      sources.push({ key: `${index}`, path: await writeSource(`${index}.jpg`, bytes) });
    }
    settle();
    const first = await preparePictures(sources, { cacheDir: work.cacheDir });
    const times: number[] = [];
    for (const _ of [1, 2, 3, 4, 5]) {
      const start = process.cpuUsage();
      expect(await preparePictures(sources, { cacheDir: work.cacheDir })).toEqual(first);
      const { user, system } = process.cpuUsage(start);
      times.push((user + system) / 1000 / sources.length);
    }
    expect(Math.min(...times)).toBeLessThan(3);
  });

  it("is not the old picture when a file changes but not its size or time", async () => {
    const [one, other] = [await encodeTile("tiff"), await encodeTile("tiff")];
    other.fill(40, other.length - 600, other.length - 400);
    const path = await writeSource("a.tif", one);
    settle();
    const first = await prepareOne({ key: "a", path });
    await writeSource("a.tif", other);
    expect((await prepareOne({ key: "a", path })).name).not.toBe(first.name);
  });

  it("lets a photograph be inspected without reading it again", async () => {
    const path = await writeSource("a.jpg", await encodePlanted("jpeg"));
    settle();
    const seen = await openSeen(work.cacheDir);
    const first = await seen.look(path);
    expect(first.inspection).toMatchObject({
      facts: { traces: expect.arrayContaining(["place"]) },
    });
    expect(first.bytes).toBeDefined();
    await seen.save();
    const again = await (await openSeen(work.cacheDir)).look(path);
    expect(again.bytes).toBeUndefined();
    expect(again.inspection).toEqual(first.inspection);
  });
});
