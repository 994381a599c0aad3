import { describe, expect, it } from "vitest";
import type { Curve } from "../../src/firing/curve.ts";
import { equivalentConeInWords, findHeat, heatWorkCaveat } from "../../src/firing/heat.ts";
import { cone } from "./reference.ts";

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

describe("an equivalent cone in words", () => {
  it.each([
    [{ cone: cone("6"), next: cone("7"), fraction: 0.1 }, "cone 6"],
    [{ cone: cone("6"), next: cone("7"), fraction: 0.2 }, "just over cone 6"],
    [{ cone: cone("6"), next: cone("7"), fraction: 0.4 }, "halfway from cone 6 to cone 7"],
    [{ cone: cone("6"), next: cone("7"), fraction: 0.8 }, "just under cone 7"],
    [{ cone: cone("6"), next: cone("7"), fraction: 0.95 }, "cone 7"],
    [{ cone: null, next: cone("022"), fraction: 0 }, "cooler than cone 022"],
    [{ cone: cone("14"), next: null, fraction: 0 }, "cone 14 or hotter"],
  ])("%o", (found, words) => {
    expect(equivalentConeInWords(found)).toBe(words);
  });
});

describe("the model's error", () => {
  // The numbers behind it are worked out again in kinetics.test.ts and holds.test.ts.
  it("is told with its numbers and whose chart it is, and leaves the last word to the cones", () => {
    expect(heatWorkCaveat).toContain("the cone chart of the Orton Ceramic Foundation");
    expect(heatWorkCaveat).toContain("about 3 °C off at the chart's rates");
    expect(heatWorkCaveat).toContain("one to two hours by the maker of the cones");
    expect(heatWorkCaveat).toContain("Witness cones in the kiln have the last word.");
  });
});
