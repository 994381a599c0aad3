/**
 * A flat table of the data files: what one row of it is, and what each column means. CSV, SQLite and
 * Parquet are written from the same tables, and the tables from the rows of the JSON files, so that
 * all of them say the same.
 */
import type { Cone } from "../../../terms/cones.ts";
import type { DataRows } from "../data-rows.ts";
import { coneOrder } from "./cone-order.ts";
import { fieldAt } from "./field-at.ts";

export type Cell = string | number | boolean | null;

/** A day is a text as well: 2026-10-14. */
export type ColumnType = "date" | "integer" | "real" | "text" | "yes-no";

/** What there is to know of a column. */
export interface Column {
  readonly name: string;
  readonly type: ColumnType;
  /** Whether a row may have nothing there. */
  readonly nullable: boolean;
  /** A sentence or more. */
  readonly description: string;
  /** The field of the JSON files that says the same, as in `tiles.layers.coats`; null where none does. */
  readonly says: string | null;
  /** The table whose `id` it holds; null where it holds none. */
  readonly refers: string | null;
  /** Whether it is the name of a cone, which a spreadsheet may take for a number. */
  readonly isCone: boolean;
}

/** A column, and how it is read off a row. */
export interface ColumnOf<Row> extends Column {
  readonly value: (row: Row) => Cell;
}

/** What there is to know of a table. */
export interface Table {
  /** Needs no quotes in SQL, nor does the name of any column. */
  readonly name: string;
  /** What one row is: `one test tile`. */
  readonly row: string;
  /** The columns that together are another in every row. */
  readonly key: readonly string[];
  readonly columns: readonly Column[];
  readonly count: (data: DataRows) => number;
  /** The rows, cell by cell in the order of the columns. */
  readonly cells: (data: DataRows) => Iterable<readonly Cell[]>;
}

interface TableOf<Row> extends Pick<Table, "key" | "name" | "row"> {
  readonly rows: (data: DataRows) => Iterable<Row>;
  readonly columns: readonly ColumnOf<Row>[];
}

export function table<Row>({ rows, columns, ...about }: TableOf<Row>): Table {
  return {
    ...about,
    columns,
    count(data) {
      let count = 0;
      for (const _ of rows(data)) count += 1;
      return count;
    },
    *cells(data) {
      for (const row of rows(data)) yield columns.map(({ value }) => value(row));
    },
  };
}

interface Told {
  /** Needed where no field of the JSON files says the same, or says it otherwise. */
  readonly description?: string;
  readonly refers?: string;
  readonly nullable?: boolean;
}

/**
 * @param says the field of the JSON files that says the same, whose words then explain it
 */
export function column<Row>(
  name: string,
  type: ColumnType,
  says: string | null,
  value: (row: Row) => Cell,
  told: Told = {},
): ColumnOf<Row> {
  const field = says === null ? null : fieldAt(says);
  const description = told.description ?? field?.description;
  if (description === undefined) throw new Error(`Nothing explains the column ${name}`);
  const { refers = null, nullable = field?.nullable ?? false } = told;
  return { name, type, nullable, description, says, refers, isCone: false, value };
}

/** A cone's name, and beside it its place among all cones. */
export function coneColumns<Row>(
  name: string,
  says: string,
  value: (row: Row) => string | null,
  description?: string,
): readonly ColumnOf<Row>[] {
  const told = description === undefined ? {} : { description };
  const cone = { ...column(name, "text", says, value, told), isCone: true };
  const order = column<Row>(
    `${name}_order`,
    "real",
    null,
    (row) => coneOrder(value(row) as Cone | null),
    {
      description: `Sorts ${name} from cool to hot: 022 is 1, 01 is 22, 1 is 23, 6 is 28; a half cone lies between.`,
      nullable: cone.nullable,
    },
  );
  return [cone, order];
}
