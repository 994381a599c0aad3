/** The finder above the wall: words, the sentence of choices, what was found. */
import type { FacetName, Facets } from "../../publish/facets-file.ts";
import { element } from "../parts/element.ts";
import { formatView, parseView, type View } from "./address.ts";
import {
  type Asked,
  type Colours,
  captionTiles,
  describeAsked,
  putNearestFirst,
  readColours,
} from "./near.ts";
import { makeNearBox, type NearBox } from "./near-box.ts";
import { loosenings, otherPages, tellFound, tellNear, tellTrust } from "./result.ts";
import { makeSentence, type Sentence } from "./sentence.ts";
import { makeSheet, type Sheet } from "./sheet.ts";
import { type Besides, type Found, findTiles, makeTable, type Table } from "./table.ts";
import { takeWall, type WallOfTiles } from "./tiles.ts";
import { findWords, type WordsFound } from "./words.ts";
import { makeWordsBox, type WordsBox } from "./words-box.ts";

export interface Places {
  readonly finder: HTMLElement;
  readonly found: HTMLElement;
  readonly wall: HTMLElement;
  /** On the first page of the wall. */
  readonly waysIn: HTMLElement | null;
  /** The ways to the other pages of the wall, while nothing is chosen. */
  readonly pages: HTMLElement | null;
}

const nothing: View = { choice: new Map(), words: "" };
const onlyNames = {
  folder: "Only codes and names were searched; on the web, notes and recipes are too.",
  failed:
    "Only codes and names were searched: the index of notes and recipes did not load. Load the page again to search them too.",
};

/** What is chosen stands in the address; everything shown follows from it. */
export class Finder {
  private view: View;
  private words: WordsFound | undefined;
  private asked: Asked | undefined;
  private readonly root: string;
  private readonly table: Table;
  private readonly colours: Colours;
  private readonly wall: WallOfTiles;
  private readonly sentence: Sentence;
  private readonly box: WordsBox;
  private readonly nearBox: NearBox;
  private readonly sheet: Sheet;

  constructor(
    private readonly facets: Facets,
    private readonly places: Places,
  ) {
    this.root = places.finder.dataset.root ?? "";
    this.table = makeTable(facets);
    this.wall = takeWall(places.wall, facets, this.root);
    this.view = this.viewOfAddress();
    this.colours = readColours(facets);
    this.nearBox = makeNearBox((near, going) => this.go({ ...this.view, near }, going));
    this.sentence = makeSentence(
      facets,
      (name, place) => this.go(choosing(this.view, name, place)),
      this.colours.measured.includes(1) ? [this.nearBox.node] : [],
    );
    this.box = makeWordsBox(facets, this.root, (words) => this.go({ ...this.view, words }));
    this.sheet = makeSheet(this.sentence.node);
  }

  /** Takes the place of the ways in, and shows the view of the address. */
  start(): void {
    const { finder, waysIn } = this.places;
    finder.append(this.box.form, ...this.sheet.nodes);
    finder.hidden = false;
    if (waysIn) waysIn.hidden = true;
    addEventListener("popstate", () => void this.take(this.viewOfAddress()));
    void this.take(this.view);
  }

  private viewOfAddress(): View {
    return parseView(location.search, this.facets);
  }

  /** Takes a view and puts it into the address; while somebody types or picks, in place of the last. */
  private go(next: View, picking = false): void {
    const typing = next.words !== this.view.words && this.view.words !== "" && next.words !== "";
    const address = location.pathname + formatView(next, this.facets);
    if (typing || picking) history.replaceState(null, "", address);
    else history.pushState(null, "", address);
    void this.take(next);
  }

  private async take(next: View): Promise<void> {
    const changed = next.words !== this.view.words || this.words === undefined;
    this.view = next;
    this.box.show(next.words);
    this.asked = next.near && describeAsked(next.near, this.colours);
    this.nearBox.show(this.asked);
    if (next.words === "") this.words = undefined;
    else if (changed) {
      const found = await findWords(this.facets, next.words, this.root);
      if (this.view !== next) return;
      this.words = found;
    }
    const marks = { words: this.words?.tiles, near: this.asked && this.colours.measured };
    this.show(findTiles(this.table, next.choice, marks));
  }

  private show(found: Found): void {
    this.sentence.show(this.view.choice, found);
    this.sheet.tell(found.tiles.length);
    this.places.found.replaceChildren(this.tell(found), ...otherPages(this.words?.others ?? []));
    this.showTiles(found.tiles);
    if (found.tiles.length > 0) return;
    const loosen = (name: FacetName | Besides) => this.go(looser(this.view, name));
    this.places.found.append(loosenings(this.view, this.facets, found, loosen));
  }

  /**
   * Puts the tiles on the wall, the nearest first where a colour was asked for. While nothing is
   * chosen the page shows what it holds, and leads to the wall's other pages.
   */
  private showTiles(tiles: Uint32Array): void {
    const { asked, facets, wall } = this;
    const isAll = formatView(this.view, facets) === "";
    if (this.places.pages) this.places.pages.hidden = !isAll;
    if (isAll) {
      wall.showOwn();
      return;
    }
    if (!asked) {
      wall.show(tiles);
      return;
    }
    const inOrder = putNearestFirst(tiles, asked, this.colours);
    const captions = captionTiles(inOrder, asked, facets.trust.difference);
    wall.show(inOrder.tiles, captions);
    if (tiles.length > 0) this.places.found.append(tellTrust(asked, facets, captions.same));
  }

  private tell(found: Found): HTMLElement {
    const told = element("p", {}, tellFound(found.tiles.length, this.table.size));
    if (this.asked) {
      const unmeasured = (found.without.get("near") ?? 0) - found.tiles.length;
      told.append(...tellNear(this.asked, this.facets, unmeasured, this.root));
    }
    if (formatView(this.view, this.facets) !== "") {
      const clear = element("button", { type: "button", class: "plain" }, "show all");
      clear.addEventListener("click", () => this.go(nothing));
      told.append(" ", clear);
    }
    const missed = this.words?.missed;
    if (missed) told.append(" ", element("span", { class: "quiet" }, onlyNames[missed]));
    return told;
  }
}

function choosing(view: View, name: FacetName, place: number | undefined): View {
  const choice = new Map(view.choice);
  if (place === undefined) choice.delete(name);
  else choice.set(name, place);
  return { ...view, choice };
}

function looser(view: View, name: FacetName | Besides): View {
  if (name === "near") return { ...view, near: undefined };
  return name === "words" ? { ...view, words: "" } : choosing(view, name, undefined);
}
