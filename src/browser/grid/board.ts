/** The grid itself, in a window that scrolls: heads that stay, and of its squares those in sight. */
import type { GridColour } from "../../publish/grid-file.ts";
import { element } from "../parts/element.ts";
import { type HeadOf, makeHead, makeSquare, type SquareElement } from "./square.ts";
import type { Order, Pair } from "./view.ts";
import { findStretch, move, type Place, scrollTo } from "./window.ts";
import type { Known } from "./words.ts";

/** What is shown: these glazes across and down, in this order. */
export interface Shown {
  readonly glazes: readonly number[];
  readonly known: Known;
  readonly colours: ReadonlyMap<number, GridColour>;
  readonly order: Order;
}

/** What the board tells of. */
export interface Told {
  /** A square was gone to, or is pointed at. */
  readonly at: (pair: Pair, isGoneTo: boolean) => void;
  /** An empty square was pressed; by a key, where nothing was touched. */
  readonly pressed: (pair: Pair, byKey: boolean) => void;
}

interface Line {
  readonly node: HTMLElement;
  readonly squares: Map<number, SquareElement>;
}

/** In pixels, as the styles have them. */
interface Sizes {
  readonly wide: number;
  readonly tall: number;
  readonly headWide: number;
  readonly headTall: number;
}

export class Board {
  private shown: Shown | undefined;
  private at: Place = { row: 0, column: 0 };
  private sizes: Sizes = { wide: 1, tall: 1, headWide: 0, headTall: 0 };
  private readonly lines = new Map<number, Line>();
  private readonly heads = new Map<number, HTMLElement>();
  private readonly headLine: HTMLElement;
  private readonly field: HTMLElement;
  private waits = false;

  constructor(
    private readonly board: HTMLElement,
    private readonly root: string,
    private readonly told: Told,
  ) {
    const across = element("span", {}, "on top");
    const down = element("span", {}, "underneath");
    const corner = element("div", { class: "corner", role: "columnheader" }, across, down);
    this.headLine = element("div", { class: "heads", role: "row", "aria-rowindex": "1" }, corner);
    const label = "One glaze over another: what lies on top across, what lies underneath down";
    this.field = element(
      "div",
      { class: "field", role: "grid", "aria-label": label },
      this.headLine,
    );
    board.replaceChildren(this.field);
    board.addEventListener("scroll", () => this.drawSoon(), { passive: true });
    board.addEventListener("keydown", (event) => this.press(event));
    board.addEventListener("focusin", ({ target }) => this.pointAt(target, true));
    board.addEventListener("pointerover", ({ target }) => this.pointAt(target, false));
    board.addEventListener("click", (event) => this.click(event));
    new ResizeObserver(() => this.drawSoon()).observe(board);
  }

  /** Shows a view, at a square where one is named, else at the first. */
  show(shown: Shown, at: Pair | undefined): void {
    this.shown = shown;
    const { glazes } = shown;
    const [row, column] = at ? [glazes.indexOf(at.under), glazes.indexOf(at.over)] : [-1, -1];
    this.at = { row: Math.max(0, row), column: Math.max(0, column) };
    this.clear();
    this.measure();
    const count = String(glazes.length + 1);
    this.field.setAttribute("aria-rowcount", count);
    this.field.setAttribute("aria-colcount", count);
    if (row >= 0 && column >= 0) this.bringIntoSight();
    this.draw();
  }

  private clear(): void {
    for (const { node } of this.lines.values()) node.remove();
    for (const head of this.heads.values()) head.remove();
    this.lines.clear();
    this.heads.clear();
  }

  private measure(): void {
    const style = getComputedStyle(this.board);
    const read = (name: string) => Number.parseFloat(style.getPropertyValue(name)) || 1;
    const sizes = { wide: read("--wide"), tall: read("--tall") };
    this.sizes = { ...sizes, headWide: read("--head-wide"), headTall: read("--head-tall") };
    const count = this.shown?.glazes.length ?? 0;
    this.field.style.width = `${this.sizes.headWide + count * sizes.wide}px`;
    this.field.style.height = `${this.sizes.headTall + count * sizes.tall}px`;
  }

  private drawSoon(): void {
    if (this.waits) return;
    this.waits = true;
    requestAnimationFrame(() => {
      this.waits = false;
      const { wide } = this.sizes;
      this.measure();
      if (wide !== this.sizes.wide) this.clear();
      this.draw();
    });
  }

  /** Draws what has come into sight, and takes away what has gone out of it, but for the square one is at. */
  private draw(): void {
    if (!this.shown) return;
    const { wide, tall, headWide, headTall } = this.sizes;
    const { scrollLeft, scrollTop, clientWidth, clientHeight } = this.board;
    const count = this.shown.glazes.length;
    const columns = findStretch(scrollLeft, clientWidth - headWide, wide, count);
    const rows = findStretch(scrollTop, clientHeight - headTall, tall, count);
    const listed = ({ from, to }: typeof rows, and: number) =>
      new Set([
        ...Array.from({ length: to - from }, (_, i) => from + i),
        ...(count > 0 ? [and] : []),
      ]);
    this.drawHeads(listed(columns, this.at.column));
    const wanted = listed(rows, this.at.row);
    for (const [row, { node }] of this.lines) {
      if (wanted.has(row)) continue;
      node.remove();
      this.lines.delete(row);
    }
    for (const row of wanted) this.drawLine(row, listed(columns, this.at.column));
  }

  private drawHeads(wanted: ReadonlySet<number>): void {
    for (const [column, head] of this.heads) {
      if (wanted.has(column)) continue;
      head.remove();
      this.heads.delete(column);
    }
    for (const column of wanted) {
      if (this.heads.has(column)) continue;
      const head = this.headOf("columnheader", column);
      head.style.left = `${this.sizes.headWide + column * this.sizes.wide}px`;
      head.setAttribute("aria-colindex", String(column + 2));
      this.heads.set(column, head);
      this.headLine.append(head);
    }
  }

  private headOf(role: "columnheader" | "rowheader", place: number): HTMLElement {
    const of = { ...(this.shown as Shown), root: this.root } satisfies HeadOf;
    return makeHead(role, of.glazes[place] ?? 0, of);
  }

  private drawLine(row: number, wanted: ReadonlySet<number>): void {
    const line = this.lines.get(row) ?? this.makeLine(row);
    for (const [column, { cell }] of line.squares) {
      if (wanted.has(column)) continue;
      cell.remove();
      line.squares.delete(column);
    }
    for (const column of wanted) {
      if (!line.squares.has(column)) this.addSquare(line, { row, column });
      const isAt = row === this.at.row && column === this.at.column;
      line.squares.get(column)?.control.setAttribute("tabindex", isAt ? "0" : "-1");
    }
  }

  private makeLine(row: number): Line {
    const attributes = { class: "line", role: "row", "aria-rowindex": String(row + 2) };
    const node = element("div", attributes, this.headOf("rowheader", row));
    node.style.top = `${this.sizes.headTall + row * this.sizes.tall}px`;
    const line = { node, squares: new Map<number, SquareElement>() };
    this.lines.set(row, line);
    this.field.append(node);
    return line;
  }

  private addSquare(line: Line, { row, column }: Place): void {
    const pair = this.pairAt({ row, column });
    if (!pair || !this.shown) return;
    const square = makeSquare(pair, this.shown.known, this.root);
    square.cell.style.left = `${this.sizes.headWide + column * this.sizes.wide}px`;
    square.cell.setAttribute("aria-colindex", String(column + 2));
    square.control.dataset.place = `${row} ${column}`;
    line.squares.set(column, square);
    line.node.append(square.cell);
  }

  private pairAt({ row, column }: Place): Pair | undefined {
    const [under, over] = [this.shown?.glazes[row], this.shown?.glazes[column]];
    return over === undefined || under === undefined ? undefined : { over, under };
  }

  private press(event: KeyboardEvent): void {
    if (event.altKey || event.metaKey || event.shiftKey || !this.shown) return;
    const { length } = this.shown.glazes;
    const page = Math.max(1, Math.floor(this.board.clientHeight / this.sizes.tall) - 1);
    const isCorner = event.ctrlKey && (event.key === "Home" || event.key === "End");
    if (event.ctrlKey && !isCorner) return;
    const next = move(event.key, this.at, length, page);
    if (!next) return;
    event.preventDefault();
    const end = event.key === "Home" ? 0 : length - 1;
    this.goTo(isCorner ? { row: end, column: end } : next);
  }

  /** Goes to a square: it is in sight, and has the focus. */
  private goTo(place: Place): void {
    this.at = place;
    this.bringIntoSight();
    this.draw();
    this.lines.get(place.row)?.squares.get(place.column)?.control.focus({ preventScroll: true });
  }

  private bringIntoSight(): void {
    const { board, sizes, at } = this;
    const [wide, tall] = [board.clientWidth - sizes.headWide, board.clientHeight - sizes.headTall];
    board.scrollLeft = scrollTo(at.column, board.scrollLeft, wide, sizes.wide);
    board.scrollTop = scrollTo(at.row, board.scrollTop, tall, sizes.tall);
  }

  private pointAt(target: EventTarget | null, isGoneTo: boolean): void {
    const place = placeOf(target);
    const pair = place && this.pairAt(place);
    if (!place || !pair) return;
    if (isGoneTo && (place.row !== this.at.row || place.column !== this.at.column)) {
      this.at = place;
      this.draw();
    }
    this.told.at(pair, isGoneTo);
  }

  private click(event: MouseEvent): void {
    const place = placeOf(event.target);
    const pair = place && this.pairAt(place);
    if (pair && (event.target as Element).closest("button"))
      this.told.pressed(pair, event.detail === 0);
  }
}

function placeOf(target: EventTarget | null): Place | undefined {
  const control = target instanceof Element ? target.closest<HTMLElement>("[data-place]") : null;
  const [row, column] = control?.dataset.place?.split(" ").map(Number) ?? [];
  return row === undefined || column === undefined ? undefined : { row, column };
}
