import { spawn } from "node:child_process";
import { existsSync } from "node:fs";
import {
  mkdir,
  mkdtemp,
  readdir,
  readFile,
  rename,
  rm,
  stat,
  utimes,
  writeFile,
} from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import type { Pixels } from "../../src/photos/pixels.ts";
import { placePictures } from "../../src/photos/place.ts";
import { type Picture, type PictureSource, preparePictures } from "../../src/photos/prepare.ts";
import { prunePictures } from "../../src/photos/prune.ts";
import { inspectPictures } from "../../src/photos/seen.ts";
import { entryFolder, readEntry } from "../../src/photos/store.ts";
import { encodePlanted, encodeTile } from "./pictures.ts";

let root: string;
let cacheDir: string;

beforeEach(async () => {
  root = await mkdtemp(join(tmpdir(), "tilebook-photos-"));
  cacheDir = join(root, "cache");
});

afterEach(async () => {
  vi.useRealTimers();
  await rm(root, { recursive: true, force: true });
});

/** Writes a source as if some time ago, so that it counts as settled. */
async function writeSource(name: string, bytes: Uint8Array | string): Promise<string> {
  const path = join(root, name);
  await writeFile(path, bytes);
  const before = new Date(Date.now() - 3_600_000);
  await utimes(path, before, before);
  return path;
}

/** A file changed just now is not trusted by its time, so the clock is put forward. */
function settle(): void {
  vi.useFakeTimers({ toFake: ["Date"], now: Date.now() + 60_000 });
}

async function prepareOne<Value>(source: PictureSource<Value>): Promise<Picture<Value>> {
  const [prepared] = await preparePictures([source], { cacheDir });
  if (!prepared || "fault" in prepared) throw new Error("no picture");
  return prepared.picture;
}

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
      expect(await preparePictures(sources, { cacheDir })).toMatchObject([
        { key: "empty", fault: { code: "picture-empty" } },
        { key: "cut", fault: { code: "picture-damaged" } },
        { key: "good", picture: { format: "png" } },
      ]);
    }
  });

  it("that is missing makes the whole call fail, since the machine did", async () => {
    const gone = { key: "gone", path: join(root, "gone.jpg") };
    await expect(preparePictures([gone], { cacheDir })).rejects.toThrow("ENOENT");
  });

  it("is reported as it is done", async () => {
    const path = await writeSource("a.jpg", await encodeTile("jpeg"));
    const seen: string[] = [];
    await preparePictures(
      [
        { key: "a", path },
        { key: "b", path },
      ],
      { cacheDir, onProgress: ({ done, total }) => seen.push(`${done} of ${total}`) },
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
    const made = await stat(entryFolder(cacheDir, first.name));
    await rename(path, join(root, "b.jpg"));
    expect(await prepareOne(source(join(root, "b.jpg")))).toEqual(first);
    expect(await stat(entryFolder(cacheDir, first.name))).toEqual(made);
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

  it("is found in less than three milliseconds a photograph", async () => {
    const tile = await encodeTile("jpeg", { width: 1400, height: 900 });
    const sources: PictureSource<never>[] = [];
    for (let index = 0; index < 30; index++) {
      const bytes = Buffer.concat([tile, Buffer.from(`${index}`)]);
      sources.push({ key: `${index}`, path: await writeSource(`${index}.jpg`, bytes) });
    }
    settle();
    const first = await preparePictures(sources, { cacheDir });
    const start = performance.now();
    const second = await preparePictures(sources, { cacheDir });
    expect((performance.now() - start) / sources.length).toBeLessThan(3);
    expect(second).toEqual(first);
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
    const sources = [{ key: "a", path }];
    const first = await inspectPictures(sources, { cacheDir });
    expect(first).toMatchObject([
      { key: "a", facts: { traces: expect.arrayContaining(["place"]) } },
    ]);
    const seen = await readFile(join(cacheDir, "pictures", "seen.json"), "utf8");
    await writeFile(join(cacheDir, "pictures", "seen.json"), seen.replace("240", "241"));
    expect(await inspectPictures(sources, { cacheDir })).toMatchObject([{ facts: { width: 241 } }]);
  });
});

describe("a damaged cache heals", () => {
  const damages: [string, (folder: string, file: string) => Promise<unknown>][] = [
    ["a missing picture", (folder, file) => rm(join(folder, file))],
    ["a shortened picture", (folder, file) => writeFile(join(folder, file), "short")],
    [
      "a picture of the right size with other content",
      async (folder, file) => {
        const { size } = await stat(join(folder, file));
        await writeFile(join(folder, file), Buffer.alloc(size, 1));
      },
    ],
    ["a record that is no JSON", (folder) => writeFile(join(folder, "record.json"), '{"files": [')],
    ["a missing record", (folder) => rm(join(folder, "record.json"))],
    ["a missing folder", (folder) => rm(folder, { recursive: true })],
  ];

  it.each(damages)("%s", async (_, damage) => {
    const path = await writeSource("a.jpg", await encodeTile("jpeg"));
    const first = await prepareOne({ key: "a", path });
    const folder = entryFolder(cacheDir, first.name);
    const [file] = first.files;
    if (!file) throw new Error("no file");
    const before = await readFile(join(folder, file.file));
    await damage(folder, file.file);
    expect(await prepareOne({ key: "a", path })).toEqual(first);
    expect(await readFile(join(folder, file.file))).toEqual(before);
    expect(await readdir(join(cacheDir, "pictures", "temporary"))).toEqual([]);
  });

  it("a list of what was seen that is no JSON", async () => {
    const path = await writeSource("a.jpg", await encodeTile("jpeg"));
    const first = await prepareOne({ key: "a", path });
    await writeFile(join(cacheDir, "pictures", "seen.json"), "{");
    expect(await prepareOne({ key: "a", path })).toEqual(first);
  });

  it("pictures whose times were lost are kept once their content proves right", async () => {
    const path = await writeSource("a.jpg", await encodeTile("jpeg"));
    const { name, files } = await prepareOne({ key: "a", path });
    const folder = entryFolder(cacheDir, name);
    const copied = new Date(1_800_000_000_000);
    for (const { file } of files) await utimes(join(folder, file), copied, copied);
    expect(await readEntry(cacheDir, name)).toMatchObject({
      files: files.map(() => ({ modified: 1_800_000_000_000 })),
    });
  });

  it("a build killed at any moment leaves whole entries or none", async () => {
    const tile = await encodeTile("jpeg", { width: 1000, height: 700 });
    const sources: string[] = [];
    for (let index = 0; index < 60; index++) {
      const bytes = Buffer.concat([tile, Buffer.from(`${index}`)]);
      sources.push(await writeSource(`${index}.jpg`, bytes));
    }
    const builder = join(import.meta.dirname, "prepare-in-child.ts");
    const child = spawn(process.execPath, ["--import", "tsx", builder, cacheDir, ...sources]);
    await new Promise((resolve) => child.stdout.once("data", resolve));
    child.kill("SIGKILL");
    await new Promise((resolve) => child.once("exit", resolve));
    const made = await listMade();
    expect(made.length).toBeGreaterThan(0);
    expect(made.length).toBeLessThan(60);
    for (const name of made) expect(await readEntry(cacheDir, name), name).toBeDefined();
  });
});

async function listMade(): Promise<string[]> {
  const made = join(cacheDir, "pictures", "made");
  const shards = await readdir(made);
  return (await Promise.all(shards.map((shard) => readdir(join(made, shard))))).flat();
}

describe("putting pictures into a site", () => {
  it("links them, each content once, and replaces what stands there", async () => {
    const path = await writeSource("a.jpg", await encodeTile("jpeg"));
    const picture = await prepareOne({ key: "a", path });
    const outDir = join(root, "site", "pictures");
    await mkdir(outDir, { recursive: true });
    const [file] = picture.files;
    if (!file) throw new Error("no file");
    await writeFile(join(outDir, file.file), "something else");
    await placePictures([picture, picture], { cacheDir, outDir });
    expect((await readdir(outDir)).sort()).toEqual(picture.files.map(({ file }) => file).sort());
    const kept = await readFile(join(entryFolder(cacheDir, picture.name), file.file));
    expect(await readFile(join(outDir, file.file))).toEqual(kept);
    const linked = picture.files[1]?.file ?? "";
    expect((await stat(join(outDir, linked))).nlink).toBe(2);
  });

  it.skipIf(!existsSync("/dev/shm"))("copies them to another disk", async () => {
    const path = await writeSource("a.jpg", await encodeTile("jpeg"));
    const picture = await prepareOne({ key: "a", path });
    const outDir = await mkdtemp("/dev/shm/tilebook-");
    try {
      await placePictures([picture], { cacheDir, outDir });
      expect(await readdir(outDir)).toHaveLength(picture.files.length);
    } finally {
      await rm(outDir, { recursive: true });
    }
  });
});

describe("pruning", () => {
  it("forgets what no build has used for a while, and what killed builds left", async () => {
    const old = await prepareOne({
      key: "a",
      path: await writeSource("a.jpg", await encodeTile("jpeg")),
    });
    const fresh = await prepareOne({
      key: "b",
      path: await writeSource("b.png", await encodeTile("png")),
    });
    settle();
    await inspectPictures(
      ["a.jpg", "b.png"].map((name) => ({ key: name, path: join(root, name) })),
      { cacheDir },
    );
    const longAgo = new Date(Date.now() - 90 * 86_400_000);
    await utimes(join(entryFolder(cacheDir, old.name), "record.json"), longAgo, longAgo);
    const left = join(cacheDir, "pictures", "temporary", "left");
    await mkdir(left);
    await utimes(left, longAgo, longAgo);
    await rm(join(root, "a.jpg"));
    const monthAgo = new Date(Date.now() - 30 * 86_400_000);
    expect(await prunePictures(cacheDir, monthAgo)).toBe(1);
    expect(await listMade()).toEqual([fresh.name]);
    expect(existsSync(left)).toBe(false);
    const seen = await readFile(join(cacheDir, "pictures", "seen.json"), "utf8");
    expect(seen).toContain("b.png");
    expect(seen).not.toContain("a.jpg");
  });

  it("counts every build as a use", async () => {
    const path = await writeSource("a.jpg", await encodeTile("jpeg"));
    const { name } = await prepareOne({ key: "a", path });
    const longAgo = new Date(Date.now() - 90 * 86_400_000);
    await utimes(join(entryFolder(cacheDir, name), "record.json"), longAgo, longAgo);
    await prepareOne({ key: "a", path });
    expect(await prunePictures(cacheDir, new Date(Date.now() - 30 * 86_400_000))).toBe(0);
  });

  it("of a cache that is not there does nothing", async () => {
    expect(await prunePictures(join(root, "none"), new Date())).toBe(0);
  });
});
