/**
 * Filters and counts over the columns of the facets file. One pass over the tiles counts, for
 * every value of every facet, what choosing it instead would leave: a tile that only one facet
 * turns away still counts for the other values of that facet. Words and a colour turn tiles away
 * as a facet does.
 */
import type { FacetColumn, Facets } from "../../publish/facets-file.ts";
import type { FacetName } from "../../terms/facets.ts";

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

/** What was asked for besides the values of facets. */
export type Besides = "words" | "near";

/** For each tile 1 where it is what was asked for, left out where nothing was: the words found, a colour measured. */
export type Marks = { readonly [name in Besides]?: Uint8Array | undefined };

export interface Found {
  /** Places of the tiles that are left, in their order. */
  readonly tiles: Uint32Array;
  /** For each value of each facet, how many tiles would be left with it. */
  readonly counts: ReadonlyMap<FacetName, Uint32Array>;
  /** How many would be left without each facet's choice, without the words, without the colour. */
  readonly without: ReadonlyMap<FacetName | Besides, number>;
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
 * @param marks what else was asked for
 */
export function findTiles(table: Table, choice: Choice, marks: Marks = {}): Found {
  const names = [...table.columns.map(({ name }) => name), "words" as const, "near" as const];
  const tests = [...makeTests(table, choice), ...makeMarkTests(names, marks)];
  const refusals = new Uint32Array(names.length);
  const sums = table.columns.map((column) => new Uint32Array(column.combinations.length));
  const left = new Uint32Array(table.size);
  let count = 0;
  for (let tile = 0; tile < table.size; tile += 1) {
    const refused = refusedBy(tests, tile);
    if (refused === several) continue;
    if (refused === nobody) {
      left[count] = tile;
      count += 1;
      addToAll(table, sums, tile);
    } else {
      refusals[refused] = (refusals[refused] ?? 0) + 1;
      addOne(table.columns[refused], sums[refused], tile);
    }
  }
  const without = new Map(names.map((name, i) => [name, count + (refusals[i] ?? 0)] as const));
  return { tiles: left.slice(0, count), counts: spreadCounts(table, sums), without };
}

interface Test {
  /** The place of what is tested among all that can turn a tile away. */
  readonly place: number;
  /** For each tile, the place of its combination. */
  readonly tiles: Uint32Array | Uint8Array;
  /** For each combination, 1 where it holds what is wanted. */
  readonly holds: Uint8Array;
}

function makeTests({ columns }: Table, choice: Choice): readonly Test[] {
  return columns.flatMap(({ name, tiles, combinations }, place) => {
    const value = choice.get(name);
    if (value === undefined) return [];
    const holds = Uint8Array.from(combinations, (places) => (places.includes(value) ? 1 : 0));
    return [{ place, tiles, holds }];
  });
}

/** A mark is a column of two combinations, of which the second holds. */
function makeMarkTests(names: readonly string[], marks: Marks): readonly Test[] {
  const holds = Uint8Array.of(0, 1);
  return (["words", "near"] as const).flatMap((name) => {
    const tiles = marks[name];
    return tiles ? [{ place: names.indexOf(name), tiles, holds }] : [];
  });
}

const nobody = -1;
const several = -2;

/** The place of the one that turns a tile away, or `nobody`, or `several`. */
function refusedBy(tests: readonly Test[], tile: number): number {
  let refused = nobody;
  for (const { place, tiles, holds } of tests) {
    if (holds[tiles[tile] ?? 0] === 1) continue;
    if (refused !== nobody) return several;
    refused = place;
  }
  return refused;
}

function addToAll({ columns }: Table, sums: readonly Uint32Array[], tile: number): void {
  for (let i = 0; i < columns.length; i += 1) addOne(columns[i], sums[i], tile);
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
