import { createHash } from "node:crypto";
import { appendFile, mkdtemp, readdir, readFile, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, test, vi } from "vitest";
import type { Page } from "../../src/publish/page.ts";
import { writeSearch } from "../../src/publish/search.ts";
import { removeFolder } from "../support/remove-folder.ts";
import { filed, makeIn, pageOf } from "./making-sites.ts";

let base: string;

beforeEach(async () => {
  base = await mkdtemp(join(tmpdir(), "tilebook-search-"));
});

afterEach(async () => {
  vi.unstubAllEnvs();
  await removeFolder(base);
});

const tile = (code: string, words: string): Page =>
  pageOf(`tiles/${code.toLowerCase()}.html`, words, code);

const notFound = pageOf("404.html", "none");

/** Indexes pages as a build does that comes after another. */
const write = (pages: readonly Page[], target: { folder: string; last: string | null }) =>
  makeIn(base, target, async (place) =>
    writeSearch([{ under: "", pages: await filed(pages, place) }], place),
  );

/** Every file of an index with the sum of its bytes. */
async function index(site: string): Promise<Record<string, string>> {
  const entries = await readdir(join(site, "pagefind"), { recursive: true, withFileTypes: true });
  const files = entries.filter((entry) => entry.isFile());
  const read = files.map(async (file) => {
    const path = join(file.parentPath, file.name);
    const sum = createHash("sha256")
      .update(await readFile(path))
      .digest("hex");
    return [path.slice(site.length), sum] as const;
  });
  return Object.fromEntries(await Promise.all(read));
}

describe("the index for words", () => {
  test("has a fragment for each page that may be found, and none for others", async () => {
    const pages = [tile("TB-1", "blue"), tile("TB-2", "grey"), notFound];
    expect(await write(pages, { folder: base, last: null })).toBe(true);
    expect(await readdir(join(base, "pagefind/fragment"))).toHaveLength(2);
  });

  test("is the same bytes whenever it is made of the same words", async () => {
    const pages = [tile("TB-1", "blue"), tile("TB-2", "grey")];
    const [one, two] = [join(base, "one"), join(base, "two")];
    await write(pages, { folder: one, last: null });
    await write(pages, { folder: two, last: null });
    expect(await index(two)).toEqual(await index(one));
  });

  test("is carried over where no word changed, and made anew where one did", async () => {
    const [one, two, three] = ["one", "two", "three"].map((name) => join(base, name)) as [
      string,
      string,
      string,
    ];
    await write([tile("TB-1", "blue")], { folder: one, last: null });
    expect(await write([tile("TB-1", "blue")], { folder: two, last: one })).toBe(false);
    expect(await index(two)).toEqual(await index(one));
    expect(await write([tile("TB-1", "grey")], { folder: three, last: two })).toBe(true);
    expect(await index(three)).not.toEqual(await index(one));
  });

  test("is made anew where somebody took a part of the last one away or changed it", async () => {
    const pages = [tile("TB-1", "blue"), tile("TB-2", "grey")];
    const [one, two] = [join(base, "one"), join(base, "two")];
    await write(pages, { folder: one, last: null });
    const whole = await index(one);
    const [fragment = ""] = await readdir(join(one, "pagefind/fragment"));
    await writeFile(join(one, "pagefind/fragment", fragment), "edited");
    await write(pages, { folder: two, last: one });
    expect(await index(two)).toEqual(whole);
  });

  test("is made anew where the last site was made by somebody else, whatever it says of itself", async () => {
    const pages = [tile("TB-1", "blue")];
    const [one, two] = [join(base, "one"), join(base, "two")];
    vi.stubEnv("XDG_CACHE_HOME", join(base, "elsewhere"));
    await write(pages, { folder: one, last: null });
    const whole = await index(one);
    vi.stubEnv("XDG_CACHE_HOME", join(base, "here"));
    await appendFile(join(one, "pagefind/pagefind.js"), "\nfetch('//elsewhere.example')");
    expect(await write(pages, { folder: two, last: one })).toBe(true);
    expect(await index(two)).toEqual(whole);
  });

  test("is made anew where nothing can be remembered", async () => {
    const pages = [tile("TB-1", "blue")];
    await writeFile(join(base, "cache"), "a file");
    const [one, two] = [join(base, "one"), join(base, "two")];
    expect(await write(pages, { folder: one, last: null })).toBe(true);
    expect(await write(pages, { folder: two, last: one })).toBe(true);
  });
});

describe("the index of a large site", () => {
  const many = Array.from({ length: 2001 }, (_, i) => tile(`TB-${i}`, `test ${i}`));

  test("is cut into shards, of which an edit remakes one; the bytes are those of a first build", async () => {
    const [one, two, anew] = [join(base, "one"), join(base, "two"), join(base, "anew")];
    await write(many, { folder: one, last: null });
    const edited = [...many.slice(0, 700), tile("TB-700", "another"), ...many.slice(701)];
    expect(await write(edited, { folder: two, last: one })).toBe(true);
    await write(edited, { folder: anew, last: null });
    const [before, after] = await Promise.all([index(one), index(two)]);
    expect(after).toEqual(await index(anew));
    const shardOf = (file: string) => /shard-\d+/u.exec(file)?.[0] ?? "first";
    const touched = Object.keys(after).filter((file) => after[file] !== before[file]);
    expect(new Set(Object.keys(after).map(shardOf))).toEqual(new Set(["first", "shard-1"]));
    expect(new Set(touched.map(shardOf)).size).toBe(1);
  });
});
