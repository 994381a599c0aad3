/** What came out, as a line on a card: in words, with marks that serve a glance along a wall. */
import type { ComponentChildren, VNode } from "preact";
import type { Again, Fate, Fault, Surface } from "../../src/terms/choices.ts";
import { listed, spoken } from "../words/english/numbers.ts";
import { fateWords } from "../words/tile/outcome.ts";

/** The last word on a tile; empty lists and nulls where nothing was written down. */
export interface CardOutcomeFacts {
  readonly surface: readonly Surface[];
  /** Millimetres that the glaze moved. */
  readonly run: number | null;
  readonly faults: readonly Fault[];
  readonly again: Again | null;
  readonly fate: Fate | null;
}

export function CardOutcome({ of }: { readonly of: CardOutcomeFacts }): VNode | null {
  const { surface, run, faults, again, fate } = of;
  const told: readonly ComponentChildren[] = [
    surface.length > 0 && listed(surface),
    run !== null && run > 0 && <i class={howFar(run)}>ran {run}&nbsp;mm</i>,
    faults.length > 0 && <b>{listed(faults.map(spoken))}</b>,
    fate && <b>{fateWords(fate)}</b>,
    again && <span class={`again ${again}`}>again: {again}</span>,
  ].filter(Boolean);
  if (told.length === 0) return null;
  return (
    <span class="came">
      {told.map((part, i) => (
        <>
          {i > 0 && ", "}
          {part}
        </>
      ))}
    </span>
  );
}

/** From so many millimetres on a drop is drawn longer, and longer again. Common practice, no source. */
const [far, veryFar] = [5, 15];

function howFar(run: number): string {
  if (run >= veryFar) return "ran very-far";
  return run >= far ? "ran far" : "ran";
}
