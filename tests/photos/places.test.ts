import exifr from "exifr";
import { describe, expect, it, vi } from "vitest";
import { scrubPicture } from "../../src/photos/scrub/scrub.ts";
import { encodeTile, tracesOf } from "./pictures.ts";
import { heifWays, jpegWays, pngWays, tiffWays, webpWays } from "./place-ways.ts";

vi.setConfig({ testTimeout: 60_000 });

const ways = [
  ...jpegWays(await encodeTile("jpeg")),
  ...pngWays(await encodeTile("png")),
  ...webpWays(await encodeTile("webp")),
  ...tiffWays(),
  ...heifWays("avif", await encodeTile("avif", { width: 24, height: 16 })),
  ...heifWays("heic", await encodeTile("heic")),
];

describe("a place in a photograph", () => {
  it("is tried in a hundred ways", () => {
    expect(new Set(ways.map(([name]) => name)).size).toBe(ways.length);
    expect(ways.length).toBeGreaterThan(100);
  });

  it.each(ways)("is found: %s", async (_, bytes) => {
    expect(await tracesOf(bytes)).toContain("place");
  });

  it.each(ways.filter(([name]) => !name.startsWith("heic")))(
    "is taken out, and another program reads none: %s",
    async (_, bytes) => {
      const scrubbing = await scrubPicture(bytes);
      if (scrubbing.outcome !== "scrubbed") throw new Error(JSON.stringify(scrubbing));
      expect(await tracesOf(scrubbing.bytes)).toEqual([]);
      expect(await exifr.gps(Buffer.from(scrubbing.bytes)).catch(() => undefined)).toBeUndefined();
    },
  );

  it("is taken out of a HEIC however it is carried", async () => {
    for (const [name, bytes] of ways.filter(([way]) => way.startsWith("heic")).slice(0, 4)) {
      expect(await scrubPicture(bytes), name).toMatchObject({ outcome: "scrubbed" });
    }
  });
});
