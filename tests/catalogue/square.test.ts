/** The square of a set: glazes laid over each other while all the rest is the same. */
import { fc, test as property } from "@fast-check/vitest";
import { describe, expect, test } from "vitest";
import { squareOf } from "../../src/catalogue/square.ts";
import type { Tile } from "../../src/records/archive.ts";
import { squareSentence } from "../../templates/words/tile/square.ts";
import { clay, coat, cone, fired, firing, glaze, resist, result, tile } from "../checks/support.ts";
import { measuredCatalogue } from "./measured.ts";

const names = ["chalk", "soot", "mist", "moss"];
const load = { cone: cone("6"), atmosphere: "oxidation" as const };

const tilesOf = (tiles: readonly Tile[]) =>
  measuredCatalogue(
    {
      glazes: names.map((name) => glaze(name)),
      clays: [clay("buff", { name: "Buff" })],
      firings: [firing("g-1", load), firing("g-2", { ...load, cone: cone("4") })],
      tiles,
    },
    {},
  ).tiles;

const laid = (
  id: string,
  glazes: readonly string[],
  about: { load?: string; coats?: number } = {},
) =>
  tile(
    id,
    [
      ...glazes.map((name) => coat(name, { coats: about.coats ?? 2, by: "brush" })),
      fired(about.load ?? "g-1"),
    ],
    { clay: "buff", result: [result()] },
  );

const square = [
  laid("T-11", ["chalk"]),
  laid("T-12", ["chalk", "soot"]),
  laid("T-13", ["chalk", "mist"]),
  laid("T-21", ["soot", "chalk"]),
  laid("T-22", ["soot"]),
  laid("T-23", ["soot", "mist"]),
];

const codesIn = (tiles: readonly Tile[]) =>
  squareOf(tilesOf(tiles))?.rows.map((row) => row.map((cell) => cell.map(({ id }) => id).join()));

describe("a set of tiles", () => {
  test("is a square where glazes lay over each other one by one, and a glaze over itself is alone", () => {
    const found = squareOf(tilesOf(square));
    expect(found?.tops).toEqual(["chalk", "soot", "mist"]);
    expect(found?.unders).toEqual(found?.tops);
    expect(codesIn(square)).toEqual([
      ["T-11", "T-12", "T-13"],
      ["T-21", "T-22", "T-23"],
      ["", "", ""],
    ]);
  });

  test("says how to read its square, what was not made, and what is the same on all of it", () => {
    const found = squareOf(tilesOf(square));
    expect(found && squareSentence(found)).toBe(
      "Across, what lies on top; down, what lies underneath; where a glaze meets itself, the tile has it alone. 6 of 9 squares have a tile; the empty ones were not made. The same on all: each layer 2 coats, brushed; Buff; cone 6; in oxidation.",
    );
  });

  test("holds in its square no tile that differs in anything but its glazes", () => {
    const others = [
      laid("T-31", ["mist", "chalk"], { load: "g-2" }),
      laid("T-32", ["mist", "soot"], { coats: 1 }),
      tile("T-33", [coat("mist", { coats: 2, by: "brush" }), resist("wax"), fired("g-1")]),
    ];
    expect(
      codesIn([...square, ...others])
        ?.flat()
        .filter(Boolean),
    ).toEqual(square.map(({ id }) => id));
  });

  test("keeps tiles made alike in one place", () => {
    expect(codesIn([...square, laid("T-99", ["chalk", "soot"])])?.[0]?.[1]).toBe("T-12,T-99");
  });

  test("is none where few glazes met, or in a line", () => {
    expect(codesIn(square.slice(0, 4))).toBeUndefined();
    const line = names.slice(1).map((name, i) => laid(`T-${i}`, ["chalk", name]));
    expect(codesIn(line)).toBeUndefined();
    expect(codesIn([])).toBeUndefined();
  });
});

const anyPair = fc.tuple(fc.constantFrom(...names), fc.constantFrom(...names));

property.prop([fc.array(anyPair, { maxLength: 14 })], { numRuns: 60 })(
  "a tile is in the square of its own two glazes, once, and in no other",
  (pairs) => {
    const tiles = pairs.map(([under, top], i) =>
      laid(`T-${i}`, under === top ? [under] : [under, top]),
    );
    const found = squareOf(tilesOf(tiles));
    for (const [i, row] of (found?.rows ?? []).entries())
      for (const [j, cell] of row.entries())
        for (const { id } of cell)
          expect(pairs[Number(id.slice(2))]).toEqual([found?.unders[i], found?.tops[j]]);
    const placed = found?.rows.flat(2).map(({ id }) => id) ?? [];
    expect(new Set(placed).size).toBe(placed.length);
  },
);
