/**
 * `tiles.csv`, which is read by itself: its first columns are those that it had before there were other
 * tables, with the lists of a tile told in one cell each, and behind them are the columns of the table
 * that it had not.
 */
import type { DataRows } from "./data-rows.ts";
import type { TileRow } from "./rows.ts";
import type { Cell, Table } from "./tables/table.ts";

/** The columns of a CSV file, and how a row of it follows from one of the table. */
export interface CsvShape {
  readonly header: readonly string[];
  readonly rows: (data: DataRows) => Iterable<readonly Cell[]>;
}

/** Lists are joined by `; `, layers told bottom first as glaze × coats. */
const summaries: Readonly<Record<string, (tile: TileRow) => string>> = {
  surface: (tile) => tile.surface.join("; "),
  effects: (tile) => tile.effects.join("; "),
  faults: (tile) => tile.faults.join("; "),
  layers: (tile) => tile.layers.map(layerInWords).join("; "),
  oneChange: (tile) => tile.oneChange.map((other) => other.tile).join("; "),
  cautions: (tile) => tile.cautions.join(" "),
};

/** Columns that the table has under another name. */
const inTable: Readonly<Record<string, string>> = {
  set: "set_id",
  L: "lab_l",
  a: "lab_a",
  b: "lab_b",
};

const first = [
  ...["id", "url", "set", "maker", "glazed", "stage", "clay", "texture", "shape", "angle"],
  ...["cone", "atmosphere", "surface", "effects", "faults", "run", "again", "layers"],
  ...["hex", "L", "a", "b", "oneChange", "cautions"],
];

/** @param table that of tiles */
export function tilesInCsv(table: Table): CsvShape {
  const names = table.columns.map(({ name }) => name);
  const told = new Set(first.map((name) => inTable[name] ?? name));
  const header = [...first, ...names.filter((name) => !told.has(name))];
  return {
    header,
    *rows({ tiles, ...data }) {
      const cells = table.cells({ tiles, ...data })[Symbol.iterator]();
      for (const tile of tiles) {
        const row = cells.next().value ?? [];
        yield header.map((name) => cellOf(name, tile, row, names));
      }
    },
  };
}

function cellOf(name: string, tile: TileRow, row: readonly Cell[], names: readonly string[]): Cell {
  const summary = summaries[name];
  return summary ? summary(tile) : (row[names.indexOf(inTable[name] ?? name)] ?? null);
}

function layerInWords(layer: TileRow["layers"][number]): string {
  if (layer.step === "fired") return `fired ${layer.firing ?? layer.kind}`;
  const what = layer.glazes.join(" to ") || layer.resist || `remove ${layer.remove}`;
  const where = layer.where.includes("all") ? "" : ` ${layer.where.join(", ")}`;
  return `${what}${layer.coats === null ? "" : ` × ${layer.coats}`}${where}`;
}
