/** What the page of unloading, its script and the server say to each other. */
import type { Outcome } from "../../loads/outcome.ts";
import type { Missing } from "../../loads/unloading.ts";
import type { Written } from "../types.ts";

export interface TileOutView {
  readonly code: string;
  readonly shelf: string | null;
  /** What is on it; of one without a record, that there is none. */
  readonly words: string;
  /** Empty where it has no record that can be read: then nothing can be written of it. */
  readonly file: string;
  readonly seen: string;
  readonly missing: Missing;
  readonly outcome: Outcome;
  /** Firings of which a result that names none may be; empty where it is clear. */
  readonly unclear: readonly string[];
}

export interface UnloadView {
  readonly firing: string;
  readonly file: string;
  readonly seen: string;
  /** Null while nobody wrote down when the kiln was lit: nothing of a result can be said before. */
  readonly on: string | null;
  readonly isBisque: boolean;
  readonly tiles: readonly TileOutView[];
}

export interface OutcomeRequest {
  readonly firing: string;
  readonly code: string;
  readonly seen: string;
  /** Of which firing the result is that names none, where the page asked. */
  readonly said: string | undefined;
  readonly outcome: Outcome;
}

export interface OutcomeWritten extends Written {
  /** The tile as it is now. */
  readonly tile: TileOutView | null;
}
