/** The square of a set in words: how to read it, how much of it was made, what is the same on all. */
import { comparedSteps, notHeldEqual } from "../../../src/catalogue/apart.ts";
import type { Square } from "../../../src/catalogue/square.ts";
import type { CatalogueTile } from "../../../src/catalogue/tiles.ts";
import { count, grouped } from "../english/numbers.ts";
import { besidesSentence } from "./change.ts";
import { coatWords } from "./steps.ts";
import { clayAndFire } from "./strip.ts";

/**
 * `Across, what lies on top; down, what lies underneath; where a glaze meets itself, the tile has
 * it alone. 32 of 64 squares have a tile; the empty ones were not made. The same on all: each layer 2
 * coats, brushed; Levels Buff, cone 6. Also different: the maker and the shelf.`
 */
export function squareSentence({ tops, unders, rows }: Square): string {
  const squares = rows.flat();
  const tiles = squares.flat();
  const made = squares.filter((square) => square.length > 0).length;
  const [of, missing] = [squares.length, squares.length - made];
  const meets = unders.some((id) => tops.includes(id));
  return [
    `Across, what lies on top; down, what lies underneath${meets ? "; where a glaze meets itself, the tile has it alone" : ""}.`,
    missing === 0
      ? `Each of the ${count(of, "square")} has a tile.`
      : `${grouped(made)} of ${count(of, "square")} have a tile; the empty ones were not made.`,
    sameSentence(tiles),
    besidesSentence(notHeldEqual(tiles)),
  ]
    .filter(Boolean)
    .join(" ");
}

function sameSentence(tiles: readonly CatalogueTile[]): string {
  const pair = tiles.find(({ pairs }) => pairs.length > 0);
  if (!pair) return "";
  const [under = "", top = ""] = comparedSteps(pair).flatMap((step) =>
    step.step === "coat" ? [coatWords(step)] : [],
  );
  const layers =
    under === top ? under && `each layer ${under}` : `${under}, underneath; ${top}, on top`;
  const same = [layers, ...clayAndFire(pair)].filter(Boolean).join("; ");
  return same && `The same on all: ${same}.`;
}
