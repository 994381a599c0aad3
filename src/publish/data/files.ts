/**
 * The data files: a JSON array each, sorted by id, with its JSON Schema beside it, and the same as flat
 * tables. They hold no time of the build, so that the same archive gives the same bytes.
 */
import * as z from "zod";
import type { Catalogue } from "../../catalogue/types.ts";
import { rememberFor } from "../../terms/remember.ts";
import { toCsv } from "./csv.ts";
import { type DataRows, dataRowsOf } from "./data-rows.ts";
import { rowSchemas } from "./row-schemas.ts";
import { tables } from "./tables/all.ts";

/** A file of the site: its path from the root, and what it holds, which may be made when it is asked for. */
export interface DataFile {
  readonly path: string;
  readonly content: string;
}

/** Every data file of a catalogue. */
export function makeDataFiles(catalogue: Catalogue): readonly DataFile[] {
  const names = Object.keys(rowSchemas) as (keyof typeof rowSchemas)[];
  return [
    ...names.flatMap((name) => [
      madeLater(`data/${name}.json`, () => toJson(dataRowsOf(catalogue)[name])),
      madeLater(`data/${name}.schema.json`, () => schemaText(name)),
    ]),
    ...tables.map((table) =>
      madeLater(`data/${table.name}.csv`, () => toCsv(table, dataRowsOf(catalogue))),
    ),
  ];
}

function madeLater(path: string, make: () => string): DataFile {
  return {
    path,
    get content() {
      return make();
    },
  };
}

function toJson(rows: DataRows[keyof typeof rowSchemas]): string {
  const lines = rows.map((row) => JSON.stringify(row));
  return lines.length > 0 ? `[\n${lines.join(",\n")}\n]\n` : "[]\n";
}

function schemaText(name: keyof typeof rowSchemas): string {
  const ofTable = { ...schemaOfTable(rowSchemas[name]), title: `${name}.json` };
  return `${JSON.stringify(ofTable, null, 2)}\n`;
}

const schemaOfTable = rememberFor((row: z.ZodType) => z.toJSONSchema(z.array(row)));
