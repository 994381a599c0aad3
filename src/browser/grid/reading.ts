/** What the square says that one is at, beneath the grid, with the pages it leads to. */
import { element } from "../parts/element.ts";
import { pageOfPair, pageOfTile } from "./addresses.ts";
import { keyOf } from "./squares.ts";
import type { Pair } from "./view.ts";
import { isOutOfStock, type Known, tellEmpty, tellSquare, titleOf } from "./words.ts";

/** The title, what is said of it, and the ways on; in a place that is kept for them. */
export function tellReading(pair: Pair, known: Known, root: string): readonly HTMLElement[] {
  const { index, squares, triedAt } = known;
  const key = keyOf(pair, index);
  const square = squares.tried.get(key);
  const said = square ? tellSquare(square, index) : capital(tellEmpty(pair, known));
  const out = isOutOfStock(pair, index)
    ? [element("span", { class: "quiet" }, " Not in stock.")]
    : [];
  const page = root + pageOfPair(pair, index);
  const hasPage = pair.over === pair.under || triedAt.has(key);
  const title = titleOf(pair, index);
  const ways = [
    ...(hasPage ? [element("a", { href: page }, `All of ${title}`)] : []),
    ...(square
      ? [element("a", { href: root + pageOfTile(square.code) }, `Tile ${square.code}`)]
      : []),
  ];
  return [
    element("p", { class: "title" }, title),
    element("p", {}, said, ...out),
    element("p", { class: "ways" }, ...ways.flatMap((way) => [way, " "])),
  ];
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
