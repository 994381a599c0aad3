/** Tiles whose photographs were looked at: what can be planned with. */

import type { Trace } from "../photos/traces/trace.ts";
import type { PictureRole } from "../records/archive.ts";
import type { Claim } from "./claim.ts";

/** A photograph that is one, with nothing in it but the picture. */
export interface SettledPicture {
  readonly role: PictureRole;
  /** What follows the tile's code in its name; null where it keeps the name that its record gives. */
  readonly suffix: string | null;
  /** Its own name. */
  readonly name: string;
  readonly bytes: Uint8Array;
  /** Sums of the bytes, and of those that it was handed in with. */
  readonly sums: readonly string[];
  /** What it gave away, and gives away no longer. */
  readonly removed: readonly Trace[];
}

export interface SettledClaim extends Omit<Claim, "pictures"> {
  readonly pictures: readonly SettledPicture[];
  /** A sum of everything in it: two that have the same are the same. */
  readonly sum: string;
}
