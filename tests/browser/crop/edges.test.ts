import { fc, test as propertyTest } from "@fast-check/vitest";
import { expect, test } from "vitest";
import {
  type Corner,
  dragCorner,
  leastSize,
  moveBy,
  parseEdges,
  roundTo,
} from "../../../src/browser/crop/edges.ts";
import type { Edges } from "../../../src/copystand/types.ts";

const side = fc.tuple(fc.integer({ min: 0, max: 990 }), fc.integer({ min: 10, max: 1000 }));
const span = side.map(([from, length]) => [from / 10, Math.min(1000, from + length) / 10] as const);
const frame = fc
  .tuple(span, span)
  .map(([[left, right], [top, bottom]]): Edges => [left, top, right, bottom]);
const way = fc.double({ min: -300, max: 300, noNaN: true });
const corner: fc.Arbitrary<Corner> = fc.record({
  x: fc.constantFrom("left", "right"),
  y: fc.constantFrom("top", "bottom"),
});

function expectFrame([left, top, right, bottom]: Edges): void {
  expect(Math.min(left, top)).toBeGreaterThanOrEqual(0);
  expect(Math.max(right, bottom)).toBeLessThanOrEqual(100);
  expect(Math.min(right - left, bottom - top)).toBeGreaterThan(leastSize - 1e-9);
}

propertyTest.prop([frame, way, way])(
  "a frame that is moved keeps its size and stays on the photograph",
  (edges, across, down) => {
    const moved = moveBy(edges, across, down);
    expectFrame(moved);
    expect(moved[2] - moved[0]).toBeCloseTo(edges[2] - edges[0], 9);
    expect(moved[3] - moved[1]).toBeCloseTo(edges[3] - edges[1], 9);
  },
);

propertyTest.prop([frame, corner, way, way])(
  "a corner that is dragged leaves the opposite one, and never passes it",
  (edges, dragged, across, down) => {
    const changed = dragCorner(edges, dragged, across, down);
    expectFrame(changed);
    expect(dragged.x === "left" ? changed[2] : changed[0]).toBe(
      dragged.x === "left" ? edges[2] : edges[0],
    );
    expect(dragged.y === "top" ? changed[3] : changed[1]).toBe(
      dragged.y === "top" ? edges[3] : edges[1],
    );
  },
);

propertyTest.prop([frame, way, way, fc.constantFrom(0.1, 0.5, 1)])(
  "what is rounded has one decimal at most, and is a frame still",
  (edges, across, down, step) => {
    const rounded = roundTo(step, moveBy(edges, across, down));
    expectFrame(rounded);
    for (const edge of rounded) expect(String(edge)).toMatch(/^\d+(\.\d)?$/u);
  },
);

test("numbers that are typed make a frame, or none", () => {
  expect(parseEdges(["20", "14.26", "80", "68"])).toEqual([20, 14.3, 80, 68]);
  for (const typed of [
    ["", "14", "80", "68"],
    ["90", "14", "80", "68"],
    ["0", "0", "101", "5"],
    [],
  ])
    expect(parseEdges(typed)).toBeUndefined();
});
