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
import { type Lab, linearToLab } from "../../../src/colour/cielab.ts";
import { largeColours } from "../../../src/colour/large-colours.ts";
import type { ColourName } from "../../../src/colour/name.ts";
import { hexToLinear } from "../../../src/colour/srgb.ts";
import { bandWords } from "../../../templates/words/colour/plate.ts";
import { measured } from "../measured.ts";
import { alone, colouredCatalogue, grey } from "./colour-support.ts";

const blue: Lab = [45, 0, -40];
const brown: Lab = [35, 12, 25];

const isFoundBy = ({ largeColours: of }: CatalogueTile, name: ColourName): boolean =>
  of.some(({ families }) => families.includes(name));

const labOf = (hex: string): Lab => linearToLab(hexToLinear(hex));

/** Tiles as the plate asks for them. */
function tilesOf(labs: readonly (Lab | null)[]): readonly CatalogueTile[] {
  return labs.map((lab, i) => ({
    id: `T-${i}`,
    largeColours: lab ? largeColours(measured(lab)) : [],
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
    expect(rows[1]?.cells.map(({ shown }) => shown.map(({ id }) => id))).toEqual([
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
  const anyLabs = fc.array(fc.option(anyLab), { maxLength: 120 });

  property.prop([anyLabs])(
    "has every measured tile under each name that it is found by",
    (labs) => {
      const tiles = tilesOf(labs);
      const plate = layPlate(tiles);
      const own = tiles.filter(({ largeColours: [first] }) => first);
      expect([plate.measured, plate.unmeasured]).toEqual([own.length, labs.length - own.length]);
      for (const { name, tiles: counted } of plate.rows.flatMap(({ names }) => names))
        expect(counted).toBe(own.filter((tile) => isFoundBy(tile, name)).length);
      for (const { names, cells } of plate.rows.filter((row) => row.names.length === 1))
        expect(cells.reduce((sum, cell) => sum + cell.tiles, 0)).toBe(names[0]?.tiles);
    },
  );

  property.prop([anyLabs])("shows a tile once in a row, by how light it is", (labs) => {
    for (const { cells } of layPlate(tilesOf(labs)).rows)
      for (const [band, { tiles, shown }] of cells.entries()) {
        expect(shown.length).toBeLessThanOrEqual(Math.min(tiles, tilesInACell));
        expect(shown.length).toBeGreaterThanOrEqual(Math.min(tiles, 3));
        expect(new Set(shown.map(({ id }) => id)).size).toBe(shown.length);
        expect(shown.map(({ hex }) => bandOf({ lab: labOf(hex) }))).toEqual(shown.map(() => band));
      }
  });

  test("has a tile of two large colours under each of them, by how light that one is", () => {
    const palette = [
      { hex: "#1d3f8a", share: 0.6 },
      { hex: "#f2efe8", share: 0.35 },
      { hex: "#8a2020", share: 0.05 },
    ];
    const tile = {
      id: "T-1",
      largeColours: largeColours(measured([60, 0, -8], { palette })),
    };
    const { rows, absent } = layPlate([tile]);
    const where = rows.flatMap(({ names, cells }) =>
      cells.flatMap(({ shown }, band) => shown.map(({ hex }) => [names[0]?.name, band, hex])),
    );
    expect(where).toEqual([
      ["blue", 3, "#1d3f8a"],
      ["white", 0, "#f2efe8"],
    ]);
    expect(absent).toEqual(expect.arrayContaining(["grey", "red"]));
  });

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
