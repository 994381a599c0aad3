/** The sentence of choices above the wall: a native list for each facet, with its counts. */
import type { Facets } from "../../publish/facets-file.ts";
import type { FacetName } from "../../terms/facets.ts";
import { element } from "../parts/element.ts";
import { wordOf } from "./phrases.ts";
import type { Choice, Found } from "./table.ts";

export interface Sentence {
  readonly node: HTMLElement;
  /** Shows what is chosen, and what every other value would leave. */
  readonly show: (choice: Choice, found: Found) => void;
}

/** Takes the sentence that the page holds. */
export function takeSentence(
  node: HTMLElement,
  facets: Facets,
  choose: (name: FacetName, place: number | undefined) => void,
): Sentence {
  const lists = [...node.querySelectorAll("select")].map((list) => {
    const name = list.name as FacetName;
    list.addEventListener("change", () => {
      choose(name, list.value === "" ? undefined : Number(list.value));
    });
    return { name, list, any: list.options[0]?.textContent ?? "" };
  });
  const show = (choice: Choice, found: Found) => {
    for (const { name, list, any } of lists) {
      fill(list, any, optionsOf(name, facets, choice.get(name), found));
      const further = list.closest("details");
      if (further && choice.has(name)) further.open = true;
    }
  };
  return { node, show };
}

function fill(list: HTMLSelectElement, any: string, options: readonly HTMLOptionElement[]): void {
  const chosen = options.some((option) => option.selected);
  const all = element("option", { value: "" }, any);
  all.selected = !chosen;
  list.replaceChildren(all, ...options);
  list.classList.toggle("chosen", chosen);
}

/** Values that would leave nothing are not offered, but for the one that is chosen. */
function optionsOf(
  name: FacetName,
  { columns }: Facets,
  chosen: number | undefined,
  found: Found,
): readonly HTMLOptionElement[] {
  const counts = found.counts.get(name);
  return columns[name].labels.flatMap((label, place) => {
    const tiles = counts?.[place] ?? 0;
    if (tiles === 0 && place !== chosen) return [];
    const option = element("option", { value: String(place) }, `${wordOf(name, label)} · ${tiles}`);
    option.selected = place === chosen;
    return [option];
  });
}
