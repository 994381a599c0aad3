/** Which codes are reserved by which sets. */

import { idKey } from "../terms/ids.ts";
import { rememberFor } from "../terms/remember.ts";
import type { Archive, Filed } from "./archive.ts";
import type { SetRecord } from "./set.ts";

/** A code that a set reserves, at its place in `codes`. */
export interface ReservedCode {
  readonly code: string;
  readonly set: Filed<SetRecord>;
  /** Which entry of `codes` reserves it. */
  readonly index: number;
}

/** Every reserved code, in the order of the sets and of their entries. */
export const listReservedCodes = rememberFor(
  (archive: Pick<Archive, "sets">): readonly ReservedCode[] =>
    [...archive.sets.values()].flatMap((set) =>
      (set.record.codes ?? []).flatMap((codes, index) =>
        codes.map((code) => ({ code, set, index })),
      ),
    ),
);

/** By `idKey` of the code: the set that reserved it first. */
export const firstToReserve = rememberFor(
  (archive: Pick<Archive, "sets">): ReadonlyMap<string, Filed<SetRecord>> =>
    new Map(
      listReservedCodes(archive)
        .toReversed()
        .map(({ code, set }) => [idKey(code), set]),
    ),
);
