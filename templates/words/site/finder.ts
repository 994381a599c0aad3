/** The sentence that finds tiles: what each choice says before anything is chosen. */
import type { FacetName } from "../../../src/terms/facets.ts";
import type { Sort } from "../../../src/terms/sorts.ts";
import { count } from "../english/numbers.ts";

interface Phrase {
  /** The words before the choice. */
  readonly lead: string;
  /** The lead and what is chosen, for those who hear a list by itself. */
  readonly spoken: string;
  readonly any: string;
}

export const finderPhrases: Readonly<Record<FacetName, Phrase>> = {
  cone: {
    lead: "fired to cone",
    spoken: "fired to cone",
    any: "any",
  },
  surface: {
    lead: "with",
    spoken: "with surface",
    any: "any surface",
  },
  colour: { lead: "in", spoken: "in colour", any: "any colour" },
  top: {
    lead: "and",
    spoken: "and glaze on top",
    any: "any glaze on top",
  },
  over: { lead: "over", spoken: "over glaze underneath", any: "anything" },
  shade: { lead: "on", spoken: "on clay, dark, buff or white", any: "any clay" },
  clay: { lead: "on the clay", spoken: "on the clay called", any: "of any name" },
  effect: { lead: "that shows", spoken: "that shows effect", any: "any effect" },
  fault: { lead: "that has", spoken: "that has fault", any: "any fault or none" },
  glaze: { lead: "glazed with", spoken: "glazed with, in any layer, the glaze", any: "any glaze" },
  way: { lead: "put on", spoken: "put on how", any: "in any way" },
  texture: {
    lead: "with",
    spoken: "with texture",
    any: "any texture",
  },
  shape: { lead: "as", spoken: "as shape", any: "any shape" },
  atmosphere: { lead: "in", spoken: "in atmosphere", any: "any atmosphere" },
  heat: { lead: "heated by", spoken: "heated by", any: "anything" },
  again: { lead: "again:", spoken: "again:", any: "yes, changed or no" },
  set: { lead: "from", spoken: "from set", any: "any set" },
  maker: { lead: "by", spoken: "by maker", any: "anyone" },
  stage: { lead: "now", spoken: "now at stage", any: "at any stage" },
};

/** The choices that the sentence begins with; the others follow where a reader asks for them. */
export const shortSentence: readonly FacetName[] = [
  "cone",
  "surface",
  "colour",
  "top",
  "over",
  "shade",
];

/** After "in order of": the word that is typed comes first. */
export const sortWords: Readonly<Record<Sort, string>> = {
  code: "code",
  run: "run, the longest first",
  date: "date, the newest first",
  near: "colour, the nearest first",
};

/** Above the wall before anything is chosen: `All 171 tiles`. */
export function allTiles(total: number): string {
  return total === 1 ? "The one tile" : `All ${count(total, "tile")}`;
}
