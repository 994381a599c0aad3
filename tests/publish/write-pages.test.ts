import { existsSync } from "node:fs";
import { mkdir, mkdtemp, readFile, rm, stat, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, test, vi } from "vitest";
import type { Page } from "../../src/publish/page.ts";
import { renderPage, writePages } from "../../src/publish/write-pages.ts";
import { removeFolder } from "../support/remove-folder.ts";
import { filed, makeIn, pageOf as page } from "./making-sites.ts";

let base: string;
let last: string;
let folder: string;
let empty: string;

beforeEach(async () => {
  base = await mkdtemp(join(tmpdir(), "tilebook-pages-test-"));
  last = join(base, "last");
  folder = join(base, "new");
  empty = join(base, "empty");
  await mkdir(folder);
  await mkdir(empty);
});

afterEach(async () => {
  vi.restoreAllMocks();
  await removeFolder(base);
});

/** Writes pages as a build does that comes after another. */
const write = (pages: readonly Page[], target: { folder: string; last: string | null }) =>
  makeIn(base, target, async (place) => writePages(await filed(pages, place), place, empty));

const read = (path: string) => readFile(path, "utf8");

describe("writePages", () => {
  test("writes each page whole, at its own address", async () => {
    const pages = [page("index.html", "wall"), page("tiles/tb-014.html", "tile")];
    expect(await write(pages, { folder, last: null })).toEqual({
      written: 2,
      carriedOver: 0,
    });
    expect(await read(join(folder, "tiles/tb-014.html"))).toBe("<!doctype html>\n<p>tile</p>\n");
    expect(await read(join(folder, "index.html"))).toBe("<!doctype html>\n<p>wall</p>\n");
  });

  test("shows signs that would turn letters around by their codes", () => {
    expect(renderPage(page("a.html", "red\u202eder\u202c"))).toBe(
      "<!doctype html>\n<p>red⟨U+202E⟩der⟨U+202C⟩</p>\n",
    );
  });

  test("carries over what has the same bytes, as the very same file, and writes what has not", async () => {
    const before = [page("a.html", "same"), page("b.html", "old")];
    await write(before, { folder: last, last: null });
    const after = [page("a.html", "same"), page("b.html", "new"), page("c.html", "more")];
    expect(await write(after, { folder, last })).toEqual({
      written: 2,
      carriedOver: 1,
    });
    expect((await stat(join(folder, "a.html"))).ino).toBe((await stat(join(last, "a.html"))).ino);
    expect(await read(join(folder, "b.html"))).toContain("new");
    expect(await read(join(last, "b.html"))).toContain("old");
  });

  test("makes anew a page that somebody edited, took away or put a folder in place of", async () => {
    const pages = [page("a.html", "a"), page("b.html", "b"), page("c.html", "c")];
    await write(pages, { folder: last, last: null });
    await writeFile(join(last, "a.html"), "<p>edited</p>");
    await rm(join(last, "b.html"));
    await rm(join(last, "c.html"));
    await mkdir(join(last, "c.html"));
    expect(await write(pages, { folder, last })).toEqual({
      written: 3,
      carriedOver: 0,
    });
    for (const name of ["a", "b", "c"]) {
      expect(await read(join(folder, `${name}.html`))).toBe(`<!doctype html>\n<p>${name}</p>\n`);
    }
  });

  test("takes no contributor's word for a template, in a page or in its address", async () => {
    const words = "{{ pages }} {% raw %} <%= 1 %> #{1} --- permalink: x ---";
    const path = "tiles/{{ sheet.path }}.html";
    await write([page(path, words)], { folder, last: null });
    expect(await read(join(folder, path))).toBe(
      `<!doctype html>\n<p>${words.replace("<%= 1 %>", "&lt;%= 1 %>")}</p>\n`,
    );
  });

  test("writes to addresses of every alphabet", async () => {
    const paths = ["tiles/blå-1.html", "tiles/青.html", "tiles/a b.html", "tiles/50%.html"];
    await write(
      paths.map((path) => page(path, path)),
      { folder, last: null },
    );
    for (const path of paths) expect(existsSync(join(folder, path)), path).toBe(true);
  });

  test("says nothing of its own, however long it takes", async () => {
    const said = (["log", "warn", "error"] as const).map((how) => vi.spyOn(console, how));
    const written = vi.spyOn(process.stderr, "write");
    let clock = 0;
    vi.spyOn(performance, "now").mockImplementation(() => {
      clock += new Error().stack?.includes("BenchmarkGroup") ? 5000 : 1;
      return clock;
    });
    const pages = [page("a.html", "a"), page("b.html", "b"), page("c.html", "c")];
    await write(pages, { folder, last: null });
    for (const spy of [...said, written]) expect(spy).not.toHaveBeenCalled();
  });

  test("refuses two pages with one address before anything is written", async () => {
    const pages = [page("a.html", "one"), page("a.html", "two")];
    await expect(write(pages, { folder, last: null })).rejects.toThrow(
      "Two pages have the address a.html",
    );
    expect(existsSync(join(folder, "a.html"))).toBe(false);
  });
});
