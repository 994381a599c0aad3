import { fc, test as propertyTest } from "@fast-check/vitest";
import { describe, expect, test } from "vitest";
import { numberLine } from "../../../templates/mixing/number-line.ts";

const mark = (value: number) => ({ label: "1", value, colour: null, isThis: false });

describe("a number line", () => {
  const values = fc.array(fc.double({ min: 0, max: 40, noNaN: true }), {
    minLength: 1,
    maxLength: 30,
  });

  propertyTest.prop([values, fc.option(fc.double({ min: 0, max: 40, noNaN: true }))])(
    "keeps every mark and its own place inside, from less to more",
    (of, here) => {
      const line = numberLine([{ name: "gloss", marks: of.map(mark) }], here, 2);
      const marks = line.rows[0]?.marks ?? [];
      expect(marks).toHaveLength(of.length);
      for (const [i, { at, value }] of marks.entries()) {
        expect(at).toBeGreaterThanOrEqual(5.9);
        expect(at).toBeLessThanOrEqual(94.1);
        expect(value).toBeGreaterThanOrEqual(marks[i - 1]?.value ?? 0);
      }
      expect(line.here === null).toBe(here === null);
    },
  );

  propertyTest.prop([
    fc.array(fc.double({ min: 0, max: 40, noNaN: true }), { minLength: 1, maxLength: 5 }),
  ])("sets no two of a few marks over each other", (of) => {
    const marks =
      numberLine([{ name: "gloss", marks: of.map(mark) }], null, 2).rows[0]?.marks ?? [];
    for (const [i, a] of marks.entries())
      for (const b of marks.slice(i + 1))
        expect(a.level !== b.level || Math.abs(a.at - b.at) >= 9.4).toBe(true);
  });

  test("of one figure shows a stretch around it, and never less than nothing", () => {
    const line = numberLine([], 0, 0.2);
    expect(line.here).toBeCloseTo(6, 6);
    expect(line.ticks.every(({ value }) => value >= 0)).toBe(true);
    expect(line.ticks.length).toBeGreaterThan(1);
  });
});
