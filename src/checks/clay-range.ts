/** The cones a clay may be fired to. */
import type { Archive, Filed } from "../records/archive.ts";
import type { ClayRecord } from "../records/clay.ts";
import { type ConeRange, compareCones } from "../terms/cones.ts";
import { rememberFor } from "../terms/remember.ts";

/** The range a clay is judged by. */
export interface ClayRange {
  readonly range: ConeRange;
  /** The clay that the range was taken from: another one for a reclaimed clay. */
  readonly from: Filed<ClayRecord>;
}

/**
 * A clay's range; for a reclaimed clay, of which nobody knows what is in it, the range of the
 * studio's lowest-firing clay, its own included. Undefined where no cones were written down.
 */
export function findClayRange(archive: Archive, clay: Filed<ClayRecord>): ClayRange | undefined {
  if (clay.record.reclaim !== true) return rangeOf(clay);
  return findLowestRange(archive);
}

const findLowestRange = rememberFor(({ clays }: Archive) =>
  [...clays.values()]
    .flatMap((other) => rangeOf(other) ?? [])
    .reduce<ClayRange | undefined>(lower, undefined),
);

function rangeOf(clay: Filed<ClayRecord>): ClayRange | undefined {
  return clay.record.cones && { range: clay.record.cones, from: clay };
}

/** The one whose hot end is cooler, for that is where it begins to melt. */
function lower(best: ClayRange | undefined, next: ClayRange): ClayRange {
  if (!best) return next;
  const hotEnds = compareCones(next.range.to, best.range.to);
  return (hotEnds || compareCones(next.range.from, best.range.from)) < 0 ? next : best;
}
