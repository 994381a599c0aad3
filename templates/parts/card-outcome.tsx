/** What came out, as a line on a card: in words, with marks that serve a glance along a wall. */
import type { VNode } from "preact";
import { leastRun } from "../../src/terms/run.ts";
import { type CardOutcomeFacts, type OutcomePart, outcomeParts } from "../words/tile/card.ts";

export function CardOutcome({ of }: { readonly of: CardOutcomeFacts }): VNode | null {
  const parts = outcomeParts(of);
  if (parts.length === 0) return null;
  return (
    <span class="came">
      {parts.map((part, i) => (
        <>
          {i > 0 && ", "}
          {marked(part, of)}
        </>
      ))}
    </span>
  );
}

function marked({ part, words }: OutcomePart, { run, again }: CardOutcomeFacts): VNode | string {
  switch (part) {
    case "run":
      return <i class={howFar(run ?? 0)}>{words}</i>;
    case "again":
      return <span class={`again ${again}`}>{words}</span>;
    case "surface":
      return words;
    default:
      return <b>{words}</b>;
  }
}

/** From so many millimetres on a drop is drawn longer, and longer again. Common practice, no source. */
const [far, veryFar] = [leastRun, 15];

function howFar(run: number): string {
  if (run >= veryFar) return "ran very-far";
  return run >= far ? "ran far" : "ran";
}
