/** The tables of tiles, and what was seen and measured on them. */
import type { TileRow } from "../rows.ts";
import { listed, numbered, type Part } from "./parts.ts";
import { column, coneColumns, type Table, table } from "./table.ts";

const tileRef = { refers: "tiles", description: "The code of the tile." };
const code = (row: { readonly of: TileRow }) => row.of.id;

const tiles = table<TileRow>({
  name: "tiles",
  row: "one test tile",
  key: ["id"],
  rows: (data) => data.tiles,
  columns: [
    column("id", "text", "tiles.id", (tile) => tile.id, { description: "The code on its back." }),
    column("url", "text", "tiles.url", (tile) => tile.url),
    column("set_id", "text", "tiles.set", (tile) => tile.set, { refers: "sets" }),
    column("maker", "text", "tiles.maker", (tile) => tile.maker),
    column("glazed", "date", "tiles.glazed", (tile) => tile.glazed),
    column("stage", "text", "tiles.stage", (tile) => tile.stage),
    column("clay", "text", "tiles.clay", (tile) => tile.clay, { refers: "clays" }),
    column("texture", "text", "tiles.texture", (tile) => tile.texture),
    column("shape", "text", "tiles.shape", (tile) => tile.shape),
    column("angle", "real", "tiles.angle", (tile) => tile.angle),
    ...coneColumns<TileRow>("cone", "tiles.cone", (tile) => tile.cone),
    column("atmosphere", "text", "tiles.atmosphere", (tile) => tile.atmosphere),
    column("run", "real", "tiles.run", (tile) => tile.run),
    column("again", "text", "tiles.again", (tile) => tile.again),
    column("hex", "text", "tiles.colour.hex", ({ colour }) => colour?.hex ?? null, {
      description: "The colour that was measured on the photograph, in sRGB.",
    }),
    column("lab_l", "real", "tiles.colour.lab.0", ({ colour }) => colour?.lab[0] ?? null, {
      description: "How light that is: L* of CIELAB under D65, from 0 to 100.",
    }),
    column("lab_a", "real", "tiles.colour.lab.1", ({ colour }) => colour?.lab[1] ?? null, {
      description: "How red it is, or how green where it is below 0: a* of CIELAB under D65.",
    }),
    column("lab_b", "real", "tiles.colour.lab.2", ({ colour }) => colour?.lab[2] ?? null, {
      description: "How yellow it is, or how blue where it is below 0: b* of CIELAB under D65.",
    }),
    column("spread", "real", "tiles.colour.spread", ({ colour }) => colour?.spread ?? null),
  ],
});

/** A word that was said of how a tile came out. */
function seen(word: "effect" | "fault" | "surface", field: "effects" | "faults" | "surface") {
  return table<Part<TileRow, string>>({
    name: `tile_${word}s`,
    row: `one ${word} of one tile: a tile has as many rows as it has ${word}s`,
    key: ["tile", word],
    rows: (data) => listed(data.tiles, (tile) => tile[field]),
    columns: [
      column("tile", "text", null, code, tileRef),
      column(word, "text", `tiles.${field}`, ({ part }) => part),
    ],
  });
}

const palettes = table<Part<TileRow, { readonly hex: string; readonly share: number }>>({
  name: "palettes",
  row: "one of the colours that a tile's glaze is made up of",
  key: ["tile", "number"],
  rows: (data) => numbered(data.tiles, ({ colour }) => colour?.palette ?? []),
  columns: [
    column("tile", "text", null, code, tileRef),
    column("number", "integer", null, ({ number }) => number, {
      description: "1 for the first colour of the tile.",
    }),
    column("hex", "text", "tiles.colour.palette.hex", ({ part }) => part.hex, { nullable: false }),
    column("share", "real", "tiles.colour.palette.share", ({ part }) => part.share, {
      nullable: false,
    }),
  ],
});

const cautions = table<Part<TileRow, string>>({
  name: "tile_cautions",
  row: "one caution or practice note of one tile",
  key: ["tile", "number"],
  rows: (data) => numbered(data.tiles, (tile) => tile.cautions),
  columns: [
    column("tile", "text", null, code, tileRef),
    column("number", "integer", null, ({ number }) => number, {
      description: "1 for the first of the tile: the loudest come first.",
    }),
    column("caution", "text", "tiles.cautions", ({ part }) => part),
  ],
});

export const tileTables: readonly Table[] = [
  tiles,
  seen("surface", "surface"),
  seen("effect", "effects"),
  seen("fault", "faults"),
  palettes,
  cautions,
];
