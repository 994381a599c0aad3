/**
 * `data/archive.json`: whose the data is, what may be done with it, and every file with its sum. Whoever
 * gathers the data of many studios reads this first, so all of it is bounded, and no path leads out of
 * the site.
 */
import * as z from "zod";
import { longestValue } from "../../terms/limits.ts";
import type { About } from "./about.ts";
import type { DataEntry, FileSum } from "./entry.ts";
import { dataFormat } from "./format.ts";

/** There are about a hundred. */
const mostFiles = 500;

const path = z
  .string()
  .max(100)
  .regex(/^data\/[a-z0-9_]+(?:\.[a-z0-9]+){1,2}$/u);
const address = z
  .string()
  .max(longestValue)
  .regex(/^https?:\/\/\S+$/u);
const count = z.int().min(0);
const words = z.string().min(1).max(longestValue);

const file = z.strictObject({
  path: path.describe(
    "The file. Its address is `address` with this behind it; where the studio gives no address, the folder above that of this file.",
  ),
  mediaType: z.string().max(100).describe("What kind of file it is."),
  bytes: count.describe("How long it is."),
  sha256: z
    .string()
    .regex(/^[0-9a-f]{64}$/u)
    .describe("The SHA-256 of its bytes, in hexadecimal digits."),
  rows: count
    .nullable()
    .describe("How many rows it has; null for a schema, and for a file of several tables."),
  table: z
    .string()
    .max(100)
    .nullable()
    .describe("The table that it holds, as in data/tables.json; null for other files."),
  schema: path
    .nullable()
    .describe("The JSON Schema that it is held to, or for a table data/tables.json."),
});

const manifest = z.strictObject({
  format: z.literal("tilebook-data").describe("What this is."),
  version: z.int().min(1).describe("The version of the data format."),
  studio: words.describe("The studio's name."),
  address: address
    .nullable()
    .describe("Where the site is published, with a slash at its end; null where nobody says."),
  repository: address.nullable().describe("Where the records lie; null where nobody says."),
  licence: z
    .strictObject({
      words: words.describe("As the studio wrote it."),
      spdx: z
        .string()
        .max(100)
        .nullable()
        .describe("Its id in the SPDX licence list; null where the words leave it open."),
      address: address.nullable().describe("Where it can be read; null where it is not known."),
    })
    .nullable()
    .describe("Null where the studio has not said what others may do: ask first."),
  counts: z
    .strictObject({
      tiles: count,
      glazes: count,
      pairs: count,
      firings: count,
      clays: count,
      materials: count,
      sets: count,
    })
    .describe("How many of each there are."),
  files: z.array(file).max(mostFiles).describe("Every data file but this one."),
});

/** The text of the manifest; the same for the same data. */
export function manifestText(
  about: About,
  entries: readonly DataEntry[],
  sums: ReadonlyMap<string, FileSum>,
): string {
  const { studio, repository, licence } = about;
  const told: z.infer<typeof manifest> = {
    format: "tilebook-data",
    version: dataFormat,
    ...{ studio, address: about.address, repository, licence },
    counts: countsOf(entries),
    files: entries.map(({ path, mediaType, rows, table, schema }) => {
      const sum = sums.get(path);
      if (!sum) throw new Error(`${path} was not made yet`);
      return { path, mediaType, ...sum, rows, table, schema };
    }),
  };
  return `${JSON.stringify(told, null, 1)}\n`;
}

function countsOf(entries: readonly DataEntry[]) {
  const of = (name: string) => entries.find((each) => each.path === `data/${name}.json`)?.rows ?? 0;
  return {
    tiles: of("tiles"),
    glazes: of("glazes"),
    pairs: of("grid"),
    firings: of("firings"),
    clays: of("clays"),
    materials: of("materials"),
    sets: of("sets"),
  };
}

export function manifestSchemaText(): string {
  const schema = { ...z.toJSONSchema(manifest), title: "archive.json" };
  return `${JSON.stringify(schema, null, 2)}\n`;
}
