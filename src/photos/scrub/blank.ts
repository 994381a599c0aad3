/** A stretch of a file. */
export interface Stretch {
  readonly start: number;
  readonly end: number;
}

/**
 * What is left of a range when stretches of it are taken out, in order, touching ones as one.
 * Stretches may overlap and reach beyond the range.
 */
export function stretchesBetween(range: Stretch, taken: readonly Stretch[]): Stretch[] {
  const left: Stretch[] = [];
  let at = range.start;
  for (const { start, end } of taken.toSorted((a, b) => a.start - b.start)) {
    if (start > at) left.push({ start: at, end: Math.min(start, range.end) });
    at = Math.max(at, end);
    if (at >= range.end) return left;
  }
  return [...left, { start: at, end: range.end }].filter(({ start, end }) => start < end);
}

/** Fills stretches with noughts. Gives those that held anything else, as they stand in `before`. */
export function blankStretches(
  after: Buffer,
  before: Uint8Array,
  stretches: readonly Stretch[],
): Uint8Array[] {
  return stretches.flatMap(({ start, end }) => {
    after.fill(0, start, end);
    const was = before.subarray(start, end);
    return was.some((byte) => byte !== 0) ? [was] : [];
  });
}
