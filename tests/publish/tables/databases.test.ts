/** SQLite and Parquet: every cell of every table, as other programs read them. */
import { mkdtempSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { DuckDBInstance } from "@duckdb/node-api";
import initSqlJs, { type Database } from "sql.js";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { aboutOf } from "../../../src/publish/data/about.ts";
import { dataRowsOf } from "../../../src/publish/data/data-rows.ts";
import { tables } from "../../../src/publish/data/tables/all.ts";
import { type Cell, column, table } from "../../../src/publish/data/tables/table.ts";
import { openWriters } from "../../../src/publish/data/writers.ts";
import { removeFolderNow } from "../../support/remove-folder.ts";
import { readParquet, readParquetMetadata } from "../../support/unpack-data.ts";
import { demonstration } from "./demonstration.ts";

const data = dataRowsOf(demonstration());
const about = aboutOf(demonstration().studio);
const writers = await openWriters();
const sqlite = await writers.sqlite(data, about);
const parquet = new Map(tables.map((of) => [of.name, writers.parquet(of, data, about)]));

/** The rows of a table by the names of its columns, in the order of their keys. */
function rowsOf(
  of: (typeof tables)[number],
  yes: Cell = true,
  no: Cell = false,
): readonly object[] {
  return [...of.cells(data)].map((row) =>
    Object.fromEntries(
      of.columns.map(({ name }, i) => {
        const cell = row[i] ?? null;
        return [name, cell === true ? yes : cell === false ? no : cell];
      }),
    ),
  );
}

const sorted = (rows: readonly object[]) => rows.map((row) => JSON.stringify(row)).toSorted();
const names = ({ columns }: (typeof tables)[number]) => columns.map(({ name }) => name).join(", ");

describe("the SQLite file", () => {
  let database: Database;
  beforeAll(async () => {
    database = new (await initSqlJs()).Database(sqlite);
  });
  afterAll(() => database.close());

  const query = (sql: string): Record<string, unknown>[] =>
    database
      .exec(sql)
      .flatMap(({ columns, values }) =>
        values.map((row) => Object.fromEntries(columns.map((name, i) => [name, row[i]]))),
      );

  test.each(tables)("holds every cell of $name, and no name in it needs quotes", (of) => {
    expect(sorted(query(`SELECT ${names(of)} FROM ${of.name}`))).toEqual(sorted(rowsOf(of, 1, 0)));
  });

  test("is whole, and every reference leads to a row", () => {
    expect(query("PRAGMA integrity_check")).toEqual([{ integrity_check: "ok" }]);
    expect(query("PRAGMA foreign_key_check")).toEqual([]);
    const references = tables.flatMap(({ columns }) => columns.filter(({ refers }) => refers));
    const declared = tables.flatMap(({ name }) => query(`PRAGMA foreign_key_list(${name})`));
    expect(declared.length).toBe(references.length);
  });

  test("says whose it is, and what every table and column means", () => {
    expect(query("PRAGMA application_id")).toEqual([{ application_id: 0x54494c45 }]);
    expect(query("PRAGMA user_version")).toEqual([{ user_version: 1 }]);
    expect(query("SELECT value FROM about WHERE name = 'studio'")).toEqual([
      { value: "Eelgate Pottery" },
    ]);
    expect(query("SELECT one_row_is FROM about_tables WHERE table_name = 'tiles'")).toEqual([
      { one_row_is: "one test tile" },
    ]);
    const told = query(
      "SELECT table_name, column_name, description FROM about_columns ORDER BY table_name, position",
    );
    expect(told.length).toBe(tables.flatMap(({ columns }) => columns).length);
    expect(told.filter(({ description }) => description === "")).toEqual([]);
  });

  test("sorts cones from cool to hot, and 06 is not 6", () => {
    const cones = query(
      "SELECT DISTINCT cone FROM firings WHERE cone IS NOT NULL ORDER BY cone_order",
    ).map(({ cone }) => cone);
    expect(cones.indexOf("06")).toBeLessThan(cones.indexOf("6"));
    expect(cones).toContain("06");
    const [{ type } = {}] = query(
      "SELECT DISTINCT typeof(cone) AS type FROM firings WHERE cone IS NOT NULL",
    );
    expect(type).toBe("text");
  });

  test("is the same, byte for byte, however often it is made", async () => {
    expect(Buffer.compare(await writers.sqlite(data, about), sqlite)).toBe(0);
  });
});

describe("the Parquet files", () => {
  const folder = mkdtempSync(join(tmpdir(), "tilebook-parquet-"));
  afterAll(() => removeFolderNow(folder));
  const place = (name: string) => join(folder, `${name}.parquet`);
  let query: (sql: string) => Promise<Record<string, unknown>[]>;
  beforeAll(async () => {
    for (const [name, bytes] of parquet) writeFileSync(place(name), bytes);
    const connection = await (await DuckDBInstance.create(":memory:")).connect();
    query = async (sql) => (await connection.runAndReadAll(sql)).getRowObjectsJS();
  });

  test.each(tables)(
    "hold every cell of $name for one reader, and for another by SQL without quotes",
    async (of) => {
      const expected = sorted(rowsOf(of));
      expect(sorted(await readParquet(parquet.get(of.name) ?? new Uint8Array()))).toEqual(expected);
      expect(sorted(await query(`SELECT ${names(of)} FROM '${place(of.name)}'`))).toEqual(expected);
    },
  );

  test("have columns of the types that they say", async () => {
    const types = {
      date: "VARCHAR",
      integer: "INTEGER",
      real: "DOUBLE",
      text: "VARCHAR",
      "yes-no": "BOOLEAN",
    };
    for (const of of tables) {
      const found = await query(`DESCRIBE SELECT * FROM '${place(of.name)}'`);
      expect(found.map(({ column_type }) => column_type)).toEqual(
        of.columns.map(({ type }) => types[type]),
      );
    }
  });

  test("say of themselves what their columns mean, and whose they are", () => {
    const { key_value_metadata = [] } = readParquetMetadata(
      parquet.get("tiles") ?? new Uint8Array(),
    );
    const said = Object.fromEntries(key_value_metadata.map(({ key, value }) => [key, value]));
    expect(said).toMatchObject({
      "tilebook:format": "1",
      "tilebook:row": "one test tile",
      "tilebook:key": "id",
      "tilebook:studio": "Eelgate Pottery",
      "tilebook:licence_spdx": "CC-BY-4.0",
      "tilebook:column:clay": "The id of its clay. It is the id of a row of clays.",
    });
  });

  test("are the same, byte for byte, however often they are made", () => {
    for (const of of tables)
      expect(
        Buffer.compare(writers.parquet(of, data, about), parquet.get(of.name) ?? new Uint8Array()),
        of.name,
      ).toBe(0);
  });

  test("are written in groups of rows, and an empty one has none", async () => {
    const many = table<number>({
      name: "many",
      row: "one number",
      key: ["number"],
      rows: () => Array.from({ length: 50_001 }, (_, i) => i),
      columns: [
        column("number", "integer", null, (i) => i, { description: "It." }),
        column("word", "text", null, (i) => (i % 3 === 0 ? null : `w${i % 7}`), {
          description: "A word.",
          nullable: true,
        }),
      ],
    });
    const bytes = writers.parquet(many, data, about);
    expect(readParquetMetadata(bytes).row_groups.map(({ num_rows }) => Number(num_rows))).toEqual([
      20_000, 20_000, 10_001,
    ]);
    writeFileSync(place("many"), bytes);
    const sums = `count(*)::INTEGER AS rows, sum(number)::DOUBLE AS sum, count(word)::INTEGER AS words`;
    expect(await query(`SELECT ${sums} FROM '${place("many")}'`)).toEqual([
      { rows: 50_001, sum: 1_250_025_000, words: 33_334 },
    ]);
    const none = { ...many, count: () => 0, cells: () => [] };
    writeFileSync(place("none"), writers.parquet(none, data, about));
    expect(await query(`SELECT * FROM '${place("none")}'`)).toEqual([]);
    expect(await readParquet(writers.parquet(none, data, about))).toEqual([]);
  });
});
