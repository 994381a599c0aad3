/** Photographs that cannot be shown, or must not be: each is told of, and none is opened in vain. */

import { existsSync } from "node:fs";
import { readFile } from "node:fs/promises";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import {
  addJpegMetadata,
  encodePlanted,
  encodeTile,
  encodeVastPng,
  pngChunk,
} from "../photos/pictures.ts";
import { photograph, soundFiles } from "../support/archive-folder.ts";
import { archiveWith, errorsOf, type ToldProblem } from "./archives.ts";
import { tilebook } from "./tilebook.ts";

const svg = '<svg xmlns="http://www.w3.org/2000/svg" width="40" height="30"><rect/></svg>';

async function told(bytes: string | Uint8Array, file = "tiles/evening/EV-1.jpg") {
  const { code, errors } = await errorsOf(await archiveWith({ [file]: bytes }));
  expect(errors.map((error) => error.file)).toEqual(errors.map(() => file));
  return { code, said: errors.map(({ message }) => message) };
}

describe("a photograph in the archive", () => {
  test("of 0 bytes is told of", async () => {
    expect(await told("")).toEqual({
      code: 1,
      said: ["The photograph is empty: the file holds 0 bytes."],
    });
  });

  test.each([0.1, 0.5, 0.99])(
    "of which only the first part (%d) arrived is told of",
    async (part) => {
      const whole = await photograph("#778899");
      expect(await told(whole.subarray(0, Math.floor(whole.length * part)))).toEqual({
        code: 1,
        said: ["The photograph breaks off before its end: part of the file is missing."],
      });
    },
  );

  test("that is a drawing in SVG, whatever its name says, is told of", async () => {
    expect(await told(svg)).toEqual({
      code: 1,
      said: [expect.stringMatching(/^This is an SVG drawing, whatever its name says/u)],
    });
  });

  test("of 300 megapixels is told of, and not opened", async () => {
    const vast = encodeVastPng(20_000, 15_000);
    expect(await told(vast, "tiles/evening/EV-1.detail.png")).toEqual({
      code: 1,
      said: [expect.stringMatching(/^The photograph has 300 megapixels \(20000 by 15000\)/u)],
    });
  });

  test("that carries its place is told of, and where the place is gone it serves", async () => {
    const { code, said } = await told(await encodePlanted("jpeg"));
    expect({ code, said }).toEqual({
      code: 1,
      said: [expect.stringMatching(/^This photograph carries the place where it was taken/u)],
    });
    expect(await told(addJpegMetadata(await encodeTile("jpeg")))).toEqual({ code: 0, said: [] });
  });

  test("of the back of a tile in an unlisted set is looked at as well", async () => {
    expect(await told("", "tiles/hidden/HID-1.back.jpg")).toMatchObject({ code: 1 });
  });
});

describe("a photograph whose damage shows only when it is opened", () => {
  test("stops the build with words, instead of being left out of the site", async () => {
    const archive = await archiveWith({ "tiles/evening/EV-2.detail.png": await damagedPng() });
    const { code, out, err } = await tilebook("build", "--archive", archive);
    expect(out).toContain(
      "tiles/evening/EV-2.detail.png:1:1 error: The photograph is damaged: it begins like a picture but cannot be opened. [unusable-picture]",
    );
    expect(err).toContain("Nothing was written");
    expect(code).toBe(1);
    expect(existsSync(join(archive, "site"))).toBe(false);
  });

  test("is found by a check as well, in the same words", async () => {
    const damaged = { "tiles/evening/EV-2.detail.png": await damagedPng() };
    const { code, errors } = await errorsOf(await archiveWith(damaged));
    expect({ code, errors }).toMatchObject({
      code: 1,
      errors: [
        {
          code: "unusable-picture",
          message: "The photograph is damaged: it begins like a picture but cannot be opened.",
        },
      ],
    });
  });
});

describe("a photograph that was taken poorly", () => {
  const poorArchive = async () =>
    archiveWith({ "tiles/evening/EV-1.jpg": await photograph("#050505", 400, 300) });
  const codes = ["picture-dark", "picture-small"];

  test("is told of by check, with its file and what to do, and is no error", async () => {
    const archive = await poorArchive();
    const { code, out } = await tilebook("check", "--archive", archive, "--format", "json");
    const problems = (JSON.parse(out) as { problems: ToldProblem[] }).problems;
    const own = problems.filter(({ file }) => file === "tiles/evening/EV-1.jpg");
    expect(code).toBe(0);
    expect(own.map((problem) => [problem.severity, problem.code])).toEqual(
      codes.map((each) => ["warning", each]),
    );
    expect(own[1]?.hint).toContain("messengers shrink pictures");
  });

  test("is counted by a build, the first and every later one", async () => {
    const archive = await poorArchive();
    for (const _ of ["first", "later"]) {
      const { code, err } = await tilebook("build", "--archive", archive);
      expect(code).toBe(0);
      expect(err).toContain(
        `3 practice notes and warnings: “npm run --silent tilebook -- check --archive ${archive}” tells them.`,
      );
    }
  });
});

describe("a photograph with a grey card that cannot serve", () => {
  const white = () => photograph("#ffffff");
  const card = async () => {
    const { "tiles/evening/EV-1.md": record = "" } = await soundFiles();
    return archiveWith({
      "tiles/evening/EV-1.md": String(record).replace(
        "layers:",
        "photo: {grey: [0, 0, 9, 9]}\nlayers:",
      ),
      "tiles/evening/EV-1.jpg": await white(),
    });
  };

  test("is told of by a check, the first and a later one", async () => {
    const archive = await card();
    for (const _ of ["first", "later"]) {
      const { out } = await tilebook("check", "--archive", archive);
      expect(out).toContain("tiles/evening/EV-1.jpg:1:1 warning: The grey card is burnt out");
    }
  });

  test("is counted by a build, and its tile's page says so", async () => {
    const archive = await card();
    const { code, err } = await tilebook("build", "--archive", archive);
    expect(code).toBe(0);
    expect(err).toMatch(/\d practice notes and warnings/u);
    const page = await readFile(join(archive, "site/tiles/ev-1.html"), "utf8");
    expect(page).toContain("as photographed: the grey card is burnt out");
  });
});

/** A picture that is sound from its header to its end, but for the second half of what is between. */
async function damagedPng(): Promise<Buffer> {
  const sound = await encodeTile("png");
  const begin = sound.indexOf("IDAT") - 4;
  const data = sound.subarray(begin + 8, begin + 8 + sound.readUInt32BE(begin));
  const damaged = Buffer.from(data).fill(0xff, Math.floor(data.length / 2));
  return Buffer.concat([
    sound.subarray(0, begin),
    pngChunk("IDAT", damaged),
    pngChunk("IEND", Buffer.alloc(0)),
  ]);
}
