import { fc, test as property } from "@fast-check/vitest";
import { describe, expect, test } from "vitest";
import { coolingOf, coolingWindow, slowedBelow } from "../../src/firing/cooling.ts";
import type { Curve } from "../../src/firing/curve.ts";

const programme = (...segments: readonly { to: number; rate?: number; hold?: number }[]) => ({
  segments,
});

/** A log that climbs to a peak and falls to `end` at one rate, °C an hour. */
function log(peak: number, rate: number, end = 600): Curve {
  const top = (peak / 150) * 60;
  return [
    { minutes: 0, celsius: 20 },
    { minutes: top, celsius: peak },
    { minutes: top + ((peak - end) / rate) * 60, celsius: end },
  ];
}

// The limits are common practice, no source: no published value says where natural cooling ends.
describe("a kiln cooled", () => {
  test("naturally where its programme ends at the peak, or leaves the way down to it", () => {
    expect(coolingOf(programme({ to: 1215, rate: 60, hold: 15 }), undefined)).toBe("natural");
    expect(coolingOf(programme({ to: 1215, rate: 60 }, { to: 700 }), undefined)).toBe("natural");
  });

  test("slowly where its programme holds it back, by a rate or by a stay", () => {
    expect(coolingOf(programme({ to: 1200, rate: 60 }, { to: 980, rate: -60 }), undefined)).toBe(
      "slowed",
    );
    const stay = programme({ to: 1200, rate: 60 }, { to: 1000, rate: -150, hold: 60 });
    expect(coolingOf(stay, undefined)).toBe("slowed");
    const fast = programme({ to: 1200, rate: 60 }, { to: 800, rate: -150 });
    expect(coolingOf(fast, undefined)).toBe("natural");
  });

  test("as its log shows, whatever the programme asked for", () => {
    const slow = programme({ to: 1200, rate: 60 }, { to: 900, rate: -50 });
    expect(coolingOf(slow, log(1215, 150))).toBe("natural");
    expect(coolingOf(programme({ to: 1215, rate: 60 }), log(1215, 50))).toBe("slowed");
    expect(coolingOf(slow, log(1215, 150, 1150))).toBe("slowed");
  });

  test("in a way that nobody knows where neither tells, or the programme makes no sense", () => {
    expect(coolingOf(undefined, undefined)).toBe("unknown");
    expect(coolingOf(undefined, log(1215, 150, 1090))).toBe("unknown");
    expect(coolingOf(programme({ to: 1215, rate: -60 }), undefined)).toBe("unknown");
  });

  test("from its own peak where that lies below the window's top", () => {
    expect(coolingOf(undefined, log(1050, 50))).toBe("slowed");
    expect(coolingOf(undefined, log(1050, 150))).toBe("natural");
  });

  property.prop([
    fc.integer({ min: coolingWindow.from + 20, max: 1300 }),
    fc.integer({ min: 20, max: 300 }),
    fc.integer({ min: 20, max: coolingWindow.to }),
  ])("by the same limit whether programme or log tells it", (peak, rate, end) => {
    const told = coolingOf(programme({ to: peak, rate: 100 }, { to: end, rate: -rate }), undefined);
    expect(told).toBe(rate < slowedBelow ? "slowed" : "natural");
    if (rate !== slowedBelow) expect(coolingOf(undefined, log(peak, rate, end - 1))).toBe(told);
  });
});
