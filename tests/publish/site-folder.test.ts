import { mkdir, mkdtemp, readdir, readFile, symlink, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { checkSiteFolder, RefusedFolder } from "../../src/publish/site-folder.ts";
import { openStaging, siteMark } from "../../src/publish/staging.ts";
import { removeFolder } from "../support/remove-folder.ts";

let base: string;
let archive: string;

beforeEach(async () => {
  base = await mkdtemp(join(tmpdir(), "tilebook-test-"));
  archive = join(base, "archive");
  await mkdir(join(archive, "tiles", "set"), { recursive: true });
  await mkdir(join(archive, "recipes"));
});

afterEach(() => removeFolder(base));

async function publish(out: string, words: string): Promise<void> {
  const folder = await checkSiteFolder(out, archive);
  const staging = await openStaging(folder);
  await writeFile(join(staging.folder, "index.html"), words);
  await staging.publish();
}

describe("a folder for the site", () => {
  test("may be absent, and its parents too", async () => {
    await publish(join(base, "a", "b", "site"), "first");
    expect(await readFile(join(base, "a", "b", "site", "index.html"), "utf8")).toBe("first");
  });

  test("may hold a .gitignore, which stays", async () => {
    const out = join(archive, "site");
    await mkdir(out);
    await writeFile(join(out, ".gitignore"), "*\n");
    await publish(out, "first");
    await publish(out, "second");
    expect((await readdir(out)).sort()).toEqual([".gitignore", siteMark, "index.html"]);
    expect(await readFile(join(out, "index.html"), "utf8")).toBe("second");
  });

  test("is a site of our own at every moment of another build that puts its site there", async () => {
    const out = join(base, "site");
    await publish(out, "first");
    let isOver = false;
    const building = (async () => {
      for (let i = 0; i < 40; i += 1) {
        const staging = await openStaging(out);
        // Not every site holds the same.
        await writeFile(join(staging.folder, `page-${i}.html`), "");
        await staging.publish();
      }
    })().finally(() => {
      isOver = true;
    });
    const refused: string[] = [];
    while (!isOver)
      await Promise.all(
        Array.from({ length: 8 }, () =>
          checkSiteFolder(out, archive).catch((error) => refused.push(String(error))),
        ),
      );
    await building;
    expect(refused).toEqual([]);
  });

  test("is refused where it holds files of somebody else's, and those stay", async () => {
    const out = join(base, "photos");
    await mkdir(out);
    await writeFile(join(out, "holiday.jpg"), "x");
    await expect(checkSiteFolder(out, archive)).rejects.toThrow(
      /holds files that Tilebook did not write \(holiday.jpg\)/u,
    );
    expect(await readdir(out)).toEqual(["holiday.jpg"]);
  });

  test("is refused where somebody put files of their own into a site, and those stay", async () => {
    const out = join(base, "site");
    await publish(out, "first");
    await mkdir(join(out, ".git"));
    await expect(checkSiteFolder(out, archive)).rejects.toThrow(
      /holds files that Tilebook did not write \(.git\)/u,
    );
    expect((await readdir(out)).sort()).toEqual([".git", siteMark, "index.html"]);
  });

  test("may hold what an operating system drops into folders", async () => {
    const out = join(base, "site");
    await publish(out, "first");
    await writeFile(join(out, ".DS_Store"), "");
    await publish(out, "second");
    expect((await readdir(out)).sort()).toEqual([siteMark, "index.html"]);
  });

  test("is refused where its mark cannot be read", async () => {
    const out = join(base, "site");
    await publish(out, "first");
    await writeFile(join(out, siteMark), '{"madeBy": "tile');
    await expect(checkSiteFolder(out, archive)).rejects.toThrow(RefusedFolder);
  });

  test.each([
    ["the archive itself", ""],
    ["a folder that contains the archive", ".."],
    ["tiles/", "tiles"],
    ["a folder in tiles/", "tiles/set/site"],
    ["a folder in recipes/", "recipes/site"],
  ])("is refused where it is %s", async (_, way) => {
    await expect(checkSiteFolder(join(archive, way), archive)).rejects.toThrow(RefusedFolder);
  });

  test("is refused where a link leads into tiles/", async () => {
    await symlink(join(archive, "tiles"), join(base, "innocent"));
    await expect(checkSiteFolder(join(base, "innocent", "site"), archive)).rejects.toThrow(
      RefusedFolder,
    );
  });

  test("is refused where it is a file", async () => {
    await writeFile(join(base, "file"), "x");
    await expect(checkSiteFolder(join(base, "file"), archive)).rejects.toThrow(/that is a file/u);
  });
});
