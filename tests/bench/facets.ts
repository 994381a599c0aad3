import { fileURLToPath } from "node:url";
import { build } from "esbuild";
import { chromium } from "playwright-core";
import type * as near from "../../src/browser/wall/near.ts";
import type * as put from "../../src/browser/wall/put.ts";
import type * as table from "../../src/browser/wall/table.ts";
import type * as tiles from "../../src/browser/wall/tiles.ts";
import type { FacetColumn, Facets } from "../../src/publish/facets-file.ts";
import { facetNames } from "../../src/terms/facets.ts";
import { findBrowser } from "../support/find-browser.ts";

/**
 * Times a query among 10,000 tiles in headless Chromium with its processor slowed four times: all
 * facets filtered and counted, and the first tiles put on the wall; the same in the order of the
 * run and of the date; and with a new colour in every query, of which every tile's difference is
 * measured and the tiles put in order.
 */
const TARGET = 50;
const TILES = 10_000;
const SLOWED = 4;
const QUERIES = 60;

interface Answer {
  readonly found: number;
  readonly counted: number;
  readonly ordered: number;
  readonly shown: number;
}

type Wall = typeof near & typeof put & typeof table & typeof tiles;

export async function run(): Promise<boolean> {
  const browser = await chromium.launch({ executablePath: findBrowser().path });
  try {
    const page = await (await browser.newContext()).newPage();
    const devtools = await page.context().newCDPSession(page);
    await page.setContent('<ul id="wall"></ul>');
    await page.addScriptTag({ content: await bundleWall() });
    await devtools.send("Emulation.setCPUThrottlingRate", { rate: SLOWED });
    const asked = { facets: makeFacets(), queries: QUERIES } as const;
    const plain = await page.evaluate(answerQueries, { ...asked, by: "code" as const });
    const sorted = await page.evaluate(answerQueries, { ...asked, by: "run and date" as const });
    const coloured = await page.evaluate(answerQueries, { ...asked, by: "colour" as const });
    console.log(
      `${TILES} tiles, ${facetNames.length} facets, ${QUERIES} queries, slowed ${SLOWED} times`,
    );
    const alone = coloured.filter(({ found }) => found > TILES / 2);
    const met = [
      tellTimes("facets", plain),
      tellTimes("facets, in the order of run or date", sorted),
      tellTimes("facets and a new colour", coloured),
      tellTimes("a new colour alone, the first of them on a page just opened", alone),
    ];
    return met.every(Boolean);
  } finally {
    await browser.close();
  }
}

/** Prints what the queries took, and says whether the target is met. */
function tellTimes(what: string, answers: readonly Answer[]): boolean {
  const counted = quantiles(answers.map((answer) => answer.counted));
  const ordered = quantiles(answers.map((answer) => answer.counted + answer.ordered));
  const shown = quantiles(answers.map((answer) => answer.counted + answer.ordered + answer.shown));
  console.log(`${what}:`);
  console.log(`  filtered and counted: ${counted.words}`);
  console.log(`  and put in order:     ${ordered.words}`);
  console.log(`  and on the wall:      ${shown.words} (target ${TARGET} ms)`);
  return shown.median <= TARGET && counted.most <= TARGET;
}

async function bundleWall(): Promise<string> {
  const folder = fileURLToPath(new URL("../../src/browser/wall/", import.meta.url));
  const bundled = await build({
    stdin: {
      contents:
        'export * from "./near.ts"; export * from "./put.ts"; export * from "./table.ts"; export * from "./tiles.ts";',
      resolveDir: folder,
    },
    bundle: true,
    write: false,
    format: "iife",
    globalName: "wall",
  });
  return bundled.outputFiles[0]?.text ?? "";
}

interface Asked {
  readonly facets: Facets;
  readonly queries: number;
  readonly by: "code" | "run and date" | "colour";
}

/** Runs in the page. */
function answerQueries({ facets, queries, by }: Asked): Answer[] {
  const { wall } = globalThis as unknown as { wall: Wall };
  const table = wall.makeTable(facets);
  const shownTiles = wall.takeWall(document.querySelector("#wall") as HTMLElement, facets, "");
  const colours = wall.readColours(facets);
  const putInOrder = wall.makePutter(facets, colours, "");
  const names = Object.keys(facets.columns) as (keyof Facets["columns"])[];
  return Array.from({ length: queries }, (_, i) => {
    const chosen = names.filter((__, at) => (i + at) % 7 === 0).slice(0, i % 4);
    const choice = new Map(chosen.map((name, at) => [name, (i * 3 + at) % 5]));
    const hex = `#${((i * 0x2f1b3d + 0x546966) % 0x1000000).toString(16).padStart(6, "0")}`;
    const begun = performance.now();
    const marks = by === "colour" ? { near: colours.measured } : {};
    const { tiles } = wall.findTiles(table, choice, marks);
    const counted = performance.now();
    const asked = by === "colour" ? wall.describeAsked({ hex }, colours) : undefined;
    const sort = asked ? "near" : by === "code" ? "code" : i % 2 === 0 ? "run" : "date";
    const put = putInOrder(tiles, sort, asked, 0);
    const ordered = performance.now();
    shownTiles.show(put.tiles, put.captions);
    const shown = performance.now() - ordered;
    return { found: tiles.length, counted: counted - begun, ordered: ordered - counted, shown };
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
    came: ids.map(() => Math.floor(random() * 400)),
    outcomes: Array.from({ length: 400 }, (_, i) => `satin, ran ${i} mm, again: yes`),
    ran: ids.map(() => (random() < 0.7 ? Math.floor(random() * 60) : null)),
    glazed: ids.map(() => (random() < 0.9 ? Math.floor(random() * 900) : null)),
    days: Array.from({ length: 900 }, (_, i) => `day ${i}`),
    pictures: ids.map(() => ""),
    columns: Object.fromEntries(columns) as unknown as Facets["columns"],
    shards: [],
    ...makeColours(random),
  };
}

/** Nine tiles of ten have been measured, and lie where glazes do. */
function makeColours(random: () => number): Pick<Facets, "lab" | "trust"> {
  const measured = Array.from({ length: TILES }, () => random() < 0.9);
  const column = (least: number, most: number) =>
    measured.map((is) => (is ? Math.round(100 * (least + random() * (most - least))) : null));
  return {
    lab: [column(10, 95), column(-40, 40), column(-40, 50)],
    trust: { difference: 3, sentence: "A smaller difference than 3 means nothing." },
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
function quantiles(times: readonly number[]): {
  readonly median: number;
  readonly most: number;
  readonly words: string;
} {
  const sorted = [...times].sort((a, b) => a - b);
  const tenths = (ms = 0) => Math.round(ms * 10) / 10;
  const [median, most] = [tenths(sorted[Math.floor(sorted.length / 2)]), tenths(sorted.at(-1))];
  return { median, most, words: `median ${median} ms, slowest ${most} ms` };
}
