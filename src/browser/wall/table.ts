/**
 * Filters and counts over the columns of the facets file. One pass over the tiles counts, for
 * every value of every facet, what choosing it instead would leave: a tile that only one facet
 * turns away still counts for the other values of that facet.
 */
import type { FacetColumn, FacetName, Facets } from "../../publish/facets-file.ts";

interface Column {
  readonly name: FacetName;
  readonly tiles: Uint32Array;
  readonly combinations: readonly (readonly number[])[];
  readonly values: number;
}

export interface Table {
  readonly size: number;
  readonly columns: readonly Column[];
}

/** For each facet that a value was chosen of, the value's place. */
export type Choice = ReadonlyMap<FacetName, number>;

export interface Found {
  /** Places of the tiles that are left, in their order. */
  readonly tiles: Uint32Array;
  /** For each value of each facet, how many tiles would be left with it. */
  readonly counts: ReadonlyMap<FacetName, Uint32Array>;
  /** How many would be left without each facet's choice; `words` without the words. */
  readonly without: ReadonlyMap<FacetName | "words", number>;
}

export function makeTable({ codes, columns }: Facets): Table {
  const entries = Object.entries(columns) as [FacetName, FacetColumn][];
  return {
    size: codes.length,
    columns: entries.map(([name, column]) => ({
      name,
      tiles: Uint32Array.from(column.tiles),
      combinations: column.combinations,
      values: column.keys.length,
    })),
  };
}

/**
 * @param choice the values chosen
 * @param words for each tile 1 where the words were found in it; left out where none were typed
 */
export function findTiles(table: Table, choice: Choice, words?: Uint8Array): Found {
  const tests = makeTests(table, choice);
  const refusals = new Uint32Array(table.columns.length);
  const sums = table.columns.map((column) => new Uint32Array(column.combinations.length));
  const left = new Uint32Array(table.size);
  let count = 0;
  let withoutWords = 0;
  for (let tile = 0; tile < table.size; tile += 1) {
    const unsaid = words !== undefined && words[tile] === 0;
    const refused = refusedBy(tests, tile);
    if (refused === several || (unsaid && refused !== nobody)) continue;
    if (unsaid) withoutWords += 1;
    else if (refused === nobody) {
      left[count] = tile;
      count += 1;
      addToAll(table, sums, tile);
    } else {
      refusals[refused] = (refusals[refused] ?? 0) + 1;
      addToOne(table, sums, tile, refused);
    }
  }
  const without = new Map<FacetName | "words", number>([["words", count + withoutWords]]);
  table.columns.forEach(({ name }, i) => {
    without.set(name, count + (refusals[i] ?? 0));
  });
  return { tiles: left.slice(0, count), counts: spreadCounts(table, sums), without };
}

interface Test {
  readonly column: number;
  readonly tiles: Uint32Array;
  /** For each combination, 1 where it holds the chosen value. */
  readonly holds: Uint8Array;
}

function makeTests({ columns }: Table, choice: Choice): readonly Test[] {
  return columns.flatMap(({ name, tiles, combinations }, column) => {
    const value = choice.get(name);
    if (value === undefined) return [];
    const holds = Uint8Array.from(combinations, (places) => (places.includes(value) ? 1 : 0));
    return [{ column, tiles, holds }];
  });
}

const nobody = -1;
const several = -2;

/** The one column that turns a tile away, or `nobody`, or `several`. */
function refusedBy(tests: readonly Test[], tile: number): number {
  let refused = nobody;
  for (const { column, tiles, holds } of tests) {
    if (holds[tiles[tile] ?? 0] === 1) continue;
    if (refused !== nobody) return several;
    refused = column;
  }
  return refused;
}

function addToAll({ columns }: Table, sums: readonly Uint32Array[], tile: number): void {
  for (let i = 0; i < columns.length; i += 1) addOne(columns[i], sums[i], tile);
}

function addToOne(table: Table, sums: readonly Uint32Array[], tile: number, column: number): void {
  addOne(table.columns[column], sums[column], tile);
}

function addOne(column: Column | undefined, sum: Uint32Array | undefined, tile: number): void {
  const place = column?.tiles[tile];
  if (sum && place !== undefined) sum[place] = (sum[place] ?? 0) + 1;
}

/** Counts of combinations as counts of the values in them. */
function spreadCounts({ columns }: Table, sums: readonly Uint32Array[]): Found["counts"] {
  return new Map(
    columns.map(({ name, combinations, values }, i) => {
      const counts = new Uint32Array(values);
      combinations.forEach((places, combination) => {
        const sum = sums[i]?.[combination] ?? 0;
        for (const place of places) counts[place] = (counts[place] ?? 0) + sum;
      });
      return [name, counts];
    }),
  );
}
