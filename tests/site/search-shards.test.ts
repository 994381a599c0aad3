/** Words are found in all indexes of a large site at once, wherever beneath its host it stands. */
import { mkdtempSync } from "node:fs";
import { writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { build } from "esbuild";
import { afterAll, beforeAll, expect } from "vitest";
import { writeSearch } from "../../src/publish/search.ts";
import { furtherShards } from "../../src/publish/search-shards.ts";
import { filed, makeIn, pageOf } from "../publish/making-sites.ts";
import { siteTest } from "../support/browser.ts";
import { removeFolder } from "../support/remove-folder.ts";

const folder = mkdtempSync(join(tmpdir(), "tilebook-shards-"));
const script = fileURLToPath(new URL("../../src/browser/wall/words.ts", import.meta.url));

/** One tile in a hundred ran; a glaze is told of as well. */
const codes = Array.from({ length: 2500 }, (_, i) => `TB-${i}`);
const ran = codes.filter((_, i) => i % 100 === 7);
const pages = [
  ...codes.map((code) => pageOf(urlOf(code), ran.includes(code) ? "ran over" : "quiet", code)),
  pageOf("glazes/soot.html", "a glaze that ran", "Soot"),
];

function urlOf(code: string): string {
  return `tiles/${code.toLowerCase()}.html`;
}

beforeAll(async () => {
  await makeIn(folder, { folder, last: null }, async (place) =>
    writeSearch([{ under: "", pages: await filed(pages, place) }], place),
  );
  const loading = '<script src="assets/words.js"></script>';
  await writeFile(join(folder, "index.html"), `<!doctype html><html lang="en">${loading}`);
  await build({
    entryPoints: [script],
    outfile: join(folder, "assets/words.js"),
    bundle: true,
    format: "iife",
    globalName: "words",
    external: ["*/pagefind.js"],
  });
});

afterAll(() => removeFolder(folder));

siteTest(
  "words are found in every shard of the index, however many tiles they are on",
  async ({ open, serve }) => {
    const shards = furtherShards(pages.length);
    expect(shards).toEqual(["pagefind/shard-1"]);
    const page = await open(await serve(folder, "/studio/tests/"));
    const titles = codes.map(() => 0);
    const facets = { codes, urls: codes.map(urlOf), titles, names: [""], shards };
    const find = (asked: string) =>
      page.evaluate(
        async ([given, typed]) => {
          const { words } = self as unknown as {
            words: typeof import("../../src/browser/wall/words.ts");
          };
          const { tiles, missed, others } = await words.findWords(given as never, typed, "");
          return { tiles: [...tiles], missed, others };
        },
        [facets, asked] as const,
      );
    const few = await find("ran");
    expect(few.missed).toBeNull();
    expect(codes.filter((_, i) => few.tiles[i] === 1)).toEqual(ran);
    expect(few.others).toEqual([
      { url: "/studio/tests/glazes/soot.html", title: "Soot", kind: "Tile" },
    ]);
    const many = await find("quiet");
    expect(many.tiles.filter(Boolean)).toHaveLength(codes.length - ran.length);
  },
);
