/** Which squares are in sight: of a grid of any size only those are drawn. */

/** A stretch of rows or of columns: from one to before another. */
export interface Stretch {
  readonly from: number;
  readonly to: number;
}

/**
 * What is in sight along one axis, and a little more on either side.
 *
 * @param scrolled how far the window was moved, in pixels
 * @param seen how much of it shows squares, without the heads
 * @param size of a square
 * @param count how many squares there are
 * @param more how many are drawn on either side of those in sight
 */
export function findStretch(
  scrolled: number,
  seen: number,
  size: number,
  count: number,
  more = 2,
): Stretch {
  const from = Math.floor(scrolled / size) - more;
  const to = Math.ceil((scrolled + seen) / size) + more;
  return { from: Math.min(count, Math.max(0, from)), to: Math.min(count, Math.max(0, to)) };
}

/** How far the window has to be moved for a square to be in sight whole; as it is where it is. */
export function scrollTo(place: number, scrolled: number, seen: number, size: number): number {
  const [begin, end] = [place * size, (place + 1) * size];
  if (begin < scrolled) return begin;
  return end > scrolled + seen ? Math.max(begin - Math.max(0, seen - size), 0) : scrolled;
}

/** Where a key leads from a square; undefined for a key that leads nowhere. */
export function move(
  key: string,
  { row, column }: Place,
  count: number,
  page: number,
): Place | undefined {
  const moves: Readonly<Record<string, Place>> = {
    ArrowUp: { row: row - 1, column },
    ArrowDown: { row: row + 1, column },
    ArrowLeft: { row, column: column - 1 },
    ArrowRight: { row, column: column + 1 },
    Home: { row, column: 0 },
    End: { row, column: count - 1 },
    PageUp: { row: row - page, column },
    PageDown: { row: row + page, column },
  };
  const next = moves[key];
  const within = (place: number) => Math.min(count - 1, Math.max(0, place));
  return next && { row: within(next.row), column: within(next.column) };
}

/** A square by its row and its column. */
export interface Place {
  readonly row: number;
  readonly column: number;
}
