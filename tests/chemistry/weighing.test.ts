import { fc, test as propertyTest } from "@fast-check/vitest";
import { describe, expect, test } from "vitest";
import type { Recipe } from "../../src/chemistry/recipe.ts";
import { costOf, dryGrams, waterPerGram, weighOutDry } from "../../src/chemistry/weighing.ts";

const recipe: Recipe = {
  ingredients: [
    { material: "potash-feldspar", parts: 30 },
    { material: "whiting", parts: 20 },
  ],
  additions: [{ material: "red-iron-oxide", parts: 8 }],
};

describe("a batch", () => {
  test("shares its dry weight out as the recipe does, additions included", () => {
    const { items, totalGrams } = weighOutDry(recipe, 1080);
    expect(items.map(({ grams }) => grams)).toEqual([600, 400, 80]);
    expect(items.map(({ isAddition }) => isAddition)).toEqual([false, false, true]);
    expect(totalGrams).toBe(1080);
  });

  test("costs what its priced materials cost, and names those without a price", () => {
    const prices: Readonly<Record<string, number>> = { "potash-feldspar": 1.5, whiting: 0.9 };
    expect(costOf(weighOutDry(recipe, 2160), (id) => prices[id])).toEqual({
      known: 1.2 * 1.5 + 0.8 * 0.9,
      unpriced: ["red-iron-oxide"],
    });
  });
});

describe("a slop", () => {
  test("holds the dry matter and the water that Brongniart's relation gives", () => {
    // A worked example on a potters' mailing list, 30 January 1998 (checked): a litre that weighs
    // 1500 g with a dry density of 2500 g/l holds 833.3 g of dry matter and 666.7 g of water. And
    // of 26 April 1998: at 1750 g it holds 1250 g and 500 g.
    const slop = { litres: 1, specificGravity: 1.5, dryDensity: 2.5 };
    expect(dryGrams(slop)).toBeCloseTo(833.3, 1);
    expect(dryGrams(slop) * waterPerGram(1.5, 2.5)).toBeCloseTo(666.7, 1);
    expect(dryGrams({ ...slop, specificGravity: 1.75 })).toBeCloseTo(1250, 6);
    expect(1250 * waterPerGram(1.75, 2.5)).toBeCloseTo(500, 6);
  });

  test("agrees with the example printed for slip", () => {
    // Forming Techniques for the Self-Reliant Potter (GTZ 1991), appendix “Dry content of liquid”
    // (checked): a litre of 1.7 kg, clay of 2.5; 1,166 g of dry clay, printed without its last 0.7.
    const slop = { litres: 1, specificGravity: 1.7, dryDensity: 2.5 };
    expect(Math.floor(dryGrams(slop))).toBe(1166);
    expect(waterPerGram(1.7, 2.5)).toBeCloseTo((1700 - dryGrams(slop)) / dryGrams(slop), 9);
  });

  propertyTest.prop([
    fc.double({ min: 0.1, max: 50, noNaN: true }),
    fc.double({ min: 1.1, max: 1.9, noNaN: true }),
    fc.double({ min: 2, max: 4, noNaN: true }),
  ])("fills the volume asked for", (litres, specificGravity, dryDensity) => {
    const dry = dryGrams({ litres, specificGravity, dryDensity });
    const water = dry * waterPerGram(specificGravity, dryDensity);
    expect(dry / dryDensity + water).toBeCloseTo(1000 * litres, 6);
    expect((dry + water) / (1000 * litres)).toBeCloseTo(specificGravity, 9);
  });
});
