/** What was chosen, as the part of an address after `?`, so that a view can be sent. */
import type { Facets } from "../../publish/facets-file.ts";
import type { FacetName } from "../../terms/facets.ts";
import { idKey } from "../../terms/ids.ts";
import { type Sort, sorts } from "../../terms/sorts.ts";
import type { Near } from "./near.ts";
import type { Choice } from "./table.ts";

export interface View {
  readonly choice: Choice;
  readonly words: string;
  readonly near?: Near | undefined;
  /** Left out where it is the one that the wall has by itself. */
  readonly sort?: Sort | undefined;
}

/** The order of a view: of its colour where one was asked for, else by code, unless one was chosen. */
export function sortOf({ sort, near }: Pick<View, "sort" | "near">): Sort {
  const own = near ? "near" : "code";
  return sort === undefined || (sort === "near" && !near) ? own : sort;
}

/** Reads a view; what the archive does not know any more is left out. */
export function parseView(search: string, facets: Facets): View {
  const { columns } = facets;
  const parameters = new URLSearchParams(search);
  const choice = new Map<FacetName, number>();
  for (const name of Object.keys(columns) as FacetName[]) {
    const place = columns[name].keys.indexOf(parameters.get(name) ?? "");
    if (place >= 0) choice.set(name, place);
  }
  const words = parameters.get("words")?.trim() ?? "";
  const near = parseNear(parameters, facets);
  const sort = sorts.find((each) => each === parameters.get("sort"));
  return inItsOrder({ choice, words, near }, sort);
}

/** A view in an order, which is left out where the view has it by itself. */
export function inItsOrder({ sort: _, ...view }: View, sort: Sort | undefined): View {
  const isOwn = sort === undefined || sortOf({ ...view, sort }) === sortOf(view);
  return isOwn ? view : { ...view, sort };
}

/** `like=TB-014`, where that tile has a colour, or else `near=546966`. */
function parseNear(parameters: URLSearchParams, { codes, lab }: Facets): Near | undefined {
  const like = idKey(parameters.get("like") ?? "");
  const tile = like === "" ? -1 : codes.findIndex((code) => idKey(code) === like);
  if (tile >= 0 && lab[0][tile] !== null) return { tile };
  const hex = parameters.get("near")?.toLowerCase() ?? "";
  return /^[0-9a-f]{6}$/u.test(hex) ? { hex: `#${hex}` } : undefined;
}

/** The address of a view: empty for the whole wall. */
export function formatView(
  { choice, words, near, sort }: View,
  { codes, columns }: Facets,
): string {
  const parameters = new URLSearchParams();
  if (words !== "") parameters.set("words", words);
  for (const [name, place] of choice) parameters.set(name, columns[name].keys[place] ?? "");
  if (near && "tile" in near) parameters.set("like", codes[near.tile] ?? "");
  else if (near) parameters.set("near", near.hex.slice(1));
  if (sort !== undefined) parameters.set("sort", sort);
  const text = parameters.toString();
  return text === "" ? "" : `?${text}`;
}
