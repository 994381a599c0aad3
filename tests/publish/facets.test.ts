import { describe, expect, test } from "vitest";
import { makeCatalogue } from "../../src/catalogue/make.ts";
import type { MeasuredColour } from "../../src/colour/measure.ts";
import { makeFacets, makeFacetsScript } from "../../src/publish/facets.ts";
import type { FacetName } from "../../src/terms/facets.ts";
import { trustSentence } from "../../templates/words/colour/measured.ts";
import { archive, coat, fired, glaze, result, tile } from "../checks/support.ts";

const catalogue = makeCatalogue(
  archive({
    glazes: [glaze("chalk"), glaze("soot"), glaze("mist")],
    tiles: [
      tile("T-1", [coat("soot"), coat("chalk", { by: "dip" }), fired(null)], {
        glazed: "2026-10-14",
        result: [{ ...result(), surface: ["satin", "gloss"], faults: ["crawling"], run: 12 }],
      }),
      tile("T-2", [coat("soot"), coat("chalk"), fired(null)], {
        glazed: "2026-09-01",
        result: [{ ...result(), surface: ["gloss", "satin"], faults: ["none"], run: 0 }],
      }),
      tile("T-10", [
        coat("soot", { where: ["bottom"] }),
        coat("chalk", { where: ["top"] }),
        coat("mist", { where: ["centre"], over: ["chalk", "soot"] }),
      ]),
    ],
  }),
  {
    pictures: new Map(),
    chemistry: new Map(),
    heats: new Map(),
    notes: new Map(),
    builtInMaterials: [],
  },
);
const facets = makeFacets(catalogue);

/** 0.29 times 100 is 28.999… in binary. */
const colour: MeasuredColour = {
  lab: [43.21, -10.09, 0.29],
  hex: "#566965",
  name: "grey",
  spread: 1,
  palette: [],
  accepted: 1,
  clipped: 0,
  greyCard: null,
};

/** The keys of a facet that a tile has. */
function valuesOf(code: string, name: FacetName): readonly (string | undefined)[] {
  const { keys, combinations, tiles } = facets.columns[name];
  const places = combinations[tiles[facets.codes.indexOf(code)] ?? -1] ?? [];
  return places.map((place) => keys[place]);
}

describe("the facets file", () => {
  test("holds the tiles in the order of the wall, with their names top coat first", () => {
    expect(facets.codes).toEqual(["T-1", "T-2", "T-10"]);
    expect(facets.titles.map((title) => facets.names[title])).toEqual([
      "chalk over soot",
      "chalk over soot",
      "mist over chalk and soot",
    ]);
  });

  test("says what came out as the cards of the wall do", () => {
    const said = facets.came.map((place) => facets.outcomes[place]);
    expect(said).toEqual(["gloss and satin, ran 12\u00a0mm, crawling", "gloss and satin", ""]);
  });

  test("holds how far each ran and when it was glazed, and tells none from nobody knows", () => {
    expect(facets.ran).toEqual([12, 0, null]);
    expect(facets.days).toEqual(["1 September 2026", "14 October 2026"]);
    expect(facets.glazed).toEqual([1, 0, null]);
  });

  test("tells the glaze on top, the ones lain over, and those anywhere", () => {
    expect(valuesOf("T-1", "top")).toEqual(["chalk"]);
    expect(valuesOf("T-1", "over")).toEqual(["soot"]);
    expect(valuesOf("T-10", "over")).toEqual(["chalk", "soot"]);
    expect(valuesOf("T-10", "glaze")).toEqual(["chalk", "mist", "soot"]);
  });

  test("writes a combination of values down once, whatever order they came in", () => {
    const { combinations, tiles } = facets.columns.surface;
    expect(tiles[0]).toBe(tiles[1]);
    expect(combinations).toHaveLength(2);
    expect(valuesOf("T-2", "surface")).toEqual(["gloss", "satin"]);
  });

  test("takes “no fault found” for no fault", () => {
    expect(valuesOf("T-1", "fault")).toEqual(["crawling"]);
    expect(valuesOf("T-2", "fault")).toEqual([]);
  });

  test("holds measured colours in hundredths, and nothing where none was measured", () => {
    const { lab } = makeFacets({
      ...catalogue,
      tiles: catalogue.tiles.map((each, i) => (i === 1 ? { ...each, colour } : each)),
    });
    expect(lab).toEqual([
      [null, 4321, null],
      [null, -1009, null],
      [null, 29, null],
    ]);
  });

  test("tells which colour difference means nothing, in figures and in words", () => {
    expect(facets.trust).toEqual({ difference: null, sentence: trustSentence(null) });
    const trust = { difference: 2.34567, tiles: 4, kinds: 2 };
    expect(makeFacets({ ...catalogue, trust }).trust).toEqual({
      difference: 2.35,
      sentence: trustSentence(trust),
    });
  });

  test("is a script that sets one global to the same", () => {
    const self: { tilebookFacets?: unknown } = {};
    new Function("self", makeFacetsScript(catalogue, []))(self);
    expect(self.tilebookFacets).toEqual(facets);
  });
});
