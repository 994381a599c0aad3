/** Strips of photographs: tiles that differ in one thing, in its order, and what changes along it. */
import type { VNode } from "preact";
import { count } from "../words/english/numbers.ts";
import { type AskedCell, Square } from "./asked.tsx";

export interface StripEntry {
  /** `By coats` */
  readonly heading: string;
  /** What is the same on all of them. */
  readonly name: string;
  /** What changes along it, how sure that is, and what was not held equal: a sentence each. */
  readonly words: readonly string[];
  readonly cells: readonly (AskedCell & { readonly value: string })[];
  /** So many more values than are shown. */
  readonly more: number;
}

/** The strips that a glaze's page shows, and the way to the others. */
export interface GlazeStrips {
  readonly shown: readonly StripEntry[];
  readonly of: number;
  /** The page of all of them, where they are not all shown. */
  readonly url: string;
}

export function Strips(props: {
  readonly root: string;
  readonly strips: GlazeStrips;
}): VNode | null {
  const { root, strips } = props;
  if (strips.shown.length === 0) return null;
  return (
    <section class="strips">
      <h2>One thing changed at a time</h2>
      {strips.shown.map((strip) => (
        <StripOf root={root} strip={strip} />
      ))}
      {strips.shown.length < strips.of && (
        <p class="quiet">
          {strips.shown.length} of {count(strips.of, "series", "series")} here:{" "}
          <a href={root + strips.url}>all of them</a>
        </p>
      )}
    </section>
  );
}

export function StripOf(props: { readonly root: string; readonly strip: StripEntry }): VNode {
  const { root, strip } = props;
  return (
    <section class="question">
      <h3>{strip.heading}</h3>
      <p>{strip.name}</p>
      <div class="cells">
        {strip.cells.map((cell) => (
          <Square root={root} {...cell} />
        ))}
      </div>
      {strip.more > 0 && <p class="quiet">{strip.more} more not shown.</p>}
      <p class="along">{strip.words.join("\n")}</p>
    </section>
  );
}
