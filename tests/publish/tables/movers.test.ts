/** “Which pairs at cone 6 ran more than 20 mm”: SQL over the published files answers as the page of what runs. */
import { mkdtempSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { DuckDBInstance } from "@duckdb/node-api";
import initSqlJs from "sql.js";
import { afterAll, describe, expect, test } from "vitest";
import { listRunners } from "../../../src/catalogue/runners.ts";
import type { Catalogue } from "../../../src/catalogue/types.ts";
import { siteDataOf } from "../../../src/publish/data/site-data.ts";
import type { RunsPageProps } from "../../../templates/pages/runs-page.tsx";
import { moversQuery } from "../../../templates/words/site/data.ts";
import { listPages } from "../../support/list-pages.ts";
import { removeFolderNow } from "../../support/remove-folder.ts";
import { examine, sitesOf, type Texts } from "../../support/site-in-memory.ts";
import { demonstration } from "./demonstration.ts";

interface Row {
  readonly over_glaze: string;
  readonly under_glaze: string;
  readonly tile: string;
  readonly run: number;
  readonly only_pair: boolean;
}

const record = (...fields: readonly string[]) => ["---", ...fields, "---", ""].join("\n");
const firing = (...fields: readonly string[]) =>
  record("on: 2026-10-20", "kind: glaze", "atmosphere: oxidation", ...fields);

/** A tile of coats, bottom first, fired in a load, that ran so far. */
function tile(
  load: string,
  run: string,
  coats: readonly string[],
  ...more: readonly string[]
): string {
  return record(
    "clay: buff",
    "layers:",
    "  - fired: bisque",
    ...coats.map((coat) => `  - {${coat}}`),
    `  - {fired: ${load}, shelf: top}`,
    `result: {run: ${run}}`,
    ...more,
  );
}

const chalkUnder = "glaze: chalk, coats: 2";
const mistOver = "glaze: mist, coats: 2";
const pair = [chalkUnder, mistOver];

const archive: Texts = {
  "studio.yaml": "format: 1\nstudio: Eelgate\naddress: https://eelgate.example/\n",
  "recipes/clays/buff.md": record("name: Buff", "cones: 04-9"),
  ...Object.fromEntries(
    ["chalk", "mist", "soot"].map((id) => [
      `recipes/glazes/${id}.md`,
      record(`name: ${id}`, "kind: glaze", "bought: {maker: Oxbow}", "cones: 04-9"),
    ]),
  ),
  "tiles/firings/six.md": firing("cone: 6"),
  "tiles/firings/five-and-a-half.md": firing("cone: 5½"),
  "tiles/firings/oh-six.md": firing("cone: 06"),
  "tiles/firings/meant-six.md": firing("cone: 6", "witness: {top: 8}"),
  "tiles/firings/meant-five.md": firing("cone: 5", "witness: {top: 6}"),
  "tiles/firings/unknown.md": firing(),
  "tiles/AT-20.md": tile("six", "20", pair),
  "tiles/JUST-OVER.md": tile("six", "20.5", pair),
  "tiles/FAR.md": tile("six", "48", pair, "shape: upright"),
  "tiles/REVERSE.md": tile("six", "31", [mistOver, chalkUnder]),
  "tiles/LATER.md": tile("six", "3", pair, "later: [{on: 2027-01-02, run: 26}]"),
  "tiles/NEVER.md": tile("six", "2", pair),
  "tiles/HALF.md": tile("five-and-a-half", "40", pair),
  "tiles/OH-SIX.md": tile("oh-six", "40", pair),
  "tiles/NO-CONE.md": tile("unknown", "40", pair),
  "tiles/OVERFIRED.md": tile("meant-six", "40", pair),
  "tiles/HOTTER.md": tile("meant-five", "40", pair),
  "tiles/ALONE.md": tile("six", "40", [mistOver]),
  "tiles/SAME-TWICE.md": tile("six", "40", [mistOver, mistOver]),
  "tiles/BESIDE.md": tile("six", "40", ["glaze: chalk, where: left", "glaze: mist, where: right"]),
  "tiles/THREE.md": tile("six", "44", ["glaze: soot, coats: 1", ...pair]),
  "tiles/FADE.md": tile("six", "37", [chalkUnder, "fade: {from: mist, to: soot}, coats: 1"]),
  "tiles/TOUCHED-UP.md": tile("six", "33", [...pair, "glaze: soot, touch-up: yes"]),
  "tiles/BEGUN-AGAIN.md": tile("six", "34", ["glaze: soot, coats: 1", "remove: all", ...pair]),
  "tiles/STUCK.md": tile("six", "60", pair, "fate: stuck"),
  "tiles/BROKEN.md": record(
    "clay: buff",
    "layers:",
    `  - {${chalkUnder}}`,
    `  - {${mistOver}}`,
    "fate: broken",
  ),
  "tiles/secret/set.md": record("name: Secret", "listed: no", "link: k7wq2mzt4hx3vb5nrd6yfp2cja"),
  "tiles/secret/SECRET.md": tile("six", "55", pair),
};

/** The published files of a catalogue in two databases, each of which answers the same SQL. */
async function databasesOf(catalogue: Catalogue) {
  const folder = mkdtempSync(join(tmpdir(), "tilebook-movers-"));
  const { entries } = siteDataOf(catalogue);
  const duck = await (await DuckDBInstance.create(":memory:")).connect();
  let sqlite: Uint8Array | undefined;
  for (const { path, table, make } of entries) {
    if (path === "data/tilebook.sqlite") sqlite = (await make()) as Uint8Array;
    if (!path.endsWith(".parquet") || !["tiles", "tile_pairs"].includes(table ?? "")) continue;
    const file = join(folder, `${table}.parquet`);
    writeFileSync(file, await make());
    await duck.run(`CREATE VIEW ${table} AS SELECT * FROM '${file}'`);
  }
  const database = new (await initSqlJs()).Database(sqlite);
  return {
    close() {
      database.close();
      duck.closeSync();
      removeFolderNow(folder);
    },
    bySqlite(sql: string): readonly Row[] {
      return database.exec(sql).flatMap(({ columns, values }) =>
        values.map((row) => {
          const named = Object.fromEntries(columns.map((name, i) => [name, row[i]]));
          return { ...named, only_pair: named.only_pair === 1 } as unknown as Row;
        }),
      );
    },
    async byDuckdb(sql: string): Promise<readonly Row[]> {
      return (await duck.runAndReadAll(sql)).getRowObjectsJS() as unknown as readonly Row[];
    },
  };
}

/** What the page of what runs says: of each of its entries of several layers, the tiles that ran that far. */
function moversOf(catalogue: Catalogue) {
  const runners = listRunners(catalogue).filter(
    ({ circumstance, layers }) => circumstance.cone === "6" && layers.length > 1,
  );
  return runners.flatMap(({ page, ran }) =>
    ran
      .filter(({ run, pairs }) => (run ?? 0) > 20 && pairs.length > 0)
      .map(({ id, run }) => ({ tile: id, run, pair: page })),
  );
}

/** Every tile that the pages of what runs name, by the names of the entries. */
function namedOnPages(catalogue: Catalogue): ReadonlySet<string> {
  const pages = listPages(catalogue).filter(({ path }) => /^runs(?:~\d+)?\.html$/u.test(path));
  const items = pages.flatMap((page) =>
    (page.props() as RunsPageProps).groups.flatMap((group) => group.items),
  );
  return new Set(
    items.flatMap(({ tile, others }) => [
      tile?.entry.id ?? "",
      ...others.links.map(({ name }) => name),
    ]),
  );
}

const { read, problems } = examine(archive);
if (!read.archive) throw new Error(JSON.stringify(problems));
const purposeMade = sitesOf(read.archive, problems).catalogue;

describe.each([
  ["of an archive made for it", purposeMade],
  ["of the demonstration", demonstration()],
] as const)("the movers %s", async (_, catalogue) => {
  const databases = await databasesOf(catalogue);
  afterAll(() => databases.close());
  const rows = databases.bySqlite(moversQuery);
  const movers = moversOf(catalogue);

  test("are the same by SQLite and by DuckDB over Parquet, row by row", async () => {
    expect(await databases.byDuckdb(moversQuery)).toEqual(rows);
    expect(rows.length).toBeGreaterThan(0);
  });

  test("are the tiles of the page of what runs, with what they ran", () => {
    const byTile = new Map(rows.map(({ tile, run }) => [tile, run]));
    expect([...byTile].toSorted()).toEqual(movers.map(({ tile, run }) => [tile, run]).toSorted());
    const named = namedOnPages(catalogue);
    expect([...byTile.keys()].filter((tile) => !named.has(tile))).toEqual([]);
  });

  test("are of one pair alone exactly where the page leads to that pair", () => {
    const pages = new Map(
      catalogue.pairs.map(({ over, under, url }) => [`${over.id} ${under.id}`, url]),
    );
    const only = rows
      .filter(({ only_pair }) => only_pair)
      .map(({ tile, over_glaze, under_glaze }) => [
        tile,
        pages.get(`${over_glaze} ${under_glaze}`),
      ]);
    const onPage = movers.filter(({ pair: page }) => page !== null);
    expect(only.toSorted()).toEqual(onPage.map(({ tile, pair: page }) => [tile, page]).toSorted());
  });
});

test("of the archive made for it, the movers are these and no others", async () => {
  const databases = await databasesOf(purposeMade);
  const rows = databases.bySqlite(moversQuery);
  databases.close();
  expect(
    rows.map(
      ({ over_glaze, under_glaze, tile, run, only_pair }) =>
        `${tile} ${run}: ${over_glaze} over ${under_glaze}${only_pair ? "" : ", among others"}`,
    ),
  ).toMatchInlineSnapshot(`
    [
      "STUCK 60: mist over chalk",
      "FAR 48: mist over chalk",
      "THREE 44: chalk over soot, among others",
      "THREE 44: mist over chalk, among others",
      "HOTTER 40: mist over chalk",
      "FADE 37: mist over chalk, among others",
      "FADE 37: soot over chalk, among others",
      "BEGUN-AGAIN 34: mist over chalk",
      "TOUCHED-UP 33: mist over chalk",
      "REVERSE 31: chalk over mist",
      "LATER 26: mist over chalk",
      "JUST-OVER 20.5: mist over chalk",
    ]
  `);
});
