/** The libraries that write SQLite and Parquet: loaded only when such a file is made. */
import type { About } from "./about.ts";
import type { DataRows } from "./data-rows.ts";
import { toParquet } from "./parquet.ts";
import { toSqlite } from "./sqlite.ts";
import { tables } from "./tables/all.ts";
import type { Table } from "./tables/table.ts";

export interface Writers {
  /** One table as a Parquet file. */
  readonly parquet: (table: Table, data: DataRows, about: About) => Uint8Array;
  /** All tables as an SQLite file. */
  readonly sqlite: (data: DataRows, about: About) => Promise<Uint8Array>;
}

let opened: Promise<Writers> | undefined;

/** Loads them once, however often they are asked for. */
export function openWriters(): Promise<Writers> {
  opened ??= load();
  return opened;
}

async function load(): Promise<Writers> {
  const [{ default: initSqlJs }, library] = await Promise.all([
    import("sql.js"),
    import("hyparquet-writer"),
  ]);
  const sql = await initSqlJs();
  return {
    parquet: (table, data, about) => toParquet(library, table, data, about),
    sqlite: (data, about) => toSqlite(sql, tables, data, about),
  };
}
