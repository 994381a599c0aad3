import { fc, test as propertyTest } from "@fast-check/vitest";
import { describe, expect, test } from "vitest";
import { type Line, reckon } from "../../src/browser/weighing/reckon.ts";

const line = (parts: number, isAddition = false, price: number | null = null): Line => ({
  parts,
  isAddition,
  price,
});
const recipe = [line(60, false, 2), line(40), line(5, true, 30)];

describe("a batch", () => {
  test("by weight is counted by its ingredients, and additions come on top", () => {
    expect(reckon(recipe, { by: "weight", grams: 500 })).toEqual({
      grams: [300, 200, 25],
      total: 525,
      water: null,
      cost: 0.3 * 2 + 0.025 * 30,
      isPartCost: true,
    });
  });

  test("by the bucket follows Brongniart's relation, additions in the dry weight", () => {
    // 1000 × 5 × 0.45 × 2.6 / 1.6 g of dry glaze, and water up to 5 litres at 1.45.
    const wanted = {
      by: "bucket",
      litres: 5,
      specificGravity: 1.45,
      dryDensity: 2.6,
      lossPerCent: 0,
    } as const;
    const found = reckon(recipe, wanted);
    expect(found?.total).toBeCloseTo(3656.25, 6);
    expect(found?.water).toBeCloseTo(7250 - 3656.25, 6);
    expect(found?.grams[2]).toBeCloseTo((3656.25 * 5) / 105, 6);
  });

  test("by the bucket is so much more for what is lost, dry glaze and water alike", () => {
    const wanted = { by: "bucket", litres: 5, specificGravity: 1.45, dryDensity: 2.6 } as const;
    const bare = reckon(recipe, { ...wanted, lossPerCent: 0 });
    const more = reckon(recipe, { ...wanted, lossPerCent: 10 });
    expect(more?.total).toBeCloseTo((bare?.total ?? 0) * 1.1, 6);
    expect(more?.water).toBeCloseTo((bare?.water ?? 0) * 1.1, 6);
  });

  test("costs in part what is known, where a price is missing, and the whole where none is", () => {
    const of = (prices: readonly (number | undefined)[]) =>
      reckon(
        prices.map((price) => line(10, false, price)),
        { by: "weight", grams: 1000 },
      );
    expect(of([2, 0])).toMatchObject({ cost: 1, isPartCost: false });
    expect(of([0, undefined])).toMatchObject({ cost: 0, isPartCost: true });
  });

  test("has no cost where no price is known", () => {
    expect(reckon([line(1)], { by: "weight", grams: 10 })?.cost).toBeNull();
  });

  test.each([
    { by: "weight", grams: 0 },
    { by: "weight", grams: -5 },
    { by: "weight", grams: Number.NaN },
    { by: "bucket", litres: 5, specificGravity: 1, dryDensity: 2.6, lossPerCent: 0 },
    { by: "bucket", litres: 5, specificGravity: 1.4, dryDensity: 1, lossPerCent: 0 },
    { by: "bucket", litres: 5, specificGravity: 2.9, dryDensity: 2.6, lossPerCent: 0 },
    { by: "bucket", litres: Number.NaN, specificGravity: 1.4, dryDensity: 2.6, lossPerCent: 0 },
    { by: "bucket", litres: 5, specificGravity: 1.4, dryDensity: 2.6, lossPerCent: -5 },
    { by: "bucket", litres: 5, specificGravity: 1.4, dryDensity: 2.6, lossPerCent: Number.NaN },
  ] as const)("that cannot be weighed is none: %j", (wanted) => {
    expect(reckon(recipe, wanted)).toBeUndefined();
  });

  propertyTest.prop([
    fc.array(fc.double({ min: 0.01, max: 100, noNaN: true }), { minLength: 1, maxLength: 9 }),
    fc.double({ min: 1, max: 20_000, noNaN: true }),
  ])("has as many grams as were asked for", (parts, grams) => {
    const found = reckon(
      parts.map((n) => line(n)),
      { by: "weight", grams },
    );
    expect(found?.total).toBeCloseTo(grams, 6);
    expect(found?.grams.reduce((a, b) => a + b, 0)).toBeCloseTo(grams, 6);
  });
});
