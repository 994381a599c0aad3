/** The finder above the wall: words, the sentence of choices, what was found. */
import type { Facets } from "../../publish/facets-file.ts";
import type { FacetName } from "../../terms/facets.ts";
import { element, must } from "../parts/element.ts";
import { formatView, inItsOrder, parseView, sortOf, type View } from "./address.ts";
import { type Asked, type Colours, describeAsked, readColours } from "./near.ts";
import { type NearBox, takeNearBox } from "./near-box.ts";
import { type OrderBox, takeOrderBox } from "./order-box.ts";
import { makePutter, type Put, type PutInOrder } from "./put.ts";
import { loosenings, otherPages, tellFound } from "./result.ts";
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
  private readonly orderBox: OrderBox | undefined;
  private readonly putInOrder: PutInOrder;
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
        : takeNearBox(near, (asked, going) => this.go(nearTo(this.view, asked), going));
    const sentence = must(finder.querySelector<HTMLElement>(".sentence"));
    this.sentence = takeSentence(sentence, facets, (name, place) =>
      this.go(choosing(this.view, name, place)),
    );
    const input = must(finder.querySelector<HTMLInputElement>("input[type=search]"));
    const find = (words: string) => this.go({ ...this.view, words });
    this.box = takeWordsBox(input, facets, this.root, find);
    const order = finder.querySelector<HTMLSelectElement>(".in-order select");
    this.orderBox =
      order === null ? undefined : takeOrderBox(order, (sort) => this.go({ ...this.view, sort }));
    this.putInOrder = makePutter(facets, this.colours, this.root);
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
  private go(wanted: View, picking = false): void {
    const next = inItsOrder(wanted, wanted.sort);
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
    this.orderBox?.show(sortOf(next), this.asked !== undefined);
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
    const unmeasured = (found.without.get("near") ?? 0) - found.tiles.length;
    const put = this.putInOrder(found.tiles, sortOf(this.view), this.asked, unmeasured);
    this.places.found.replaceChildren(
      this.tell(found, put),
      ...otherPages(this.words?.others ?? []),
    );
    this.wall.show(put.tiles, put.captions);
    if (found.tiles.length > 0) {
      this.places.found.append(...put.trust);
      return;
    }
    const loosen = (name: FacetName | Besides) => this.go(looser(this.view, name));
    const goToCone = (place: number) => this.go(choosing(this.view, "cone", place));
    this.places.found.append(loosenings(this.view, this.facets, found, { loosen, goToCone }));
  }

  private tell(found: Found, put: Put): HTMLElement {
    const told = element("p", {}, tellFound(found.tiles.length, this.table.size), ...put.told);
    const clear = element("button", { type: "button", class: "plain" }, "show all");
    clear.addEventListener("click", () => this.go(nothing));
    told.append(" ", clear);
    const missed = this.words?.missed;
    if (missed) told.append(" ", element("span", { class: "quiet" }, onlyNames[missed]));
    return told;
  }
}

/** Who asks for a colour wants the nearest first; another order can be chosen after. */
function nearTo({ sort, ...view }: View, near: View["near"]): View {
  return near ? { ...view, near } : { ...view, near, sort };
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
