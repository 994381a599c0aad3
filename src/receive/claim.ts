/** A tile as it was handed in: the code that it claims, its record and its photographs. */
import type { PictureRole } from "../records/archive.ts";
import type { HandedFile, Refusal } from "./hand-in.ts";

/** A photograph of a tile that was handed in. */
export interface ClaimedPicture {
  readonly role: PictureRole;
  /** What follows the tile's code in the name: `.before.jpg`. Null where its record names it as it is. */
  readonly suffix: string | null;
  readonly file: HandedFile;
}

export interface Claim {
  /** Where it comes from, for people: `anna.zip: tiles/autumn/TB-101.md`, or `class.csv, row 5`. */
  readonly from: string;
  /** The code that it came with, or the word that a form gave it in place of one. */
  readonly stem: string;
  /** The set that it was handed in for, as it is written there. */
  readonly set: string | null;
  /** Its record as it was typed; null where photographs alone were handed in. */
  readonly text: string | null;
  readonly pictures: readonly ClaimedPicture[];
}

export interface Claims {
  readonly claims: readonly Claim[];
  readonly refusals: readonly Refusal[];
}

/** How a form calls a tile that has no code yet: the word, and what is its own of it. */
export function hasNoCode(stem: string): boolean {
  return /^no-code-[a-z0-9]{8}$/iu.test(stem);
}
