/** Photographs that are looked at one by one. */
import { readFile } from "node:fs/promises";
import sharp from "sharp";
import { expect, test, vi } from "vitest";
import * as decode from "../../src/photos/decode.ts";
import { openDesk } from "../../src/photos/desk.ts";
import { encodeTile } from "./pictures.ts";
import { useWorkFolder, work, writeSource } from "./work-folder.ts";

useWorkFolder();

const large = () => encodeTile("jpeg", { width: 1600, height: 900 });

test("the smallest picture that is wide enough is shown, else the widest there is", async () => {
  const path = await writeSource("a.jpg", await large());
  const desk = await openDesk(work.cacheDir);
  const widthAt = async (width: number) => {
    const shown = await desk.show(path, width);
    return "file" in shown
      ? (await sharp(await readFile(shown.file)).metadata()).width
      : shown.fault.message;
  };
  expect([await widthAt(320), await widthAt(1280), await widthAt(4000)]).toEqual([320, 1280, 1600]);
});

test("a photograph is decoded once, to show it and to measure it as often as anybody likes", async () => {
  const decodings = vi.spyOn(decode, "decodeLargest");
  const path = await writeSource("a.jpg", await large());
  const desk = await openDesk(work.cacheDir);
  const [sample] = await Promise.all([desk.sample(path), desk.show(path, 1280)]);
  expect(sample).toMatchObject({ pixels: { width: 640, height: 360 } });
  expect(await desk.sample(path)).toEqual(sample);
  expect(decodings).toHaveBeenCalledTimes(1);
  await desk.close();
  const later = await openDesk(work.cacheDir);
  expect(await later.sample(path)).toEqual(sample);
  expect(await later.sample(path)).toEqual(sample);
  expect(decodings).toHaveBeenCalledTimes(2);
  decodings.mockRestore();
});

test("why a photograph cannot be shown is told", async () => {
  const path = await writeSource("a.jpg", "no photograph");
  const desk = await openDesk(work.cacheDir);
  expect(await desk.show(path, 320)).toMatchObject({ fault: { hint: expect.any(String) } });
  expect(await desk.sample(path)).toMatchObject({ fault: { hint: expect.any(String) } });
});
