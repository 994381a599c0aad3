/**
 * All tables as one SQLite file, with their keys, and with tables that say what each of them is: any
 * program that opens SQLite can read an archive, and a person finds in it what every column means.
 */
import type { Database, SqlJs } from "sql.js";
import { inTurns } from "../turns.ts";
import { type About, aboutEntries } from "./about.ts";
import type { DataRows } from "./data-rows.ts";
import { dataFormat } from "./format.ts";
import type { Cell, Column, ColumnType, Table } from "./tables/table.ts";

/** `TILE` as four letters: by this, a program knows whose file it is. */
const applicationId = 0x54494c45;

/** Neither of tables nor of columns does any name need quotes, and a test holds them to it. */
const types: Readonly<Record<ColumnType, string>> = {
  date: "TEXT",
  integer: "INTEGER",
  real: "REAL",
  text: "TEXT",
  "yes-no": "INTEGER",
};

/** The bytes of the file, the same of the same rows; whoever waits for something else has a turn after each table. */
export async function toSqlite(
  { Database }: SqlJs,
  tables: readonly Table[],
  data: DataRows,
  about: About,
): Promise<Uint8Array> {
  const database = new Database();
  try {
    database.run("PRAGMA journal_mode = OFF; PRAGMA synchronous = OFF;");
    database.run(`PRAGMA application_id = ${applicationId}; PRAGMA user_version = ${dataFormat};`);
    database.run("BEGIN");
    tellAbout(database, tables, about);
    await inTurns(tables, (table) => {
      database.run(createTable(table));
      insertAll(database, table.name, table.columns.length, table.cells(data));
      for (const sql of indexesOf(table)) database.run(sql);
    });
    database.run("COMMIT");
    return database.export();
  } finally {
    database.close();
  }
}

function createTable({ name, key, columns }: Table): string {
  const lines = [
    ...columns.map(columnLine),
    `PRIMARY KEY (${key.join(", ")})`,
    ...columns.flatMap((column) =>
      column.refers === null ? [] : `FOREIGN KEY (${column.name}) REFERENCES ${column.refers} (id)`,
    ),
  ];
  return `CREATE TABLE ${name} (\n  ${lines.join(",\n  ")}\n) WITHOUT ROWID`;
}

function columnLine({ name, type, nullable }: Column): string {
  const check = type === "yes-no" ? ` CHECK (${name} IN (0, 1))` : "";
  return `${name} ${types[type]}${nullable ? "" : " NOT NULL"}${check}`;
}

/**
 * One for each column by which other tables are joined, where the key does not begin with it already. A
 * table with a longer key tells more of the rows of another: it is found by how its key begins.
 */
function indexesOf({ name, key, columns }: Table): readonly string[] {
  if (key.length > 2) return [];
  return columns
    .filter((column) => column.refers !== null && column.name !== key[0])
    .map((column) => `CREATE INDEX ${name}_by_${column.name} ON ${name} (${column.name})`);
}

function insertAll(
  database: Database,
  table: string,
  width: number,
  rows: Iterable<readonly Cell[]>,
): void {
  const places = Array.from({ length: width }, () => "?").join(", ");
  const statement = database.prepare(`INSERT INTO ${table} VALUES (${places})`);
  try {
    for (const row of rows) statement.run(row);
  } finally {
    statement.free();
  }
}

function tellAbout(database: Database, tables: readonly Table[], about: About): void {
  database.run(`CREATE TABLE about (name TEXT PRIMARY KEY, value TEXT) WITHOUT ROWID;
CREATE TABLE about_tables (table_name TEXT PRIMARY KEY, one_row_is TEXT NOT NULL) WITHOUT ROWID;
CREATE TABLE about_columns (
  table_name TEXT NOT NULL REFERENCES about_tables (table_name),
  position INTEGER NOT NULL,
  column_name TEXT NOT NULL,
  type TEXT NOT NULL,
  may_be_null INTEGER NOT NULL CHECK (may_be_null IN (0, 1)),
  refers_to TEXT,
  description TEXT NOT NULL,
  PRIMARY KEY (table_name, position)
) WITHOUT ROWID`);
  insertAll(database, "about", 2, aboutEntries(about));
  insertAll(
    database,
    "about_tables",
    2,
    tables.map(({ name, row }) => [name, row]),
  );
  insertAll(
    database,
    "about_columns",
    7,
    tables.flatMap((table) =>
      table.columns.map(({ name, type, nullable, refers, description }, i) => [
        table.name,
        i + 1,
        name,
        type,
        nullable,
        refers,
        description,
      ]),
    ),
  );
}
