import { test as propertyTest } from "@fast-check/vitest";
import { describe, expect, test } from "vitest";
import { gatherSquares } from "../../../src/browser/grid/squares.ts";
import { type Known, nameSquare, tellAll, tellHead } from "../../../src/browser/grid/words.ts";
import type { GridIndex, GridRow } from "../../../src/publish/grid-file.ts";
import type { Cone } from "../../../src/terms/cones.ts";
import { anyGrid } from "./arbitrary.ts";

const glaze = (name: string, stocked = true) => ({
  ...{ id: name, name, stocked, moves: "little" as const },
  cones: ["5", "6"] as [Cone, Cone],
});
const index: GridIndex = {
  glazes: [glaze("Soot"), glaze("Chalk"), glaze("Mist", false)],
  cones: { keys: ["6", "8", ""], labels: ["6", "8", ""], parts: [1, 1, 1] },
  clays: { keys: ["buff", ""], labels: ["Buff", ""] },
  atmospheres: { keys: ["oxidation", "neutral"], labels: ["oxidation", "neutral"] },
  faults: ["crawling", "crazing"],
  first: 0,
  tried: [[1, 2, 0, 1, 2]],
};
const rows: readonly GridRow[] = [
  [1, 0, 0, 0, 3, "GR-1", "p.jpg", 2, 12, 1, 0, 2, [0]],
  [1, 2, 1, 0, 1, "GR-2", "", 0, 0, 0, 0, 0, []],
  [0, 0, 0, 0, 1, "GR-3", "", 1, 0, 0, 1, 0, []],
];

function knownOf(clay?: number, atmosphere?: number, whole = true): Known {
  const view = { cone: 0, clay, atmosphere, order: "name" as const, all: false, at: undefined };
  const triedAt = new Map([[1 * 3 + 2, [0, 1, 2]]]);
  return { view, index, squares: gatherSquares(rows, index, view), whole, triedAt };
}

describe("what a square is called", () => {
  const name = (over: number, under: number, known = knownOf()) =>
    nameSquare({ over, under }, known);

  test("tells what came out, and on how many tiles", () => {
    expect(name(1, 0)).toBe(
      "Chalk over Soot: 3 tiles, GR-1 is shown; ran up to 12\u00a0mm; crawling; again: yes 1, no 2",
    );
    expect(name(0, 0)).toBe("Soot alone: GR-3; did not run; again: changed");
  });

  test("says where nobody has tried it, and where somebody has", () => {
    expect(name(0, 1)).toBe("Soot over Chalk: nobody has tried this at cone 6.");
    expect(name(1, 2, knownOf(0, 1))).toBe(
      "Chalk over Mist: nobody has tried this at cone 6, on Buff, in a neutral fire. 1 tile on other clays or in other fires. Tried at cone 8. A tile with it has no cone yet. Mist is not in stock.",
    );
  });

  test("says nothing of an empty square before all have come", () => {
    expect(name(0, 1, knownOf(undefined, undefined, false))).toBe(
      "Soot over Chalk: still being loaded.",
    );
  });
});

test("the whole tells what was tried, what was not, and for what a glaze is missing", () => {
  expect(tellAll([0, 1, 2], knownOf())).toBe(
    "2 of 6 pairs of these 3 glazes were tried at cone 6. Nobody has tried the other 4. 3 of those need a glaze that is not in stock.",
  );
  expect(tellAll([0, 2], knownOf())).toBe(
    "0 of 2 pairs of these 2 glazes were tried at cone 6. Nobody has tried any. 2 of those need a glaze that is not in stock.",
  );
});

propertyTest.prop([anyGrid])("what was tried and what was not are all pairs", (grid) => {
  const view = { ...knownOf().view };
  const squares = gatherSquares(grid.rows, grid.index, view);
  const known: Known = { view, index: grid.index, squares, whole: true, triedAt: new Map() };
  const { length } = grid.index.glazes;
  const met = new Set(
    grid.rows.filter(([over, under]) => over !== under).map((row) => `${row[0]} ${row[1]}`),
  );
  const told = tellAll(
    grid.index.glazes.map((_, place) => place),
    known,
  );
  expect(told).toContain(`${met.size} of ${length * (length - 1)} pairs`);
  const missing = /(\d+) of those need/u.exec(told)?.[1] ?? "0";
  const wanting = grid.index.glazes.flatMap((over, i) =>
    grid.index.glazes.flatMap((under, j) =>
      i !== j && !(over.stocked && under.stocked) && !met.has(`${i} ${j}`) ? [1] : [],
    ),
  );
  expect(Number(missing)).toBe(wanting.length);
});

test("a head says by what it is in its place", () => {
  const head = (place: number, order: "colour" | "movement" | "name" | "range") =>
    tellHead(place, order, knownOf(), new Map([[1, [1, "#f0f0f0", "white"] as const]]));
  expect(head(1, "colour")).toBe("white");
  expect(head(0, "colour")).toBe("not measured");
  expect(head(0, "movement")).toBe("did not run");
  expect(head(1, "movement")).toBe("label: moves little");
  expect(head(2, "range")).toBe("cone 5–6, not in stock");
  expect(head(1, "name")).toBe("");
});
