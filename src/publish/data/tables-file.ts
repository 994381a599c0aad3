/** `data/tables.json`: what every table and every column means, for programs. The same on every site. */
import { dataFormat } from "./format.ts";
import type { Table } from "./tables/table.ts";

export function tablesText(tables: readonly Table[]): string {
  const told = tables.map(({ name, row, key, columns }) => ({
    name,
    row,
    key,
    columns: columns.map(({ name, type, nullable, refers, description }) => ({
      ...{ name, type, nullable, refers, description },
    })),
  }));
  return `${JSON.stringify({ version: dataFormat, tables: told }, null, 1)}\n`;
}
