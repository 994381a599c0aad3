/** The sentence of choices above the wall: a native list for each facet, with its counts. */
import type { FacetName, Facets } from "../../publish/facets-file.ts";
import { element } from "../parts/element.ts";
import { phrases, shortSentence, wordOf } from "./phrases.ts";
import type { Choice, Found } from "./table.ts";

export interface Sentence {
  readonly node: HTMLElement;
  /** Shows what is chosen, and what every other value would leave. */
  readonly show: (choice: Choice, found: Found) => void;
}

/**
 * @param besides what else can be asked for, after the facets that the sentence begins with
 */
export function makeSentence(
  facets: Facets,
  choose: (name: FacetName, place: number | undefined) => void,
  besides: readonly HTMLElement[],
): Sentence {
  const names = (Object.keys(facets.columns) as FacetName[]).filter(
    (name) => facets.columns[name].keys.length > 1,
  );
  const lists = new Map(names.map((name) => [name, makeList(name, choose)]));
  const fields = (of: readonly FacetName[]) =>
    of.flatMap((name) => {
      const list = lists.get(name);
      if (!list) return [];
      const lead = element("span", { class: "lead" }, `${phrases[name].lead} `);
      return [element("label", {}, lead, list), " "];
    });
  const rest = names.filter((name) => !shortSentence.includes(name));
  const more = element(
    "details",
    {},
    element("summary", {}, "More to choose by"),
    element("div", { class: "phrases" }, ...fields(rest)),
  );
  const node = element(
    "div",
    { class: "sentence" },
    element(
      "div",
      { class: "phrases" },
      element("span", { class: "begin" }, "Tiles "),
      ...fields(shortSentence),
      ...besides,
      " ",
    ),
    more,
  );
  const show = (choice: Choice, found: Found) => {
    for (const [name, list] of lists) fill(list, name, facets, choice.get(name), found);
    if (rest.some((name) => choice.has(name))) more.open = true;
  };
  return { node, show };
}

function makeList(
  name: FacetName,
  choose: (name: FacetName, place: number | undefined) => void,
): HTMLSelectElement {
  const list = element("select", { name, "aria-label": phrases[name].spoken });
  list.addEventListener("change", () => {
    choose(name, list.value === "" ? undefined : Number(list.value));
  });
  return list;
}

/** Values that would leave nothing are not offered, but for the one that is chosen. */
function fill(
  list: HTMLSelectElement,
  name: FacetName,
  { columns }: Facets,
  chosen: number | undefined,
  found: Found,
): void {
  const counts = found.counts.get(name);
  const options = columns[name].labels.flatMap((label, place) => {
    const tiles = counts?.[place] ?? 0;
    if (tiles === 0 && place !== chosen) return [];
    const option = element("option", { value: String(place) }, `${wordOf(name, label)} · ${tiles}`);
    option.selected = place === chosen;
    return [option];
  });
  const any = element("option", { value: "" }, phrases[name].any);
  any.selected = chosen === undefined;
  list.replaceChildren(any, ...options);
  list.classList.toggle("chosen", chosen !== undefined);
}
