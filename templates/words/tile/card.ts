/** What came out of a tile, in a line: what its card says. */
import type { Again, Fate, Fault, Surface } from "../../../src/terms/choices.ts";
import { listed, spoken } from "../english/numbers.ts";
import { fateWords } from "./outcome.ts";

/** The last word on a tile; empty lists and nulls where nothing was written down. */
export interface CardOutcomeFacts {
  readonly surface: readonly Surface[];
  /** Millimetres that the glaze moved. */
  readonly run: number | null;
  readonly faults: readonly Fault[];
  readonly again: Again | null;
  readonly fate: Fate | null;
}

export interface OutcomePart {
  readonly part: "surface" | "run" | "fault" | "fate" | "again";
  readonly words: string;
}

/** What there is to say, in the order in which it is said. */
export function outcomeParts(facts: CardOutcomeFacts): readonly OutcomePart[] {
  const { surface, run, faults, again, fate } = facts;
  const parts: readonly OutcomePart[] = [
    { part: "surface", words: listed(surface) },
    { part: "run", words: run === null || run === 0 ? "" : `ran ${run}\u00a0mm` },
    { part: "fault", words: listed(faults.map(spoken)) },
    { part: "fate", words: fate === null ? "" : fateWords(fate) },
    { part: "again", words: again === null ? "" : `again: ${again}` },
  ];
  return parts.filter(({ words }) => words !== "");
}

/** `gloss, ran 12 mm, crawling, again: no`; empty where nothing was written down. */
export function outcomeLine(facts: CardOutcomeFacts): string {
  return outcomeParts(facts)
    .map(({ words }) => words)
    .join(", ");
}
