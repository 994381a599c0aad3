/** The pages of two glazes that met on hundreds of tiles. */
import { expect, test } from "vitest";
import { makeCatalogue } from "../../../src/catalogue/make.ts";
import { renderPage } from "../../../src/publish/write-pages.ts";
import type { Tile } from "../../../src/records/archive.ts";
import type { Result } from "../../../src/records/tile.ts";
import { archive, clay, coat, fired, glaze, tile } from "../../checks/support.ts";
import { firings } from "../../likeness/make-ups.ts";
import { listPages } from "../../support/list-pages.ts";

const clays = Array.from({ length: 5 }, (_, i) => clay(`clay-${i}`, { name: `Clay ${i}` }));
const notes = "It ran to the foot and took the other with it, ".repeat(20);

/** Both orders and each alone, in every number of coats, on every clay, in two fires. */
function made(i: number): Tile {
  const [soot, chalk] = [
    coat("soot", { coats: 1 + (i % 3) }),
    coat("chalk", { coats: 1 + (i % 2) }),
  ];
  const layers = [[soot, chalk], [chalk, soot], [soot], [chalk]][Math.floor(i / 60) % 4] ?? [];
  const result = [{ surface: ["gloss"], faults: ["running"], run: i % 90 } as unknown as Result];
  const steps = [...layers, fired(i % 2 === 0 ? "g-1" : "g-red")];
  return tile(`T-${i}`, steps, { clay: `clay-${i % 5}`, shape: "upright", result }, { notes });
}

const catalogue = makeCatalogue(
  archive({
    ...{ clays, firings, glazes: [glaze("soot"), glaze("chalk")] },
    tiles: Array.from({ length: 960 }, (_, i) => made(i)),
  }),
  {
    ...{ pictures: new Map(), chemistry: new Map(), heats: new Map(), notes: new Map() },
    builtInMaterials: [],
  },
);
const pages = listPages(catalogue).filter(({ path }) => /^(?:pairs\/|runs)/u.test(path));
const html = new Map(pages.map((page) => [page.path, renderPage(page)]));

test("are each small enough for a phone, and so are those of what runs", () => {
  expect(html.size).toBeGreaterThan(10);
  const tooLarge = [...html].filter(
    ([, page]) =>
      Buffer.byteLength(page) > 150_000 || (page.match(/<[a-z]/gu)?.length ?? 0) > 1_500,
  );
  expect(tooLarge.map(([path]) => path)).toEqual([]);
});

test("lead to every tile of the pair between them", () => {
  for (const { url, tiles } of catalogue.pairs) {
    const list = url.replace(".html", "");
    const own = [...html].filter(([path]) => path === url || path.startsWith(`${list}--`));
    const linked = new Set(
      own.flatMap(([, page]) => [...page.matchAll(/tiles\/([\w-]+)\.html/gu)].map(([, id]) => id)),
    );
    expect(tiles.filter((id) => !linked.has(id.toLowerCase()))).toEqual([]);
  }
});
