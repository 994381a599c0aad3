import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  celsiusStepToFahrenheitStep,
  celsiusToFahrenheit,
  fahrenheitStepToCelsiusStep,
  fahrenheitToCelsius,
} from "../../src/firing/units.ts";

describe("°C and °F", () => {
  // The two fixed points of the scales: ice and steam.
  it("ice melts at 0 °C and 32 °F, water boils at 100 °C and 212 °F", () => {
    expect(celsiusToFahrenheit(0)).toBe(32);
    expect(celsiusToFahrenheit(100)).toBe(212);
    expect(fahrenheitToCelsius(212)).toBe(100);
  });

  it("there and back is where it began", () => {
    fc.assert(
      fc.property(fc.double({ min: -300, max: 4000, noNaN: true }), (degrees) => {
        expect(fahrenheitToCelsius(celsiusToFahrenheit(degrees))).toBeCloseTo(degrees, 9);
        expect(fahrenheitStepToCelsiusStep(celsiusStepToFahrenheitStep(degrees))).toBeCloseTo(
          degrees,
          9,
        );
      }),
    );
  });

  // The chart's rates as its two editions print them: 15, 60, 150 °C and 27, 108, 270 °F an hour.
  it.each([
    [15, 27],
    [60, 108],
    [150, 270],
  ])("%d °C an hour is %d °F an hour", (celsius, fahrenheit) => {
    expect(celsiusStepToFahrenheitStep(celsius)).toBeCloseTo(fahrenheit, 9);
  });
});
