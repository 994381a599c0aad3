/**
 * The data files: a JSON array each, sorted by id, with its JSON Schema beside it, and the same as flat
 * tables. They hold no time of the build, so that the same archive gives the same bytes.
 */
import * as z from "zod";
import type { Catalogue } from "../../catalogue/types.ts";
import { rememberFor } from "../../terms/remember.ts";
import { aboutOf } from "./about.ts";
import { toCsv } from "./csv.ts";
import { type DataRows, dataRowsOf } from "./data-rows.ts";
import { rowSchemas } from "./row-schemas.ts";
import { tables } from "./tables/all.ts";
import { openWriters } from "./writers.ts";

/** A file of the site: its path from the root, and what it holds. */
export interface DataFile {
  readonly path: string;
  readonly content: string;
}

export type Content = string | Uint8Array;

/** A data file that is made when it is asked for. */
export interface DataEntry {
  readonly path: string;
  readonly mediaType: string;
  /** How many rows it has; null where it has none, as a schema, or more than one table's. */
  readonly rows: number | null;
  /** The table that it holds; null where it is of JSON, or holds all. */
  readonly table: string | null;
  /** The path of the JSON Schema that it is held to; null where it has none. */
  readonly schema: string | null;
  readonly make: () => Content | Promise<Content>;
}

type JsonName = keyof typeof rowSchemas;

/** Every data file of a catalogue, none of them made yet. */
export const dataEntriesOf = rememberFor((catalogue: Catalogue): readonly DataEntry[] => {
  const data = dataRowsOf(catalogue);
  const about = aboutOf(catalogue.studio);
  return [
    ...jsonNames.flatMap((name) => jsonEntries(name, data)),
    ...tables.flatMap((table): DataEntry[] => {
      const of = { rows: table.count(data), table: table.name, schema: null };
      return [
        { ...of, ...fileOf(table.name, "csv"), make: () => toCsv(table, data) },
        {
          ...of,
          ...fileOf(table.name, "parquet"),
          make: async () => (await openWriters()).parquet(table, data, about),
        },
      ];
    }),
    {
      ...fileOf("tilebook", "sqlite"),
      ...{ rows: null, table: null, schema: null },
      make: async () => (await openWriters()).sqlite(data, about),
    },
  ];
});

export const jsonNames = Object.keys(rowSchemas) as JsonName[];

/** As they are registered, or are about to be. */
const mediaTypes = {
  csv: "text/csv; charset=utf-8; header=present",
  json: "application/json",
  parquet: "application/vnd.apache.parquet",
  "schema.json": "application/schema+json",
  sqlite: "application/vnd.sqlite3",
} as const;

function fileOf(name: string, ending: keyof typeof mediaTypes) {
  return { path: `data/${name}.${ending}`, mediaType: mediaTypes[ending] };
}

function jsonEntries(name: JsonName, data: DataRows): readonly DataEntry[] {
  const rows = data[name];
  const schema = fileOf(name, "schema.json");
  const none = { rows: null, table: null, schema: null };
  return [
    {
      ...fileOf(name, "json"),
      ...{ rows: rows.length, table: null, schema: schema.path },
      make: () => toJson(rows),
    },
    { ...schema, ...none, make: () => schemaText(name) },
  ];
}

function toJson(rows: DataRows[JsonName]): string {
  const lines = rows.map((row) => JSON.stringify(row));
  return lines.length > 0 ? `[\n${lines.join(",\n")}\n]\n` : "[]\n";
}

function schemaText(name: JsonName): string {
  const ofTable = { ...schemaOfTable(rowSchemas[name]), title: `${name}.json` };
  return `${JSON.stringify(ofTable, null, 2)}\n`;
}

const schemaOfTable = rememberFor((row: z.ZodType) => z.toJSONSchema(z.array(row)));
