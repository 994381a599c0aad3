/** Where in a tile's record the result of one firing stands, or is to stand. */
import { isGlazeFiring } from "../checks/steps.ts";
import type { FiredStep, Tile } from "../records/archive.ts";
import type { Result } from "../records/tile.ts";
import { idKey } from "../terms/ids.ts";

/** A field of the entry, before what is new is written: see `FieldChange`. */
interface AfterField {
  readonly path: readonly ["result", number, "after"];
  readonly value: string;
}

export interface ResultPlace {
  /** Which entry of `result:` it is, from 0; one alone need not be in a list. */
  readonly at: number;
  /** What stands there already. */
  readonly known: Result | undefined;
  /** What says of which firing each result is, where that does not go without saying. */
  readonly after: readonly AfterField[];
  /**
   * Firings of which a result that names none may be, this one the last: somebody who knows has to say.
   * Empty where it is clear.
   */
  readonly unclear: readonly string[];
}

/**
 * Finds the place.
 *
 * @param firing the id of a glaze firing that the tile was in
 * @param said of which firing the result is that names none, where somebody was asked
 */
export function placeOfResult(tile: Tile, firing: string, said?: string): ResultPlace {
  const results = tile.record.result ?? [];
  const own = results.findIndex(
    ({ after }) => after !== undefined && idKey(after) === idKey(firing),
  );
  const found = (at: number, after: readonly AfterField[] = []) => ({
    ...{ at, known: results[at], after, unclear: [] },
  });
  if (own >= 0) return found(own);
  const firings = tile.steps.filter(isGlazeFiring);
  const nameless = results.findIndex(({ after }) => after === undefined);
  const afterOwn = (at: number) => [afterField(at, firing)];
  const isOnly = firings.length < 2;
  if (nameless < 0)
    return found(results.length, isOnly && results.length === 0 ? [] : afterOwn(results.length));
  if (isOnly) return found(nameless);
  if (said === undefined)
    return { at: nameless, known: results[nameless], after: [], unclear: named(firings, firing) };
  if (idKey(said) === idKey(firing)) return found(nameless, afterOwn(nameless));
  return found(results.length, [afterField(nameless, said), ...afterOwn(results.length)]);
}

function afterField(at: number, value: string): AfterField {
  return { path: ["result", at, "after"], value };
}

/** The firings that a result may name, the one asked about last. */
function named(firings: readonly FiredStep[], firing: string): readonly string[] {
  const ids = firings.flatMap((step) => step.firing ?? []);
  return [...ids.filter((id) => idKey(id) !== idKey(firing)), firing];
}
