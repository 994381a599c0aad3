import { fc, test as propertyTest } from "@fast-check/vitest";
import { describe, expect, test } from "vitest";
import { fileOfPart, pageOfPair, pageOfTile } from "../../../src/browser/grid/addresses.ts";
import { formatView, orders, parseView, type View } from "../../../src/browser/grid/view.ts";
import { glazeUrl, pairUrl, tileUrl } from "../../../src/catalogue/addresses.ts";
import { gridPartPath } from "../../../src/publish/grid.ts";
import { anyGrid } from "./arbitrary.ts";

const option = (max: number) => fc.option(fc.nat({ max }), { nil: undefined });

describe("a view of the grid in an address", () => {
  propertyTest.prop([
    anyGrid,
    fc.record({
      cone: fc.nat({ max: 2 }),
      clay: option(2),
      atmosphere: option(1),
      order: fc.constantFrom(...orders),
      all: fc.boolean(),
    }),
    fc.option(fc.tuple(fc.nat(), fc.nat()), { nil: undefined }),
  ])("is read back as it was written", ({ index }, choices, square) => {
    const { length } = index.glazes;
    const at = square && { over: square[0] % length, under: square[1] % length };
    const view: View = { ...choices, at };
    expect(parseView(formatView(view, index), index)).toEqual(view);
  });

  propertyTest.prop([anyGrid, fc.webQueryParameters()])(
    "is never more than the archive knows, whatever the address says",
    ({ index }, query) => {
      const view = parseView(`?${query}&cone=nine&over=nobody`, index);
      expect(view.cone).toBe(index.first);
      expect(view.at?.over ?? 0).toBeLessThan(index.glazes.length);
    },
  );

  test("may name one glaze alone, as a glaze's page does", () => {
    const index = {
      ...{
        glazes: ["soot", "chalk"].map((id) => ({
          id,
          name: id,
          stocked: true,
          cones: null,
          moves: null,
        })),
      },
      cones: { keys: ["6"], labels: ["6"], parts: [1] },
      ...{ clays: { keys: [], labels: [] }, atmospheres: { keys: [], labels: [] } },
      ...{ faults: [], first: 0, tried: [] },
    };
    expect(parseView("?over=CHALK", index).at).toEqual({ over: 1, under: 1 });
    expect(parseView("?over=chalk&under=soot", index).at).toEqual({ over: 1, under: 0 });
  });
});

const anyId = fc.oneof(
  fc.stringMatching(/^[A-Za-z0-9][A-Za-z0-9._-]{0,12}$/u),
  fc.constantFrom("a--b", "Kø", "é-1", "x---y"),
);

propertyTest.prop([anyId, anyId])("a square leads where the build puts its pages", (a, b) => {
  const index = {
    glazes: [a, b].map((id) => ({ id, name: id, stocked: true, cones: null, moves: null })),
  };
  expect(pageOfPair({ over: 0, under: 1 }, index)).toBe(pairUrl(a, b));
  expect(pageOfPair({ over: 1, under: 1 }, index)).toBe(glazeUrl(b));
  expect(pageOfTile(a)).toBe(tileUrl(a));
});

test.each([
  ["6", 0],
  ["", 3],
])("the squares of cone %j are loaded from where the build puts them", (cone, part) => {
  expect(fileOfPart(cone, part)).toBe(gridPartPath(cone, part));
});
