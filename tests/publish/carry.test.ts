import { existsSync } from "node:fs";
import { mkdir, mkdtemp, readFile, rm, stat, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { carryOver, linkInto, writeOrCarry } from "../../src/publish/carry.ts";
import { removeFolder } from "../support/remove-folder.ts";
import { makeIn } from "./making-sites.ts";

let base: string;
let last: string;
let folder: string;

beforeEach(async () => {
  base = await mkdtemp(join(tmpdir(), "tilebook-carry-"));
  last = join(base, "last");
  folder = join(base, "new");
  await mkdir(join(last, "data"), { recursive: true });
  await writeFile(join(last, "data/tiles.json"), "[]\n");
});

afterEach(() => removeFolder(base));

describe("what has not changed", () => {
  test("is carried over without being written", async () => {
    expect(
      await makeIn(base, { folder, last }, (place) => carryOver(place, "data/tiles.json", "[]\n")),
    ).toBe(true);
    const [before, after] = await Promise.all(
      [last, folder].map((dir) => stat(join(dir, "data/tiles.json"))),
    );
    expect(after?.ino).toBe(before?.ino);
  });

  test("and what has, in one byte, is written beside it; the last site's stays", async () => {
    await makeIn(base, { folder, last }, (place) =>
      writeOrCarry(place, "data/tiles.json", "[1]\n"),
    );
    expect(await readFile(join(folder, "data/tiles.json"), "utf8")).toBe("[1]\n");
    expect(await readFile(join(last, "data/tiles.json"), "utf8")).toBe("[]\n");
  });

  test("is written where there is no last site", async () => {
    await makeIn(base, { folder, last: null }, (place) =>
      writeOrCarry(place, "data/tiles.json", "[]\n"),
    );
    expect(await readFile(join(folder, "data/tiles.json"), "utf8")).toBe("[]\n");
  });
});

describe("linkInto", () => {
  test("replaces what stands there", async () => {
    await mkdir(folder);
    await writeFile(join(folder, "a"), "other");
    linkInto(join(last, "data/tiles.json"), join(folder, "a"));
    expect(await readFile(join(folder, "a"), "utf8")).toBe("[]\n");
  });

  test("fails where there is nothing to link", async () => {
    expect(() => linkInto(join(last, "none"), join(folder, "a"))).toThrow("ENOENT");
  });

  test.skipIf(!existsSync("/dev/shm"))("copies to another disk", async () => {
    const other = await mkdtemp("/dev/shm/tilebook-");
    try {
      linkInto(join(last, "data/tiles.json"), join(other, "a"));
      expect(await readFile(join(other, "a"), "utf8")).toBe("[]\n");
    } finally {
      await rm(other, { recursive: true });
    }
  });
});
