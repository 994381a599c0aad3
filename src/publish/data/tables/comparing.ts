/** The tables of tiles that are one change apart, of pairs, and of tiles with a pair in both orders. */
import type { PairRow, TileRow } from "../rows.ts";
import { listed, numbered, type Part } from "./parts.ts";
import { column, type Table, table } from "./table.ts";

const tileRef = { refers: "tiles", description: "The code of the tile." };

type OneChange = Part<TileRow, TileRow["oneChange"][number]>;

const oneChange = table<OneChange>({
  name: "one_change",
  row: "two tiles with a result that differ in one thing or in nothing: each two have a row both ways",
  key: ["tile", "other"],
  rows: (data) => numbered(data.tiles, (tile) => tile.oneChange),
  columns: [
    column("tile", "text", null, ({ of }) => of.id, tileRef),
    column("other", "text", "tiles.oneChange.tile", ({ part }) => part.tile, { refers: "tiles" }),
    column("difference", "text", "tiles.oneChange.difference", ({ part }) => part.difference),
    column("delta_e00", "real", "tiles.oneChange.deltaE00", ({ part }) => part.deltaE00),
  ],
});

const oneChangeUncontrolled = table<Part<OneChange, string>>({
  name: "one_change_uncontrolled",
  row: "one thing that was not held equal between two tiles of `one_change`",
  key: ["tile", "other", "uncontrolled"],
  rows: (data) =>
    listed(
      numbered(data.tiles, (tile) => tile.oneChange),
      ({ part }) => part.uncontrolled,
    ),
  columns: [
    column("tile", "text", null, ({ of }) => of.of.id, tileRef),
    column("other", "text", null, ({ of }) => of.part.tile, {
      refers: "tiles",
      description: "The code of the other tile.",
    }),
    column("uncontrolled", "text", "tiles.oneChange.uncontrolled", ({ part }) => part),
  ],
});

const pairs = table<PairRow>({
  name: "pairs",
  row: "one glaze over another, as some tile has them",
  key: ["id"],
  rows: (data) => data.grid,
  columns: [
    column("id", "text", "grid.id", (pair) => pair.id, {
      description:
        "The two ids with `--over--` between them; hyphens in a row within an id become `~`.",
    }),
    column("url", "text", "grid.url", (pair) => pair.url),
    column("over_glaze", "text", "grid.over", (pair) => pair.over, { refers: "glazes" }),
    column("under_glaze", "text", "grid.under", (pair) => pair.under, { refers: "glazes" }),
    column("reverse_pair", "text", "grid.reverse", (pair) => pair.reverse, { refers: "pairs" }),
  ],
});

interface TilePair extends Part<PairRow, string> {
  readonly isOnly: boolean;
}

const tilePairs = table<TilePair>({
  name: "tile_pairs",
  row: "one glaze over another on one tile: a tile with three layers of glaze may have two rows or more",
  key: ["pair", "tile"],
  *rows(data) {
    for (const row of listed(data.grid, (pair) => pair.tiles))
      yield { ...row, isOnly: data.onlyPair.has(row.part) };
  },
  columns: [
    column("pair", "text", null, ({ of }) => of.id, {
      refers: "pairs",
      description: "The id of the pair.",
    }),
    column("tile", "text", "grid.tiles", ({ part }) => part, tileRef),
    column("over_glaze", "text", null, ({ of }) => of.over, {
      refers: "glazes",
      description: "The id of the glaze on top.",
    }),
    column("under_glaze", "text", null, ({ of }) => of.under, {
      refers: "glazes",
      description: "The id of the glaze beneath.",
    }),
    column("only_pair", "yes-no", null, ({ isOnly }) => isOnly, {
      description:
        "Yes where the tile has these two layers of glaze and no other. Only then is a run, a surface or a fault of the tile this pair's alone.",
    }),
  ],
});

type Swap = Part<PairRow, PairRow["swaps"][number]>;

const swaps = table<Swap>({
  name: "swaps",
  row: "two tiles that have the same two glazes, and differ in nothing but their order",
  key: ["pair", "tile", "other"],
  rows: (data) => numbered(data.grid, (pair) => pair.swaps),
  columns: [
    column("pair", "text", null, ({ of }) => of.id, {
      refers: "pairs",
      description: "The id of the pair.",
    }),
    column("tile", "text", "grid.swaps.tile", ({ part }) => part.tile, { refers: "tiles" }),
    column("other", "text", "grid.swaps.other", ({ part }) => part.other, { refers: "tiles" }),
    column("delta_e00", "real", "grid.swaps.deltaE00", ({ part }) => part.deltaE00),
  ],
});

const swapUncontrolled = table<Part<Swap, string>>({
  name: "swap_uncontrolled",
  row: "one thing that was not held equal between two tiles of `swaps`",
  key: ["pair", "tile", "other", "uncontrolled"],
  rows: (data) =>
    listed(
      numbered(data.grid, (pair) => pair.swaps),
      ({ part }) => part.uncontrolled,
    ),
  columns: [
    column("pair", "text", null, ({ of }) => of.of.id, {
      refers: "pairs",
      description: "The id of the pair.",
    }),
    column("tile", "text", null, ({ of }) => of.part.tile, {
      refers: "tiles",
      description: "A tile with this pair.",
    }),
    column("other", "text", null, ({ of }) => of.part.other, {
      refers: "tiles",
      description: "One with the reverse.",
    }),
    column("uncontrolled", "text", "grid.swaps.uncontrolled", ({ part }) => part),
  ],
});

export const comparingTables: readonly Table[] = [
  oneChange,
  oneChangeUncontrolled,
  pairs,
  tilePairs,
  swaps,
  swapUncontrolled,
];
