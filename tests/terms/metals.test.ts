import { describe, expect, test } from "vitest";
import { metalsIn } from "../../src/terms/metals.ts";

describe("the metals that a glaze is found by", () => {
  test("are those of which it holds more than a trace, by their everyday names", () => {
    expect(metalsIn({ SiO2: 60, CuO: 2, Fe2O3: 0.4, SnO2: 5 })).toEqual(["copper", "tin"]);
    expect(metalsIn({ SiO2: 60, Fe2O3: 8, Cr2O3: 0.2 })).toEqual(["chrome", "chromium", "iron"]);
  });

  test("are none where only clays and feldspars are in it", () => {
    expect(metalsIn({ SiO2: 70, Al2O3: 12, CaO: 12, K2O: 5, Fe2O3: 0.5, TiO2: 0.2 })).toEqual([]);
  });

  test("add up where an analysis states iron in two ways", () => {
    expect(metalsIn({ Fe2O3: 0.6, FeO: 0.6 })).toEqual(["iron"]);
  });
});
