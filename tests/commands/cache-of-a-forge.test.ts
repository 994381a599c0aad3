/** What a forge hands on from run to run holds nothing of a tile that was deleted. */
import { readdir, readFile, rm } from "node:fs/promises";
import { basename, join } from "node:path";
import sharp from "sharp";
import { afterEach, describe, expect, test, vi } from "vitest";
import { tidyCache } from "../../src/commands/build/tidy-cache.ts";
import { archiveWith, folderWith } from "./archives.ts";
import { tilebook } from "./tilebook.ts";

const marker = "Quenchmarrow";

const planted = {
  "tiles/evening/EV-8.md": [
    "---",
    "maker: m08",
    `photo: {alt: A ${marker} tile}`,
    "layers: [{glaze: soot, coats: 2}]",
    `result: {surface: gloss, again: yes, next-time: ask ${marker}}`,
    "---",
    `${marker} poured it.`,
  ].join("\n"),
};

const studio = [
  "format: 1",
  "studio: Eelgate Pottery",
  "makers:",
  "  m01: {name: Wren Ashdown, shown: yes}",
  "  m02: {name: Bram Tolliver, shown: initials}",
  "  m03: {name: Hesper Lund, shown: no}",
].join("\n");

let archive = "";

async function begin(): Promise<void> {
  const bytes = await sharp({
    create: { width: 1200, height: 900, channels: 3, background: "#317a5b" },
  })
    .jpeg()
    .withExif({ IFD0: { ImageDescription: marker } })
    .toBuffer();
  archive = await archiveWith({
    ...planted,
    "studio.yaml": `${studio}\n  m08: {name: ${marker} Reed, shown: yes}\n`,
    "tiles/evening/EV-8.jpg": bytes,
  });
}

afterEach(() => vi.unstubAllEnvs());

async function build(): Promise<void> {
  const { code, err } = await tilebook("build", "--archive", archive, "--quiet");
  expect({ code, err }).toEqual({ code: 0, err: "" });
}

async function cached(): Promise<readonly string[]> {
  const entries = await readdir(join(archive, ".cache"), { recursive: true, withFileTypes: true });
  return entries
    .filter((entry) => entry.isFile())
    .map(({ parentPath, name }) => join(parentPath, name));
}

/** The files of the cache that hold the marker, as bytes or as what a picture carries. */
async function filesWithMarker(): Promise<readonly string[]> {
  const files = await cached();
  const hold = await Promise.all(files.map(holdMarker));
  return files.filter((_, i) => hold[i]);
}

async function holdMarker(file: string): Promise<boolean> {
  const ways = (["utf8", "utf16le", "base64"] as const).map((way) =>
    way === "base64"
      ? Buffer.from(Buffer.from(marker).toString("base64"))
      : Buffer.from(marker, way),
  );
  const bytes = await readFile(file);
  const within = [bytes, ...(await carried(file, bytes))];
  return within.some((part) => ways.some((way) => part.includes(way)));
}

async function carried(file: string, bytes: Buffer): Promise<readonly Buffer[]> {
  if (!/\.(jpg|webp)$/u.test(file)) return [];
  const { exif, iptc, xmp, comments } = await sharp(bytes).metadata();
  return [exif, iptc, xmp, Buffer.from(JSON.stringify(comments ?? []))].flatMap(
    (part) => part ?? [],
  );
}

async function pictures(): Promise<readonly string[]> {
  return (await cached())
    .filter((file) => file.endsWith("-320.jpg"))
    .map((file) => basename(file))
    .sort();
}

describe("the cache of a build", () => {
  test("holds no word of a record, of a maker or of a photograph, and on a forge no picture of a deleted tile", async () => {
    vi.stubEnv("CI", "true");
    const [before, after] = await buildBeforeAndAfter();
    expect(before).toHaveLength(4);
    expect(after).toHaveLength(3);
    expect(before).toEqual(expect.arrayContaining([...after]));
  });

  test.each([
    ["loses on a forge what it did not use", "true", 0],
    ["keeps it where nobody says that this is a forge", "", 1],
    ["keeps it where somebody says that it is none", "false", 1],
  ])("%s", async (_, onForge, kept) => {
    vi.stubEnv("CI", onForge);
    const folder = await folderWith({ "pictures/made/ab/abcd/record.json": "{}" });
    await tidyCache(folder, new Set(["ef01"]));
    expect(await readdir(join(folder, "pictures/made/ab"))).toHaveLength(kept);
  });
});

/** The pictures in the cache before and after the tile is deleted, with no word of it in either. */
async function buildBeforeAndAfter(): Promise<[readonly string[], readonly string[]]> {
  await begin();
  await build();
  const before = await pictures();
  expect(await filesWithMarker()).toEqual([]);
  // It would be seen: the tile's own files hold it.
  expect(await holdMarker(join(archive, "tiles/evening/EV-8.jpg"))).toBe(true);
  expect(await holdMarker(join(archive, "tiles/evening/EV-8.md"))).toBe(true);
  await rm(join(archive, "tiles/evening/EV-8.md"));
  await rm(join(archive, "tiles/evening/EV-8.jpg"));
  await build();
  expect(await filesWithMarker()).toEqual([]);
  return [before, await pictures()];
}
