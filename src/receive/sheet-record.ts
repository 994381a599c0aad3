/** From a row of a spreadsheet to a tile's record. */
import type { FieldValue } from "../reader/render-record.ts";
import { kindsOfFiring, removals, resists } from "../terms/choices.ts";
import type { Column, LayerPart, SheetField } from "./columns.ts";
import type { SheetRow } from "./sheet.ts";

/** What a row says, by what its columns hold. */
export interface RowValues {
  readonly fields: ReadonlyMap<SheetField, string>;
  /** From columns with numbers, such as `layer 1` and `coats 1`. */
  readonly layers: readonly ReadonlyMap<LayerPart, string>[];
}

/** Sorts the cells of a row by what they hold; empty ones say nothing. */
export function valuesOf({ cells }: SheetRow, columns: readonly Column[]): RowValues {
  const fields = new Map<SheetField, string>();
  const layers = new Map<number, Map<LayerPart, string>>();
  for (const [i, column] of columns.entries()) {
    const cell = cells[i] ?? "";
    if (cell === "") continue;
    if (column.holds === "field") fields.set(column.field, cell);
    if (column.holds !== "layer") continue;
    const layer = layers.get(column.nth) ?? new Map<LayerPart, string>();
    layers.set(column.nth, layer.set(column.part, cell));
  }
  const inOrder = [...layers].sort(([a], [b]) => a - b).map(([, layer]) => layer);
  return { fields, layers: inOrder };
}

/** The layers of a row whose layers have columns of their own. */
export function numberedLayers({ layers }: RowValues): readonly FieldValue[] {
  return layers.map(layerOf);
}

/** The fields of the record that a row makes; what was not written is left out. */
export function recordOf(
  { fields }: RowValues,
  layers: readonly FieldValue[],
): Readonly<Record<string, FieldValue | undefined>> {
  const word = (field: SheetField) => fields.get(field);
  const list = (field: SheetField) => asList(fields.get(field));
  const result = {
    after: word("after"),
    surface: list("surface"),
    effects: list("effects"),
    faults: list("faults"),
    run: word("run"),
    again: word("again"),
    "next-time": word("next-time"),
  };
  return {
    glazed: word("glazed"),
    maker: word("maker"),
    clay: word("clay"),
    texture: word("texture"),
    shape: word("shape"),
    layers,
    result: Object.values(result).some((value) => value !== undefined) ? result : undefined,
    fate: word("fate"),
  };
}

/** One word, or several with commas between them. */
function asList(cell: string | undefined): FieldValue | undefined {
  const words = cell?.split(",").map((word) => word.trim());
  return words && words.length > 1 ? words : cell;
}

/** A layer is a glaze, but for the words that name something else that is done to a tile. */
function layerOf(layer: ReadonlyMap<LayerPart, string>): FieldValue {
  const what = layer.get("layer");
  const where = asList(layer.get("where"));
  const rest = { coats: layer.get("coats"), by: layer.get("by"), where };
  if (what === undefined) return rest;
  const isOneOf = (words: readonly string[]) => words.includes(what.toLowerCase());
  if (isOneOf(resists)) return { resist: what.toLowerCase(), ...rest };
  if (isOneOf(removals)) return { remove: what.toLowerCase(), ...rest };
  if (isOneOf(kindsOfFiring)) return { fired: what.toLowerCase(), ...rest };
  return { glaze: what, ...rest };
}
