import { describe, expect, it } from "vitest";
import { equivalentConeWords, placeWords } from "../../../../templates/words/firing/cones.ts";
import { heatWorkCaveat } from "../../../../templates/words/firing/heat-work.ts";
import { cone } from "../../../firing/reference.ts";

describe("a place on the line of cones", () => {
  it.each([
    [5, "cone 6"],
    [4.5, "cone 5½"],
    [4.8, "between cone 5 and cone 6"],
    [-0.5, "between cone 01 and cone 1"],
    [-5.5, "cone 05½"],
    [-30, "cooler than cone 022"],
    [30, "hotter than cone 14"],
  ])("the place %d is %s", (place, words) => {
    expect(placeWords(place)).toBe(words);
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
    expect(equivalentConeWords(found)).toBe(words);
  });
});

describe("the model's error", () => {
  // The numbers behind it are worked out again in tests/firing.
  it("is told with its numbers and whose chart it is, and leaves the last word to the cones", () => {
    expect(heatWorkCaveat).toContain("the cone chart of the Orton Ceramic Foundation");
    expect(heatWorkCaveat).toContain("about 3 °C off at the chart's rates");
    expect(heatWorkCaveat).toContain("one to two hours by the maker of the cones");
    expect(heatWorkCaveat).toContain("Witness cones in the kiln have the last word.");
  });
});
