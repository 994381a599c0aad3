/** How to speak of each kind of thing that a record may name. */
import { kindsOfFiring } from "../../terms/choices.ts";
import type { Known, Lookup } from "./look-up.ts";

/** Glazes by id, and what people call them. */
export interface GlazeNames {
  readonly ids: Known;
  /** The id by the glaze's name. */
  readonly called: ReadonlyMap<string, string>;
}

export function glazeLookup(glazes: GlazeNames): Lookup {
  return {
    code: "unknown-glaze",
    what: "glaze",
    otherwise: "Write a record of it in recipes/glazes, or correct the id.",
    alsoCalled: glazes.called,
  };
}

/** A glaze in a layer, where the number of a jar would do as well. */
export function layerLookup(glazes: GlazeNames, set: string | null, written: string): Lookup {
  if (!/^\d+$/u.test(written)) return glazeLookup(glazes);
  return {
    ...glazeLookup(glazes),
    what: "glaze or jar",
    isNumbered: true,
    otherwise:
      set === null
        ? "Jars are numbered by a set, and this tile is in none: write the id of the glaze."
        : `Add the number to “jars:” in the set.md of “${set}”, or write the id of the glaze.`,
  };
}

export const clayLookup: Lookup = {
  code: "unknown-clay",
  what: "clay",
  otherwise: "Write a record of it in recipes/clays, or correct the id.",
};

/** The makers' codes, and their codes by their names, which people write in their place. */
export interface MakerCodes {
  readonly ids: Known;
  readonly called: ReadonlyMap<string, string>;
}

/** What to do about a maker whom studio.yaml does not know. */
export const addMaker = "Add the code under “makers:” in studio.yaml, as in “m07: {}”.";

export function makerLookup({ called }: MakerCodes): Lookup {
  return {
    code: "unknown-maker",
    what: "maker",
    isNumbered: true,
    otherwise: addMaker,
    alsoCalled: called,
    isPerson: true,
  };
}

export const firingLookup: Lookup = {
  code: "unknown-firing",
  what: "firing",
  otherwise: "Write a record of it in tiles/firings, or correct the id.",
};

export const firingOrKindLookup: Lookup = {
  ...firingLookup,
  otherwise: `Write a record of it in tiles/firings, or only its kind: ${kindsOfFiring.join(", ")}.`,
};

export const tileLookup: Lookup = {
  code: "unknown-tile",
  what: "tile",
  isNumbered: true,
  otherwise:
    "Correct the code, write the tile's record, or reserve the code with “codes:” in a set.md.",
};
