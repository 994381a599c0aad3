import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Curve } from "../../src/firing/curve.ts";
import { celsiusAtPlace, degreesHotter, placeAtCelsius } from "../../src/firing/degrees.ts";
import { findHeat, heatReached } from "../../src/firing/heat.ts";
import { chartDoubt, chartDoubtAt, findHeatRange } from "../../src/firing/heat-range.ts";
import { coneAtPlace, placeOfEquivalentCone } from "../../src/firing/heat-work.ts";
import { holdRules } from "../../src/firing/hold-rules.ts";
import { withoutFreeFall, withoutHolds } from "../../src/firing/holds.ts";
import { coneKinetics, modelledTemperature } from "../../src/firing/kinetics.ts";
import { placeOfCone } from "../../src/firing/place.ts";
import { scheduleCurve } from "../../src/firing/schedule.ts";
import { tellStory } from "../../src/firing/story.ts";
import { leftOpenWords, readingWords } from "../../templates/words/firing/accounts.ts";
import { reachedWords } from "../../templates/words/firing/cones.ts";
import { cone, readReference } from "./reference.ts";

/** A climb at a steady rate and a hold in minutes at its top. */
function held(peak: number, rate: number, minutes: number): Curve {
  return scheduleCurve({ segments: [{ to: peak, rate, hold: minutes }] });
}

function heatOf(curve: Curve) {
  const heat = findHeat(curve);
  if (!heat) throw new Error("a climb has heat");
  return heat;
}

const firing = fc.record({
  peak: fc.integer({ min: 620, max: 1290 }),
  rate: fc.integer({ min: 5, max: 500 }),
  minutes: fc.integer({ min: 0, max: 600 }),
});

/** A thousandth of a cone: what cutting a climb into other parts may cost. */
const slack = 1e-3;

describe("the range of a firing that was held", () => {
  it("covers what the model says and what each rule says", () => {
    fc.assert(
      fc.property(firing, ({ peak, rate, minutes }) => {
        const { low, high, heldMinutes } = findHeatRange(held(peak, rate, minutes));
        const bare = findHeat(held(peak, rate, 0))?.place;
        const model = findHeat(held(peak, rate, minutes))?.place;
        if (bare === null || bare === undefined) return;
        expect(heldMinutes).toBeCloseTo(minutes, 1);
        for (const rule of holdRules) {
          expect(low).toBeLessThanOrEqual(bare + rule.conesAfter(minutes) + slack);
          expect(high).toBeGreaterThanOrEqual(bare + rule.conesAfter(minutes) - slack);
        }
        expect(low).toBeLessThanOrEqual(model ?? Number.NEGATIVE_INFINITY);
        expect(high).toBeGreaterThanOrEqual(model ?? Number.NEGATIVE_INFINITY);
      }),
    );
  });

  it("never gets lower at either end by a longer hold, wherever the kiln holds", () => {
    const programme = fc.array(
      fc.record({
        to: fc.integer({ min: 900, max: 1280 }),
        rate: fc.integer({ min: 20, max: 300 }),
        hold: fc.integer({ min: 0, max: 240 }),
      }),
      { minLength: 1, maxLength: 4 },
    );
    fc.assert(
      fc.property(programme, fc.integer({ min: 1, max: 300 }), (plain, more) => {
        const top = Math.max(...plain.map(({ to }) => to));
        const longer = plain.map((one) =>
          one.to === top ? { ...one, hold: one.hold + more } : one,
        );
        const [before, after] = [plain, longer].map(
          (segments) => heatOf(scheduleCurve({ segments })).range,
        );
        expect(after?.low).toBeGreaterThanOrEqual((before?.low ?? 0) - slack);
        expect(after?.high).toBeGreaterThanOrEqual((before?.high ?? 0) - slack);
      }),
    );
  });

  it("is the doubt of the chart and no more without a hold", () => {
    fc.assert(
      fc.property(firing, ({ peak, rate }) => {
        const curve = held(peak, rate, 0);
        const { range, place } = heatOf(curve);
        if (place === null || place > 12) return;
        const doubt = chartDoubtAt(rate);
        expect(celsiusAtPlace(place) - celsiusAtPlace(range.low)).toBeCloseTo(doubt, 2);
        expect(celsiusAtPlace(range.high) - celsiusAtPlace(place)).toBeCloseTo(doubt, 2);
        expect(range.openByHold).toBeCloseTo(0, 2);
      }),
    );
  });

  it("covers the next cone in ten minutes and in two hours, above cone 6", () => {
    const six = coneKinetics.find((fit) => fit.cone === "6");
    if (!six) throw new Error("cone 6 is charted");
    const peak = modelledTemperature(six, 60) + 0.01;
    expect(heatOf(held(peak, 60, 20)).range.high).toBeGreaterThan(placeOfCone(cone("7")));
    const { low, high } = heatOf(held(peak, 60, 60)).range;
    expect(low).toBeLessThan(placeOfCone(cone("7")));
    expect(high).toBeGreaterThan(placeOfCone(cone("8")));
  });

  it("is told as a range where it matters, as one cone where it does not", () => {
    expect(reachedWords(heatReached(heatOf(held(1222, 60, 0))))).toBe("cone 6");
    expect(reachedWords(heatReached(heatOf(held(1222, 60, 5))))).toBe(
      "halfway from cone 6 to cone 7",
    );
    expect(reachedWords(heatReached(heatOf(held(1222, 60, 60))))).toBe("cone 6½ to cone 9");
  });
});

describe("the rules for a hold", () => {
  // tests/reference/heatwork.csv, "soak near the end point" (hours from memory).
  it("hold the published hours: one to two for a cone, four to six for two", () => {
    const row = readReference("heatwork").find((one) => one.item?.startsWith("soak near"));
    expect(row?.value).toBe("1-2; 4-6");
    const [slow, fast] = holdRules;
    expect([fast?.conesAfter(60), fast?.conesAfter(240)]).toEqual([
      expect.closeTo(1, 9),
      expect.closeTo(2, 9),
    ]);
    expect([slow?.conesAfter(120), slow?.conesAfter(360)]).toEqual([
      expect.closeTo(1, 9),
      expect.closeTo(2, 9),
    ]);
  });

  it("hold three quarters of an hour and potters’ half hour for the next cone", () => {
    expect(holdRules[2]?.conesAfter(45)).toBeCloseTo(1, 9);
    expect(holdRules[3]?.conesAfter(30)).toBeCloseTo(1, 9);
    expect(holdRules[3]?.source).toContain("common practice, no source");
  });
});

describe("the verdict on a hold", () => {
  const aim = cone("6");

  it("is none while the range meets the aim", () => {
    const story = tellStory({ aim, schedule: heatOf(held(1222, 60, 60)) });
    expect(story).toMatchObject({ agreement: "unknown", widest: null, readings: [] });
    expect(story.leftOpen && leftOpenWords(story.leftOpen)).toBe(
      "Aimed at cone 6; the programme works out at cone 6½ to cone 9. How much a hold of 1 hour adds is not known well enough to say whether they agree: go by the witness cones.",
    );
  });

  it("names the hold beyond it, and no wrong programme", () => {
    const story = tellStory({ aim, schedule: heatOf(held(1222, 60, 600)) });
    expect(story.agreement).toBe("differs");
    expect(story.readings).toMatchObject([{ code: "long-hold", minutes: 600 }]);
    expect(story.readings.map(readingWords)).toEqual([
      "The hold: without it the climb would be right. Held 10 hours, it works out at cone 8 to cone 11. Shorten the hold, or lower the peak, and check with witness cones.",
    ]);
  });

  it("leaves the witness cones the last word", () => {
    const witness = { top: { read: "cone", cone: aim } } as const;
    const story = tellStory({ aim, witness, schedule: heatOf(held(1222, 60, 60)) });
    expect(story.agreement).toBe("agrees");
  });
});

describe("cooling", () => {
  const climb = { to: 1222, rate: 60 };

  it("counts for the same in a log that shows the kiln fall and a programme that says nothing", () => {
    const programme = heatOf(scheduleCurve({ segments: [climb] }));
    const log = heatOf(scheduleCurve({ segments: [climb, { to: 600, rate: -220 }] }));
    expect(log.place).toBeCloseTo(programme.place ?? Number.NaN, 3);
    expect(log.range).toEqual({
      ...programme.range,
      heldMinutes: expect.closeTo(0, 3),
      low: expect.closeTo(programme.range.low, 3),
      high: expect.closeTo(programme.range.high, 3),
      openByHold: expect.closeTo(0, 3),
      modelled: expect.anything(),
      unheld: expect.anything(),
    });
  });

  it("counts as far as it is slower than a kiln left to itself", () => {
    const slow = heatOf(scheduleCurve({ segments: [climb, { to: 1000, rate: -60 }] }));
    const fast = heatOf(scheduleCurve({ segments: [climb, { to: 1000, rate: -190 }] }));
    expect(slow.place).toBeGreaterThan(fast.place ?? 0);
  });

  it("takes nothing from a hold that swings about its set point", () => {
    const swinging: Curve = [
      ...held(1222, 60, 0),
      ...Array.from({ length: 60 }, (_, i) => ({
        minutes: (1202 / 60) * 60 + i + 1,
        celsius: 1222 - (i % 2) * 2,
      })),
    ];
    const last = withoutFreeFall(swinging).at(-1)?.minutes ?? 0;
    expect((swinging.at(-1)?.minutes ?? 0) - last).toBeCloseTo((2 / 200) * 60, 6);
  });
});

describe("a climb without its holds", () => {
  it("is as long as it would have been, wherever the kiln held", () => {
    const stopped = scheduleCurve({
      segments: [
        { to: 1195, rate: 60, hold: 45 },
        { to: 1222, rate: 60, hold: 30 },
      ],
    });
    const bare = withoutHolds(stopped);
    expect(bare.ratePerHour).toBeCloseTo(60, 6);
    expect(bare.curve.at(-1)?.minutes).toBeCloseTo(1202, 6);
  });
});

describe("the doubt of the chart", () => {
  // tests/reference/heatwork.csv, "fit summary": leave-one-out errors of 2.8 °C at 60 °C an hour,
  // 6.7 at 15 (ln 4 from the nearest rate left) and 4.7 at 150 (ln 2.5).
  it("is that of predicting the chart's values from one another", () => {
    const errors = [15, 60, 150].map((rate) =>
      Number(
        readReference("heatwork").find(
          (row) => row.item === `leave-one-out: predict ${rate} C/h from the other two`,
        )?.value,
      ),
    );
    expect(chartDoubt.celsius).toBeCloseTo(errors[1] ?? Number.NaN, 0);
    expect((errors[0] ?? 0) / Math.log(4)).toBeCloseTo(chartDoubt.celsiusPerLogOfRate, 0);
    expect((errors[2] ?? 0) / Math.log(2.5)).toBeCloseTo(chartDoubt.celsiusPerLogOfRate, 0);
  });

  it("grows with the distance from the chart's rates", () => {
    expect([15, 60, 150].map(chartDoubtAt)).toEqual([3, 3, 3]);
    expect(chartDoubtAt(400)).toBeGreaterThan(chartDoubtAt(200));
    expect(chartDoubtAt(5)).toBeGreaterThan(chartDoubtAt(10));
  });
});

describe("cones in degrees", () => {
  it("are those of the chart at 60 °C an hour, within the model's residual", () => {
    // Orton cone chart: 1137 for cone 1, 1162 for 4, 1222 for 6, 1285 for 10.
    expect(degreesHotter(cone("4"), cone("1"))).toBeCloseTo(25, -1);
    expect(degreesHotter(cone("10"), cone("6"))).toBeCloseTo(63, -1);
    expect(degreesHotter(cone("06"), cone("6"))).toBeCloseTo(998 - 1222, -1);
  });

  it("lead there and back, and a place to its cone", () => {
    fc.assert(
      fc.property(fc.double({ min: -22, max: 13, noNaN: true }), (place) => {
        expect(placeAtCelsius(celsiusAtPlace(place))).toBeCloseTo(place, 6);
        expect(placeOfEquivalentCone(coneAtPlace(place))).toBeCloseTo(place, 6);
      }),
    );
    expect(coneAtPlace(-30)).toEqual({ cone: null, next: "022", fraction: 0 });
    expect(coneAtPlace(13)).toEqual({ cone: "14", next: null, fraction: 0 });
  });
});
