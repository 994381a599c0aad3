import { fc, test as propertyTest } from "@fast-check/vitest";
import { describe, expect, test } from "vitest";
import { listGlazes } from "../../../src/browser/grid/axis.ts";
import { gatherSquares } from "../../../src/browser/grid/squares.ts";
import { orders, type View } from "../../../src/browser/grid/view.ts";
import type { GridColour, GridIndex } from "../../../src/publish/grid-file.ts";
import type { Cone } from "../../../src/terms/cones.ts";
import { anyGrid } from "./arbitrary.ts";

const any = { clay: undefined, atmosphere: undefined, at: undefined };
const viewOf = (order: View["order"], all: boolean, cone = 0): View => ({
  ...any,
  cone,
  order,
  all,
});
const anyOrder = fc.constantFrom(...orders);

describe("the rows and columns", () => {
  propertyTest.prop([anyGrid, anyOrder])(
    "are every glaze once, where all are asked for",
    ({ index, rows }, order) => {
      const squares = gatherSquares(rows, index, any);
      const listed = listGlazes(viewOf(order, true), { index, squares, colours: new Map() });
      expect([...listed].sort((a, b) => a - b)).toEqual(index.glazes.map((_, place) => place));
    },
  );

  propertyTest.prop([anyGrid, anyOrder, fc.nat({ max: 2 })])(
    "leave out no glaze that was tried at the cone, whatever its label and the clay chosen say",
    ({ index, rows }, order, clay) => {
      const squares = gatherSquares(rows, index, { clay, atmosphere: undefined });
      const view = { ...viewOf(order, false), clay };
      const listed = new Set(listGlazes(view, { index, squares, colours: new Map() }));
      for (const [over, under] of rows)
        expect([listed.has(over), listed.has(under)]).toEqual([true, true]);
      for (const [place, { cones }] of index.glazes.entries())
        if (cones === null) expect(listed.has(place)).toBe(true);
    },
  );

  const glaze = (
    name: string,
    cones: [string, string] | null,
    moves: "runs" | "none" | null = null,
  ) => ({
    ...{ id: name, name, stocked: true, moves },
    cones: cones as [Cone, Cone] | null,
  });
  const index: GridIndex = {
    glazes: [
      glaze("Soot", ["5", "7"], "none"),
      glaze("Brick", ["06", "04"], "runs"),
      glaze("Chalk", ["4", "6"]),
      glaze("Mist", null),
    ],
    cones: { keys: ["6", "06", ""], labels: ["6", "06", ""], parts: [1, 1, 1] },
    clays: { keys: ["buff"], labels: ["Buff"] },
    atmospheres: { keys: ["oxidation"], labels: ["oxidation"] },
    ...{ faults: [], first: 0, tried: [] },
  };
  const alone = [2, 2, 0, 0, 1, "T-1", "", 1, 12, 0, 0, 0, []] as const;
  const squares = gatherSquares([alone, [2, 0, 0, 0, 1, "T-2", "", 0, 0, 0, 0, 0, []]], index, any);
  const colours = new Map<number, GridColour>([
    [0, [0, "#202020", "black"]],
    [2, [2, "#f4f4f4", "white"]],
    [3, [3, "#4060c0", "blue"]],
  ]);
  const named = (order: View["order"], all = true, cone = 0) =>
    listGlazes(viewOf(order, all, cone), { index, squares, colours }).map(
      (place) => index.glazes[place]?.name,
    );

  test("keep 06 and 6 apart, and a glaze without a range at both", () => {
    expect(named("name", false)).toEqual(["Chalk", "Mist", "Soot"]);
    expect(
      listGlazes(viewOf("name", false, 1), {
        index,
        squares: { tried: new Map(), besides: new Map() },
        colours,
      }),
    ).toEqual([1, 3]);
  });

  test("come in the order asked for, what is not known last", () => {
    expect(named("name")).toEqual(["Brick", "Chalk", "Mist", "Soot"]);
    expect(named("tried")).toEqual(["Chalk", "Soot", "Brick", "Mist"]);
    expect(named("colour")).toEqual(["Chalk", "Soot", "Mist", "Brick"]);
    expect(named("range")).toEqual(["Brick", "Chalk", "Soot", "Mist"]);
    expect(named("movement")).toEqual(["Chalk", "Brick", "Soot", "Mist"]);
  });
});
