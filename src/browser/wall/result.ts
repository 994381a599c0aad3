/** What was found, in a sentence that is read aloud, and how to find more where it is nothing. */
import type { FacetName, Facets } from "../../publish/facets-file.ts";
import { element } from "../parts/element.ts";
import type { View } from "./address.ts";
import { wordOf } from "./phrases.ts";
import type { Found } from "./table.ts";
import type { OtherPage } from "./words.ts";

/** `12 of 171 tiles`. */
export function tellFound(found: number, all: number): string {
  if (found === all) return `All ${all} tiles`;
  return `${found} of ${all} tiles`;
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

/** What to loosen: a button for each choice, with what would be left without it. */
export function loosenings(
  view: View,
  facets: Facets,
  found: Found,
  loosen: (name: FacetName | "words") => void,
): HTMLElement {
  const names: (FacetName | "words")[] = [...view.choice.keys()];
  if (view.words !== "") names.push("words");
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
  const advice =
    buttons.length > 0
      ? "No tile is all of this. Let one thing go:"
      : "No tile is all of this, nor if one thing were let go. Show all, and begin again.";
  return element(
    "div",
    { class: "loosen" },
    element("p", {}, advice),
    element("ul", {}, ...buttons),
  );
}

function wordFor(name: FacetName | "words", view: View, { columns }: Facets): string {
  if (name === "words") return `“${view.words}”`;
  return wordOf(name, columns[name].labels[view.choice.get(name) ?? 0] ?? "");
}
