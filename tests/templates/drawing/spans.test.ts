import { fc, test as propertyTest } from "@fast-check/vitest";
import { describe, expect, test } from "vitest";
import { areas } from "../../../src/terms/choices.ts";
import {
  cutsIn,
  intersect,
  type Span,
  spansOf,
  subtract,
  unite,
} from "../../../templates/drawing/spans.ts";

const someSpans = fc.array(
  fc
    .tuple(fc.integer({ min: 0, max: 20 }), fc.integer({ min: 1, max: 10 }))
    .map(([from, length]): Span => [from / 20, Math.min(1, (from + length) / 20)])
    .filter(([from, to]) => to > from),
  { maxLength: 5 },
);

/** Whether a point is covered, counted without any of the functions under test. */
const covers = (spans: readonly Span[], x: number) => spans.some(([a, b]) => x > a && x < b);
const points = Array.from({ length: 40 }, (_, i) => (i + 0.5) / 40);

describe("stretches of a section", () => {
  propertyTest.prop([someSpans, someSpans])(
    "are joined, cut and overlapped point by point",
    (some, others) => {
      const [both, left, joined] = [
        intersect(some, others),
        subtract(some, others),
        unite([...some, ...others]),
      ];
      for (const x of points) {
        expect(covers(both, x)).toBe(covers(some, x) && covers(others, x));
        expect(covers(left, x)).toBe(covers(some, x) && !covers(others, x));
        expect(covers(joined, x)).toBe(covers(some, x) || covers(others, x));
      }
    },
  );

  propertyTest.prop([someSpans])("come out in order and apart once they are joined", (some) => {
    const joined = unite(some);
    for (const [i, [from]] of joined.entries()) {
      const before = joined[i - 1];
      if (before) expect(from).toBeGreaterThan(before[1]);
    }
  });
});

describe("areas of a tile in its section", () => {
  test("lie between its edges, every one of them", () => {
    for (const area of areas) {
      for (const [from, to] of spansOf([area])) {
        expect(from).toBeGreaterThanOrEqual(0);
        expect(to).toBeGreaterThan(from);
        expect(to).toBeLessThanOrEqual(1);
      }
    }
  });

  test("leave nothing between raised parts and hollows, background and motif, left and right", () => {
    for (const pair of [
      ["raised", "hollows"],
      ["background", "motif"],
      ["left", "right"],
    ] as const) {
      expect(spansOf(pair)).toEqual([[0, 1]]);
      const [one, other] = pair;
      expect(intersect(spansOf([one]), spansOf([other]))).toEqual([]);
    }
  });

  test("are cut by a scratching tool in a few narrow places within them", () => {
    const cuts = cutsIn(spansOf(["motif"]));
    expect(cuts.length).toBeGreaterThan(1);
    expect(intersect(cuts, spansOf(["motif"]))).toEqual(cuts);
    expect(subtract(spansOf(["motif"]), cuts).length).toBe(cuts.length + 1);
  });
});
