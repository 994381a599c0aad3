import { fc, test as propertyTest } from "@fast-check/vitest";
import { describe, expect, test } from "vitest";
import { alignAll, alignTwo, type Row } from "../../../src/browser/beside/align.ts";

/** A layer is a letter and its number of coats; a firing is never beside one. */
const anyStep = fc.oneof(
  fc
    .tuple(fc.constantFrom("a", "b", "c"), fc.integer({ min: 1, max: 3 }))
    .map(([l, n]) => `${l}${n}`),
  fc.constant("fired"),
);
const anySteps = fc.array(anyStep, { maxLength: 5 });

function distance(a: string, b: string): number {
  if (a === b) return 0;
  if ((a === "fired") !== (b === "fired")) return Number.POSITIVE_INFINITY;
  return a.charAt(0) === b.charAt(0) ? 0.2 : 0.7;
}

const alignSteps = (a: readonly string[], b: readonly string[]) =>
  alignTwo(a, b, distance, (step) => step);

/** What a path costs, told by its rows alone. */
function costOf(rows: readonly Row[], a: readonly string[], b: readonly string[]): number {
  return rows.reduce((sum, [i = null, j = null]) => {
    if (i === null || j === null) return sum + 0.6;
    return sum + distance(a[i] ?? "", b[j] ?? "");
  }, 0);
}

/** The least that any edit path costs: every one is tried. */
function cheapest(a: readonly string[], b: readonly string[]): number {
  const [[first, ...restOfA], [other, ...restOfB]] = [a, b];
  if (first === undefined) return b.length * 0.6;
  if (other === undefined) return a.length * 0.6;
  return Math.min(
    distance(first, other) + cheapest(restOfA, restOfB),
    0.6 + cheapest(restOfA, b),
    0.6 + cheapest(a, restOfB),
  );
}

const column = (rows: readonly Row[], place: number) =>
  rows.flatMap((row) => (row[place] === null || row[place] === undefined ? [] : [row[place]]));
const all = (steps: readonly string[]) => steps.map((_, i) => i);

describe("steps side by side", () => {
  propertyTest.prop([anySteps, anySteps])("are an edit path, and none is cheaper", (a, b) => {
    const { rows, cost } = alignSteps(a, b);
    expect(column(rows, 0)).toEqual(all(a));
    expect(column(rows, 1)).toEqual(all(b));
    expect(rows.every(([i, j]) => i !== null || j !== null)).toBe(true);
    expect(cost).toBeCloseTo(costOf(rows, a, b), 9);
    expect(cost).toBeCloseTo(cheapest(a, b), 9);
  });

  propertyTest.prop([anySteps, anySteps])("are the same whichever tile comes first", (a, b) => {
    const { rows, cost } = alignSteps(b, a);
    expect(rows.map(([j, i]) => [i, j])).toEqual(alignSteps(a, b).rows);
    expect(cost).toBe(alignSteps(a, b).cost);
  });

  propertyTest.prop([anySteps])("of two tiles made alike lie beside each other one by one", (a) => {
    expect(alignSteps(a, [...a])).toEqual({ rows: all(a).map((i) => [i, i]), cost: 0 });
  });

  propertyTest.prop([fc.array(anySteps, { minLength: 1, maxLength: 4 })])(
    "of up to four tiles are all there, each in its order, and a layer is never beside a firing",
    (columns) => {
      const rows = alignAll(columns, distance, (step) => step);
      for (const [place, steps] of columns.entries())
        expect(column(rows, place)).toEqual(all(steps));
      expect(rows.every((row) => row.length === columns.length)).toBe(true);
      expect(rows.every((row) => row.some((place) => place !== null))).toBe(true);
      if (columns.length > 2) return;
      for (const row of rows) {
        const kinds = row.flatMap((at, i) => (at === null ? [] : [columns[i]?.[at] === "fired"]));
        expect(new Set(kinds).size).toBe(1);
      }
    },
  );

  test("find the layer that one tile has more", () => {
    const { rows } = alignSteps(["a1", "fired"], ["a1", "b2", "fired"]);
    expect(rows).toEqual([
      [0, 0],
      [null, 1],
      [1, 2],
    ]);
  });
});
