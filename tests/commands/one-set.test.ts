/** Sites of a part of the archive, and for another address than the studio's. */
import { readFile, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { archiveWith } from "./archives.ts";
import { filesThatHold, listFiles } from "./site-files.ts";
import { tilebook } from "./tilebook.ts";

async function buildWith(...words: readonly string[]): Promise<string> {
  const archive = await archiveWith({});
  const { code, out } = await tilebook("build", "--archive", archive, ...words, "--quiet");
  expect({ code, out }).toEqual({ code: 0, out: "" });
  return join(archive, "site");
}

const tilesIn = async (site: string) =>
  (await listFiles(site)).filter((file) => /^tiles\/.+\.html$/u.test(file));

describe("the site of one set alone", () => {
  test("holds its tiles and no other set's", async () => {
    const site = await buildWith("--set", "evening");
    expect(await tilesIn(site)).toEqual(["ev-1", "ev-2", "ev-3", "old-1"].map(toPage));
    for (const words of ["HID-1", "Quiet class"])
      expect(await filesThatHold(site, words)).toEqual([]);
  });

  test("of an unlisted set stands at the root, and asks search engines to pass by", async () => {
    const site = await buildWith("--set", "HIDDEN");
    expect(await tilesIn(site)).toEqual(["hid-1"].map(toPage));
    const files = await listFiles(site);
    expect(
      files.filter((file) => /^(sitemap|feed)\.xml$|^data\/.+\.(json|csv)$/u.test(file)),
    ).toEqual([]);
    for (const page of files.filter((file) => file.endsWith(".html"))) {
      expect(await readFile(join(site, page), "utf8"), page).toContain(
        'content="noindex, nofollow"',
      );
    }
  });
});

test("a build says where each unlisted set is, with the studio's address and without", async () => {
  const archive = await archiveWith({});
  const told = async (...words: readonly string[]) =>
    (await tilebook("build", "--archive", archive, ...words)).err
      .split("\n")
      .filter((line) => line.includes("by its link alone"));
  expect(await told()).toEqual([
    "Quiet class is reached by its link alone: https://eelgate.example/tests/s/k7wq2mzt4hx3vb5nrd6yfp2cja/",
  ]);
  await writeFile(
    join(archive, "studio.yaml"),
    "format: 1\nstudio: Eelgate Pottery\nmakers: {m01: {}, m02: {}, m03: {}}\n",
  );
  expect(await told()).toEqual([
    "Quiet class is reached by its link alone: s/k7wq2mzt4hx3vb5nrd6yfp2cja/index.html in the site",
  ]);
});

const toPage = (code: string) => `tiles/${code}.html`;

test("an address that the command names stands in place of the studio's", async () => {
  const site = await buildWith("--address", "https://elsewhere.example/glazes");
  expect(await filesThatHold(site, "eelgate.example")).toEqual([]);
  expect(await readFile(join(site, "tiles/ev-1.html"), "utf8")).toContain(
    '<link rel="canonical" href="https://elsewhere.example/glazes/tiles/ev-1.html"',
  );
  expect(await readFile(join(site, "sitemap.xml"), "utf8")).toContain(
    "<loc>https://elsewhere.example/glazes/tiles/ev-1.html</loc>",
  );
});

test("without an address there is neither sitemap nor feed nor canonical link, and all else is", async () => {
  const archive = await archiveWith({
    "studio.yaml": "format: 1\nstudio: Eelgate Pottery\nmakers: {m01: {}, m02: {}, m03: {}}\n",
  });
  expect((await tilebook("build", "--archive", archive, "--quiet")).code).toBe(0);
  const site = join(archive, "site");
  expect(await filesThatHold(site, 'rel="canonical"')).toEqual([]);
  const files = await listFiles(site);
  expect(files.filter((file) => /^(sitemap|feed)\.xml$/u.test(file))).toEqual([]);
  expect(files).toEqual(expect.arrayContaining(["index.html", "tiles/ev-1.html", "404.html"]));
});
