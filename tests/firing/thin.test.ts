import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type Curve, findPeak } from "../../src/firing/curve.ts";
import { scheduleCurve } from "../../src/firing/schedule.ts";
import { thinCurve } from "../../src/firing/thin.ts";

const wavy = (count: number): Curve =>
  Array.from({ length: count }, (_, i) => ({
    minutes: i / 60,
    celsius: 20 + (1200 * i) / count + 4 * Math.sin(i / 40),
  }));

function heightOf(curve: Curve, minutes: number): number {
  const i = Math.max(
    1,
    curve.findIndex((point) => point.minutes >= minutes),
  );
  const [from, to] = [curve[i - 1], curve[i]];
  if (!from || !to) throw new Error("outside the curve");
  const share = (minutes - from.minutes) / (to.minutes - from.minutes);
  return from.celsius + share * (to.celsius - from.celsius);
}

describe("a thinned curve", () => {
  it("has no more points than asked, and its ends and peak are the curve's own", () => {
    const curves = fc
      .array(fc.integer({ min: 20, max: 1300 }), { minLength: 1, maxLength: 300 })
      .map((all): Curve => all.map((celsius, minutes) => ({ minutes, celsius })));
    fc.assert(
      fc.property(curves, fc.integer({ min: 3, max: 50 }), (curve, most) => {
        const thin = thinCurve(curve, most);
        expect(thin.length).toBeLessThanOrEqual(most);
        expect([thin[0], thin.at(-1)]).toEqual([curve[0], curve.at(-1)]);
        expect(findPeak(thin)).toBe(findPeak(curve));
      }),
    );
  });

  it("strays from the curve by no more than was asked where it may have points enough", () => {
    const curve = wavy(5000);
    const thin = thinCurve(curve, 5000, 0.5);
    expect(thin.length).toBeLessThan(500);
    for (const point of curve)
      expect(Math.abs(heightOf(thin, point.minutes) - point.celsius)).toBeLessThanOrEqual(0.5);
  });

  it("of a straight climb is its two ends", () => {
    const straight = Array.from({ length: 999 }, (_, i) => ({ minutes: i, celsius: 20 + i }));
    expect(thinCurve(straight)).toEqual([straight[0], straight[998]]);
  });

  it("keeps both ends of a step that has no known time", () => {
    const curve = scheduleCurve({ segments: [{ to: 300 }, { to: 1222, rate: 60 }, { to: 900 }] });
    expect(thinCurve(curve, 2)).toEqual(curve);
  });

  it("of nothing is nothing", () => {
    expect(thinCurve([])).toEqual([]);
  });

  it("of 100,000 readings takes a fraction of a second", () => {
    const curve = wavy(100_000);
    const begin = process.cpuUsage();
    expect(thinCurve(curve)).toHaveLength(200);
    expect(process.cpuUsage(begin).user).toBeLessThan(1_000_000);
  });
});
