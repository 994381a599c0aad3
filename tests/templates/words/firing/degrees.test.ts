import { describe, expect, it } from "vitest";
import {
  rateInBothUnits,
  temperatureInBothUnits,
  temperatureInWords,
} from "../../../../templates/words/firing/degrees.ts";

describe("degrees in words", () => {
  it("the studio's unit comes first", () => {
    expect(temperatureInBothUnits(1222, "celsius")).toBe("1222 °C (2232 °F)");
    expect(temperatureInBothUnits(1222, "fahrenheit")).toBe("2232 °F (1222 °C)");
  });

  it("a rate has no zero to shift", () => {
    expect(rateInBothUnits(60, "celsius")).toBe("60 °C an hour (108 °F)");
    expect(rateInBothUnits(60, "fahrenheit")).toBe("108 °F an hour (60 °C)");
  });

  it("what is below zero has a true minus", () => {
    expect(temperatureInWords(-5, "celsius")).toBe("−5 °C");
    expect(temperatureInWords(-0.2, "celsius")).toBe("0 °C");
  });
});
