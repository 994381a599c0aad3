/** Shows on the wall the tiles that were found, in their order. */
import type { Facets } from "../../publish/facets-file.ts";
import { element } from "../parts/element.ts";
import { rememberWalk } from "../parts/walk.ts";

/** How many tiles are put on the wall at once; the others follow as a reader scrolls. */
const batch = 300;

export interface WallOfTiles {
  readonly show: (tiles: Uint32Array) => void;
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
  let waiting: Uint32Array = new Uint32Array();
  const more = () => {
    const next = waiting.slice(0, batch);
    waiting = waiting.slice(batch);
    end.before(...Array.from(next, itemOf));
    if (waiting.length === 0) end.remove();
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
    show: (tiles) => {
      shown = tiles;
      waiting = tiles;
      wall.replaceChildren(end);
      more();
    },
  };
}

function makeItem({ codes, urls, titles, names, pictures }: Facets, tile: number, root: string) {
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
    ),
  );
}
