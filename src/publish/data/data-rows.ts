/** The rows of all data files: the JSON files hold them as they are, the tables are made of them. */
import { apartFinder } from "../../catalogue/apart.ts";
import { swapsOf } from "../../catalogue/pairs-order.ts";
import { onlyPairOf } from "../../catalogue/runners.ts";
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
import type * as rows from "./rows.ts";
import { toTileRow } from "./tiles.ts";

export interface DataRows {
  readonly tiles: readonly rows.TileRow[];
  readonly glazes: readonly rows.GlazeRow[];
  readonly firings: readonly rows.FiringRow[];
  readonly clays: readonly rows.ClayRow[];
  readonly materials: readonly rows.MaterialRow[];
  readonly sets: readonly rows.SetRow[];
  readonly grid: readonly rows.PairRow[];
  /** Codes of the tiles that have two glazes, one over the other, and nothing else. */
  readonly onlyPair: ReadonlySet<string>;
}

/** The rows of a catalogue, each list sorted by id; made once. */
export const dataRowsOf = rememberFor((catalogue: Catalogue): DataRows => {
  const findApart = apartFinder(catalogue);
  return {
    tiles: sortById(catalogue.tiles.map((tile) => toTileRow(tile, findApart(tile)))),
    glazes: sortById(catalogue.glazes.map(toGlazeRow)),
    firings: sortById(catalogue.firings.map(toFiringRow)),
    clays: sortById(catalogue.clays.map(toClayRow)),
    materials: sortById(catalogue.materials.map(toMaterialRow)),
    sets: sortById(catalogue.sets.map(toSetRow)),
    grid: sortById(pairRowsOf(catalogue)),
    onlyPair: new Set(catalogue.tiles.filter(onlyPairOf).map(({ id }) => id)),
  };
});

function pairRowsOf(catalogue: Catalogue): readonly rows.PairRow[] {
  const byUrl = new Map(catalogue.pairs.map((pair) => [pair.url, pair]));
  return catalogue.pairs.map((pair) => {
    const reversed = pair.reverse === null ? [] : (byUrl.get(pair.reverse)?.tiles ?? []);
    return toPairRow(pair, swapsOf(catalogue, pair, reversed));
  });
}

/** By code unit, so that the order is the same in every language and country. */
function sortById<Row extends { readonly id: string }>(table: readonly Row[]): readonly Row[] {
  return [...table].sort((a, b) => (a.id < b.id ? -1 : a.id > b.id ? 1 : 0));
}
