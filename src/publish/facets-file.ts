/**
 * The file that the wall is filtered with: columns of whole numbers into dictionaries, a column a
 * facet. A tile with several values in a facet points at a combination of them, each of which is
 * written down once, so that every column is one number a tile.
 */
import type { FacetName } from "../terms/facets.ts";

export interface FacetColumn {
  /** What stands in an address for each value. */
  readonly keys: readonly string[];
  /** What a reader sees. */
  readonly labels: readonly string[];
  /** The combinations that occur, as places in `keys`; the empty one among them. */
  readonly combinations: readonly (readonly number[])[];
  /** For each tile, the place of its combination. */
  readonly tiles: readonly number[];
}

/** A value for each tile, in hundredths; null where the tile's colour was not measured. */
export type HundredthsColumn = readonly (number | null)[];

export interface Facets {
  /** For each tile, in the order of the wall. */
  readonly codes: readonly string[];
  readonly urls: readonly string[];
  /** Places in `names`: the glazes of a tile, top coat first. */
  readonly titles: readonly number[];
  readonly names: readonly string[];
  /** Places in `outcomes`: what came out of a tile, as its card says it. */
  readonly came: readonly number[];
  readonly outcomes: readonly string[];
  /** How far each tile's glaze ran, in millimetres; null where nobody recorded it. */
  readonly ran: readonly (number | null)[];
  /** Places in `days`: when a tile was glazed; null where nobody recorded it. */
  readonly glazed: readonly (number | null)[];
  /** The days that occur, as a reader sees them, the earliest first. */
  readonly days: readonly string[];
  /** Address of a small picture; empty where there is none. */
  readonly pictures: readonly string[];
  readonly columns: Readonly<Record<FacetName, FacetColumn>>;
  /**
   * Measured colours in CIELAB (D65). Hundredths are what the data files hold, so that the wall
   * orders and tells differences as they do; whole numbers are the shortest way to write them.
   */
  readonly lab: readonly [L: HundredthsColumn, a: HundredthsColumn, b: HundredthsColumn];
  readonly trust: Trust;
  /** Folders of indexes for words that are searched together with the one in `pagefind/`. */
  readonly shards: readonly string[];
}

/** How far colour differences can be trusted here. */
export interface Trust {
  /** In CIEDE2000: a smaller difference means nothing. Null where no tile was made twice. */
  readonly difference: number | null;
  /** The same in words. */
  readonly sentence: string;
}
