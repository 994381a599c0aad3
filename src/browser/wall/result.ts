/** What was found, in a sentence that is read aloud, and how to find more where it is nothing. */
import type { Facets } from "../../publish/facets-file.ts";
import { type Cone, conesHotter } from "../../terms/cones.ts";
import type { FacetName } from "../../terms/facets.ts";
import { element } from "../parts/element.ts";
import type { View } from "./address.ts";
import type { Asked } from "./near.ts";
import { wordAlone } from "./phrases.ts";
import type { Besides, Found } from "./table.ts";
import type { OtherPage } from "./words.ts";

/** `12 of 171 tiles`. */
export function tellFound(found: number, all: number): string {
  if (found === all) return `All ${all} tiles`;
  return `${found} of ${all} tiles`;
}

/**
 * After the count: which colour the tiles are in the order of, or told of beside another order, and
 * how many have none.
 *
 * @param before what leads to the colour
 * @param unmeasured how many more would be there, had they been measured
 * @param root the way from this page to the root of the site
 */
export function tellNear(
  before: string,
  { near, hex, name }: Asked,
  { codes, urls }: Facets,
  unmeasured: number,
  root: string,
): readonly (Node | string)[] {
  const swatch = element("span", { class: "asked", "aria-hidden": "true" });
  swatch.style.background = hex;
  const colour =
    "tile" in near
      ? [`the ${name} of `, codeLink(codes[near.tile] ?? "", root + (urls[near.tile] ?? ""))]
      : [`${name} `, element("span", { class: "figures" }, hex)];
  const others = unmeasured === 1 ? "1 other has" : `${unmeasured} others have`;
  const rest = unmeasured === 0 ? "." : `. ${others} no measured colour.`;
  return [before, swatch, ...colour, rest];
}

/**
 * Which differences between colours mean nothing here.
 *
 * @param same how many tiles are no further apart than that
 */
export function tellTrust({ near }: Asked, { trust }: Facets, same: number): HTMLElement {
  const none = `No ${"tile" in near ? "other " : ""}tile is that near.`;
  const told = trust.difference === null || same > 0 ? "" : ` ${none}`;
  return element("p", { class: "quiet trust" }, trust.sentence + told);
}

function codeLink(code: string, url: string): HTMLElement {
  return element("a", { href: url, class: "code" }, code);
}

/** Pages of other kinds that hold the words. */
export function otherPages(pages: readonly OtherPage[]): readonly HTMLElement[] {
  if (pages.length === 0) return [];
  const links = pages.map(({ url, title, kind }) =>
    element(
      "li",
      {},
      element("a", { href: url }, title),
      " ",
      element("span", {}, kind.toLowerCase()),
    ),
  );
  return [element("ul", { class: "other-pages", "aria-label": "Other pages" }, ...links)];
}

/** What to do where nothing is found: drop a choice, or go to another cone. */
export interface WaysOut {
  readonly loosen: (name: FacetName | Besides) => void;
  /** Takes the place of a cone among all. */
  readonly goToCone: (place: number) => void;
}

/** The nearest cone that has a tile, then a button for each choice, with what would be left without it. */
export function loosenings(
  view: View,
  facets: Facets,
  found: Found,
  { loosen, goToCone }: WaysOut,
): HTMLElement {
  const names: (FacetName | Besides)[] = [...view.choice.keys()];
  if (view.words !== "") names.push("words");
  if (view.near) names.push("near");
  const buttons = names
    .map((name) => ({ name, left: found.without.get(name) ?? 0 }))
    .sort((a, b) => b.left - a.left)
    .filter(({ left }) => left > 0)
    .map(({ name, left }) => {
      const button = element(
        "button",
        { type: "button" },
        `without ${wordFor(name, view, facets)}: ${left} ${left === 1 ? "tile" : "tiles"}`,
      );
      button.addEventListener("click", () => loosen(name));
      return element("li", {}, button);
    });
  const nearest = nearestCone(view, facets, found);
  if (nearest) {
    const button = element("button", { type: "button" }, nearest.told);
    button.addEventListener("click", () => goToCone(nearest.place));
    buttons.unshift(element("li", {}, button));
  }
  const advice =
    buttons.length > 0
      ? `${tellNone(view, facets)} ${nearest ? "Go to the nearest cone, or drop one thing:" : "Drop one thing:"}`
      : "No tile matches, even with one thing dropped. Show all, and start again.";
  return element(
    "div",
    { class: "loosen" },
    element("p", {}, advice),
    element("ul", {}, ...buttons),
  );
}

/** `No tile on dark clay at cone 6 yet.` where that is all that was asked for. */
function tellNone({ choice, words, near }: View, { columns }: Facets): string {
  const [cone, shade] = [choice.get("cone"), choice.get("shade")];
  if (choice.size !== 2 || cone === undefined || shade === undefined || words !== "" || near)
    return "No tile matches all of this.";
  return `No tile on ${columns.shade.labels[shade]} at cone ${columns.cone.labels[cone]} yet.`;
}

/** The cone with all else that was asked for, the fewest cones away from the one that was. */
function nearestCone({ choice }: View, { columns }: Facets, { counts }: Found) {
  const asked = columns.cone.labels[choice.get("cone") ?? -1];
  if (asked === undefined) return undefined;
  const [nearest] = [...(counts.get("cone") ?? [])]
    .map((tiles, place) => ({ tiles, place, cone: columns.cone.labels[place] ?? "" }))
    .filter(({ tiles }) => tiles > 0)
    .map((each) => ({ ...each, apart: Math.abs(conesHotter(each.cone as Cone, asked as Cone)) }))
    .sort((a, b) => a.apart - b.apart || b.tiles - a.tiles);
  if (!nearest) return undefined;
  const { cone, tiles, place } = nearest;
  return { place, told: `at cone ${cone}: ${tiles} ${tiles === 1 ? "tile" : "tiles"}` };
}

function wordFor(name: FacetName | Besides, view: View, { columns }: Facets): string {
  if (name === "words") return `“${view.words}”`;
  if (name === "near") return "the colour asked for";
  return wordAlone(name, columns[name].labels[view.choice.get(name) ?? 0] ?? "");
}
