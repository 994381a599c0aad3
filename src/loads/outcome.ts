/** What came out of the kiln, as the fields of a tile's record. */
import type { Result } from "../records/tile.ts";
import type { Again, Effect, Fate, Fault, Surface } from "../terms/choices.ts";
import type { ResultPlace } from "./result-place.ts";

export interface Outcome {
  readonly surface: readonly Surface[];
  readonly effects: readonly Effect[];
  /** `none` alone where somebody looked and found nothing; empty where nobody says. */
  readonly faults: readonly (Fault | "none")[];
  /** Millimetres, as they were typed: `12` or `2.5`; null where nobody measured. */
  readonly run: string | null;
  readonly again: Again | null;
  /** Null where nothing is to be done differently. */
  readonly nextTime: string | null;
  /** Null for a tile that came back whole. */
  readonly fate: Fate | null;
}

/** A field that is set, or taken out where it is null. */
export interface OutcomeField {
  readonly path: readonly (string | number)[];
  readonly value: string | readonly string[] | null;
}

/** What the record says of the firing now; all left open where it says nothing. */
export function outcomeOf(known: Result | undefined, fate: Fate | undefined): Outcome {
  return {
    surface: known?.surface ?? [],
    effects: known?.effects ?? [],
    faults: known?.faults ?? [],
    run: known?.run === undefined ? null : String(known.run),
    again: known?.again ?? null,
    nextTime: known?.nextTime ?? null,
    fate: fate ?? null,
  };
}

/** The fields that differ from what is written, so that nothing else is touched. */
export function outcomeFields(
  outcome: Outcome,
  before: Outcome,
  { at, after }: Pick<ResultPlace, "at" | "after">,
): readonly OutcomeField[] {
  const [now, was] = [valuesOf(outcome), valuesOf(before)];
  const changed = Object.keys(now).filter(
    (name) => JSON.stringify(now[name]) !== JSON.stringify(was[name]),
  );
  const fields = changed.map((name) => ({
    path: ["result", at, name],
    value: now[name] ?? null,
  }));
  return [
    ...(fields.length > 0 ? [...after, ...fields] : []),
    ...(outcome.fate === before.fate ? [] : [{ path: ["fate"], value: outcome.fate }]),
  ];
}

/** As they are written: one word alone, or a list of them. */
function valuesOf(outcome: Outcome): Readonly<Record<string, string | readonly string[] | null>> {
  return {
    surface: oneOrMany(outcome.surface),
    effects: oneOrMany(outcome.effects),
    faults: oneOrMany(outcome.faults),
    run: outcome.run,
    again: outcome.again,
    "next-time": outcome.nextTime,
  };
}

function oneOrMany(words: readonly string[]): string | readonly string[] | null {
  return words.length === 0 ? null : words.length === 1 ? (words[0] ?? null) : words;
}
