/**
 * Lays the steps of several tiles beside each other: of two, by an edit path that changes as little as
 * can be, where a step stays, becomes another, is left out or is put in.
 */

/** The places of steps that lie in one row, one for each column; null where a column has none. */
export type Row = readonly (number | null)[];

/** How far a step is from another: 0 for the same, 1 at most, or infinity for what is never beside it. */
export type Distance<Step> = (a: Step, b: Step) => number;

/** What it costs that a step has nothing beside it: of two steps, more than that they are beside each other. */
const alone = 0.6;

/** An edit path between two lists of steps, and what it costs. */
export interface Path {
  readonly rows: readonly Row[];
  readonly cost: number;
}

/**
 * The cheapest edit path between two lists of steps: Needleman and Wunsch, "A general method applicable
 * to the search for similarities in the amino acid sequence of two proteins", 1970. Of several that cost the
 * same it is one that does not depend on which list comes first.
 *
 * @param keyOf a text for a step, the same for steps that do not differ
 */
export function alignTwo<Step>(
  a: readonly Step[],
  b: readonly Step[],
  distance: Distance<Step>,
  keyOf: (step: Step) => string,
): Path {
  const [first, second] = [JSON.stringify(a.map(keyOf)), JSON.stringify(b.map(keyOf))];
  if (first <= second) return walk(a.length, b.length, between(a, b, distance));
  const { rows, cost } = walk(b.length, a.length, between(b, a, distance));
  return { rows: rows.map(([one = null, other = null]) => [other, one]), cost };
}

/** The distance of the steps at two places. */
type Between = (i: number, j: number) => number;

function between<Step>(a: readonly Step[], b: readonly Step[], distance: Distance<Step>): Between {
  return (i, j) => {
    const [one, other] = [a[i], b[j]];
    return one === undefined || other === undefined ? 1 : distance(one, other);
  };
}

function walk(long: number, wide: number, distance: Between): Path {
  const costs = costsOf(long, wide, distance);
  const at = (i: number, j: number) => costs[i]?.[j] ?? Number.POSITIVE_INFINITY;
  const rows: Row[] = [];
  let [i, j] = [long, wide];
  while (i > 0 || j > 0) {
    const isBoth = i > 0 && j > 0 && same(at(i, j), at(i - 1, j - 1) + distance(i - 1, j - 1));
    const isFirst = !isBoth && i > 0 && same(at(i, j), at(i - 1, j) + alone);
    if (isBoth || isFirst) i -= 1;
    if (!isFirst) j -= 1;
    rows.push([isBoth || isFirst ? i : null, isFirst ? null : j]);
  }
  return { rows: rows.reverse(), cost: at(long, wide) };
}

/** Sums of the same terms in another order differ in their last bits. */
function same(a: number, b: number): boolean {
  return Math.abs(a - b) < 1e-9;
}

function costsOf(long: number, wide: number, distance: Between): readonly (readonly number[])[] {
  const costs: number[][] = [Array.from({ length: wide + 1 }, (_, j) => j * alone)];
  for (let i = 1; i <= long; i += 1) {
    const [above = []] = costs.slice(-1);
    const line = [i * alone];
    for (let j = 1; j <= wide; j += 1)
      line.push(
        Math.min(
          (above[j - 1] ?? 0) + distance(i - 1, j - 1),
          (above[j] ?? 0) + alone,
          (line[j - 1] ?? 0) + alone,
        ),
      );
    costs.push(line);
  }
  return costs;
}

/**
 * The rows of any number of columns: each further one is laid beside the rows that are there, a row
 * being as far from a step as the nearest step in it.
 */
export function alignAll<Step>(
  columns: readonly (readonly Step[])[],
  distance: Distance<Step>,
  keyOf: (step: Step) => string,
): readonly Row[] {
  const [first = [], second, ...others] = columns;
  if (!second) return first.map((_, place) => [place]);
  let rows = alignTwo(first, second, distance, keyOf).rows;
  for (const [n, column] of others.entries()) {
    const known = columns.slice(0, n + 2);
    rows = layBeside(rows, known, column, distance);
  }
  return rows;
}

function layBeside<Step>(
  rows: readonly Row[],
  known: readonly (readonly Step[])[],
  column: readonly Step[],
  distance: Distance<Step>,
): readonly Row[] {
  const nothing: Row = known.map(() => null);
  const nearest = (i: number, j: number) => {
    const step = column[j];
    const distances = (rows[i] ?? []).flatMap((place, k) => {
      const other = place === null ? undefined : known[k]?.[place];
      return other === undefined || step === undefined ? [] : [distance(other, step)];
    });
    return Math.min(...distances);
  };
  return walk(rows.length, column.length, nearest).rows.map(([row = null, place = null]) => [
    ...(row === null ? nothing : (rows[row] ?? nothing)),
    place,
  ]);
}
