/** A square and a head of the grid, as elements. */
import type { GridColour } from "../../publish/grid-file.ts";
import { leastRun } from "../../terms/run.ts";
import { element } from "../parts/element.ts";
import { pageOfPair } from "./addresses.ts";
import { keyOf, type Square } from "./squares.ts";
import type { Order, Pair } from "./view.ts";
import { isOutOfStock, type Known, nameSquare, tellHead, verdicts } from "./words.ts";

/** A square with what one acts upon in it: a link where something was tried, else a button. */
export interface SquareElement {
  readonly cell: HTMLElement;
  readonly control: HTMLElement;
}

export function makeSquare(pair: Pair, known: Known, root: string): SquareElement {
  const { index, squares } = known;
  const square = squares.tried.get(keyOf(pair, index));
  const named = { tabindex: "-1", "aria-label": nameSquare(pair, known) };
  const control = square
    ? element("a", { ...named, href: root + pageOfPair(pair, index) }, ...insideOf(square, root))
    : element("button", { ...named, type: "button" });
  const kinds = ["square", square ? "tried" : "empty"];
  if (pair.over === pair.under) kinds.push("alone");
  if (!square && !known.whole) kinds.push("coming");
  if (!square && isOutOfStock(pair, index)) kinds.push("out");
  return { cell: element("div", { role: "gridcell", class: kinds.join(" ") }, control), control };
}

function insideOf(square: Square, root: string): readonly HTMLElement[] {
  const { picture } = square;
  const photograph = picture
    ? element("img", { src: root + picture, alt: "", decoding: "async" })
    : element("span", {}, "no photograph");
  const kind = picture ? "photograph" : "photograph none";
  return [element("span", { class: kind }, photograph), marksOf(square)];
}

/** From so many millimetres on a drop is drawn longer, as on a card. */
const [far, veryFar] = [leastRun, 15];

/** The marks of a card in short: how far it ran, how many tiles there are, and the verdicts. */
function marksOf(square: Square): HTMLElement {
  const { run, tiles } = square;
  const how = run >= veryFar ? "ran very-far" : run >= far ? "ran far" : "ran";
  const again = verdicts(square).map(([word]) => element("span", { class: `again ${word}` }, word));
  return element(
    "span",
    { class: "marks", "aria-hidden": "true" },
    ...(run > 0 ? [element("i", { class: how }, `${run}\u00a0mm`)] : []),
    ...(tiles > 1 ? [element("small", {}, `×${tiles}`)] : []),
    element("span", { class: "said" }, ...again),
  );
}

/** What a head is made with. */
export interface HeadOf {
  readonly order: Order;
  readonly known: Known;
  readonly colours: ReadonlyMap<number, GridColour>;
  readonly root: string;
}

/** The head of a row or of a column: a band of the colour the glaze measured alone, its name, its order. */
export function makeHead(
  role: "columnheader" | "rowheader",
  place: number,
  of: HeadOf,
): HTMLElement {
  const { order, known, colours, root } = of;
  const { index } = known;
  const glaze = index.glazes[place];
  const said = tellHead(place, order, known, colours);
  const href = root + pageOfPair({ over: place, under: place }, index);
  const kind = glaze?.stocked === false ? "head out" : "head";
  return element(
    "div",
    { role, class: kind },
    bandOf(colours.get(place)),
    element("a", { href, tabindex: "-1" }, glaze?.name ?? ""),
    ...(said ? [element("small", {}, said)] : []),
  );
}

const svg = "http://www.w3.org/2000/svg";

/** Hatched where nobody measured it at this cone, as in every drawing. */
function bandOf(colour: GridColour | undefined): SVGElement {
  const band = document.createElementNS(svg, "svg");
  const fill = document.createElementNS(svg, "rect");
  band.setAttribute("class", "band");
  band.setAttribute("aria-hidden", "true");
  for (const [name, value] of [
    ["width", "100%"],
    ["height", "100%"],
    ["fill", colour?.[1] ?? "url(#hatch)"],
  ] as const)
    fill.setAttribute(name, value);
  band.append(fill);
  return band;
}
