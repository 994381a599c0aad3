/** How far a glaze moved, and whether that was more than chance. */
import fc from "fast-check";
import { expect, test } from "vitest";
import { hasRun, isOtherRun, leastRun } from "../../src/terms/run.ts";

const millimetres = fc.integer({ min: 0, max: 200 });

test("a glaze that moved less than 5 mm may have done so by chance, and 5 mm is a run", () => {
  expect([0, 4, 4.9, 5, 12].map(hasRun)).toEqual([false, false, false, true, true]);
});

test("two runs are others by the same measure, whichever is named first", () => {
  fc.assert(
    fc.property(millimetres, millimetres, (a, b) => {
      expect(isOtherRun(a, b)).toBe(isOtherRun(b, a));
      expect(isOtherRun(a, b)).toBe(Math.max(a, b) - Math.min(a, b) >= leastRun);
    }),
  );
});
