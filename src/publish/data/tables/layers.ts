/** The tables of what was done to tiles, layer by layer. */
import type { TileRow } from "../rows.ts";
import { listed, numbered, type Part } from "./parts.ts";
import { type ColumnOf, column, type Table, table } from "./table.ts";

type LayerRow = TileRow["layers"][number];
type LayerOfTile = Part<TileRow, LayerRow>;

const place: readonly ColumnOf<LayerOfTile>[] = [
  column("tile", "text", null, ({ of }) => of.id, {
    refers: "tiles",
    description: "The code of the tile.",
  }),
  column("position", "integer", null, ({ number }) => number, {
    description: "1 for the first thing that was done to the tile, which lies at the bottom.",
  }),
];

const layers = table<LayerOfTile>({
  name: "layers",
  row: "one thing that was done to one tile: a coat, something kept off or taken off, or a firing",
  key: ["tile", "position"],
  rows: (data) => numbered(data.tiles, (tile) => tile.layers),
  columns: [
    ...place,
    column("step", "text", "tiles.layers.step", ({ part }) => part.step),
    column("glaze", "text", "tiles.layers.glazes", ({ part }) => part.glazes[0] ?? null, {
      refers: "glazes",
      nullable: true,
      description: "Of a coat: the id of its glaze; of a fade, that of the glaze it begins with.",
    }),
    column("fades_to", "text", "tiles.layers.glazes", ({ part }) => part.glazes[1] ?? null, {
      refers: "glazes",
      nullable: true,
      description: "Of a fade: the id of the glaze that it ends with.",
    }),
    column("along", "text", "tiles.layers.along", ({ part }) => part.along),
    column("coats", "integer", "tiles.layers.coats", ({ part }) => part.coats),
    column("cover", "text", "tiles.layers.cover", ({ part }) => part.cover),
    column("put_on_by", "text", "tiles.layers.by", ({ part }) => part.by),
    column("detail", "text", "tiles.layers.detail", ({ part }) => part.detail),
    column("thickness", "text", "tiles.layers.thickness", ({ part }) => part.thickness),
    column("seconds", "real", "tiles.layers.seconds", ({ part }) => part.seconds),
    column("gravity", "real", "tiles.layers.gravity", ({ part }) => part.gravity),
    column("dried", "text", "tiles.layers.dried", ({ part }) => part.dried),
    column("touch_up", "yes-no", "tiles.layers.touchUp", ({ part }) => part.touchUp),
    column("resist", "text", "tiles.layers.resist", ({ part }) => part.resist),
    column("removed", "text", "tiles.layers.remove", ({ part }) => part.remove),
    column("firing_kind", "text", "tiles.layers.kind", ({ part }) => part.kind),
    column("firing", "text", "tiles.layers.firing", ({ part }) => part.firing, {
      refers: "firings",
    }),
    column("shelf", "text", "tiles.layers.shelf", ({ part }) => part.shelf),
  ],
});

type WordOfLayer = Part<LayerOfTile, string>;

const placeOfWord: readonly ColumnOf<WordOfLayer>[] = place.map((each) => ({
  ...each,
  value: ({ of }) => each.value(of),
}));

const areas = table<WordOfLayer>({
  name: "layer_areas",
  row: "one part of a tile that one layer is on; `all` is all of it",
  key: ["tile", "position", "area"],
  rows: (data) =>
    listed(
      numbered(data.tiles, (tile) => tile.layers),
      ({ part }) => part.where,
    ),
  columns: [
    ...placeOfWord,
    column("area", "text", "tiles.layers.where", ({ part }) => part, {
      description: "The part of the tile.",
    }),
  ],
});

const laps = table<WordOfLayer>({
  name: "layer_laps",
  row: "one glaze that a layer laps over though their areas differ, because its maker said so",
  key: ["tile", "position", "glaze"],
  rows: (data) =>
    listed(
      numbered(data.tiles, (tile) => tile.layers),
      ({ part }) => part.over,
    ),
  columns: [
    ...placeOfWord,
    column("glaze", "text", "tiles.layers.over", ({ part }) => part, {
      refers: "glazes",
      description: "The id of the glaze beneath.",
    }),
  ],
});

export const layerTables: readonly Table[] = [layers, areas, laps];
