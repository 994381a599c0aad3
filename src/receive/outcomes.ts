/** What becomes of what was handed in. */
import type { NewFile } from "../archive/write-new.ts";
import type { FieldDifference } from "./compare-fields.ts";
import type { Refusal } from "./hand-in.ts";
import type { SettledPicture } from "./settled.ts";

/** A tile that is written anew, all of its files or none. */
export interface NewTile {
  readonly from: string;
  readonly code: string;
  readonly set: string | null;
  /** Its record's file in the archive. */
  readonly file: string;
  /** Why its code or its set is another than it came with: whole sentences. */
  readonly why: readonly string[];
  readonly isWithoutCode: boolean;
  readonly files: readonly NewFile[];
  readonly pictures: readonly SettledPicture[];
}

/** What a tile of the archive would gain, and what of it would change. */
export interface Addition {
  readonly from: string;
  readonly tile: string;
  /** Its record's file in the archive. */
  readonly file: string;
  readonly fields: readonly FieldDifference[];
  /** Fields that the archive fills otherwise: never changed but where somebody says so. */
  readonly changes: readonly FieldDifference[];
  /** Words for its notes; empty for none. */
  readonly notes: string;
  readonly pictures: readonly { readonly file: NewFile; readonly picture: SettledPicture }[];
  /** What of it is not taken, and why: whole sentences. */
  readonly refused: readonly string[];
}

/** Something that is here already. */
export interface AlreadyHere {
  readonly from: string;
  /** The tile, or the hand-in that it is the same as. */
  readonly as: string;
}

export interface ReceivingPlan {
  readonly newTiles: readonly NewTile[];
  readonly additions: readonly Addition[];
  readonly here: readonly AlreadyHere[];
  readonly refusals: readonly Refusal[];
}
