/** The tables of what laboratories found, on tiles and of glazes. */
import type { DataRows } from "../data-rows.ts";
import type { GlazeRow, TileRow } from "../rows.ts";
import { numbered, type Part } from "./parts.ts";
import { type ColumnOf, column, type Table, table } from "./table.ts";

interface Test {
  /** Of the tile or of the glaze, whichever was tested. */
  readonly tile: string | null;
  readonly glaze: string | null;
  readonly number: number;
  readonly test: TileRow["leachTests"][number];
}

function* testsOf({ tiles, glazes }: DataRows): Generator<Test> {
  const ofRow = (row: GlazeRow | TileRow) => row.leachTests;
  for (const { of, number, part: test } of numbered(tiles, ofRow))
    yield { tile: of.id, glaze: null, number, test };
  for (const { of, number, part: test } of numbered(glazes, ofRow))
    yield { tile: null, glaze: of.id, number, test };
}

/** No other test has it: ids begin with a letter or a digit, and a tile may be called as a glaze is. */
function idOf({ tile, glaze, number }: Test): string {
  return `${tile === null ? `glaze--${glaze}` : `tile--${tile}`}--${number}`;
}

type Field = Exclude<keyof Test["test"], "found">;

/** A column that says the same of a test, whether it is a tile's or a glaze's. */
function told(name: string, type: "date" | "text", field: Field): ColumnOf<Test> {
  return column(name, type, `tiles.leachTests.${field}`, ({ test }) => test[field]);
}

const tests = table<Test>({
  name: "leach_tests",
  row: "one laboratory's report on one piece, from one firing. It lifts no caution, and says nothing of any other piece",
  key: ["id"],
  rows: testsOf,
  columns: [
    column("id", "text", null, idOf, {
      description: "The kind and the id of what was tested, and the number of the report.",
    }),
    column("tile", "text", null, ({ tile }) => tile, {
      refers: "tiles",
      nullable: true,
      description: "The code of the tile whose record has it; null where a glaze's does.",
    }),
    column("glaze", "text", null, ({ glaze }) => glaze, {
      refers: "glazes",
      nullable: true,
      description: "The id of the glaze whose record has it; null where a tile's does.",
    }),
    told("reported_on", "date", "on"),
    told("laboratory", "text", "laboratory"),
    told("method", "text", "method"),
    told("ware", "text", "ware"),
    told("fired", "text", "fired"),
    told("report", "text", "report"),
  ],
});

type Figure = Part<Test, Test["test"]["found"][number]>;

const found = table<Figure>({
  name: "leach_found",
  row: "one figure of one laboratory's report",
  key: ["test", "number"],
  rows: (data) => numbered(testsOf(data), ({ test }) => test.found),
  columns: [
    column("test", "text", null, ({ of }) => idOf(of), {
      refers: "leach_tests",
      description: "The id of the report.",
    }),
    column("number", "integer", null, ({ number }) => number, {
      description: "1 for the first figure of the report.",
    }),
    column("element", "text", "tiles.leachTests.found.element", ({ part }) => part.element),
    column("amount", "real", "tiles.leachTests.found.amount", ({ part }) => part.amount),
    column("below", "real", "tiles.leachTests.found.below", ({ part }) => part.below),
    column("unit", "text", "tiles.leachTests.found.unit", ({ part }) => part.unit),
  ],
});

export const leachTables: readonly Table[] = [tests, found];
