import { fc, test as propertyTest } from "@fast-check/vitest";
import { describe, expect, test } from "vitest";
import { analyseFormula } from "../../src/chemistry/analysis.ts";
import { findNonNegativeAmounts } from "../../src/chemistry/least-squares.ts";
import { materialFinder } from "../../src/chemistry/materials.ts";
import { mixAnalyses } from "../../src/chemistry/mix.ts";
import { findOxideSources, suggestibleMaterials } from "../../src/chemistry/oxide-sources.ts";
import { type Candidate, findNearestRecipe, type Rework } from "../../src/chemistry/rework.ts";
import { findLargestDifference } from "../../src/chemistry/rework-distance.ts";
import { molesToUnity, weightsToMoles } from "../../src/chemistry/unity.ts";
import type { OxideAmounts } from "../../src/terms/oxides.ts";
import { largestDifference } from "./reference.ts";

const findMaterial = materialFinder([]);

function candidate(material: string): Candidate {
  const found = findMaterial(material);
  if (!found.ok) throw new Error(found.reasons[0].message);
  return { material, analysis: found.material.analysis };
}

function analysisOf(formula: string): Candidate["analysis"] {
  const reading = analyseFormula(formula);
  if (!reading.ok) throw new Error(reading.problem.message);
  return reading.analysis;
}

const candidates = (...ids: string[]) => ids.map(candidate);

function rework(wanted: OxideAmounts, from: readonly Candidate[]): Rework {
  const found = findNearestRecipe(wanted, from);
  if (!found) throw new Error("no recipe");
  return found;
}

const partsOf = ({ portions }: Rework) =>
  Object.fromEntries(portions.map(({ material, parts }) => [material, parts]));

// Seger's cone 4 glaze (seger-cones.csv, from memory).
const cone4 = { K2O: 0.3, CaO: 0.7, Al2O3: 0.5, SiO2: 4 };

describe("a rework", () => {
  test("finds the classical batch where the materials allow it", () => {
    const found = rework(cone4, candidates("potash-feldspar", "whiting", "kaolin", "silica"));
    // worked-recipes.csv, batch-cone4 (derived): the equivalent procedure.
    expect(partsOf(found)["potash-feldspar"]).toBeCloseTo(42.082, 2);
    expect(partsOf(found).whiting).toBeCloseTo(17.655, 2);
    expect(partsOf(found).kaolin).toBeCloseTo(13.011, 2);
    expect(partsOf(found).silica).toBeCloseTo(27.253, 2);
    expect(found.unreached).toEqual([]);
    expect(largestDifference(found.unity, cone4)).toBeLessThan(1e-5);
  });

  test("reaches the same formula without whiting, from wollastonite", () => {
    const found = rework(cone4, candidates("potash-feldspar", "kaolin", "silica", "wollastonite"));
    expect(found.unreached).toEqual([]);
    expect(partsOf(found).wollastonite).toBeGreaterThan(10);
  });

  test("takes no more materials than it needs, the first named before the others", () => {
    const found = rework(
      cone4,
      candidates(
        "potash-feldspar",
        "kaolin",
        "silica",
        "whiting",
        "wollastonite",
        "calcined-kaolin",
        "mica",
        "pearl-ash",
      ),
    );
    expect(Object.keys(partsOf(found)).sort()).toEqual([
      "kaolin",
      "potash-feldspar",
      "silica",
      "whiting",
    ]);
  });

  test("without potash lets soda stand in for it, and names what it cannot reach", () => {
    const stock = candidates("soda-feldspar", "whiting", "kaolin", "silica");
    const found = rework(cone4, stock);
    expect(found.unity.Na2O).toBeGreaterThan(0.25);
    expect(found.unity.SiO2).toBeCloseTo(4, 1);
    const [first, second] = found.unreached;
    expect([first?.oxide, second?.oxide].sort()).toEqual(["K2O", "Na2O"]);
    expect(found.unreached.find(({ oxide }) => oxide === "K2O")).toMatchObject({
      wanted: 0.3,
      reached: 0,
    });
  });

  test("names the materials that would bring what is lacking, those that studios have first", () => {
    const stock = candidates("soda-feldspar", "whiting", "kaolin", "silica");
    const sources = findOxideSources(cone4, rework(cone4, stock), stock, suggestibleMaterials());
    expect(sources.every(({ oxide }) => oxide === "K2O")).toBe(true);
    expect(sources[0]).toMatchObject({
      material: "potash-feldspar",
      why: "brings potassium with alumina and silica",
    });
    expect(sources[0]?.distance).toBeLessThan(0.01);
  });

  test("names whiting before plaster, and strontium carbonate before celestite", () => {
    const wanted = { K2O: 0.3, CaO: 0.5, SrO: 0.2, Al2O3: 0.5, SiO2: 4 };
    const stock = candidates("potash-feldspar", "kaolin", "silica");
    const celestite = { material: "celestite", analysis: analysisOf("SrSO4") };
    const plaster = { material: "plaster", analysis: analysisOf("CaSO4·0.5H2O") };
    const others = [celestite, plaster, ...candidates("whiting", "strontium-carbonate")];
    const sources = findOxideSources(wanted, rework(wanted, stock), stock, others);
    const namedFor = (of: string) =>
      sources.filter(({ oxide }) => oxide === of).map(({ material }) => material);
    expect(namedFor("CaO")).toEqual(["whiting", "plaster"]);
    expect(namedFor("SrO")).toEqual(["strontium-carbonate", "celestite"]);
    expect(sources.find(({ material }) => material === "whiting")?.why).toBe(
      "brings calcium and nothing else",
    );
  });

  test("takes a clay-rich stock as near as it goes and says that there is too much alumina", () => {
    const found = rework(cone4, candidates("potash-feldspar", "whiting", "kaolin"));
    expect(found.unreached.find(({ oxide }) => oxide === "SiO2")?.reached).toBeLessThan(4);
  });

  test("keeps colourants", () => {
    const wanted = { ...cone4, Fe2O3: 0.05 };
    const ids = ["potash-feldspar", "whiting", "kaolin", "silica", "red-iron-oxide"];
    expect(rework(wanted, candidates(...ids)).unity.Fe2O3).toBeCloseTo(0.05, 5);
  });

  test("keeps a colourant where much else cannot be reached", () => {
    const wanted = { ...cone4, B2O3: 0.5, CoO: 0.03 };
    const ids = ["potash-feldspar", "whiting", "kaolin", "silica", "cobalt-carbonate"];
    const found = rework(wanted, candidates(...ids));
    expect(found.unreached[0]?.oxide).toBe("B2O3");
    expect(found.unity.CoO).toBeCloseTo(0.03, 5);
  });

  test("brings no iron into a white glaze to come nearer in silica", () => {
    const stock = candidates("potash-feldspar", "whiting");
    const analysis = { oxides: { SiO2: 60, Fe2O3: 15 }, loss: 25, fluorine: 0 };
    const red = { material: "red-clay", analysis };
    const found = rework(cone4, [...stock, red]);
    expect(found.unity.Fe2O3 ?? 0).toBeLessThan(0.02);
    expect(found.unreached.map(({ oxide }) => oxide)).toContain("SiO2");
  });

  test("tells the largest difference and which way it goes", () => {
    expect(findLargestDifference({ K2O: 0.3, SiO2: 4 }, { K2O: 0.25, SiO2: 3.9 })).toEqual({
      oxide: "SiO2",
      difference: expect.closeTo(-0.1, 10),
    });
  });

  test("cannot be made from materials without a flux, or from none", () => {
    expect(findNearestRecipe(cone4, candidates("kaolin", "silica"))).toBeUndefined();
    expect(findNearestRecipe(cone4, [])).toBeUndefined();
  });

  const ids = ["potash-feldspar", "soda-feldspar", "silica", "dolomite", "talc", "borax", "kaolin"];
  const weights = fc.array(fc.integer({ min: 1, max: 60 }), { minLength: 7, maxLength: 7 });
  propertyTest.prop([weights], { numRuns: 40 })(
    "from a recipe's own materials comes back to its formula",
    (parts) => {
      const from = candidates(...ids);
      const mixed = mixAnalyses(
        from.map(({ analysis }, i) => ({ analysis, weight: parts[i] ?? 1 })),
      );
      const wanted = molesToUnity(weightsToMoles(mixed.oxides)) ?? {};
      const found = rework(wanted, from);
      expect(found.distance).toBeLessThan(0.002);
      const total = found.portions.reduce((sum, portion) => sum + portion.parts, 0);
      expect(total).toBeCloseTo(100, 0);
    },
  );
});

describe("non-negative amounts", () => {
  const column = fc.array(fc.double({ min: 0.05, max: 3, noNaN: true }), {
    minLength: 5,
    maxLength: 5,
  });
  propertyTest.prop([fc.array(column, { minLength: 1, maxLength: 8 }), column], { numRuns: 60 })(
    "are the nearest: no amount can change a little and do better",
    (columns, wanted) => {
      const amounts = findNonNegativeAmounts(columns, wanted);
      if (!amounts) throw new Error("no end");
      const residual = wanted.map(
        (value, i) =>
          value - columns.reduce((sum, c, j) => sum + (c[i] ?? 0) * (amounts[j] ?? 0), 0),
      );
      for (const [j, values] of columns.entries()) {
        const gradient = values.reduce((sum, value, i) => sum + value * (residual[i] ?? 0), 0);
        expect(amounts[j]).toBeGreaterThanOrEqual(0);
        if ((amounts[j] ?? 0) > 1e-4) expect(Math.abs(gradient)).toBeLessThan(1e-4);
        else expect(gradient).toBeLessThan(1e-4);
      }
    },
  );
});

describe("what may be suggested", () => {
  test("holds no lead, no cadmium, no hexavalent chromium and nothing that dissolves", () => {
    const suggested = suggestibleMaterials();
    expect(suggested.length).toBeGreaterThan(50);
    for (const { analysis } of suggested) {
      expect(analysis.oxides.PbO ?? 0).toBe(0);
      expect(analysis.oxides.CdO ?? 0).toBe(0);
    }
    const names = suggested.map(({ material }) => material);
    for (const never of ["potassium-dichromate", "salt", "soda-ash", "red-lead", "borax"])
      expect(names).not.toContain(never);
  });
});
