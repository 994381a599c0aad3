/** Orders of the wall that are not those of a colour: by how far the glaze ran, by date, by code. */
import type { Facets } from "../../publish/facets-file.ts";
import type { Sort } from "../../terms/sorts.ts";
import { sortBy } from "./sort-by.ts";
import type { Captions } from "./tiles.ts";

export type OwnSort = Exclude<Sort, "near">;

/** Tiles in an order; those that lack what they are put in order by come last. */
export interface Ordered {
  readonly tiles: Uint32Array;
  /** How many, from the first, have it. */
  readonly known: number;
}

type Recorded = readonly (number | null)[];

/**
 * Makes the function that puts tiles into an order, equals by their codes. Each order is found once
 * for all tiles; to put some of them into it only leaves out the others.
 */
export function makeOrders({
  codes,
  ran,
  glazed,
}: Pick<Facets, "codes" | "ran" | "glazed">): (tiles: Uint32Array, sort: OwnSort) => Ordered {
  const known = new Map<Recorded, Uint32Array>();
  const orderBy = (column: Recorded) => {
    const order = known.get(column) ?? highestFirst(column);
    known.set(column, order);
    return order;
  };
  return (tiles, sort) => {
    if (sort === "code") return { tiles, known: tiles.length };
    const column = sort === "run" ? ran : glazed;
    return pickInOrder(tiles, orderBy(column), column, codes.length);
  };
}

function highestFirst(column: Recorded): Uint32Array {
  const places = Uint32Array.from(column, (_, tile) => tile);
  const keys = Float64Array.from(column, (value) => (value === null ? Infinity : -value));
  return sortBy(places, keys).values;
}

function pickInOrder(
  tiles: Uint32Array,
  order: Uint32Array,
  column: Recorded,
  size: number,
): Ordered {
  const wanted = new Uint8Array(size);
  for (const tile of tiles) wanted[tile] = 1;
  const picked = order.filter((tile) => wanted[tile] === 1);
  const lacking = picked.findIndex((tile) => column[tile] === null);
  return { tiles: picked, known: lacking < 0 ? picked.length : lacking };
}

/** What the wall says of tiles in such an order: the day of each, and where no value is known. */
export function captionOrder(
  { tiles, known }: Ordered,
  sort: OwnSort,
  { ran, glazed, days }: Pick<Facets, "ran" | "glazed" | "days">,
): Captions {
  const lines = new Map<number, string>();
  if (sort === "code") return { at: () => "", lines };
  if (sort === "run") lines.set(firstStill(tiles, known, ran), "Did not run");
  lines.set(known, sort === "run" ? "No run recorded" : "No date recorded");
  lines.delete(tiles.length);
  return {
    at: (place) => (sort === "date" ? (days[glazed[tiles[place] ?? -1] ?? -1] ?? "") : ""),
    lines,
  };
}

/** The place of the first that did not run at all. */
function firstStill(tiles: Uint32Array, known: number, ran: Recorded): number {
  const place = tiles.findIndex((tile) => ran[tile] === 0);
  return place < 0 ? known : place;
}

/** `, the longest run first. 12 tiles have no run recorded; they come last.` */
export function tellOrder({ tiles, known }: Ordered, sort: OwnSort): string {
  if (sort === "code") return ", by code.";
  const [first, what] =
    sort === "run" ? ["the longest run first", "run"] : ["the newest first", "date"];
  return `, ${first}.${tellLacking(tiles.length - known, what)}`;
}

function tellLacking(lacking: number, what: string): string {
  if (lacking === 0) return "";
  return lacking === 1
    ? ` 1 tile has no ${what} recorded; it comes last.`
    : ` ${lacking} tiles have no ${what} recorded; they come last.`;
}
