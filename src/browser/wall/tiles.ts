/** Shows on the wall the tiles that were found, in their order. */
import type { Facets } from "../../publish/facets-file.ts";
import { element } from "../parts/element.ts";
import { rememberWalk } from "../parts/walk.ts";
import { makeCompleter } from "./complete.ts";

/** What the wall says of the tiles on it. */
export interface Captions {
  /** For the place of each tile what is said beneath its code; nothing where it is empty. */
  readonly at: (place: number) => string;
  /** What stands before the tile in a place. */
  readonly lines: ReadonlyMap<number, string>;
}

/** How many tiles are put on the wall at once; a button puts more. */
const batch = 48;

export interface WallOfTiles {
  readonly show: (tiles: Uint32Array, captions?: Captions) => void;
  /** Shows the tiles that the page came with. */
  readonly showOwn: () => void;
}

/** The tiles that the page already holds are used as they are; others are made from the file. */
export function takeWall(wall: HTMLElement, facets: Facets, root: string): WallOfTiles {
  const own = [...wall.children];
  const items = makeItems(own, facets, root);
  const more = makeMore(() => put());
  wall.after(more.node);
  const all = Uint32Array.from(facets.codes, (_, tile) => tile);
  let shown: Uint32Array = all;
  let captions: Captions | undefined;
  let placed = 0;
  const put = () => {
    const next = Array.from(shown.slice(placed, placed + batch), (tile, i) => {
      const item = items(tile);
      caption(item, captions?.at(placed + i) ?? "");
      return [...lineBefore(captions?.lines.get(placed + i)), item];
    });
    placed += next.length;
    wall.append(...next.flat());
    more.tell(placed, shown.length);
  };
  wall.addEventListener("click", (event) => rememberOpened(event, facets, shown));
  return {
    show: (tiles, said) => {
      shown = tiles;
      captions = said;
      placed = 0;
      wall.replaceChildren();
      put();
    },
    showOwn: () => {
      if (shown === all) return;
      shown = all;
      for (const item of own) caption(item, "");
      wall.replaceChildren(...own);
      more.tell(0, 0);
    },
  };
}

/** Gives the item of a tile: the page's own, or one that is made the first time it is shown. */
function makeItems(
  own: readonly Element[],
  facets: Facets,
  root: string,
): (tile: number) => Element {
  const known = new Map(own.map((item) => [item.querySelector(".code")?.textContent ?? "", item]));
  const complete = makeCompleter(root);
  return (tile) => {
    const code = facets.codes[tile] ?? "";
    const item = known.get(code) ?? complete(makeItem(facets, tile, root), tile, code);
    known.set(code, item);
    return item;
  };
}

/** A button below the wall, which says how many tiles it puts. */
function makeMore(put: () => void) {
  const told = element("span", {});
  const button = element("button", { type: "button" });
  const node = element("p", { class: "more" }, told, button);
  node.hidden = true;
  button.addEventListener("click", put);
  const tell = (placed: number, all: number) => {
    node.hidden = placed >= all;
    told.textContent = `${placed} of ${all} tiles. `;
    button.textContent = `Show ${Math.min(batch, all - placed)} more`;
  };
  return { node, tell };
}

function rememberOpened(event: Event, { codes, urls }: Facets, shown: Uint32Array): void {
  const code = (event.target as Element).closest("a")?.querySelector(".code")?.textContent;
  const opened = urls[codes.indexOf(code ?? "")];
  if (opened === undefined) return;
  rememberWalk(
    Array.from(shown, (tile) => urls[tile] ?? ""),
    opened,
  );
}

function lineBefore(words: string | undefined): readonly HTMLElement[] {
  return words === undefined ? [] : [element("li", { class: "line" }, words)];
}

/** Says something beneath the code of a tile, or takes back what was said. */
function caption(item: Element, words: string): void {
  const said = item.querySelector(".apart");
  if (words === "") said?.remove();
  else if (said) said.textContent = words;
  else item.querySelector(".names")?.before(element("span", { class: "apart" }, words));
}

function makeItem(facets: Facets, tile: number, root: string) {
  const { codes, urls, titles, names, pictures, came, outcomes } = facets;
  const outcome = outcomes[came[tile] ?? 0] ?? "";
  const picture = pictures[tile] ?? "";
  const image = element("img", { src: root + picture, alt: "", loading: "lazy" });
  const photograph = element("span", { class: picture ? "photograph" : "photograph none" });
  if (picture) photograph.append(image);
  return element(
    "li",
    {},
    element(
      "a",
      { href: root + (urls[tile] ?? "") },
      photograph,
      element("span", { class: "code" }, codes[tile] ?? ""),
      element("span", { class: "names" }, names[titles[tile] ?? 0] || "No glaze"),
      ...(outcome ? [element("span", { class: "came" }, outcome)] : []),
    ),
  );
}
