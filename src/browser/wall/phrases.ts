/** What a value is called by the finder, if not by its own word. */
import type { FacetName } from "../../terms/facets.ts";

type Words = Partial<Readonly<Record<FacetName, (label: string) => string>>>;

/** In its list: its own word comes first, as it is typed. */
const inList: Words = {
  surface: (surface) => `${surface} surface`,
  top: (glaze) => `${glaze} on top`,
  texture: (texture) => `${texture} clay`,
};

/** Away from the words before the list, if not as in the list. */
const alone: Words = {
  cone: (cone) => `cone ${cone}`,
};

/** What a value is called in its list. */
export function wordOf(name: FacetName, label: string): string {
  return inList[name]?.(label) ?? label;
}

/** What it is called away from its lead. */
export function wordAlone(name: FacetName, label: string): string {
  return alone[name]?.(label) ?? wordOf(name, label);
}
