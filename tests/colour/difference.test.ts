import { fc, test } from "@fast-check/vitest";
import { describe, expect, it } from "vitest";
import type { Lab } from "../../src/colour/cielab.ts";
import { differenceCiede2000 } from "../../src/colour/difference.ts";
import { PUBLISHED_PAIRS } from "./reference.ts";

const anyLab: fc.Arbitrary<Lab> = fc.tuple(
  fc.double({ min: 0, max: 100, noNaN: true }),
  fc.double({ min: -120, max: 120, noNaN: true }),
  fc.double({ min: -120, max: 120, noNaN: true }),
);

describe("CIEDE2000", () => {
  /** G. Sharma, W. Wu, E.N. Dalal, Color Research and Application 30 (2005) 21-30, Table 1. */
  it.each(PUBLISHED_PAIRS)("agrees with published pair $id both ways", (pair) => {
    expect(differenceCiede2000(pair.one, pair.other)).toBeCloseTo(pair.difference, 4);
    expect(differenceCiede2000(pair.other, pair.one)).toBeCloseTo(pair.difference, 4);
  });

  it("is checked against enough pairs", () => {
    expect(PUBLISHED_PAIRS.length).toBeGreaterThanOrEqual(20);
  });

  test.prop([anyLab])("is nothing between a colour and itself", (lab) => {
    expect(differenceCiede2000(lab, lab)).toBe(0);
  });

  test.prop([anyLab, anyLab])("is a number, never below nothing, the same both ways", (a, b) => {
    const difference = differenceCiede2000(a, b);
    expect(difference).toBeGreaterThanOrEqual(0);
    expect(differenceCiede2000(b, a)).toBeCloseTo(difference, 8);
  });
});
