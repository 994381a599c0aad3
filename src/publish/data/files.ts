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
import type { DataEntry } from "./entry.ts";
import { manifestSchemaText } from "./manifest.ts";
import { rowSchemas } from "./row-schemas.ts";
import { tables } from "./tables/all.ts";
import { tablesText } from "./tables-file.ts";
import { openWriters } from "./writers.ts";

type JsonName = keyof typeof rowSchemas;

/** Every data file of a catalogue but the manifest of them, none made yet. */
export const dataEntriesOf = rememberFor((catalogue: Catalogue): readonly DataEntry[] => {
  const data = dataRowsOf(catalogue);
  const about = aboutOf(catalogue.studio);
  return [
    ...jsonNames.flatMap((name) => jsonEntries(name, data)),
    ...tables.flatMap((table): DataEntry[] => {
      const of = { rows: table.count(data), table: table.name, schema: tablesPath };
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
      ...{ ...ofNoTable, schema: tablesPath },
      make: async () => (await openWriters()).sqlite(data, about),
    },
    { ...fileOf("tables", "json"), ...ofNoTable, make: () => tablesText(tables) },
    { ...fileOf("archive", "schema.json"), ...ofNoTable, make: manifestSchemaText },
  ];
});

const ofNoTable = { rows: null, table: null, schema: null };

/** What tells of every table. */
const tablesPath = "data/tables.json";

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
  return [
    {
      ...fileOf(name, "json"),
      ...{ rows: rows.length, table: null, schema: schema.path },
      make: () => toJson(rows),
    },
    { ...schema, ...ofNoTable, make: () => schemaText(name) },
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
