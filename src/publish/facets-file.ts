/**
 * The file that the wall is filtered with: columns of whole numbers into dictionaries, a column a
 * facet. A tile with several values in a facet points at a combination of them, each of which is
 * written down once, so that every column is one number a tile.
 */

/** In the order in which a reader is asked for them. */
export const facetNames = [
  "cone",
  "surface",
  "colour",
  "top",
  "over",
  "clay",
  "effect",
  "fault",
  "glaze",
  "way",
  "texture",
  "shape",
  "atmosphere",
  "heat",
  "again",
  "set",
  "maker",
  "stage",
] as const;
export type FacetName = (typeof facetNames)[number];

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

export interface Facets {
  /** For each tile, in the order of the wall. */
  readonly codes: readonly string[];
  readonly urls: readonly string[];
  /** Places in `names`: the glazes of a tile, top coat first. */
  readonly titles: readonly number[];
  readonly names: readonly string[];
  /** Address of a small picture; empty where there is none. */
  readonly pictures: readonly string[];
  readonly columns: Readonly<Record<FacetName, FacetColumn>>;
}
