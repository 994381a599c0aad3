/** What was chosen, as the part of an address after `?`, so that a view can be sent. */
import type { FacetName, Facets } from "../../publish/facets-file.ts";
import type { Choice } from "./table.ts";

export interface View {
  readonly choice: Choice;
  readonly words: string;
}

/** Reads a view; what the archive does not know any more is left out. */
export function parseView(search: string, { columns }: Facets): View {
  const parameters = new URLSearchParams(search);
  const choice = new Map<FacetName, number>();
  for (const name of Object.keys(columns) as FacetName[]) {
    const place = columns[name].keys.indexOf(parameters.get(name) ?? "");
    if (place >= 0) choice.set(name, place);
  }
  return { choice, words: parameters.get("words")?.trim() ?? "" };
}

/** The address of a view: empty for the whole wall. */
export function formatView({ choice, words }: View, { columns }: Facets): string {
  const parameters = new URLSearchParams();
  if (words !== "") parameters.set("words", words);
  for (const [name, place] of choice) parameters.set(name, columns[name].keys[place] ?? "");
  const text = parameters.toString();
  return text === "" ? "" : `?${text}`;
}
