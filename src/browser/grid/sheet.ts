/** The grid on paper: one sheet, with the rows and columns that have a tile, and no others. */
import { leastRun } from "../../terms/run.ts";
import type { Shown } from "./board.ts";
import { keyOf, type Square } from "./squares.ts";
import { verdicts } from "./words.ts";

const svg = "http://www.w3.org/2000/svg";

/** In the drawing's own units: a square, and the room for names. */
const [size, head] = [24, 132];

/** No more squares than this in a row leave room for a code in each. */
const mostWithCodes = 14;

/** What was tried, with its codes where they can be read, else with marks that a line below explains. */
export function drawSheet({ glazes, known: { squares, index } }: Shown): SVGElement {
  const find = (over: number, under: number) => squares.tried.get(keyOf({ over, under }, index));
  const across = glazes.filter((over) => glazes.some((under) => find(over, under)));
  const down = glazes.filter((under) => glazes.some((over) => find(over, under)));
  const [width, height] = [head + across.length * size, head + down.length * size];
  const sheet = make("svg", { viewBox: `0 0 ${width} ${height}`, class: "sheet-drawing" });
  const withCodes = across.length <= mostWithCodes;
  sheet.append(...rules(across.length, down.length));
  for (const [i, over] of across.entries()) {
    const [x, y] = [head + (i + 0.5) * size, head - 6];
    const turned = { transform: `rotate(-60 ${x} ${y})`, x: String(x), y: String(y) };
    sheet.append(text(index.glazes[over]?.name ?? "", turned));
  }
  for (const [j, under] of down.entries()) {
    const y = head + (j + 0.65) * size;
    const place = { x: String(head - 6), y: String(y), "text-anchor": "end" };
    sheet.append(text(index.glazes[under]?.name ?? "", place));
    for (const [i, over] of across.entries()) {
      const square = find(over, under);
      if (square) sheet.append(...mark(square, head + i * size, head + j * size, withCodes));
    }
  }
  return sheet;
}

function rules(across: number, down: number): readonly SVGElement[] {
  const [right, bottom] = [head + across * size, head + down * size];
  const line = (x1: number, y1: number, x2: number, y2: number) =>
    make("path", { class: "rule", d: `M${x1} ${y1}L${x2} ${y2}` });
  return [
    ...Array.from({ length: across + 1 }, (_, i) =>
      line(head + i * size, head, head + i * size, bottom),
    ),
    ...Array.from({ length: down + 1 }, (_, j) =>
      line(head, head + j * size, right, head + j * size),
    ),
  ];
}

/** A disc full for yes, half for changed, a cross for no, a ring where nobody said; a drop where it ran. */
function mark(square: Square, x: number, y: number, withCode: boolean): readonly SVGElement[] {
  const [cx, cy, r] = [x + size / 2, y + (withCode ? 8 : size / 2), withCode ? 4 : 6];
  const said = new Set(verdicts(square).map(([word]) => word));
  const ring = make("circle", { class: "ring", cx: String(cx), cy: String(cy), r: String(r) });
  const half = `M${cx} ${cy - r}A${r} ${r} 0 0 0 ${cx} ${cy + r}Z`;
  const cross = `M${cx - r} ${cy - r}L${cx + r} ${cy + r}M${cx - r} ${cy + r}L${cx + r} ${cy - r}`;
  const drop = `M${x + size - 4} ${y + 3}v${square.run >= 15 ? 12 : square.run >= leastRun ? 8 : 5}`;
  return [
    ...(said.has("no") && said.size === 1 ? [] : [ring]),
    ...(said.has("yes")
      ? [make("circle", { class: "full", cx: String(cx), cy: String(cy), r: String(r) })]
      : []),
    ...(said.has("changed") && !said.has("yes") ? [make("path", { class: "full", d: half })] : []),
    ...(said.has("no") ? [make("path", { class: "cross", d: cross })] : []),
    ...(square.run > 0 ? [make("path", { class: "drop", d: drop })] : []),
    ...(withCode
      ? [text(square.code, { x: String(cx), y: String(y + 20), class: "sheet-code" })]
      : []),
  ];
}

function text(words: string, attributes: Readonly<Record<string, string>>): SVGElement {
  const made = make("text", attributes);
  made.textContent = words;
  return made;
}

function make(name: string, attributes: Readonly<Record<string, string>>): SVGElement {
  const made = document.createElementNS(svg, name);
  for (const [key, value] of Object.entries(attributes)) made.setAttribute(key, value);
  return made;
}
