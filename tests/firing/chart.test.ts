import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { chartValues, conesAtRate, coneTemperature } from "../../src/firing/chart.ts";
import { type ConeKind, chartRows } from "../../src/firing/chart-rows.ts";
import { celsiusToFahrenheit } from "../../src/firing/units.ts";
import { chartedCones } from "../../src/terms/cones.ts";
import { cone, readReference } from "./reference.ts";

const printed = readReference("cones").map((row) => ({
  cone: cone(row.cone ?? ""),
  kind: (row.cone_type ?? "").replace(" regular", "") as ConeKind,
  rate: Number(row.rate_C_per_h),
  celsius: Number(row.temp_C),
  fahrenheit: Number(row.temp_F),
  tag: row.tag,
}));

describe("the published chart", () => {
  it("is carried over whole, value by value, with its tags", () => {
    expect(printed).toHaveLength(214);
    expect(chartRows).toHaveLength(214);
    for (const row of printed) {
      const reading = coneTemperature(row.cone, row.rate, row.kind);
      expect(reading, `${row.kind} cone ${row.cone} at ${row.rate}`).toMatchObject({
        inside: true,
        celsius: row.celsius,
        interpolated: false,
        tag: row.tag,
      });
    }
  });

  it("agrees with its own °F edition within 1 °F", () => {
    for (const row of printed)
      expect(Math.abs(celsiusToFahrenheit(row.celsius) - row.fahrenheit)).toBeLessThanOrEqual(1);
  });

  it("has every charted cone as a self-supporting one, each hotter than the one before", () => {
    for (const rate of [60, 150]) {
      const scale = conesAtRate(rate);
      expect(scale.map((step) => step.cone)).toEqual(chartedCones);
      for (let i = 1; i < scale.length; i += 1)
        expect(scale[i]?.celsius).toBeGreaterThan(scale[i - 1]?.celsius ?? Number.NaN);
    }
  });

  it("puts 05½ between 06 and 05, and 06 some 220 °C below 6", () => {
    const at60 = (name: string) => {
      const reading = coneTemperature(cone(name), 60);
      return reading.inside ? reading.celsius : Number.NaN;
    };
    expect(at60("05½")).toBeGreaterThan(at60("06"));
    expect(at60("05½")).toBeLessThan(at60("05"));
    expect(at60("6") - at60("06")).toBe(224);
  });
});

describe("between the chart's rates", () => {
  it("a temperature lies halfway at the geometric mean of two rates", () => {
    const reading = coneTemperature(cone("6"), Math.sqrt(60 * 150));
    expect(reading).toMatchObject({ inside: true, interpolated: true });
    expect(reading.inside && reading.celsius).toBeCloseTo((1222 + 1243) / 2, 9);
  });

  it("a faster climb never lowers a self-supporting cone's temperature", () => {
    const rate = fc.double({ min: 60, max: 150, noNaN: true });
    fc.assert(
      fc.property(fc.constantFrom(...chartedCones), rate, rate, (name, a, b) => {
        const slow = coneTemperature(name, Math.min(a, b));
        const fast = coneTemperature(name, Math.max(a, b));
        expect(slow.inside && fast.inside && fast.celsius >= slow.celsius).toBe(true);
      }),
    );
  });

  it("a value recalled from memory is told apart from a checked one", () => {
    expect(coneTemperature(cone("5"), 30)).toMatchObject({ inside: true, tag: "from memory" });
    expect(coneTemperature(cone("6"), 30)).toMatchObject({ inside: true, tag: "checked" });
  });

  it("large cone 14, printed hotter at the slower rate, comes with a doubt", () => {
    const reading = coneTemperature(cone("14"), 60, "large");
    expect(reading).toMatchObject({ inside: true, isDoubtful: true });
    expect(coneTemperature(cone("14"), 60)).not.toHaveProperty("isDoubtful");
  });
});

describe("outside the chart", () => {
  const wide = { from: 15, to: 150 };
  it.each([
    ["6", 200, "self-supporting", wide],
    ["6", 14.9, "self-supporting", wide],
    ["022", 15, "self-supporting", { from: 60, to: 150 }],
    ["6", 60, "small", { from: 300, to: 300 }],
    ["5½", 60, "large", null],
    ["6½", 60, "self-supporting", null],
  ] as const)("cone %s at %d, %s: it gives the rates that it has", (name, rate, kind, rates) => {
    expect(coneTemperature(cone(name), rate, kind)).toEqual({ inside: false, rates });
  });

  it("no rate at all is outside", () => {
    for (const rate of [0, -60, Number.NaN, Number.POSITIVE_INFINITY])
      expect(coneTemperature(cone("6"), rate).inside).toBe(false);
  });

  it("a cone the chart does not have has no values", () => {
    expect(chartValues(cone("6½"))).toEqual([]);
  });
});
