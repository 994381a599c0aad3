import { fc, test as propertyTest } from "@fast-check/vitest";
import { describe, expect } from "vitest";
import { findStretch, move, scrollTo } from "../../../src/browser/grid/window.ts";

const size = fc.integer({ min: 20, max: 200 });
const seen = fc.integer({ min: 200, max: 3000 });
const count = fc.integer({ min: 1, max: 300 });

describe("of a grid of any size", () => {
  propertyTest.prop([fc.nat({ max: 60_000 }), seen, size, count])(
    "all squares in sight are drawn, and never many more",
    (scrolled, wide, square, all) => {
      const { from, to } = findStretch(scrolled, wide, square, all);
      for (let place = 0; place < all; place += 1) {
        const inSight = (place + 1) * square > scrolled && place * square < scrolled + wide;
        if (inSight) expect(place >= from && place < to).toBe(true);
      }
      expect(to - from).toBeLessThanOrEqual(Math.ceil(wide / square) + 6);
    },
  );

  propertyTest.prop([fc.nat({ max: 299 }), fc.nat({ max: 60_000 }), seen, size])(
    "the square one goes to is in sight whole, and nothing moves where it was",
    (place, scrolled, wide, square) => {
      const next = scrollTo(place, scrolled, wide, square);
      expect(place * square).toBeGreaterThanOrEqual(next);
      expect((place + 1) * square).toBeLessThanOrEqual(next + wide);
      const was = place * square >= scrolled && (place + 1) * square <= scrolled + wide;
      if (was) expect(next).toBe(scrolled);
    },
  );

  const keys = [
    "ArrowUp",
    "ArrowDown",
    "ArrowLeft",
    "ArrowRight",
    "Home",
    "End",
    "PageUp",
    "PageDown",
  ];
  propertyTest.prop([fc.constantFrom(...keys), count, fc.nat(), fc.nat()])(
    "no key leads out of it",
    (key, all, row, column) => {
      const next = move(key, { row: row % all, column: column % all }, all, 5);
      expect([next?.row, next?.column].every((at) => at !== undefined && at >= 0 && at < all)).toBe(
        true,
      );
    },
  );
});
