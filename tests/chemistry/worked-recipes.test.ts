/** Published batches, formulas and analyses against what the engine makes of them. */
import { describe, expect, test } from "vitest";
import type { Analysis } from "../../src/chemistry/analysis.ts";
import { findFiredChemistry } from "../../src/chemistry/fired-chemistry.ts";
import { materialFinder } from "../../src/chemistry/materials.ts";
import { glazeFinder } from "../../src/chemistry/mixed-glazes.ts";
import { readStatedAnalysis } from "../../src/chemistry/stated-analysis.ts";
import { molesToUnity, toPercent } from "../../src/chemistry/unity.ts";
import { makeUpOf, type OxideAmounts, oxideAmounts } from "../../src/terms/oxides.ts";
import {
  cell,
  largestDifference,
  oxidesOf,
  parseAmounts,
  type Row,
  readReference,
} from "./reference.ts";

const findMaterial = materialFinder([]);

const plainIds: Readonly<Record<string, string>> = {
  albite: "soda-feldspar",
  "barium carbonate": "barium-carbonate",
  kaolin: "kaolin",
  orthoclase: "potash-feldspar",
  quartz: "silica",
  "red iron oxide": "red-iron-oxide",
  whiting: "whiting",
};

function materialCalled(name: string) {
  const found = findMaterial(plainIds[name] ?? "");
  if (!found.ok) throw new Error(`${name}: ${found.reasons[0].message}`);
  return found.material;
}

function rawOf(batch: Readonly<Record<string, number>>): Analysis {
  const ingredients = Object.entries(batch).map(([name, parts]) => ({
    material: materialCalled(name).id,
    parts,
  }));
  const making = { kind: "recipe", recipe: { ingredients, additions: [] } } as const;
  const found = glazeFinder([{ id: "it", name: "It", making }], findMaterial)("it");
  if (!found.ok) throw new Error(found.reasons[0].message);
  return found.raw;
}

function chemistryOf(raw: Analysis) {
  const chemistry = findFiredChemistry(raw);
  if (!chemistry) throw new Error("nothing left");
  return chemistry;
}

const rows = readReference("worked-recipes");
const ofKind = (kind: string) =>
  rows.filter((row) => row.kind === kind).map((row) => [row.name, row] as const);

/** Half a unit of the last decimal given, and a little for binary numbers. */
const unityTolerance = 0.000051;
const percentTolerance = 0.00051;

function expectChemistry(raw: Analysis, row: Row): void {
  const source = `${row.source} (${row.tag})`;
  const { unity, weightPercent, lossOnIgnition, silicaToAlumina } = chemistryOf(raw);
  const published = parseAmounts(row.unity_formula_derived ?? "").oxides;
  expect(largestDifference(unity ?? {}, published), source).toBeLessThan(unityTolerance);
  const fired = parseAmounts(row.fired_wt_pct ?? "").oxides;
  expect(largestDifference(weightPercent, fired), source).toBeLessThan(percentTolerance);
  expect(Math.abs(lossOnIgnition - cell(row, "LOI_pct_of_raw"))).toBeLessThan(percentTolerance);
  expect(silicaToAlumina).toBeCloseTo(cell(row, "SiO2_to_Al2O3"), 3);
}

describe("from a recipe to its formula", () => {
  test.each(ofKind("recipe -> formula"))("%s comes out as worked", (_, row) => {
    expectChemistry(rawOf(parseAmounts(row.input ?? "").others), row);
  });

  test("Seger's batches give the formulas printed beside them within 0.005", () => {
    const seger = rows.filter((row) => row.id?.startsWith("seger-"));
    expect(seger.length).toBe(7);
    for (const row of seger) {
      // "0.3 K2O 0.7 CaO 0.2 Fe2O3 ...", Tonind.-Ztg. 1886, from memory.
      const published = [...(row.published_result ?? "").matchAll(/([\d.]+) (\w+)/gu)];
      const formula = Object.fromEntries(published.map(([, n, oxide]) => [oxide, Number(n)]));
      const { unity } = chemistryOf(rawOf(parseAmounts(row.input ?? "").others));
      expect(largestDifference(unity ?? {}, formula), row.name).toBeLessThan(0.005);
    }
  });
});

describe("from an analysis to its formula", () => {
  test.each(ofKind("analysis -> formula"))("%s comes out as worked", (_, row) => {
    const { oxides, others } = parseAmounts(row.input ?? "");
    const loss = others.LOI ?? 0;
    const reading = readStatedAnalysis({ ...oxides, loss });
    if (!reading.ok) throw new Error(reading.problem.message);
    const { unity, weightPercent, silicaToAlumina } = chemistryOf(reading.analysis);
    // The table counted the Rb2O of SRM 70a as a flux and in the fired sum; no glaze here is
    // stated in Rb2O, so its share is taken out before comparing.
    const published = molesToUnity(parseAmounts(row.unity_formula_derived ?? "").oxides);
    const fired = toPercent(parseAmounts(row.fired_wt_pct ?? "").oxides);
    const off = others.Rb2O ? 4 * unityTolerance : unityTolerance;
    expect(largestDifference(unity ?? {}, published ?? {}), row.source).toBeLessThan(off * 2);
    expect(largestDifference(weightPercent, fired)).toBeLessThan(2 * percentTolerance);
    expect(silicaToAlumina).toBeCloseTo(cell(row, "SiO2_to_Al2O3"), 3);
  });
});

function molesToWeights(moles: OxideAmounts): OxideAmounts {
  return oxideAmounts((oxide) => (moles[oxide] ?? 0) * makeUpOf[oxide].molarMass);
}

describe("the Seger cones", () => {
  const cones = readReference("seger-cones");

  test("have the weight per cent that their formulas give", () => {
    expect(cones.length).toBeGreaterThan(50);
    for (const row of cones) {
      const weights = toPercent(molesToWeights(oxidesOf(row, "")));
      const published = oxidesOf(row, "_wt_pct");
      const source = `cone ${row.cone}: ${row.source} (${row.tag})`;
      // Two decimals are given.
      expect(largestDifference(weights, published), source).toBeLessThan(0.0051);
    }
  });

  test("leave a glaze whose fluxes are a trace without a formula", () => {
    const washed = chemistryOf({ oxides: { SiO2: 99.9, Na2O: 0.00003 }, loss: 0, fluorine: 0 });
    expect(washed).toMatchObject({ unity: null, alkaliShare: null });
  });

  test("are unity formulas, but for the hottest, which hold no flux", () => {
    for (const row of cones) {
      const formula = oxidesOf(row, "");
      const chemistry = chemistryOf({ oxides: molesToWeights(formula), loss: 0, fluorine: 0 });
      if (row.note?.startsWith("no flux")) {
        expect(chemistry.unity, `cone ${row.cone}`).toBeNull();
        expect(chemistry.alkaliShare).toBeNull();
      } else {
        expect(largestDifference(chemistry.unity ?? {}, formula)).toBeLessThan(1e-9);
      }
      const ratio = cell(row, "SiO2_to_Al2O3");
      if (ratio === 0) expect(chemistry.silicaToAlumina).toBeNull();
      else expect(chemistry.silicaToAlumina).toBeCloseTo(ratio, 2);
    }
  });

  test("come from their batch weights within 0.005", () => {
    const weighed = cones.filter((row) => row.batch_orthoclase !== "");
    expect(weighed.length).toBe(9);
    for (const row of weighed) {
      const batch = {
        orthoclase: cell(row, "batch_orthoclase"),
        whiting: cell(row, "batch_marble_CaCO3"),
        quartz: cell(row, "batch_quartz"),
        "red iron oxide": cell(row, "batch_Fe2O3"),
        kaolin: cell(row, "batch_kaolin_raw"),
      };
      const { unity } = chemistryOf(rawOf(batch));
      const off = largestDifference(unity ?? {}, oxidesOf(row, ""));
      expect(off, `cone ${row.cone}, ${row.batch_basis}`).toBeLessThan(0.005);
    }
  });
});
