/** The flat tables say what the JSON files say: no field is missing, no row is there twice, and every reference leads somewhere. */
import { describe, expect, test } from "vitest";
import { dataRowsOf } from "../../../src/publish/data/data-rows.ts";
import type { rowSchemas } from "../../../src/publish/data/row-schemas.ts";
import { tables } from "../../../src/publish/data/tables/all.ts";
import { coneOrder } from "../../../src/publish/data/tables/cone-order.ts";
import type { Cell, Table } from "../../../src/publish/data/tables/table.ts";
import { chartedCones } from "../../../src/terms/cones.ts";
import { examine, sitesOf } from "../../support/site-in-memory.ts";
import { demonstration } from "./demonstration.ts";
import { faultsOfTables } from "./faults-of-tables.ts";
import { allLeaves, valuesAt } from "./fields.ts";

const data = dataRowsOf(demonstration());
const cells = new Map(tables.map((table) => [table.name, [...table.cells(data)]]));

/** What a column holds, without what is null. */
function held(table: Table, name: string): readonly Cell[] {
  const at = table.columns.findIndex((column) => column.name === name);
  return (cells.get(table.name) ?? []).flatMap((row) => row[at] ?? []);
}

/** Fields of the JSON files that no column says again, each with what says the same. */
const toldElsewhere: Readonly<Record<string, string>> = {
  "glazes.over": "pairs.under_glaze of the pairs whose over_glaze it is",
  "glazes.under": "pairs.over_glaze of the pairs whose under_glaze it is",
  "clays.tiles": "tiles.clay",
  "sets.tiles": "tiles.set_id",
  "glazes.chemistry.molePercent.key": "glaze_chemistry.oxide",
  "glazes.chemistry.unity.key": "glaze_chemistry.oxide",
  ...Object.fromEntries(
    ["on", "laboratory", "method", "ware", "fired", "report"].map((name) => [
      `glazes.leachTests.${name}`,
      "leach_tests, of tiles and glazes alike",
    ]),
  ),
  ...Object.fromEntries(
    ["element", "amount", "below", "unit"].map((name) => [
      `glazes.leachTests.found.${name}`,
      "leach_found, of tiles and glazes alike",
    ]),
  ),
};

describe("the tables", () => {
  const columns = tables.flatMap((table) => table.columns.map((column) => ({ table, column })));

  test("have a column for every field of the JSON files, or it is named what says the same", () => {
    const told = new Set(columns.flatMap(({ column }) => column.says ?? []));
    const missing = allLeaves.filter((path) => !told.has(path) && !(path in toldElsewhere));
    expect(missing).toEqual([]);
    expect([...told].filter((path) => !allLeaves.includes(path))).toEqual([]);
    expect(
      Object.keys(toldElsewhere).filter((path) => !allLeaves.includes(path) || told.has(path)),
    ).toEqual([]);
  });

  test("hold exactly the values that stand in those fields", () => {
    const shared = ["tiles.layers.glazes", "tiles.leachTests"];
    for (const path of new Set(columns.flatMap(({ column }) => column.says ?? []))) {
      const of = columns.filter(({ column }) => column.says === path);
      const inTables = of.flatMap(({ table, column }) => held(table, column.name));
      const file = path.split(".")[0] as keyof typeof rowSchemas;
      const also = path.startsWith("tiles.leachTests")
        ? valuesAt(data.glazes, path.replace("tiles.", "glazes."))
        : [];
      const inJson = [...valuesAt(data[file], path), ...also];
      if (!shared.some((each) => path.startsWith(each))) expect(of.length, path).toBe(1);
      expect(sorted(inTables), path).toEqual(sorted(inJson));
    }
  });

  test("are filled by the demonstration in every column, so that each was tried", () => {
    const empty = columns.filter(({ table, column }) => held(table, column.name).length === 0);
    expect(empty.map(({ table, column }) => `${table.name}.${column.name}`)).toEqual([]);
  });

  test("have no two rows with one key, none without, and refer only to rows that are there", () => {
    expect(faultsOfTables(data)).toEqual([]);
    const references = columns.flatMap(({ column }) => column.refers ?? []);
    expect(references.length).toBeGreaterThan(30);
    for (const name of references)
      expect(tables.find((table) => table.name === name)?.key).toEqual(["id"]);
  });

  test("tell pairs apart whose glazes are called as the joint of a pair", () => {
    const { read, problems } = examine({
      "studio.yaml": "format: 1\nstudio: Eelgate\n",
      ...Object.fromEntries(
        ["a", "b--over--c", "a--over--b", "c"].map((id) => [
          `recipes/glazes/${id}.md`,
          `---\nname: ${id}\nkind: glaze\nbought: {maker: Oxbow}\n---\n`,
        ]),
      ),
      "tiles/T-1.md": "---\nlayers: [{glaze: b--over--c}, {glaze: a}]\n---\n",
      "tiles/T-2.md": "---\nlayers: [{glaze: c}, {glaze: a--over--b}]\n---\n",
    });
    if (!read.archive) throw new Error(JSON.stringify(problems));
    const odd = dataRowsOf(sitesOf(read.archive, problems).catalogue);
    expect(faultsOfTables(odd)).toEqual([]);
    expect(odd.grid.map(({ id }) => id)).toEqual(["a--over--b~over~c", "a~over~b--over--c"]);
  });

  test.each(tables)(
    "$name holds in each column what it says, and nothing where it may not be null",
    (table) => {
      for (const row of cells.get(table.name) ?? [])
        table.columns.forEach(({ name, type, nullable }, i) => {
          const cell = row[i] ?? null;
          if (cell === null) expect(nullable, `${table.name}.${name}`).toBe(true);
          else expect(fits[type](cell), `${table.name}.${name}: ${cell}`).toBe(true);
        });
    },
  );

  test("explain every column in a sentence", () => {
    for (const { column } of columns) expect(column.description).toMatch(/^\S.*\.$/su);
    for (const { row } of tables) expect(row).toMatch(/^(?:one|two|what) /u);
  });
});

const fits = {
  date: (cell: Cell) => typeof cell === "string" && /^\d{4}-\d\d-\d\d$/u.test(cell),
  integer: (cell: Cell) => Number.isSafeInteger(cell),
  real: (cell: Cell) => Number.isFinite(cell),
  text: (cell: Cell) => typeof cell === "string",
  "yes-no": (cell: Cell) => typeof cell === "boolean",
};

/** The lists that are told once, in other tables: there they are, exactly. */
describe("what another table tells", () => {
  const pairs = cells.get("pairs") ?? [];
  const [over, under] = ["over_glaze", "under_glaze"].map((name) =>
    (tables.find((table) => table.name === "pairs")?.columns ?? []).findIndex(
      (column) => column.name === name,
    ),
  ) as [number, number];

  test("a glaze lay over and under those that pairs say", () => {
    for (const glaze of data.glazes) {
      const mine = pairs.filter((row) => row[over] === glaze.id).map((row) => row[under]);
      expect(sorted(mine)).toEqual(sorted(glaze.over));
      const above = pairs.filter((row) => row[under] === glaze.id).map((row) => row[over]);
      expect(sorted(above)).toEqual(sorted(glaze.under));
    }
  });

  test("the tiles of a clay and of a set are those that name it", () => {
    for (const clay of data.clays)
      expect(
        sorted(data.tiles.filter((tile) => tile.clay === clay.id).map(({ id }) => id)),
      ).toEqual(sorted(clay.tiles));
    for (const set of data.sets)
      expect(sorted(data.tiles.filter((tile) => tile.set === set.id).map(({ id }) => id))).toEqual(
        sorted(set.tiles),
      );
  });
});

test("the order of cones goes from cool to hot, and is never the number of the cone itself", () => {
  const places = chartedCones.map((cone) => coneOrder(cone) ?? 0);
  expect(places).toEqual(places.toSorted((a, b) => a - b));
  expect(new Set(places).size).toBe(places.length);
  expect(
    Object.fromEntries(
      ["022", "06", "01", "1", "5½", "6"].map((cone) => [cone, coneOrder(cone as never)]),
    ),
  ).toEqual({
    "1": 23,
    "6": 28,
    "06": 17,
    "01": 22,
    "022": 1,
    "5½": 27.5,
  });
  for (const cone of chartedCones) expect(coneOrder(cone)).not.toBe(Number(cone));
  expect(coneOrder(null)).toBeNull();
});

function sorted(values: readonly unknown[]): readonly string[] {
  return values.map((value) => JSON.stringify(value)).toSorted();
}
