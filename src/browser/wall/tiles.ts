/** Shows on the wall the tiles that were found, in their order. */
import type { Facets } from "../../publish/facets-file.ts";
import { element } from "../parts/element.ts";
import { rememberWalk } from "../parts/walk.ts";
import type { Captions } from "./near.ts";

/** How many tiles are put on the wall at once; the others follow as a reader scrolls. */
const batch = 300;

export interface WallOfTiles {
  readonly show: (tiles: Uint32Array, captions?: Captions) => void;
}

/** The tiles that the page already holds are used as they are; others are made from the file. */
export function takeWall(wall: HTMLElement, facets: Facets, root: string): WallOfTiles {
  const onPage = new Map<string, Element>();
  for (const item of wall.children) {
    onPage.set(item.querySelector(".code")?.textContent ?? "", item);
  }
  const itemOf = (tile: number): Element => {
    const code = facets.codes[tile] ?? "";
    const item = onPage.get(code) ?? makeItem(facets, tile, root);
    onPage.set(code, item);
    return item;
  };
  const end = element("li", { class: "end", "aria-hidden": "true" });
  let shown: Uint32Array = new Uint32Array();
  let captions: Captions | undefined;
  let placed = 0;
  const more = () => {
    const items = Array.from(shown.slice(placed, placed + batch), (tile, i) => {
      const item = itemOf(tile);
      caption(item, captions?.at(placed + i));
      return [...lineBefore(captions?.lines.get(placed + i)), item];
    });
    placed += items.length;
    end.before(...items.flat());
    if (placed === shown.length) end.remove();
  };
  new IntersectionObserver((entries) => {
    if (entries.some((entry) => entry.isIntersecting)) more();
  }).observe(end);
  wall.addEventListener("click", (event) => {
    const code = (event.target as Element).closest("a")?.querySelector(".code")?.textContent;
    const opened = facets.urls[facets.codes.indexOf(code ?? "")];
    const urls = Array.from(shown, (tile) => facets.urls[tile] ?? "");
    if (opened !== undefined) rememberWalk(urls, opened);
  });
  return {
    show: (tiles, said) => {
      shown = tiles;
      captions = said;
      placed = 0;
      wall.replaceChildren(end);
      more();
    },
  };
}

function lineBefore(words: string | undefined): readonly HTMLElement[] {
  return words === undefined ? [] : [element("li", { class: "line" }, words)];
}

/** Says something beneath the code of a tile, or takes back what was said. */
function caption(item: Element, words: string | undefined): void {
  const said = item.querySelector(".apart");
  if (words === undefined) said?.remove();
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
