/** The sentence that finds tiles: what each facet says where nothing is chosen, and where a value is. */
import type { FacetName } from "../../publish/facets-file.ts";

interface Phrase {
  /** What stands before the choice. */
  readonly lead: string;
  readonly any: string;
  /** What the value is called in the sentence, if not by its own word. */
  readonly word?: (label: string) => string;
}

export const phrases: Readonly<Record<FacetName, Phrase>> = {
  cone: { lead: "fired to", any: "any cone", word: (cone) => `cone ${cone}` },
  surface: { lead: "with", any: "any surface", word: (surface) => `a ${surface} surface` },
  colour: { lead: "mostly", any: "any colour" },
  top: { lead: "and", any: "any glaze on top", word: (glaze) => `${glaze} on top` },
  over: { lead: "over", any: "anything", word: (glaze) => glaze },
  clay: { lead: "on", any: "any clay" },
  effect: { lead: "that shows", any: "any effect" },
  fault: { lead: "that has", any: "any fault or none" },
  glaze: { lead: "with, anywhere,", any: "any glaze" },
  way: { lead: "put on", any: "in any way" },
  texture: { lead: "with", any: "any texture", word: (texture) => `${texture} clay` },
  shape: { lead: "as", any: "any shape", word: (shape) => shape },
  atmosphere: { lead: "in", any: "any atmosphere" },
  heat: { lead: "heated by", any: "anything" },
  again: { lead: "again:", any: "yes, changed or no" },
  set: { lead: "from", any: "any set" },
  maker: { lead: "by", any: "anybody" },
  stage: { lead: "being", any: "at any stage" },
};

/** The facets that the sentence begins with; the others follow where a reader asks for them. */
export const shortSentence: readonly FacetName[] = ["cone", "surface", "colour", "top", "over"];

export function wordOf(name: FacetName, label: string): string {
  return phrases[name].word?.(label) ?? label;
}
