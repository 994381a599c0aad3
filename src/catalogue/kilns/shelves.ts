/** The order in which shelves are told: top, middle, bottom, then whatever a studio calls its own. */

import { shelves as namedShelves } from "../../terms/choices.ts";
import { compareIds } from "../../terms/ids.ts";

/** Sorts shelves from the top; `null`, where none is named, stands last. */
export function compareShelves(a: string | null, b: string | null): number {
  return shelfPlace(a) - shelfPlace(b) || compareIds(a ?? "", b ?? "");
}

function shelfPlace(shelf: string | null): number {
  if (shelf === null) return namedShelves.length + 1;
  const place = namedShelves.indexOf(shelf as (typeof namedShelves)[number]);
  return place < 0 ? namedShelves.length : place;
}
