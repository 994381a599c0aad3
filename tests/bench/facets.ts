import { fileURLToPath } from "node:url";
import { build } from "esbuild";
import { chromium } from "playwright-core";
import type * as wall from "../../src/browser/wall/table.ts";
import type { takeWall } from "../../src/browser/wall/tiles.ts";
import { type FacetColumn, type Facets, facetNames } from "../../src/publish/facets-file.ts";
import { findBrowser } from "../support/find-browser.ts";

/**
 * Times a query among 10,000 tiles in headless Chromium with its processor slowed four times: all
 * facets filtered and counted, and the first tiles put on the wall.
 */
const TARGET = 50;
const TILES = 10_000;
const SLOWED = 4;
const QUERIES = 60;

interface Answer {
  readonly found: number;
  readonly counted: number;
  readonly shown: number;
}

export async function run(): Promise<boolean> {
  const browser = await chromium.launch({ executablePath: findBrowser().path });
  try {
    const page = await (await browser.newContext()).newPage();
    const devtools = await page.context().newCDPSession(page);
    await page.setContent('<ul id="wall"></ul>');
    await page.addScriptTag({ content: await bundleWall() });
    await devtools.send("Emulation.setCPUThrottlingRate", { rate: SLOWED });
    const answers = await page.evaluate(answerQueries, { facets: makeFacets(), queries: QUERIES });
    const counted = quantiles(answers.map((answer) => answer.counted));
    const shown = quantiles(answers.map((answer) => answer.counted + answer.shown));
    console.log(
      `${TILES} tiles, ${facetNames.length} facets, ${QUERIES} queries, slowed ${SLOWED} times`,
    );
    console.log(`filtered and counted: median ${counted.median} ms, slowest ${counted.most} ms`);
    console.log(
      `and on the wall:      median ${shown.median} ms, slowest ${shown.most} ms (target ${TARGET})`,
    );
    return shown.median <= TARGET && counted.most <= TARGET;
  } finally {
    await browser.close();
  }
}

async function bundleWall(): Promise<string> {
  const folder = fileURLToPath(new URL("../../src/browser/wall/", import.meta.url));
  const bundled = await build({
    stdin: {
      contents: 'export * from "./table.ts"; export * from "./tiles.ts";',
      resolveDir: folder,
    },
    bundle: true,
    write: false,
    format: "iife",
    globalName: "wall",
  });
  return bundled.outputFiles[0]?.text ?? "";
}

/** Runs in the page. */
function answerQueries({ facets, queries }: { facets: Facets; queries: number }): Answer[] {
  const {
    makeTable,
    findTiles,
    takeWall: take,
  } = (globalThis as unknown as { wall: typeof wall & { takeWall: typeof takeWall } }).wall;
  const list = document.querySelector("#wall") as HTMLElement;
  const table = makeTable(facets);
  const shownTiles = take(list, facets, "");
  const names = Object.keys(facets.columns) as (keyof Facets["columns"])[];
  return Array.from({ length: queries }, (_, i) => {
    const chosen = names.filter((__, at) => (i + at) % 7 === 0).slice(0, i % 4);
    const choice = new Map(chosen.map((name, at) => [name, (i * 3 + at) % 5]));
    const begun = performance.now();
    const { tiles } = findTiles(table, choice);
    const counted = performance.now();
    shownTiles.show(tiles);
    return { found: tiles.length, counted: counted - begun, shown: performance.now() - counted };
  });
}

/** A catalogue of 10,000 tiles that differ as tiles do; the same at every run. */
function makeFacets(): Facets {
  const random = randomNumbers(7);
  const ids = Array.from({ length: TILES }, (_, i) => `TB-${String(i).padStart(5, "0")}`);
  const columns = facetNames.map((name, at) => [name, makeColumn(6 + at * 3, random)] as const);
  return {
    codes: ids,
    urls: ids.map((id) => `tiles/${id.toLowerCase()}.html`),
    titles: ids.map(() => Math.floor(random() * 40)),
    names: Array.from({ length: 40 }, (_, i) => `Glaze ${i} over glaze ${i + 1}`),
    pictures: ids.map(() => ""),
    columns: Object.fromEntries(columns) as unknown as Facets["columns"],
  };
}

function makeColumn(values: number, random: () => number): FacetColumn {
  const keys = Array.from({ length: values }, (_, i) => `v${i}`);
  const single = keys.map((_, i) => [i]);
  const pairs = keys.map((_, i) => [i, (i + 1) % values]);
  const combinations = [[], ...single, ...pairs];
  const tiles = Array.from({ length: TILES }, () => Math.floor(random() * combinations.length));
  return { keys, labels: keys, combinations, tiles };
}

/** Lehmer's generator with the constants of Park and Miller (1988). */
function randomNumbers(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state * 16807) % 2147483647;
    return state / 2147483647;
  };
}

/** In milliseconds, to a tenth. */
function quantiles(times: readonly number[]): { readonly median: number; readonly most: number } {
  const sorted = [...times].sort((a, b) => a - b);
  const tenths = (ms = 0) => Math.round(ms * 10) / 10;
  return { median: tenths(sorted[Math.floor(sorted.length / 2)]), most: tenths(sorted.at(-1)) };
}
