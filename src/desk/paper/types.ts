/** What the page for typing up paper and its actions say to each other. */
import type { Written } from "../types.ts";
import type { TypedFault } from "./typed-tile.ts";

/** What was understood of a row so far. */
export interface LookedAt {
  /** Each layer in words, the lowest first. */
  readonly words: readonly string[];
  /** The layer drawing, as markup. */
  readonly drawing: string;
  /** The maker's name, as studio.yaml has it; empty where it has none. */
  readonly makerName: string;
  readonly faults: readonly TypedFault[];
}

/** What came of writing a row; nothing was written where it has faults. */
export interface RowWritten extends LookedAt {
  readonly written: Written | null;
}

/** The layers of a tile that is there, on one line; or why they are not. */
export type LayersLike = { readonly line: string } | { readonly fault: string };
