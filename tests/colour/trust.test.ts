import { fc, test } from "@fast-check/vitest";
import { describe, expect, it } from "vitest";
import type { Lab } from "../../src/colour/cielab.ts";
import { differenceCiede2000 } from "../../src/colour/difference.ts";
import { measureRepeatability, studentT95 } from "../../src/colour/trust.ts";

/** Normal numbers, the same every time. */
function startNormal(seed: number): () => number {
  let state = seed;
  const next = () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return (state + 1) / (2 ** 32 + 1);
  };
  return () => Math.sqrt(-2 * Math.log(next())) * Math.cos(2 * Math.PI * next());
}

describe("the difference that means nothing in this studio", () => {
  it("cannot be told without two of the same", () => {
    expect(measureRepeatability([])).toBeUndefined();
    expect(measureRepeatability([[[50, 0, 0]], [[60, 0, 0]]])).toBeUndefined();
  });

  it("is Student's t times the difference of a single pair", () => {
    const pair: Lab[] = [
      [50, 0, 0],
      [51, 0, 0],
    ];
    const [one, other] = pair as [Lab, Lab];
    expect(measureRepeatability([pair])).toEqual({
      difference: expect.closeTo(12.706 * differenceCiede2000(one, other), 6),
      degreesOfFreedom: 1,
    });
  });

  it("weighs each group by its degrees of freedom, and leaves lone tiles out", () => {
    const still: Lab[] = Array.from({ length: 4 }, () => [50, 0, 0]);
    const moved: Lab[] = [
      [50, 0, 0],
      [51, 0, 0],
    ];
    const all = measureRepeatability([still, moved, [[20, 5, 5]]]);
    const [one, other] = moved as [Lab, Lab];
    expect(all?.degreesOfFreedom).toBe(4);
    expect(all?.difference).toBeCloseTo(
      2.776 * differenceCiede2000(one, other) * Math.sqrt(1 / 4),
      6,
    );
  });

  it.each([
    ["along lightness", [1, 0, 0], 0.95, 0.02],
    ["in every direction", [1, 1, 1], 0.99, 0.011],
  ] as const)("covers 19 of 20 pairs or more where tiles scatter %s", (_, axes, share, within) => {
    const normal = startNormal(5);
    const tile = (): Lab => [50 + axes[0] * normal(), axes[1] * normal(), axes[2] * normal()];
    const known = measureRepeatability(Array.from({ length: 200 }, () => [tile(), tile(), tile()]));
    const pairs = Array.from({ length: 4000 }, () => differenceCiede2000(tile(), tile()));
    const covered = pairs.filter((difference) => difference <= (known?.difference ?? 0));
    expect(Math.abs(covered.length / pairs.length - share)).toBeLessThan(within);
  });

  test.prop([
    fc.array(fc.array(fc.constant<Lab>([40, 10, 10]), { maxLength: 4 }), { maxLength: 5 }),
  ])("is nothing where all replicates are alike", (groups) => {
    expect(measureRepeatability(groups)?.difference ?? 0).toBe(0);
  });
});

describe("Student's t", () => {
  /** Integrates the density of Student's distribution; its constant comes from the integral. */
  function shareWithin(t: number, freedom: number): number {
    const density = (x: number) => (1 + x ** 2 / freedom) ** (-(freedom + 1) / 2);
    const integrate = (to: (u: number) => number, upper: number) => {
      let sum = 0;
      const steps = 20_000;
      for (let i = 0; i < steps; i++) sum += to(((i + 0.5) / steps) * upper);
      return (sum / steps) * upper;
    };
    const half = integrate((angle) => density(Math.tan(angle)) / Math.cos(angle) ** 2, Math.PI / 2);
    return integrate(density, t) / half;
  }

  it.each([1, 2, 3, 5, 10, 20, 30, 31, 60, 200])(
    "leaves 5 per cent out at %i degrees",
    (freedom) => {
      expect(shareWithin(studentT95(freedom), freedom)).toBeCloseTo(0.95, 3);
    },
  );
});
