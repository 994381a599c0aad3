import { describe, expect, it } from "vitest";
import { findHeat } from "../../src/firing/heat.ts";
import { findScheduleFaults, type Schedule, scheduleCurve } from "../../src/firing/schedule.ts";
import { celsiusStepToFahrenheitStep, celsiusToFahrenheit } from "../../src/firing/units.ts";

const coneSix: Schedule = {
  segments: [
    { to: 1100, rate: 150 },
    { to: 1215, rate: 60, hold: 15 },
    { to: 980, rate: -80 },
  ],
};

function inFahrenheit({ segments }: Schedule): Schedule {
  return {
    unit: "fahrenheit",
    segments: segments.map(({ to, rate, hold }) => ({
      to: celsiusToFahrenheit(to),
      rate: rate === undefined ? undefined : celsiusStepToFahrenheitStep(rate),
      hold,
    })),
  };
}

describe("the curve of a schedule", () => {
  it("takes the time that its rates and holds say, from room temperature", () => {
    const curve = scheduleCurve(coneSix);
    expect(curve.map((point) => point.celsius)).toEqual([20, 1100, 1215, 1215, 980]);
    const minutes = [0, 432, 547, 562, 738.25];
    curve.forEach((point, i) => {
      expect(point.minutes).toBeCloseTo(minutes[i] ?? Number.NaN, 9);
    });
  });

  it("marks a step whose rate is left out, and gives it no time", () => {
    const curve = scheduleCurve({ segments: [{ to: 600 }, { to: 1000, rate: 100 }, { to: 700 }] });
    expect(curve).toEqual([
      { minutes: 0, celsius: 20 },
      { minutes: 0, celsius: 600, untimed: true },
      { minutes: 240, celsius: 1000 },
      { minutes: 240, celsius: 700, untimed: true },
    ]);
  });

  it("in °F is the same curve", () => {
    const [celsius, fahrenheit] = [scheduleCurve(coneSix), scheduleCurve(inFahrenheit(coneSix))];
    celsius.forEach((point, i) => {
      expect(fahrenheit[i]?.minutes).toBeCloseTo(point.minutes, 6);
      expect(fahrenheit[i]?.celsius).toBeCloseTo(point.celsius, 9);
    });
  });
});

describe("the heat of a schedule", () => {
  it("is read off as it was written", () => {
    const heat = findHeat(scheduleCurve(coneSix));
    expect(heat).toMatchObject({ peak: 1215, atLeast: false });
    expect(heat?.lastRate).toBeCloseTo(60, 6);
    expect(heat?.hold).toBeCloseTo(15, 6);
    expect(heat?.coolingRate).toBeNull();
    // 100 °C at 150 an hour, 115 at 60, the hold, 215 down at 80.
    expect(heat?.timeAbove1000).toBeCloseTo(40 + 115 + 15 + 161.25, 6);
  });

  it("counts the climb and the hold, and slow cooling from the peak on top of them", () => {
    const conesOf = (count: number) =>
      findHeat(scheduleCurve({ segments: coneSix.segments.slice(0, count) }))?.equivalentCone;
    expect(conesOf(2)).toMatchObject({ cone: "6", next: "7" });
    // Slow cooling counts as far as it is slower than 200 °C an hour.
    expect(conesOf(3)).toMatchObject({ cone: "6", next: "7" });
    expect(conesOf(3)?.fraction).toBeGreaterThan((conesOf(2)?.fraction ?? 1) + 0.2);
  });

  it("knows the cooling rate where the schedule says it", () => {
    const slow = { segments: [...coneSix.segments, { to: 800, rate: -80 }] };
    expect(findHeat(scheduleCurve(slow))?.coolingRate).toBeCloseTo(80, 6);
    const free = { segments: [...coneSix.segments, { to: 800 }] };
    expect(findHeat(scheduleCurve(free))?.coolingRate).toBeNull();
  });

  it("is the least it can be where nobody said how fast the end was climbed", () => {
    const heat = findHeat(scheduleCurve({ segments: [{ to: 1150, rate: 100 }, { to: 1222 }] }));
    expect(heat).toMatchObject({ atLeast: true, lastRate: null, peak: 1222 });
    const early = findHeat(scheduleCurve({ segments: [{ to: 1100 }, { to: 1222, rate: 60 }] }));
    expect(early).toMatchObject({ atLeast: false });
    expect(early?.lastRate).toBeCloseTo(60, 6);
  });

  it("is nothing for nothing", () => {
    expect(findHeat([])).toBeUndefined();
  });
});

describe("what must be asked of a schedule", () => {
  it("above 1400 with no unit said, whether it is in °F", () => {
    const [fault] = findScheduleFaults({ segments: [{ to: 1000 }, { to: 2232, rate: 108 }] });
    expect(fault).toEqual({
      code: "maybe-fahrenheit",
      segment: 1,
      field: "to",
      message:
        "The schedule goes to 2232, which is hotter than a pottery kiln gets in °C. Is it in °F?",
      hint: "Write “unit: F” beside the schedule if it is in °F, “unit: C” if it truly is in °C.",
    });
  });

  it("nothing once the unit is said, nor at 1400 itself", () => {
    expect(findScheduleFaults(inFahrenheit(coneSix))).toEqual([]);
    expect(findScheduleFaults({ unit: "celsius", segments: [{ to: 1450, rate: 60 }] })).toEqual([]);
    expect(findScheduleFaults({ segments: [{ to: 1400, rate: 60 }] })).toEqual([]);
  });

  it("a rate that goes the other way, or nowhere", () => {
    const faults = findScheduleFaults({
      segments: [
        { to: 600, rate: -100 },
        { to: 1000, rate: 0 },
        { to: 800, rate: -80 },
        { to: 700, rate: 80 },
        { to: 700, rate: 0, hold: 20 },
      ],
    });
    expect(faults.map(({ code, segment }) => [code, segment])).toEqual([
      ["rate-against-direction", 0],
      ["rate-of-nothing", 1],
    ]);
  });
});
