import { describe, expect, it } from "vitest";
import type { Curve } from "../../src/firing/curve.ts";
import { findHeat } from "../../src/firing/heat.ts";

/** A reading a minute: up at 120 °C an hour, a hold that swings about its set point, down. */
function swingingFiring(setPoint: number, holdMinutes: number, overshoot: number): Curve {
  const climb = (setPoint - 20) / 2;
  return Array.from({ length: Math.round(climb) + holdMinutes + 300 }, (_, minutes) => {
    const since = minutes - climb;
    if (since < 0) return { minutes, celsius: 20 + minutes * 2 };
    if (since <= holdMinutes)
      return {
        minutes,
        celsius: setPoint + overshoot * Math.cos(since / 3) * Math.exp(-since / 20),
      };
    return { minutes, celsius: setPoint - 4 * (since - holdMinutes) };
  });
}

describe("what is read off a log", () => {
  it.each([0, 3, 6])("a hold of 40 minutes that swings by %d °C is found again", (overshoot) => {
    const heat = findHeat(swingingFiring(1200, 40, overshoot));
    expect(heat?.peak).toBeCloseTo(1200 + overshoot, 0);
    expect(Math.abs((heat?.hold ?? 0) - 40)).toBeLessThan(5);
    expect(Math.abs((heat?.lastRate ?? 0) - 120)).toBeLessThan(5);
    expect(heat?.coolingRate).toBeCloseTo(240, 0);
  });

  it("a firing that turns at its peak has no hold", () => {
    expect(findHeat(swingingFiring(1200, 0, 0))?.hold).toBeCloseTo(0, 6);
  });

  it("a log that begins hot has no rate for what it did not see", () => {
    const late = swingingFiring(1200, 40, 0).filter((point) => point.celsius > 1150);
    expect(findHeat(late)).toMatchObject({ lastRate: null, coolingRate: null });
  });

  it("the cooling rate is that of the last fall from 1100 to 900 °C", () => {
    const curve: Curve = [
      { minutes: 0, celsius: 1200 },
      { minutes: 60, celsius: 1050 },
      { minutes: 90, celsius: 1120 },
      { minutes: 210, celsius: 880 },
    ];
    expect(findHeat(curve)?.coolingRate).toBeCloseTo(120, 6);
  });
});
