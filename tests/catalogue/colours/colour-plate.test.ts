import { fc, test as property } from "@fast-check/vitest";
import { describe, expect, test } from "vitest";
import {
  bandOf,
  layPlate,
  lightnessBands,
  tilesInACell,
} from "../../../src/catalogue/colours/colour-plate.ts";
import { pickEvenly } from "../../../src/catalogue/pick-evenly.ts";
import type { CatalogueTile } from "../../../src/catalogue/tiles.ts";
import type { Lab } from "../../../src/colour/cielab.ts";
import { bandWords } from "../../../templates/words/colour/plate.ts";
import { measured } from "../measured.ts";
import { alone, colouredCatalogue, grey } from "./colour-support.ts";

const blue: Lab = [45, 0, -40];
const brown: Lab = [35, 12, 25];

/** Tiles as the plate asks for them. */
function tilesOf(labs: readonly (Lab | null)[]): readonly CatalogueTile[] {
  return labs.map((lab, i) => ({
    id: `T-${i}`,
    colour: lab && measured(lab),
  })) as unknown as readonly CatalogueTile[];
}

describe("the plate", () => {
  test("stands in the catalogue, with what could not be measured counted", () => {
    const { plate } = colouredCatalogue([
      [alone("A"), blue],
      [alone("B"), null],
      [alone("C"), brown],
    ]);
    expect([plate.measured, plate.unmeasured]).toEqual([2, 1]);
    expect(plate.rows.map(({ names }) => names)).toEqual([
      [{ name: "brown", tiles: 1 }],
      [{ name: "blue", tiles: 1 }],
    ]);
    expect(plate.absent).not.toContain("blue");
    expect(plate.absent).toContain("purple");
  });

  test("has white, grey and black in one row, after all hues, by how light they are", () => {
    const { rows } = layPlate(tilesOf([grey(50), blue, grey(5), grey(97), grey(55)]));
    expect(rows.map(({ names }) => names.map(({ name }) => name))).toEqual([
      ["blue"],
      ["white", "grey", "black"],
    ]);
    expect(rows[1]?.cells.map(({ shown }) => shown)).toEqual([
      ["T-3"],
      [],
      ["T-4", "T-0"],
      [],
      ["T-2"],
    ]);
  });

  test("has one word for each band of lightness, and every lightness in one band", () => {
    expect(bandWords).toHaveLength(lightnessBands.length);
    const bands = [100, 80, 79.99, 60, 40, 20, 19.99, 0, -0.01].map((l) =>
      bandOf({ lab: grey(l) }),
    );
    expect(bands).toEqual([0, 0, 1, 1, 2, 3, 4, 4, 4]);
  });

  test("says of a cell which colour lies in its middle", () => {
    const { rows } = layPlate(tilesOf([grey(42), grey(58)]));
    expect(rows[0]?.cells[2]?.centre).toBe(measured(grey(50)).hex);
    expect(rows[0]?.cells[0]?.centre).toBeNull();
  });

  test("is empty where nothing was measured", () => {
    expect(layPlate(tilesOf([null]))).toMatchObject({ rows: [], measured: 0, unmeasured: 1 });
  });

  const anyLab = fc.tuple(
    fc.double({ min: 0, max: 100, noNaN: true }),
    fc.double({ min: -90, max: 90, noNaN: true }),
    fc.double({ min: -90, max: 90, noNaN: true }),
  );
  property.prop([fc.array(fc.option(anyLab), { maxLength: 120 })])(
    "counts every measured tile in exactly one cell, and shows it there if anywhere",
    (labs) => {
      const tiles = tilesOf(labs);
      const plate = layPlate(tiles);
      const cells = plate.rows.flatMap((row) => row.cells);
      const own = tiles.filter(({ colour }) => colour);
      expect(cells.reduce((sum, cell) => sum + cell.tiles, 0)).toBe(own.length);
      expect(plate.measured + plate.unmeasured).toBe(labs.length);
      const shown = cells.flatMap((cell) => cell.shown);
      expect(new Set(shown).size).toBe(shown.length);
      for (const { names, cells: inRow } of plate.rows) {
        expect(names.reduce((sum, { tiles: of }) => sum + of, 0)).toBe(
          inRow.reduce((sum, cell) => sum + cell.tiles, 0),
        );
        for (const [band, cell] of inRow.entries()) {
          expect(cell.shown.length).toBe(Math.min(cell.tiles, tilesInACell));
          for (const code of cell.shown) {
            const colour = own.find(({ id }) => id === code)?.colour;
            expect(names.map(({ name }) => name)).toContain(colour?.name);
            expect(colour && bandOf(colour)).toBe(band);
          }
        }
      }
    },
  );

  property.prop([fc.uniqueArray(fc.integer(), { maxLength: 60 }), fc.integer({ min: 2, max: 20 })])(
    "shows so many of a long list at most, in its order, its ends among them",
    (list, most) => {
      const shown = pickEvenly(list, most);
      expect(shown).toEqual(list.filter((one) => shown.includes(one)));
      expect(shown.length).toBe(Math.min(list.length, most));
      expect([shown[0], shown.at(-1)]).toEqual([list[0], list.at(-1)]);
    },
  );
});
