import { fc, test as property } from "@fast-check/vitest";
import { describe, expect, test } from "vitest";
import {
  clayDistances,
  findMiddling,
  findPaint,
  findShown,
  type PaintedTile,
  paintFinder,
} from "../../../src/catalogue/colours/glaze-paint.ts";
import { cone } from "../../checks/support.ts";
import { type Alone, alone, type Coloured, colouredCatalogue, grey } from "./colour-support.ts";

const link = (id: string) => ({ id, name: id, url: `clays/${id}.html` });

/** A tile to be painted: on buff, at cone 6 in oxidation unless said. */
function painted(about: Partial<PaintedTile> = {}): PaintedTile {
  return { clay: link("buff"), cone: cone("6"), atmosphere: "oxidation", ...about };
}

/** The code of the tile that soot is painted by. */
function paintOf(tiles: readonly Coloured[], about: Partial<PaintedTile> = {}) {
  return paintFinder(colouredCatalogue(tiles))("soot", painted(about))?.tile.id;
}

const at = (id: string, about: Alone = {}, lightness = 50): Coloured => [
  alone(id, about),
  grey(lightness),
];

describe("a glaze is painted as it measured", () => {
  test("on the same clay, be another cone nearer", () => {
    const tiles = [at("far", { clay: "buff", cone: "06" }), at("near", { clay: "cream" })];
    expect(paintOf(tiles)).toBe("far");
  });

  test("else on the clay nearest in colour, and on one of no known colour last", () => {
    const tiles = [at("A", { clay: "red" }), at("B", { clay: "cream" }), at("C", { clay: "odd" })];
    expect(paintOf(tiles)).toBe("B");
    expect(paintOf(tiles, { clay: link("red") })).toBe("A");
    expect(paintOf(tiles.slice(2))).toBe("C");
    expect(paintOf([at("A", { clay: null })])).toBe("A");
  });

  test("then at the nearest cone, as cones go: 4 is nearer to 6 than 06 is", () => {
    const tiles = [at("A", { cone: "06" }), at("B", { cone: "4" }), at("C", { cone: "10" })];
    expect(paintOf(tiles)).toBe("B");
    expect(paintOf(tiles, { cone: cone("03") })).toBe("A");
  });

  test("in reduction where the tile was, be it on another clay", () => {
    const tiles = [
      at("green", { cone: "10" }),
      at("red", { cone: "10", atmosphere: "reduction", clay: "red" }),
    ];
    expect(paintOf(tiles, { atmosphere: "reduction" })).toBe("red");
    expect(paintOf(tiles)).toBe("green");
    expect(paintOf(tiles, { atmosphere: null })).toBe("green");
  });

  test("sound and fired once, if any of as near a tile is", () => {
    const tiles = [
      at("A", { faults: ["crawling"] }, 50),
      at("B", { loads: ["4-oxidation", "6-oxidation"] }, 50),
      at("C", {}, 90),
    ];
    expect(paintOf(tiles)).toBe("C");
    expect(paintOf(tiles.slice(0, 1))).toBe("A");
    expect(paintOf([at("A", { faults: ["crawling"] }), at("B", { clay: "cream" })])).toBe("A");
  });

  test("of several by the one of middling lightness", () => {
    expect(paintOf([at("A", {}, 90), at("B", {}, 20), at("C", {}, 55)])).toBe("C");
  });

  test("never where it covers a part alone: that colour has clay in it", () => {
    const part = at("A", { coat: { where: ["top"] } });
    expect(paintOf([part])).toBeUndefined();
    expect(paintOf([part, at("B", { clay: "red", coats: null })])).toBe("B");
  });

  test("and not at all where it was not measured alone", () => {
    expect(paintOf([])).toBeUndefined();
    expect(paintOf([[alone("A"), null]])).toBeUndefined();
  });
});

describe("whatever tiles there are", () => {
  const anyTile = fc.record({
    clay: fc.constantFrom("buff", "red", "cream", "odd", null),
    cone: fc.constantFrom("06", "4", "6", "10"),
    atmosphere: fc.constantFrom("oxidation" as const, "reduction" as const),
    faults: fc.constantFrom([], ["crawling"]),
    lightness: fc.integer({ min: 5, max: 95 }),
  });
  const anyTiles = fc.array(anyTile, { minLength: 1, maxLength: 10 });
  const toTiles = (abouts: readonly (Alone & { lightness: number })[]) =>
    abouts.map((about, i) => at(`T-${i}`, about, about.lightness));

  property.prop([anyTiles, fc.constantFrom("buff", "red", "odd")])(
    "a measurement on the same clay in the same air is taken before any other",
    (abouts, on) => {
      const catalogue = colouredCatalogue(toTiles(abouts));
      const measured = (catalogue.glazeById.get("soot")?.onClays ?? []).flatMap(
        (group) => group.measured,
      );
      const tile = painted({ clay: link(on) });
      const found = findPaint(measured, tile, clayDistances(catalogue.clays));
      const own = measured.filter(
        ({ clay, atmosphere }) => clay?.id === on && atmosphere === "oxidation",
      );
      expect(found).toBeDefined();
      if (own.length > 0) expect(own).toContain(found);
    },
  );

  property.prop([anyTiles])("the order they are in changes nothing that is seen", (abouts) => {
    const colourOf = (tiles: readonly Coloured[]) =>
      paintFinder(colouredCatalogue(tiles))("soot", painted())?.colour.hex;
    const tiles = toTiles(abouts);
    const renamed = tiles.map(([tile, lab], i) => {
      const id = `T-${tiles.length - i}`;
      return [{ ...tile, id, pictures: [{ role: "result", file: `tiles/${id}.jpg` }] }, lab];
    });
    expect(colourOf(renamed as unknown as readonly Coloured[])).toBe(colourOf(tiles));
  });
});

test("one tile speaks for a glaze on every clay, and none that shows clay", () => {
  const { glazeById } = colouredCatalogue([
    at("A", { clay: "red" }, 20),
    at("B", { clay: "cream" }, 60),
    at("C", {}, 80),
    at("D", { coat: { where: ["top"] } }, 60),
  ]);
  const soot = glazeById.get("soot");
  expect(soot?.shownAs?.tile.id).toBe("B");
  expect(findShown([])).toBeUndefined();
  expect(findMiddling([])).toBeUndefined();
});

test("a clay is nearest to itself, and the same way from either of two", () => {
  const distance = clayDistances([
    { id: "Buff", name: "Buff", colour: "buff" },
    { id: "twin", name: "Twin", colour: "buff" },
    { id: "red", name: "Red earth", colour: null },
  ]);
  expect(distance("buff", "Buff")).toBeLessThan(distance("buff", "twin"));
  expect(distance("buff", "red")).toBe(distance("red", "buff"));
  expect(distance("buff", "red")).toBeGreaterThan(10);
  expect(distance("buff", null)).toBe(Number.POSITIVE_INFINITY);
  expect(distance("buff", "unknown")).toBe(Number.POSITIVE_INFINITY);
});
