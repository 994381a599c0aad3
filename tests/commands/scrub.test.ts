/** Photographs in an archive that give away who took them and where, and `tilebook scrub`. */
import { readFile } from "node:fs/promises";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { encodePlanted, encodeTile, FORMATS, readFixture } from "../photos/pictures.ts";
import type { Files } from "../support/archive-folder.ts";
import { archiveWith, errorsOf } from "./archives.ts";
import { sumsOf } from "./site-files.ts";
import { tilebook } from "./tilebook.ts";

async function plantedArchive(): Promise<string> {
  const files: Record<string, Uint8Array> = {};
  for (const format of FORMATS)
    files[`tiles/evening/EV-1.detail-${format}.${format}`] = await encodePlanted(format);
  return archiveWith(files);
}

const place = (name: string) => `tiles/evening/EV-1.detail-${name}`;

describe("tilebook scrub", () => {
  test("takes place and device out of every photograph that gives them away, and says so of each", async () => {
    const archive = await plantedArchive();
    const before = await sumsOf(archive);
    const { code, out, err } = await tilebook("scrub", "--archive", archive);
    expect({ code, err }).toEqual({ code: 0, err: "" });
    const touched = "device, notes, owner, place and serial number removed.";
    expect(out.split("\n")).toEqual([
      `${place("avif.avif")}: ${touched} The picture itself was not touched.`,
      `${place("heic.heic")}: ${touched} The picture itself was not touched.`,
      `${place("jpeg.jpeg")}: ${touched} The picture itself was not touched.`,
      `${place("png.png")}: ${touched} The picture itself was not touched.`,
      `${place("tiff.tiff")}: ${touched} The picture itself was not touched.`,
      `${place("webp.webp")}: ${touched} The picture itself was not touched.`,
      "9 photographs: 6 scrubbed, 3 had nothing to remove.",
      "Copies that were shared before, and the archive's history, still tell the place.",
    ]);
    const changed = Object.entries(await sumsOf(archive)).filter(
      ([file, sum]) => before[file] !== sum,
    );
    expect(changed.map(([file]) => file)).toEqual(
      FORMATS.map((format) => place(`${format}.${format}`)),
    );
  });

  test("leaves an archive that check finds nothing wrong with", async () => {
    const archive = await plantedArchive();
    const { code, errors } = await errorsOf(archive);
    expect(code).toBe(1);
    expect(errors.map(({ code: rule }) => rule)).toEqual(FORMATS.map(() => "picture-with-place"));
    expect(errors[0]?.hint).toContain(
      `Run “npm run --silent tilebook -- scrub --archive ${archive}”`,
    );
    await tilebook("scrub", "--archive", archive);
    expect(await errorsOf(archive)).toEqual({ code: 0, errors: [] });
  });

  test("scrubs only the photographs that are named, by their paths from here or from the archive", async () => {
    const archive = await plantedArchive();
    const png = join(archive, place("png.png"));
    const { code, out } = await tilebook(
      ...["scrub", "--archive", archive, png, place("heic.heic"), "tiles/evening/EV-2.jpg"],
    );
    expect(code).toBe(0);
    expect(out).toContain(`${png}: device, notes, owner, place and serial number removed.`);
    expect(out).toContain(`${join(archive, "tiles/evening/EV-2.jpg")}: nothing to remove.`);
    expect(out).toContain("3 photographs: 2 scrubbed, 1 had nothing to remove.");
    const { errors } = await errorsOf(archive);
    expect(errors.map(({ file }) => file)).toEqual(
      ["avif", "jpeg", "tiff", "webp"].map((format) => place(`${format}.${format}`)),
    );
  });

  test("says of what it cannot scrub why not, leaves it as it is, and goes on with the others", async () => {
    const whole = await encodePlanted("jpeg");
    const cut = whole.subarray(0, whole.length - 40);
    const files: Files = { [place("a.jpg")]: cut, [place("b.jpg")]: whole };
    const archive = await archiveWith(files);
    const { code, out } = await tilebook("scrub", "--archive", archive);
    expect(code).toBe(1);
    expect(out).toContain(
      `${place("a.jpg")}: not changed. The photograph breaks off before its end: part of the file is missing. Copy it`,
    );
    expect(out).toContain(`${place("b.jpg")}: device`);
    expect(out).toContain(
      "5 photographs: 1 scrubbed, 3 had nothing to remove, 1 not changed: see above.",
    );
    expect(cut.equals(await readFile(join(archive, place("a.jpg"))))).toBe(true);
  });

  test("says nothing of the history where no place was removed", async () => {
    const archive = await archiveWith({ "tiles/evening/EV-1.jpg": await encodeTile("jpeg") });
    const { out } = await tilebook("scrub", "--archive", archive);
    expect(out).toBe("3 photographs: 3 had nothing to remove.");
  });

  test.each([
    ["tiles/evening/EV-9.jpg", "There is no file tiles/evening/EV-9.jpg. Nothing was changed."],
    ["tiles/evening", "tiles/evening is a folder. Name photographs"],
  ])("refuses %s, and changes no other", async (wrong, said) => {
    const archive = await archiveWith({
      "tiles/evening/EV-1.heic": readFixture("place-turned.heic"),
    });
    const before = await sumsOf(archive);
    const { code, err } = await tilebook(
      ...["scrub", "--archive", archive, "tiles/evening/EV-1.heic", wrong],
    );
    expect(code).toBe(2);
    expect(err).toContain(said);
    expect(await sumsOf(archive)).toEqual(before);
  });

  test("refuses a folder that is no archive", async () => {
    const archive = await archiveWith({});
    const { code, err } = await tilebook("scrub", "--archive", join(archive, "tiles"));
    expect(code).toBe(2);
    expect(err).toContain("it has no studio.yaml. Name its folder with --archive");
  });
});

test("check fails on a picture that is no tile's, wherever it lies, and says once what to do", async () => {
  const jpeg = await encodeTile("jpeg");
  const archive = await archiveWith({
    "recipes/glazes/pot.jpg": jpeg,
    "tiles/evening/EV-1.jfif": jpeg,
    "tiles/evening/.EV-1.jpg": jpeg,
  });
  const { code, errors } = await errorsOf(archive);
  expect(code).toBe(1);
  expect(
    errors.map(({ file, message, hint }) => `${file}\n${message}\n${hint}`).join("\n\n"),
  ).toMatchInlineSnapshot(`
    "recipes/glazes/pot.jpg
    This picture or film is no tile's: Tilebook does not show it, but everyone who gets the archive gets it, and with it whatever place or name it carries
    If it shows a tile, save it as JPEG beside the tile's record, under the tile's code; otherwise take it out of the archive. If the archive was shared already, it is still in its history.

    tiles/evening/.EV-1.jpg
    This picture or film is no tile's: Tilebook does not show it, but everyone who gets the archive gets it, and with it whatever place or name it carries
    If it shows a tile, save it as JPEG beside the tile's record, under the tile's code; otherwise take it out of the archive. If the archive was shared already, it is still in its history.

    tiles/evening/EV-1.jfif
    This picture or film is no tile's: Tilebook does not show it, but everyone who gets the archive gets it, and with it whatever place or name it carries
    If it shows a tile, name it “EV-1.jpg”; otherwise take it out of the archive. If the archive was shared already, it is still in its history."
  `);
});
