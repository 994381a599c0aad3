/** What a database would refuse: two rows with one key, a key without a value, a reference to no row. */
import type { DataRows } from "../../../src/publish/data/data-rows.ts";
import { tables } from "../../../src/publish/data/tables/all.ts";
import type { Table } from "../../../src/publish/data/tables/table.ts";

export function faultsOfTables(data: DataRows): readonly string[] {
  return tables.flatMap((table) => [
    ...faultsOfKeys(table, data),
    ...faultsOfReferences(table, data),
  ]);
}

function faultsOfKeys(table: Table, data: DataRows): readonly string[] {
  const seen = new Set<string>();
  return [...table.cells(data)].flatMap((row) => {
    const key = table.key.map((name) => row[placeOf(table, name)] ?? null);
    const told = JSON.stringify(key);
    const isFaulty = key.includes(null) || seen.has(told);
    seen.add(told);
    return isFaulty ? [`${table.name}: ${told}`] : [];
  });
}

function faultsOfReferences(table: Table, data: DataRows): readonly string[] {
  return table.columns.flatMap(({ name, refers }, at) => {
    const to = tables.find((each) => each.name === refers);
    if (!to) return refers === null ? [] : [`${table.name}.${name} refers to no table`];
    const ids = new Set([...to.cells(data)].map((row) => row[placeOf(to, "id")]));
    return [...table.cells(data)]
      .flatMap((row) => row[at] ?? [])
      .filter((id) => !ids.has(id))
      .map((id) => `${table.name}.${name}: no ${id} in ${refers}`);
  });
}

function placeOf({ columns }: Table, name: string): number {
  return columns.findIndex((column) => column.name === name);
}
