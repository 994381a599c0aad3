import { fc, test as propertyTest } from "@fast-check/vitest";
import { expect, test } from "vitest";
import { blendPoints, endsOfShape } from "../../src/chemistry/blend-points.ts";

test("a line runs from its first end to its second", () => {
  expect(blendPoints("line", 3)).toEqual([
    [3, 0],
    [2, 1],
    [1, 2],
    [0, 3],
  ]);
});

test("a triangle is read row by row from its first corner", () => {
  expect(blendPoints("triaxial", 2)).toEqual([
    [2, 0, 0],
    [1, 1, 0],
    [1, 0, 1],
    [0, 2, 0],
    [0, 1, 1],
    [0, 0, 2],
  ]);
});

propertyTest.prop([fc.constantFrom("line", "triaxial"), fc.integer({ min: 1, max: 20 })])(
  "every blend of a series is there once, in whole parts that add to the steps",
  (shape, steps) => {
    const points = blendPoints(shape as "line" | "triaxial", steps);
    const count = shape === "line" ? steps + 1 : ((steps + 1) * (steps + 2)) / 2;
    expect(new Set(points.map((parts) => parts.join(" "))).size).toBe(count);
    expect(points).toHaveLength(count);
    for (const parts of points) {
      expect(parts).toHaveLength(endsOfShape[shape as "line"]);
      expect(parts.every((part) => Number.isInteger(part) && part >= 0)).toBe(true);
      expect(parts.reduce((sum, part) => sum + part, 0)).toBe(steps);
    }
  },
);
