import { fc, test as propertyTest } from "@fast-check/vitest";
import { describe, expect, test } from "vitest";
import { isSlight, scaleReadings } from "../../src/chemistry/scale-readings.ts";

const base = (...grams: number[]) => grams.map((each) => ({ grams: each, isAddition: false }));
const added = (...grams: number[]) => grams.map((each) => ({ grams: each, isAddition: true }));
const numberOf = (text: string) => Number(text.replaceAll(",", ""));

describe("the readings of a scale", () => {
  test("run up from the empty bucket, additions on top", () => {
    expect(scaleReadings([...base(600, 400), ...added(50)])).toEqual([
      { reading: "600", amount: "600" },
      { reading: "1,000", amount: "400" },
      { reading: "1,050", amount: "50" },
    ]);
  });

  test("begin at what the bucket weighs, where the scale was not set to nothing", () => {
    const found = scaleReadings(base(600, 400), 412);
    expect(found.map(({ reading }) => reading)).toEqual(["1,012", "1,412"]);
  });

  test("are all to one step, as fine as the smallest portion asks", () => {
    const found = scaleReadings([...base(600, 400), ...added(2.54)]);
    expect(found.map(({ reading }) => reading)).toEqual(["600.0", "1,000.0", "1,002.5"]);
  });

  test("put three thirds of a kilogram right on the heaviest, so that they make a kilogram", () => {
    const found = scaleReadings(base(1000 / 3, 1000 / 3, 1000 / 3));
    expect(found.map(({ amount }) => amount)).toEqual(["334", "333", "333"]);
    expect(found.at(-1)?.reading).toBe("1,000");
  });

  test("say where a batch is too small for a portion", () => {
    expect(scaleReadings([...base(100), ...added(0.004)])).toEqual([
      { reading: "100", amount: "100" },
      { reading: "100", amount: "< 0.01" },
    ]);
  });

  propertyTest.prop([
    fc.array(fc.double({ min: 0.05, max: 4000, noNaN: true }), { minLength: 1, maxLength: 9 }),
    fc.array(fc.double({ min: 0.05, max: 400, noNaN: true }), { maxLength: 4 }),
    fc.integer({ min: 0, max: 3000 }),
  ])("add up as they are shown, and are true to the grams", (grams, additions, bucket) => {
    const found = scaleReadings([...base(...grams), ...added(...additions)], bucket);
    const all = [...grams, ...additions];
    const step = Math.min(...all) < 0.995 ? 0.01 : Math.min(...all) < 99.95 ? 0.1 : 1;
    let shown = bucket;
    for (const [i, { reading, amount }] of found.entries()) {
      shown += numberOf(amount);
      expect(numberOf(reading)).toBeCloseTo(shown, 6);
      const isHeaviest = all[i] === Math.max(...grams);
      if (!isHeaviest && grams.length < 3)
        expect(Math.abs(numberOf(amount) - (all[i] ?? 0))).toBeLessThanOrEqual(step * 1.5 + 1e-9);
    }
    const sum = grams.reduce((a, b) => a + b, 0);
    const read = numberOf(found[grams.length - 1]?.reading ?? "") - bucket;
    expect(Math.abs(read - sum)).toBeLessThanOrEqual(step / 2 + 1e-6);
  });
});

test("a portion under a hundredth of what is in the bucket hardly moves a large scale", () => {
  const parts = [60, 40, 1, 0.5];
  expect(parts.map((_, at) => isSlight(parts, at))).toEqual([false, false, true, true]);
  expect(isSlight([60, 40, 2], 2)).toBe(false);
});
