/** The page of the grid: what is chosen stands in the address, and what is shown follows from it. */
import type { GridColour, GridIndex } from "../../publish/grid-file.ts";
import { must } from "../parts/element.ts";
import { listGlazes } from "./axis.ts";
import { Board, type Shown } from "./board.ts";
import { loadCone, type Parts, partsOf } from "./loading.ts";
import { tellReading } from "./reading.ts";
import { drawSheet } from "./sheet.ts";
import { gatherSquares, keyOf } from "./squares.ts";
import { formatView, type Order, type Pair, parseView, type View } from "./view.ts";
import { type Known, tellAll } from "./words.ts";

/** How long one rests on a square before it stands in the address, in milliseconds. */
const rest = 400;

export class GridPage {
  private view: View;
  private shown: Shown | undefined;
  private readonly board: Board;
  private readonly lists: readonly HTMLSelectElement[];
  private readonly told: HTMLElement;
  private readonly reading: HTMLElement;
  private readonly root: string;
  private readonly triedAt: ReadonlyMap<number, readonly number[]>;
  private resting: ReturnType<typeof setTimeout> | undefined;

  constructor(
    private readonly place: HTMLElement,
    private readonly index: GridIndex,
  ) {
    this.root = place.dataset.root ?? "";
    this.view = parseView(location.search, index);
    this.lists = [...place.querySelectorAll("select")];
    this.told = must(place.querySelector<HTMLElement>(".told"));
    this.reading = must(place.querySelector<HTMLElement>(".reading"));
    this.triedAt = new Map(
      index.tried.map(([over, under, ...cones]) => [keyOf({ over, under }, index), cones]),
    );
    this.board = new Board(must(place.querySelector<HTMLElement>(".board")), this.root, {
      at: (pair, isGoneTo) => this.comeTo(pair, isGoneTo),
      pressed: (pair, byKey) => this.press(pair, byKey),
    });
  }

  /** Shows the view of the address, and listens. */
  start(): void {
    for (const list of this.lists) list.addEventListener("change", () => this.choose(list));
    addEventListener("popstate", () => this.take(parseView(location.search, this.index)));
    addEventListener("beforeprint", () => this.makeSheet());
    // Whoever leaves by a square comes back to it.
    this.place.addEventListener("click", () => this.keepInAddress(), { capture: true });
    this.take(this.view);
  }

  private choose({ name, value }: HTMLSelectElement): void {
    const place = value === "" ? undefined : Number(value);
    const next: View = {
      ...this.view,
      ...(name === "cone" && { cone: place ?? this.index.first }),
      ...(name === "clay" && { clay: place }),
      ...(name === "atmosphere" && { atmosphere: place }),
      ...(name === "by" && { order: value as Order }),
      ...(name === "glazes" && { all: value === "all" }),
    };
    clearTimeout(this.resting);
    history.pushState(null, "", location.pathname + formatView(next, this.index));
    this.take(next);
  }

  /** Shows what has come of a view, and the rest as it comes. */
  private take(view: View): void {
    this.view = view;
    for (const list of this.lists) list.value = chosenIn(list.name, view);
    const parts = partsOf(view.cone, this.index);
    this.show(parts);
    if (parts.whole) return;
    void loadCone(view.cone, this.index, this.root, (more) => {
      if (this.view.cone === view.cone) this.show(more);
    });
  }

  private show({ parts, whole, failed }: Parts): void {
    const { view, index, triedAt } = this;
    const squares = gatherSquares(
      parts.flatMap(({ rows }) => rows),
      index,
      view,
    );
    const colours = new Map<number, GridColour>(
      parts.flatMap((part) => part.colours.map((colour) => [colour[0], colour] as const)),
    );
    const glazes = listGlazes(view, { index, squares, colours });
    const known: Known = { view, index, squares, whole, triedAt };
    this.shown = { glazes, known, colours, order: view.order };
    this.told.textContent = failed
      ? "Some of the squares did not load. Load the page again before you trust an empty one."
      : whole
        ? tellAll(glazes, known)
        : "More squares are being loaded.";
    this.board.show(this.shown, view.at);
    const [first] = glazes;
    if (view.at) this.read(view.at);
    else if (first !== undefined) this.read({ over: first, under: first });
  }

  private read(pair: Pair): void {
    if (this.shown) this.reading.replaceChildren(...tellReading(pair, this.shown.known, this.root));
  }

  private comeTo(pair: Pair, isGoneTo: boolean): void {
    this.read(pair);
    if (!isGoneTo) return;
    this.view = { ...this.view, at: pair };
    clearTimeout(this.resting);
    this.resting = setTimeout(() => this.keepInAddress(), rest);
  }

  private keepInAddress(): void {
    clearTimeout(this.resting);
    history.replaceState(null, "", location.pathname + formatView(this.view, this.index));
  }

  /** By a key one goes on to what is said of an empty square; a finger sees it anyway. */
  private press(pair: Pair, byKey: boolean): void {
    this.comeTo(pair, true);
    if (byKey) this.reading.focus();
  }

  private makeSheet(): void {
    if (!this.shown) return;
    must(this.place.querySelector(".sheet-place")).replaceChildren(drawSheet(this.shown));
  }
}

function chosenIn(name: string, view: View): string {
  const values: Readonly<Record<string, number | string | undefined>> = {
    cone: view.cone,
    clay: view.clay,
    atmosphere: view.atmosphere,
    by: view.order,
    glazes: view.all ? "all" : "cone",
  };
  return String(values[name] ?? "");
}
