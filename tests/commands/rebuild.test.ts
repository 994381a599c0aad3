/** Building again: what has not changed is not touched, and what has is all that is written. */
import { appendFile, readFile, rm, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { photograph, writeFolder, writeInto } from "../support/archive-folder.ts";
import { removeFolder } from "../support/remove-folder.ts";
import { plantedFiles } from "./planted.ts";
import { inodesOf, listFiles, sumsOf } from "./site-files.ts";
import { tilebook } from "./tilebook.ts";

let archive: string;
let site: string;
let first: Readonly<Record<string, string>>;

beforeAll(async () => {
  archive = await writeFolder(await plantedFiles());
  site = join(archive, "site");
  await build();
  first = await sumsOf(site);
});

afterAll(() => removeFolder(archive));

async function build(): Promise<string> {
  const { code, out, err } = await tilebook("build", "--archive", archive);
  expect({ code, out }).toEqual({ code: 0, out: "" });
  return err;
}

/** Changes a record for one test's build, and puts it back. */
async function buildWith(file: string, change: (text: string) => string): Promise<string[]> {
  const path = join(archive, file);
  const before = await readFile(path, "utf8");
  const inodes = await inodesOf(site);
  await writeFile(path, change(before));
  await build();
  const after = await inodesOf(site);
  await writeFile(path, before);
  return Object.keys(after).filter((name) => after[name] !== inodes[name]);
}

const isPage = (file: string) => file.endsWith(".html");

describe("a second build of the same archive", () => {
  test("writes no page and makes no index", async () => {
    const inodes = await inodesOf(site);
    const said = await build();
    expect(said).toMatch(/: 0 pages written, \d+ carried over, search index carried over\./u);
    const after = await inodesOf(site);
    const same = (file: string) => isPage(file) || /^(data|pagefind|pictures)\//u.test(file);
    for (const file of Object.keys(first).filter(same))
      expect(after[file], file).toBe(inodes[file]);
    expect(await sumsOf(site)).toEqual(first);
  });

  test("without what was remembered gives the same bytes", async () => {
    await rm(join(archive, ".cache"), { recursive: true });
    await build();
    expect(await sumsOf(site)).toEqual(first);
  });

  test("with what was remembered damaged gives the same bytes", async () => {
    for (const file of await listFiles(join(archive, ".cache"))) {
      await writeFile(join(archive, ".cache", file), "damaged");
    }
    await build();
    expect(await sumsOf(site)).toEqual(first);
  });
});

describe("a change", () => {
  test("of one tile's notes writes that tile's page and the book they are printed in, and carries all other pages over", async () => {
    const touched = await buildWith("tiles/evening/EV-2.md", (text) => `${text}\nRan a little.\n`);
    expect(touched.filter(isPage)).toEqual(["book/evening.html", "tiles/ev-2.html"]);
    expect(touched.filter((file) => file.startsWith("pictures/"))).toEqual([]);
    expect(await readFile(join(site, "tiles/ev-2.html"), "utf8")).toContain("Ran a little.");
  });

  test("of a glaze's name writes the pages that name it, and no other", async () => {
    const touched = await buildWith("recipes/glazes/grå.md", (text) => text.replace("Grå", "Grey"));
    expect(touched).toEqual(expect.arrayContaining(["glazes/grå.html", "tiles/blå-7.html"]));
    expect(touched).not.toEqual(expect.arrayContaining(["tiles/ev-1.html"]));
    expect(touched).not.toEqual(expect.arrayContaining(["firings/g-1.html"]));
  });

  test("back to what it was gives back the first bytes", async () => {
    await build();
    expect(await sumsOf(site)).toEqual(first);
  });

  test("of a photograph brings the new picture and takes the old one away", async () => {
    const file = "tiles/evening/EV-2.jpg";
    const before = await readFile(join(archive, file));
    await writeInto(archive, { [file]: await photograph("#556b2f") });
    await build();
    const pictures = (await listFiles(join(site, "pictures"))).map((name) => `pictures/${name}`);
    const kept = Object.keys(first).filter((name) => pictures.includes(name));
    const old = Object.keys(first).filter((name) => name.startsWith("pictures/"));
    expect(kept.length).toBeLessThan(old.length);
    expect(pictures).toHaveLength(old.length);
    await writeFile(join(archive, file), before);
    await build();
    expect(await sumsOf(site)).toEqual(first);
  });

  test("that takes a tile away takes its page away", async () => {
    const path = join(archive, "tiles/evening/EV-3.md");
    const before = await readFile(path);
    await rm(path);
    await build();
    expect(await listFiles(site)).not.toContain("tiles/ev-3.html");
    await writeFile(path, before);
    await build();
    expect(await sumsOf(site)).toEqual(first);
  });
});

describe("a site that somebody changed by hand", () => {
  test.each(["tiles/ev-1.html", "data/tiles.json", "assets/tile.css", "pagefind/pagefind.js"])(
    "is made whole again: %s",
    async (file) => {
      await appendFile(join(site, file), "<p>mine</p>");
      await build();
      expect(await sumsOf(site)).toEqual(first);
    },
  );

  test("is made whole again where a picture was changed, in what is remembered too", async () => {
    const [picture = ""] = Object.keys(first).filter((file) => file.startsWith("pictures/"));
    await appendFile(join(site, picture), "more");
    await build();
    expect(await sumsOf(site)).toEqual(first);
  });
});
