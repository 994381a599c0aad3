/** Practice notes on heat that a glaze or a clay was not made for. */
import type { Archive, Tile } from "../records/archive.ts";
import type { Fault } from "../terms/choices.ts";
import type { Finding } from "./check.ts";
import { type Heat, heatPath, type Subject } from "./heat.ts";
import { outsideInWords } from "./heat-words.ts";
import { isRefuted } from "./verdicts.ts";

/** What such heat does to a glaze or to a clay. */
export interface HeatWarning {
  /** The faults that are warned of. */
  readonly faults: readonly Fault[];
  /** What to expect of the tile, and what to do. */
  readonly hint: string;
}

/**
 * Tells of each heat outside of a range, but where tiles of the archive refute the warning.
 *
 * @param warnings for a glaze and for a clay
 */
export function noteHeats(
  archive: Archive,
  tile: Tile,
  heats: readonly Heat[],
  warnings: Readonly<Record<Subject["kind"], HeatWarning>>,
): readonly Finding[] {
  return heats
    .map((heat) => ({ heat, warning: warnings[heat.subject.kind] }))
    .filter(({ warning }) => !isRefuted(archive, tile, warning.faults))
    .map(({ heat, warning }) => ({
      path: heatPath(heat),
      message: `The ${outsideInWords(heat)}`,
      hint: warning.hint,
    }));
}
