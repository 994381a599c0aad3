/** The finder above the wall: words, the sentence of choices, what was found. */
import type { Facets } from "../../publish/facets-file.ts";
import type { FacetName } from "../../terms/facets.ts";
import { element, must } from "../parts/element.ts";
import { formatView, parseView, type View } from "./address.ts";
import {
  type Asked,
  type Colours,
  captionTiles,
  describeAsked,
  putNearestFirst,
  readColours,
} from "./near.ts";
import { type NearBox, takeNearBox } from "./near-box.ts";
import { loosenings, otherPages, tellFound, tellNear, tellTrust } from "./result.ts";
import { type Sentence, takeSentence } from "./sentence.ts";
import { makeSheet, type Sheet } from "./sheet.ts";
import { type Besides, type Found, findTiles, makeTable, type Table } from "./table.ts";
import { takeWall, type WallOfTiles } from "./tiles.ts";
import { findWords, type WordsFound } from "./words.ts";
import { takeWordsBox, type WordsBox } from "./words-box.ts";

export interface Places {
  readonly finder: HTMLElement;
  readonly found: HTMLElement;
  readonly wall: HTMLElement;
  /** Turns the pages of the wall, where it has several; not of what was found. */
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
  private readonly nearBox: NearBox | undefined;
  private readonly sheet: Sheet;
  /** What is said of the whole wall, as the page was made with it. */
  private readonly toldOfAll: readonly Node[];

  constructor(
    private readonly facets: Facets,
    private readonly places: Places,
  ) {
    const { finder } = places;
    this.root = finder.dataset.root ?? "";
    this.toldOfAll = [...places.found.childNodes];
    this.table = makeTable(facets);
    this.wall = takeWall(places.wall, facets, this.root);
    this.view = this.viewOfAddress();
    this.colours = readColours(facets);
    const near = finder.querySelector<HTMLElement>(".near");
    this.nearBox =
      near === null
        ? undefined
        : takeNearBox(near, (asked, going) => this.go({ ...this.view, near: asked }, going));
    const sentence = must(finder.querySelector<HTMLElement>(".sentence"));
    this.sentence = takeSentence(sentence, facets, (name, place) =>
      this.go(choosing(this.view, name, place)),
    );
    const input = must(finder.querySelector<HTMLInputElement>("input[type=search]"));
    const find = (words: string) => this.go({ ...this.view, words });
    this.box = takeWordsBox(input, facets, this.root, find);
    this.sheet = makeSheet(sentence, must(finder.querySelector<HTMLElement>(".open-sheet")));
  }

  /** Shows the view of the address, or finds what was typed before this script ran. */
  start(): void {
    addEventListener("popstate", () => void this.take(this.viewOfAddress()));
    const { typed } = this.box;
    if (typed !== "" && this.view.words === "") this.go({ ...this.view, words: typed });
    else void this.take(this.view);
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
    this.nearBox?.show(this.asked);
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
    const { pages } = this.places;
    this.sentence.show(this.view.choice, found);
    this.sheet.tell(found.tiles.length);
    const all = formatView(this.view, this.facets) === "";
    if (pages) pages.hidden = !all;
    if (all) this.showAll();
    else this.showFound(found);
  }

  /** The wall as the page was made, in its pages where it has several. */
  private showAll(): void {
    this.places.found.replaceChildren(...this.toldOfAll);
    this.wall.showOwn();
  }

  private showFound(found: Found): void {
    this.places.found.replaceChildren(this.tell(found), ...otherPages(this.words?.others ?? []));
    this.showTiles(found.tiles);
    if (found.tiles.length > 0) return;
    const loosen = (name: FacetName | Besides) => this.go(looser(this.view, name));
    this.places.found.append(loosenings(this.view, this.facets, found, loosen));
  }

  /** Puts the tiles on the wall, the nearest first where a colour was asked for. */
  private showTiles(tiles: Uint32Array): void {
    const { asked, facets, wall } = this;
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
    const clear = element("button", { type: "button", class: "plain" }, "show all");
    clear.addEventListener("click", () => this.go(nothing));
    told.append(" ", clear);
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
