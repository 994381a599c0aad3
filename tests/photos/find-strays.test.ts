import { mkdir, writeFile } from "node:fs/promises";
import { dirname, join } from "node:path";
import { describe, expect, it } from "vitest";
import { findStrayPictures } from "../../src/photos/find-strays.ts";
import { encodeTile } from "./pictures.ts";
import { useWorkFolder, work } from "./work-folder.ts";

useWorkFolder();

async function put(file: string, content: Uint8Array | string): Promise<string> {
  await mkdir(dirname(join(work.root, file)), { recursive: true });
  await writeFile(join(work.root, file), content);
  return file;
}

describe("a picture that is no tile's", () => {
  it("is found wherever it lies in the archive, whatever it is called", async () => {
    const jpeg = await encodeTile("jpeg");
    const places = [
      "recipes/glazes/pot.jpg",
      "tiles/firings/kiln.JPE",
      "tiles/evening/.hidden.jpg",
      "tiles/evening/README",
      "tiles/evening/deep/deeper/TB-1.jpg",
      "tiles/evening/TB-1.jfif",
      "tiles/evening/TB-1.txt",
      ".photo",
      "class.jpg",
    ];
    for (const file of places) await put(file, jpeg);
    expect(await findStrayPictures(work.root, new Set())).toEqual(places.toSorted());
  });

  it("is found by its first bytes in every format that is read", async () => {
    for (const format of ["avif", "heic", "jpeg", "png", "tiff", "webp"] as const)
      await put(`tiles/${format}`, await encodeTile(format));
    expect(await findStrayPictures(work.root, new Set())).toHaveLength(6);
  });

  it.each([
    ["a GIF", "GIF89a\x01\0\x01\0"],
    ["a bitmap", "BM\x46\0\0\0\0\0\0\0"],
    ["a camera's raw file", "FUJIFILMCCD-RAW 0201"],
    ["another camera's raw file", "IIRO\x08\0\0\0"],
    ["a JPEG XL", "\0\0\0\x0cJXL \r\n\x87\n"],
    ["a film", "\0\0\0\x14ftypqt  "],
  ])("is found by its first bytes: %s", async (_, bytes) => {
    await put("tiles/evening/notes", Buffer.from(bytes, "latin1"));
    expect(await findStrayPictures(work.root, new Set())).toEqual(["tiles/evening/notes"]);
  });

  it.each(["TB-1.dng", "TB-1.NEF", "TB-1.cr3", "TB-1.heif", "TB-1.bmp", "TB-1.mov"])(
    "is found by its name even where its bytes say nothing: %s",
    async (name) => {
      await put(`tiles/${name}`, "");
      expect(await findStrayPictures(work.root, new Set())).toEqual([`tiles/${name}`]);
    },
  );

  it("is neither a known one, nor text, nor anything in folders that are no archive's", async () => {
    const jpeg = await encodeTile("jpeg");
    await put("tiles/TB-1.jpg", jpeg);
    await put("tiles/TB-1.md", "---\nlayers: []\n---\nBMX and GIF\n");
    await put("tiles/empty", "");
    await put("site/pictures/a.jpg", jpeg);
    expect(await findStrayPictures(work.root, new Set(["tiles/TB-1.jpg"]))).toEqual([]);
  });
});
