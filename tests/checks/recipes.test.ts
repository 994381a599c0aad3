import { describe, expect, it } from "vitest";
import { codesIn, glaze, material, nothing, tell } from "./support.ts";

const blend = (id: string, ...glazes: string[]) =>
  glaze(id, { name: id, blend: glazes.map((part) => ({ glaze: part, parts: 50 })) });

describe("blends", () => {
  it("of other glazes go in no circle", () => {
    const glazes = [blend("ab", "a", "b"), blend("abb", "ab", "b"), glaze("a"), glaze("b")];
    expect(codesIn({ glazes })).toEqual([]);
  });

  it("of itself is told", () => {
    expect(tell({ glazes: [blend("a", "b", "A"), glaze("b")] })).toMatchInlineSnapshot(`
      "error blend-in-a-circle recipes/glazes/a.md › blend › 1 › glaze
      a is blended out of itself: a → a
      Follow the blends and put right the one that names the wrong glaze."
    `);
  });

  it("through other blends back to itself is told once, with the way", () => {
    const glazes = [blend("c", "x", "a"), blend("b", "c"), blend("a", "x", "b"), glaze("x")];
    expect(tell({ glazes })).toMatchInlineSnapshot(`
      "error blend-in-a-circle recipes/glazes/a.md › blend › 1 › glaze
      a is blended out of itself: a → b → c → a
      Follow the blends and put right the one that names the wrong glaze."
    `);
  });

  it("a blend that only leads into a circle is not the fault", () => {
    const glazes = [blend("0", "a"), blend("a", "b"), blend("b", "a")];
    expect(tell({ glazes })).toContain("a → b → a");
    expect(codesIn({ glazes })).toEqual(["blend-in-a-circle"]);
  });

  it("two circles are two faults", () => {
    const glazes = [blend("a", "b"), blend("b", "a"), blend("c", "d"), blend("d", "c")];
    expect(codesIn({ glazes })).toEqual(["blend-in-a-circle", "blend-in-a-circle"]);
  });
});

describe("what is not known of a recipe", () => {
  it("a material with neither formula nor analysis is told", () => {
    expect(
      tell({ materials: [material("drain-clay", { name: "Drain clay" })] }),
    ).toMatchInlineSnapshot(`
      "warning material-unknown-inside recipes/materials/drain-clay.md
      Drain clay has no formula and no analysis
      Add “analysis:” from its supplier's sheet, or “formula:”; until then glazes made of it have no chemistry."
    `);
  });

  it("a formula or an analysis is enough", () => {
    const materials = [
      material("a", { formula: "SiO2" }),
      material("b", { analysis: { SiO2: 99.4 } }),
    ];
    expect(codesIn({ materials })).toEqual([]);
  });

  it("a formula that cannot be read is told although no glaze holds it", () => {
    const materials = [
      material("drain-clay", { name: "Drain clay", formula: "SiO2.2Hq" }),
      material("ash", { name: "Ash", analysis: { SiO2: 60, constructor: 5 } }),
    ];
    expect(tell({ materials })).toMatchInlineSnapshot(`
      "error material-unreadable recipes/materials/drain-clay.md › formula
      The formula of Drain clay cannot be read at character 7: “Hq” is no element with an atomic weight here
      Elements begin with one capital letter: Si, Al, Ca, K. Mind capitals: CO is carbon and oxygen, Co is cobalt.

      error material-unreadable recipes/materials/ash.md › analysis
      The analysis of Ash cannot be used: “constructor” is no oxide
      Write oxides by their formula, SiO2 or Al2O3, fluorine as F, and what is lost in the fire as loss or LOI."
    `);
  });

  it("a record of a carried material that holds a price alone is enough too", () => {
    expect(codesIn({ materials: [material("silica", { name: "Silica", price: 2 })] })).toEqual([]);
  });

  it("an analysis that is far from a hundred, assumes its loss or leaves an oxide out is told", () => {
    const materials = [
      material("far", { name: "Far", analysis: { SiO2: 48, Al2O3: 30, loss: 9 } }),
      material("open", { name: "Open", analysis: { SiO2: 60, Al2O3: 32 } }),
      material("odd", { name: "Odd", analysis: { SiO2: 90, Rb2O: 10, loss: 0 } }),
    ];
    expect(tell({ materials })).toMatchInlineSnapshot(`
      "warning analysis-doubtful recipes/materials/far.md › analysis
      Far: The oxides and the loss add to 87 per cent, not 100: they are used as written
      Compare it with the supplier's sheet: a line may be missing, be written twice, or hold a slipped point.

      warning analysis-doubtful recipes/materials/open.md › analysis
      Open: No loss is given: the 8 per cent that the oxides leave open is counted as lost in the fire
      Write “loss:” as the sheet gives it; where it gives none, look whether a line is missing.

      warning analysis-doubtful recipes/materials/odd.md › analysis
      Odd: Rb2O 10 is left out: Tilebook counts no oxide of Rb
      Nothing is worked out from it. What its sheet warns of belongs under “cautions:”."
    `);
  });

  it("typical analyses are told once for the whole archive, with what to write", () => {
    const of = (...ids: string[]) => ids.map((id) => ({ material: id, parts: 50 }));
    const glazes = [
      glaze("one", { name: "One", ingredients: of("whiting", "nepheline-syenite") }),
      glaze("two", {
        name: "Two",
        ingredients: of("neph-sy", "silica"),
        additions: of("ball-clay"),
      }),
    ];
    expect(tell({ glazes })).toMatchInlineSnapshot(`
      "warning typical-analysis recipes/glazes/one.md › ingredients › 1 › material
      Worked out from a typical analysis, not that of your bag: Nepheline syenite, Ball clay
      The chemistry of these glazes says so. Where you have the supplier's figures, write them into recipes/materials/nepheline-syenite.md, recipes/materials/ball-clay.md with “name:” and “analysis:”."
    `);
  });

  const without = (id: string) => ({
    ...nothing,
    withoutChemistry: new Map([[id, "nobody knows what drain clay is made of"]]),
  });
  const mixed = glaze("Ditch", {
    name: "Ditch",
    ingredients: [{ material: "drain-clay", parts: 1 }],
  });

  it("a mixed glaze without chemistry is told, with the reason", () => {
    expect(tell({ glazes: [mixed] }, without("ditch"))).toMatchInlineSnapshot(`
      "warning glaze-without-chemistry recipes/glazes/Ditch.md › ingredients
      Ditch has no chemistry: nobody knows what drain clay is made of
      Its page is published all the same, without analysis or unity formula."
    `);
    expect(tell({ glazes: [blend("half", "a"), glaze("a")] }, without("half"))).toContain(
      "› blend",
    );
  });

  it("a mixed glaze that has chemistry, and a bought one, are not told", () => {
    expect(codesIn({ glazes: [mixed] })).toEqual([]);
    expect(codesIn({ glazes: [glaze("ditch")] }, without("ditch"))).toEqual([]);
  });
});
