import { spawn } from "node:child_process";
import { once } from "node:events";
import { existsSync } from "node:fs";
import { mkdir, readdir, readFile, rm, stat, utimes, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { afterEach, describe, expect, it, vi } from "vitest";
import { judgePictures } from "../../src/photos/judge.ts";
import { preparePictures } from "../../src/photos/prepare.ts";
import { keepPictures, pruneOnceADay, prunePictures } from "../../src/photos/prune.ts";
import { readSealed } from "../../src/photos/sealed.ts";
import { openSeen } from "../../src/photos/seen.ts";
import { entryFolder, readEntry } from "../../src/photos/store.ts";
import { encodeTile } from "./pictures.ts";
import { listMade, prepareOne, settle, useWorkFolder, work, writeSource } from "./work-folder.ts";

useWorkFolder();

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
    const folder = entryFolder(work.cacheDir, first.name);
    const [file] = first.files;
    if (!file) throw new Error("no file");
    const before = await readFile(join(folder, file.file));
    await damage(folder, file.file);
    expect(await prepareOne({ key: "a", path })).toEqual(first);
    expect(await readFile(join(folder, file.file))).toEqual(before);
    expect(await readdir(join(work.cacheDir, "pictures", "temporary"))).toEqual([]);
  });

  it("a list of what was seen that is no JSON", async () => {
    const path = await writeSource("a.jpg", await encodeTile("jpeg"));
    const first = await prepareOne({ key: "a", path });
    await writeFile(join(work.cacheDir, "pictures", "seen.json"), "{");
    expect(await prepareOne({ key: "a", path })).toEqual(first);
  });

  it("pictures whose times were lost are kept once their content proves right", async () => {
    const path = await writeSource("a.jpg", await encodeTile("jpeg"));
    const { name, files } = await prepareOne({ key: "a", path });
    const folder = entryFolder(work.cacheDir, name);
    const copied = new Date(1_800_000_000_000);
    for (const { file } of files) await utimes(join(folder, file), copied, copied);
    expect(await readEntry(work.cacheDir, name)).toMatchObject({
      files: files.map(() => ({ modified: 1_800_000_000_000 })),
    });
  });

  it("a build killed at any moment leaves whole entries or none", async () => {
    const tile = await encodeTile("jpeg", { width: 1000, height: 700 });
    const sources: string[] = [];
    for (let index = 0; index < 12; index++) {
      const bytes = Buffer.concat([tile, Buffer.from(`${index}`)]);
      sources.push(await writeSource(`${index}.jpg`, bytes));
    }
    const builder = join(import.meta.dirname, "prepare-in-child.ts");
    const child = spawn(process.execPath, ["--import", "tsx", builder, work.cacheDir, ...sources]);
    const [, signal] = await once(child, "exit");
    expect(signal).toBe("SIGKILL");
    const made = await listMade();
    expect(made.length).toBeGreaterThanOrEqual(3);
    expect(made.length).toBeLessThan(12);
    for (const name of made)
      expect(typeof (await readEntry(work.cacheDir, name)), name).toBe("object");
  });
});

describe("what lies in a cache is believed only where this user's Tilebook made it", () => {
  async function madeElsewhere() {
    const path = await writeSource("a.jpg", await encodeTile("jpeg"));
    vi.stubEnv("XDG_CACHE_HOME", join(work.root, "elsewhere"));
    const first = await prepareOne({ key: "a", path });
    vi.stubEnv("XDG_CACHE_HOME", join(work.root, "here"));
    return { path, first, folder: entryFolder(work.cacheDir, first.name) };
  }

  afterEach(() => void vi.unstubAllEnvs());

  it("so a sound entry of somebody else's is made anew, and that is told", async () => {
    const { path, first } = await madeElsewhere();
    expect(await readEntry(work.cacheDir, first.name)).toBe("damaged");
    let told = 0;
    const [prepared] = await preparePictures([{ key: "a", path }], {
      cacheDir: work.cacheDir,
      onDamaged: () => {
        told += 1;
      },
    });
    expect(prepared).toMatchObject({ picture: first });
    expect(told).toBe(1);
    expect(await readEntry(work.cacheDir, first.name)).not.toBe("damaged");
  });

  it("so a record that names a file elsewhere leads nowhere", async () => {
    const { path, first, folder } = await madeElsewhere();
    const record = join(folder, "record.json");
    const forged = { placeholder: "<script>", warnings: [], files: [{ file: "../../../x.html" }] };
    await writeFile(record, `${"0".repeat(64)}\n${JSON.stringify(forged)}`);
    expect(await prepareOne({ key: "a", path })).toEqual(first);
  });

  it("so what was seen of other files, or under another about, is not read", async () => {
    const path = await writeSource("a.jpg", await encodeTile("jpeg"));
    settle();
    const seen = await openSeen(work.cacheDir);
    const { hash } = await seen.look(path);
    await seen.save();
    const remembered = await readFile(join(work.cacheDir, "pictures", "seen.json"), "utf8");
    expect(remembered).toContain(hash);
    expect(remembered).not.toContain("a.jpg");
    const other = join(work.cacheDir, "pictures", "other.json");
    await writeFile(other, remembered);
    expect(await readSealed(other, "another")).toEqual({ state: "damaged" });
  });

  it("so every bit that flips in a record is noticed", async () => {
    const path = await writeSource("a.jpg", await encodeTile("jpeg"));
    const { name } = await prepareOne({ key: "a", path });
    const record = join(entryFolder(work.cacheDir, name), "record.json");
    const bytes = await readFile(record);
    for (let at = 0; at < bytes.length; at += 1) {
      const flipped = Buffer.from(bytes);
      flipped[at] = (flipped[at] ?? 0) ^ (1 << (at % 8));
      await writeFile(record, flipped);
      expect(await readEntry(work.cacheDir, name), `byte ${at}`).toBe("damaged");
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
    const longAgo = new Date(Date.now() - 90 * 86_400_000);
    await utimes(join(entryFolder(work.cacheDir, old.name), "record.json"), longAgo, longAgo);
    const left = join(work.cacheDir, "pictures", "temporary", "left");
    await mkdir(left);
    await utimes(left, longAgo, longAgo);
    await rm(join(work.root, "a.jpg"));
    const monthAgo = new Date(Date.now() - 30 * 86_400_000);
    expect(await prunePictures(work.cacheDir, monthAgo)).toBe(1);
    expect(await listMade()).toEqual([fresh.name]);
    expect(existsSync(left)).toBe(false);
  });

  it("counts every build as a use", async () => {
    const path = await writeSource("a.jpg", await encodeTile("jpeg"));
    const { name } = await prepareOne({ key: "a", path });
    const longAgo = new Date(Date.now() - 90 * 86_400_000);
    await utimes(join(entryFolder(work.cacheDir, name), "record.json"), longAgo, longAgo);
    await prepareOne({ key: "a", path });
    expect(await prunePictures(work.cacheDir, new Date(Date.now() - 30 * 86_400_000))).toBe(0);
  });

  it("counts judging as a use, though no picture is made", async () => {
    const path = await writeSource("a.jpg", await encodeTile("jpeg"));
    await judgePictures([{ key: "a", path }], { cacheDir: work.cacheDir });
    expect(await prunePictures(work.cacheDir, new Date(Date.now() - 30 * 86_400_000))).toBe(0);
    expect(await prunePictures(work.cacheDir, new Date(Date.now() + 86_400_000))).toBe(1);
  });

  it("is done once a day", async () => {
    const path = await writeSource("a.jpg", await encodeTile("jpeg"));
    const { name } = await prepareOne({ key: "a", path });
    const record = join(entryFolder(work.cacheDir, name), "record.json");
    const longAgo = new Date(Date.now() - 90 * 86_400_000);
    await pruneOnceADay(work.cacheDir);
    await utimes(record, longAgo, longAgo);
    await pruneOnceADay(work.cacheDir);
    expect(await listMade()).toEqual([name]);
    await utimes(join(work.cacheDir, "pictures", "pruned"), longAgo, longAgo);
    await pruneOnceADay(work.cacheDir);
    expect(await listMade()).toEqual([]);
  });

  it("keeps the pictures that a build names, and no others", async () => {
    const [kept, gone] = await Promise.all(
      (["jpeg", "png"] as const).map(async (format) =>
        prepareOne({
          key: format,
          path: await writeSource(`a.${format}`, await encodeTile(format)),
        }),
      ),
    );
    expect(kept?.name).not.toBe(gone?.name);
    expect(await keepPictures(work.cacheDir, new Set([kept?.name ?? ""]))).toBe(1);
    expect(await listMade()).toEqual([kept?.name]);
  });

  it("of a cache that is not there does nothing", async () => {
    expect(await prunePictures(join(work.root, "none"), new Date())).toBe(0);
  });
});
