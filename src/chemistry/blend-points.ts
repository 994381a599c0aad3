/** Where the blends of a line and of a triangle lie. */

/** A line between two ends, or a triangle between three corners. */
export type BlendShape = "line" | "triaxial";

/** How many ends or corners each has. */
export const endsOfShape: Readonly<Record<BlendShape, number>> = { line: 2, triaxial: 3 };

/**
 * Every blend of a series as whole parts of each end, which add to `steps`. A line runs from its
 * first end to its second; a triangle stands on its second and third corner and is read row by
 * row from the first.
 *
 * @param steps how many steps lie along an edge: 5 for fifths
 */
export function blendPoints(shape: BlendShape, steps: number): readonly (readonly number[])[] {
  const rows = Array.from({ length: steps + 1 }, (_, row) => row);
  if (shape === "line") return rows.map((row) => [steps - row, row]);
  return rows.flatMap((row) =>
    Array.from({ length: row + 1 }, (_, place) => [steps - row, row - place, place]),
  );
}
