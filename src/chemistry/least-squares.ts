/** Non-negative least squares: the one place that knows the library. */
import { fcnnlsVector } from "ml-fcnnls";

/** Keeps the answer unique where columns repeat each other; too small to be seen in it. */
const ridge = 1e-9;
const gradientTolerance = 1e-9;
const mostIterations = 3000;

/**
 * The amounts, none below zero, whose sum of columns comes nearest to what is wanted, by the sum
 * of squares.
 *
 * @param columns one or more, all as long as `wanted`, none of zeros alone
 * @returns an amount for each column; undefined where the search did not come to an end
 */
export function findNonNegativeAmounts(
  columns: readonly (readonly number[])[],
  wanted: readonly number[],
): readonly number[] | undefined {
  const lengths = columns.map((column) => Math.hypot(...column));
  const unit = columns.map((column, j) => column.map((value) => value / (lengths[j] ?? 1)));
  const rows = wanted.map((_, i) => unit.map((column) => column[i] ?? 0));
  const ridgeRows = columns.map((_, i) => columns.map((_, j) => (i === j ? Math.sqrt(ridge) : 0)));
  const goal = [...wanted, ...columns.map(() => 0)];
  try {
    const options = { gradientTolerance, maxIterations: mostIterations };
    const { K } = fcnnlsVector([...rows, ...ridgeRows], goal, options);
    return K.to1DArray().map((amount, j) => amount / (lengths[j] ?? 1));
  } catch {
    return undefined;
  }
}
