import { fc, test as propertyTest } from "@fast-check/vitest";
import { describe, expect, test } from "vitest";
import {
  asAnalysed,
  asPerCent,
  asPrice,
  placesOnScale,
  roughly,
  withPlaces,
} from "../../src/terms/figures.ts";

const read = (text: string) => Number(text.replace(/,/gu, "").replace("−", "-"));

/** Half a unit of the last place that is printed, and what binary fractions add. */
const halfOf = (text: string) => 0.5 * 10 ** -(text.split(".")[1]?.length ?? 0) * (1 + 1e-9);

const amount = fc.double({ min: 0, max: 1e7, noNaN: true });

describe("a figure, read again, is within half a unit of its last place", () => {
  propertyTest.prop([amount])("as a price", (sum) => {
    const text = asPrice(sum);
    expect(Math.abs(read(text) - sum)).toBeLessThanOrEqual(halfOf(text));
  });

  propertyTest.prop([fc.double({ min: -100, max: 100, noNaN: true }), fc.nat(3)])(
    "with a true minus",
    (value, places) => {
      const text = withPlaces(value, places);
      expect(Math.abs(read(text) - value)).toBeLessThanOrEqual(halfOf(text));
      expect(text).not.toContain("-");
    },
  );

  propertyTest.prop([fc.double({ min: 10, max: 1e7, noNaN: true })])(
    "roughly: one in a hundred at most, or half a gram",
    (grams) => {
      expect(Math.abs(read(roughly(grams)) - grams)).toBeLessThanOrEqual(
        Math.max(0.5, 0.026 * grams),
      );
    },
  );
});

describe("no more figures than matter", () => {
  test.each([
    [0.25, 2],
    [0.999, 1],
    [8.04, 1],
    [99.94, 1],
    [99.96, 0],
    [3319.9, 0],
  ])("%d g are weighed to %d places", (grams, places) => {
    expect(placesOnScale(grams)).toBe(places);
  });

  test.each([
    [12.4, "12.40"],
    [999.999, "1,000"],
    [3319836.99, "3,319,837"],
  ])("%d is a price of %s", (sum, text) => {
    expect(asPrice(sum)).toBe(text);
  });

  test.each([
    [28.97, "29.0"],
    [0.04, "< 0.1"],
    [0, "0.0"],
  ])("%d per cent of an oxide are %s: what is there never reads as nothing", (value, text) => {
    expect(asPerCent(value)).toBe(text);
  });

  test.each([
    [731.25, "730"],
    [3656.2, "3,650"],
    [312, "310"],
    [43.6, "44"],
    [0, "0"],
  ])("%d is roughly %s", (value, text) => {
    expect(roughly(value)).toBe(text);
  });

  test.each([
    [60.2, "60.2"],
    [0.08, "0.08"],
    [0.996, "1.0"],
    [0.002, "< 0.01"],
    [0, "0.00"],
  ])("%d per cent of an oxide in a material are %s", (value, told) => {
    expect(asAnalysed(value)).toBe(told);
  });
});
