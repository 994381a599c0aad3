/** Folders that cannot take a site: exit code 2, words that say why, and nothing written. */
import { mkdir, symlink } from "node:fs/promises";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { writeInto } from "../support/archive-folder.ts";
import { archiveWith, folderWith } from "./archives.ts";
import { sumsOf } from "./site-files.ts";
import { tilebook } from "./tilebook.ts";

/** Builds where that is refused, and gives the reason. */
async function reasonFor(archive: string, out: string, watched = archive): Promise<string> {
  const before = await sumsOf(watched);
  const ended = await tilebook("build", "--archive", archive, "--out", out);
  expect(await sumsOf(watched)).toEqual(before);
  expect({ code: ended.code, out: ended.out }).toEqual({ code: 2, out: "" });
  return ended.err;
}

describe("a site is not written", () => {
  test.each([
    ["into the archive itself", ".", "the archive itself lies there"],
    ["into a folder that contains it", "..", "the archive itself lies there"],
    ["into tiles/", "tiles", "inside the archive's tiles/"],
    ["anywhere in tiles/", "tiles/evening/site", "inside the archive's tiles/"],
    ["into recipes/", "recipes", "inside the archive's recipes/"],
    ["into a folder that is not there yet in recipes/", "recipes/new/site", "archive's recipes/"],
    ["by a way round", "site/../tiles/site", "inside the archive's tiles/"],
  ])("%s", async (_, way, reason) => {
    const archive = await archiveWith({});
    expect(await reasonFor(archive, `${archive}/${way}`)).toContain(reason);
  });

  test.skipIf(process.platform === "win32")("through a link that leads into tiles/", async () => {
    const archive = await archiveWith({});
    const elsewhere = await folderWith({});
    await symlink(join(archive, "tiles"), join(elsewhere, "innocent"));
    const out = join(elsewhere, "innocent", "site");
    expect(await reasonFor(archive, out)).toContain("inside the archive's tiles/");
  });

  test("over files of somebody else's", async () => {
    const archive = await archiveWith({});
    const out = await folderWith({ "holiday.jpg": "x", ".gitignore": "*\n" });
    expect(await reasonFor(archive, out, out)).toContain(
      "it holds files that Tilebook did not write (holiday.jpg)",
    );
  });

  test("over a site to which somebody added files", async () => {
    const archive = await archiveWith({});
    const out = join(archive, "site");
    expect((await tilebook("build", "--archive", archive)).code).toBe(0);
    await mkdir(join(out, ".git"));
    await writeInto(out, { ".git/config": "[core]\n" });
    expect(await reasonFor(archive, out)).toContain("Tilebook did not write (.git)");
  });

  test("in place of a file", async () => {
    const archive = await archiveWith({});
    const folder = await folderWith({ file: "x" });
    expect(await reasonFor(archive, join(folder, "file"), folder)).toContain("that is a file");
  });

  test("below a file", async () => {
    const archive = await archiveWith({});
    const folder = await folderWith({ file: "x" });
    expect(await reasonFor(archive, join(folder, "file", "site"), folder)).toContain(
      "that is a file",
    );
  });
});

describe("words that are wrong", () => {
  test.each([
    ["an address without its scheme", ["--address", "eelgate.example"], "beginning with https://"],
    ["an option that does not exist", ["--outt", "x"], "Did you mean --out?"],
    ["a set that is not there", ["--set", "mornings"], "There is no set “mornings”"],
  ])("are told of: %s", async (_, words, reason) => {
    const archive = await archiveWith({});
    const { code, err } = await tilebook("build", "--archive", archive, ...words);
    expect(code).toBe(2);
    expect(err).toContain(reason);
  });
});
