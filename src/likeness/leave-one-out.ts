/** What is left out of a make-up to ask what one facet did. */
import type { Facet } from "./make-up.ts";

/**
 * Whether a facet goes where this one is left out: itself, and with the way a layer was put on how
 * long it was dipped, which a brushed layer has not.
 */
export function leavingOut({ aspect: left, step }: Facet): (facet: Facet) => boolean {
  return ({ aspect, step: place }) =>
    place === step && (aspect === left || (left === "way" && aspect === "dipping"));
}
