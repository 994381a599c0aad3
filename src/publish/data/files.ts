/**
 * The data files: a JSON array each, sorted by id, with its JSON Schema beside it. They hold no
 * time of the build, so that the same archive gives the same bytes.
 */
import { stringify } from "csv-stringify/sync";
import * as z from "zod";
import { apartFinder } from "../../catalogue/apart.ts";
import { swapsOf } from "../../catalogue/pairs-order.ts";
import type { Catalogue } from "../../catalogue/types.ts";
import { rememberFor } from "../../terms/remember.ts";
import {
  toClayRow,
  toFiringRow,
  toGlazeRow,
  toMaterialRow,
  toPairRow,
  toSetRow,
} from "./entries.ts";
import * as rows from "./rows.ts";
import { toTileRow } from "./tiles.ts";

/** A file of the site: its path from the root, and what it holds. */
export interface DataFile {
  readonly path: string;
  readonly content: string;
}

/** Every data file of a catalogue. */
export function makeDataFiles(catalogue: Catalogue): readonly DataFile[] {
  const findApart = apartFinder(catalogue);
  const tiles = sortById(catalogue.tiles.map((tile) => toTileRow(tile, findApart(tile))));
  return [
    ...tableFiles("tiles", tiles, rows.tileRow),
    { path: "data/tiles.csv", content: tilesToCsv(tiles) },
    ...tableFiles("glazes", catalogue.glazes.map(toGlazeRow), rows.glazeRow),
    ...tableFiles("firings", catalogue.firings.map(toFiringRow), rows.firingRow),
    ...tableFiles("clays", catalogue.clays.map(toClayRow), rows.clayRow),
    ...tableFiles("materials", catalogue.materials.map(toMaterialRow), rows.materialRow),
    ...tableFiles("sets", catalogue.sets.map(toSetRow), rows.setRow),
    ...tableFiles("grid", pairRowsOf(catalogue), rows.pairRow),
  ];
}

function pairRowsOf(catalogue: Catalogue): readonly rows.PairRow[] {
  const byUrl = new Map(catalogue.pairs.map((pair) => [pair.url, pair]));
  return catalogue.pairs.map((pair) => {
    const reversed = pair.reverse === null ? [] : (byUrl.get(pair.reverse)?.tiles ?? []);
    return toPairRow(pair, swapsOf(catalogue, pair, reversed));
  });
}

function tableFiles<Row extends { readonly id: string }>(
  name: string,
  table: readonly Row[],
  schema: z.ZodType<Row>,
): DataFile[] {
  const lines = sortById(table).map((row) => JSON.stringify(row));
  const ofTable = { ...schemaOfTable(schema), title: `${name}.json` };
  return [
    {
      path: `data/${name}.json`,
      content: lines.length > 0 ? `[\n${lines.join(",\n")}\n]\n` : "[]\n",
    },
    { path: `data/${name}.schema.json`, content: `${JSON.stringify(ofTable, null, 2)}\n` },
  ];
}

const schemaOfTable = rememberFor((row: z.ZodType) => z.toJSONSchema(z.array(row)));

/** By code unit, so that the order is the same in every language and country. */
function sortById<Row extends { readonly id: string }>(table: readonly Row[]): readonly Row[] {
  return [...table].sort((a, b) => (a.id < b.id ? -1 : a.id > b.id ? 1 : 0));
}

/** Lists are joined by `; `, layers told bottom first as glaze × coats. */
function tilesToCsv(tiles: readonly rows.TileRow[]): string {
  const flat = tiles.map(({ layers, colour, leachTests: _, oneChange, cautions, ...tile }) => ({
    ...tile,
    maker: tile.maker && harmless(tile.maker),
    texture: harmless(tile.texture),
    surface: tile.surface.join("; "),
    effects: tile.effects.join("; "),
    faults: tile.faults.join("; "),
    layers: layers.map(layerInWords).join("; "),
    hex: colour?.hex ?? null,
    L: colour?.lab[0] ?? null,
    a: colour?.lab[1] ?? null,
    b: colour?.lab[2] ?? null,
    cautions: cautions.map(harmless).join(" "),
    oneChange: oneChange.map((other) => other.tile).join("; "),
  }));
  return stringify(flat, { header: true, columns: csvColumns });
}

const csvColumns = [
  ...["id", "url", "set", "maker", "glazed", "stage", "clay", "texture", "shape", "angle"],
  ...["cone", "atmosphere", "surface", "effects", "faults", "run", "again", "layers"],
  ...["hex", "L", "a", "b", "oneChange", "cautions"],
];

function layerInWords(layer: rows.TileRow["layers"][number]): string {
  if (layer.step === "fired") return `fired ${layer.firing ?? layer.kind}`;
  const what = layer.glazes.join(" to ") || layer.resist || `remove ${layer.remove}`;
  const where = layer.where.includes("all") ? "" : ` ${layer.where.join(", ")}`;
  return `${what}${layer.coats === null ? "" : ` × ${layer.coats}`}${where}`;
}

/** Own words that a spreadsheet would run as a formula are marked as text. */
function harmless(text: string): string {
  return /^[=+\-@\t\r]/u.test(text) ? `'${text}` : text;
}
