import { fc, test as propertyTest } from "@fast-check/vitest";
import { describe, expect } from "vitest";
import { gatherSquares, keyOf, type Square } from "../../../src/browser/grid/squares.ts";
import { anyGrid } from "./arbitrary.ts";

const anyChoice = fc.record({
  clay: fc.option(fc.nat({ max: 2 }), { nil: undefined }),
  atmosphere: fc.option(fc.nat({ max: 1 }), { nil: undefined }),
});

const tilesIn = (squares: Iterable<Square>) =>
  [...squares].reduce((sum, { tiles }) => sum + tiles, 0);

describe("the squares of a view", () => {
  propertyTest.prop([anyGrid, anyChoice])(
    "hold every tile once: in its square, or among those left out of it",
    ({ index, rows }, choice) => {
      const { tried, besides } = gatherSquares(rows, index, choice);
      const left = [...besides.values()].reduce((sum, tiles) => sum + tiles, 0);
      expect(tilesIn(tried.values()) + left).toBe(rows.reduce((sum, row) => sum + row[4], 0));
    },
  );

  propertyTest.prop([anyGrid, anyChoice])(
    "hold nothing of another clay or another fire than was chosen",
    ({ index, rows }, { clay, atmosphere }) => {
      const meant = rows.filter(
        ([, , on, fire]) => (clay ?? on) === on && (atmosphere ?? fire) === fire,
      );
      const { tried } = gatherSquares(rows, index, { clay, atmosphere });
      expect(tried).toEqual(
        gatherSquares(meant, index, { clay: undefined, atmosphere: undefined }).tried,
      );
    },
  );

  propertyTest.prop([anyGrid])(
    "tell the farthest run and every verdict, and show a photograph where there is one",
    ({ index, rows }) => {
      const all = { clay: undefined, atmosphere: undefined };
      for (const [key, square] of gatherSquares(rows, index, all).tried) {
        const own = rows.filter(([over, under]) => keyOf({ over, under }, index) === key);
        expect(square.run).toBe(Math.max(...own.map((row) => row[8])));
        expect(square.again.no).toBe(own.reduce((sum, row) => sum + row[11], 0));
        expect(square.picture === "").toBe(own.every((row) => row[6] === ""));
        expect(own.map((row) => [row[5], row[6]])).toContainEqual([square.code, square.picture]);
      }
    },
  );
});
