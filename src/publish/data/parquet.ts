/** A table as a Parquet file, for programs that read large data by columns. */
import type { ByteWriter, ParquetWriter } from "hyparquet-writer";
import { type About, aboutEntries } from "./about.ts";
import type { DataRows } from "./data-rows.ts";
import { dataFormat } from "./format.ts";
import type { Cell, Column, ColumnType, Table } from "./tables/table.ts";

export interface ParquetLibrary {
  readonly ByteWriter: typeof ByteWriter;
  readonly ParquetWriter: typeof ParquetWriter;
}

type Schema = ConstructorParameters<typeof ParquetWriter>[0]["schema"];

/** So many rows are held as columns at once, and are one group of the file. */
const groupRows = 20_000;

/** The bytes of the file: the same of the same rows. */
export function toParquet(
  library: ParquetLibrary,
  table: Table,
  data: DataRows,
  about: About,
): Uint8Array {
  const bytes = new library.ByteWriter();
  const file = new library.ParquetWriter({
    writer: bytes,
    schema: schemaOf(table),
    kvMetadata: metadataOf(table, about),
    createdBy: "Tilebook",
  });
  for (const group of groupsOf(table.cells(data)))
    file.write({
      columnData: table.columns.map(({ name }, i) => ({ name, data: group.map((row) => row[i]) })),
      rowGroupSize: groupRows,
    });
  file.finish();
  return bytes.getBytes();
}

function* groupsOf(rows: Iterable<readonly Cell[]>): Generator<readonly (readonly Cell[])[]> {
  let group: (readonly Cell[])[] = [];
  for (const row of rows) {
    group.push(row);
    if (group.length < groupRows) continue;
    yield group;
    group = [];
  }
  if (group.length > 0) yield group;
}

function schemaOf({ name, columns }: Table): Schema {
  return [{ name, num_children: columns.length }, ...columns.map(elementOf)];
}

const types: Readonly<Record<ColumnType, Omit<Schema[number], "name">>> = {
  date: { type: "BYTE_ARRAY", converted_type: "UTF8" },
  integer: { type: "INT32" },
  real: { type: "DOUBLE" },
  text: { type: "BYTE_ARRAY", converted_type: "UTF8" },
  "yes-no": { type: "BOOLEAN" },
};

function elementOf({ name, type, nullable }: Column): Schema[number] {
  return { name, ...types[type], repetition_type: nullable ? "OPTIONAL" : "REQUIRED" };
}

/** What the table and each of its columns means, and whose they are. */
function metadataOf({ row, key, columns }: Table, about: About) {
  return [
    { key: "tilebook:format", value: String(dataFormat) },
    { key: "tilebook:row", value: row },
    { key: "tilebook:key", value: key.join(", ") },
    ...aboutEntries(about).flatMap(([name, value]) =>
      value === null ? [] : [{ key: `tilebook:${name}`, value }],
    ),
    ...columns.map(({ name, description, refers }) => ({
      key: `tilebook:column:${name}`,
      value: refers === null ? description : `${description} It is the id of a row of ${refers}.`,
    })),
  ];
}
