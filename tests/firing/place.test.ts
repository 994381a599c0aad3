import { describe, expect, it } from "vitest";
import { findConeAt, placeOfCone } from "../../src/firing/place.ts";
import { chartedCones } from "../../src/terms/cones.ts";
import { cone } from "./reference.ts";

describe("cones on a line", () => {
  it("every charted cone is found again at its place", () => {
    for (const name of chartedCones) expect(findConeAt(placeOfCone(name))).toBe(name);
  });

  it("06 lies eleven cones below 6, and 1 right above 01", () => {
    expect(placeOfCone(cone("6")) - placeOfCone(cone("06"))).toBe(11);
    expect(placeOfCone(cone("1")) - placeOfCone(cone("01"))).toBe(1);
  });

  it("a half of the low cones lies below its cone, a half of the others above", () => {
    expect(placeOfCone(cone("05½"))).toBe(placeOfCone(cone("05")) - 0.5);
    expect(placeOfCone(cone("6½"))).toBe(placeOfCone(cone("6")) + 0.5);
  });
});
