/** What is known of each two glazes under what was chosen. */
import type { GridIndex, GridRow } from "../../publish/grid-file.ts";
import type { Pair, View } from "./view.ts";

/** What came of one glaze over another, on all tiles that the view takes in. */
export interface Square {
  readonly tiles: number;
  /** The tile that is shown; its photograph is empty where it has none. */
  readonly code: string;
  readonly picture: string;
  /** How many tiles somebody measured a run on, and the farthest, in millimetres. */
  readonly measured: number;
  readonly run: number;
  /** How many tiles say so. */
  readonly again: { readonly yes: number; readonly changed: number; readonly no: number };
  /** Places in the index. */
  readonly faults: readonly number[];
}

export interface Squares {
  /** Those that the view takes in, by `keyOf`. */
  readonly tried: ReadonlyMap<number, Square>;
  /** How many tiles of the same cone it leaves out, on other clays or in other fires. */
  readonly besides: ReadonlyMap<number, number>;
}

/** A number for two glazes, another one for each two. */
export function keyOf({ over, under }: Pair, { glazes }: Pick<GridIndex, "glazes">): number {
  return over * glazes.length + under;
}

/** Gathers rows by their two glazes. Of the rows taken in, the first decides what is shown. */
export function gatherSquares(
  rows: Iterable<GridRow>,
  index: GridIndex,
  { clay, atmosphere }: Pick<View, "atmosphere" | "clay">,
): Squares {
  const tried = new Map<number, Square>();
  const besides = new Map<number, number>();
  for (const row of rows) {
    const [over, under, onClay, inFire, tiles] = row;
    const key = keyOf({ over, under }, index);
    const isMeant =
      (clay === undefined || clay === onClay) &&
      (atmosphere === undefined || atmosphere === inFire);
    if (isMeant) tried.set(key, addTo(tried.get(key), squareOf(row)));
    else besides.set(key, (besides.get(key) ?? 0) + tiles);
  }
  return { tried, besides };
}

function squareOf(row: GridRow): Square {
  const [, , , , tiles, code, picture, measured, run, yes, changed, no, faults] = row;
  return { tiles, code, picture, measured, run, again: { yes, changed, no }, faults };
}

/** Of two with a photograph, or two without, the first is shown. */
function addTo(known: Square | undefined, more: Square): Square {
  if (!known) return more;
  const shown = known.picture === "" && more.picture !== "" ? more : known;
  return {
    tiles: known.tiles + more.tiles,
    code: shown.code,
    picture: shown.picture,
    measured: known.measured + more.measured,
    run: Math.max(known.run, more.run),
    again: {
      yes: known.again.yes + more.again.yes,
      changed: known.again.changed + more.again.changed,
      no: known.again.no + more.again.no,
    },
    faults: [...new Set([...known.faults, ...more.faults])].sort((a, b) => a - b),
  };
}
