import { fc, test as propertyTest } from "@fast-check/vitest";
import { describe, expect, test } from "vitest";
import { type Analysis, analyseFormula } from "../../src/chemistry/analysis.ts";
import { findFiredChemistry } from "../../src/chemistry/fired-chemistry.ts";
import { mixAnalyses } from "../../src/chemistry/mix.ts";
import { meltFormulaAt, meltPath, meltTogether } from "../../src/chemistry/overlap.ts";
import { largestDifference } from "./reference.ts";

function raw(...parts: [formula: string, weight: number][]): Analysis {
  return mixAnalyses(
    parts.map(([formula, weight]) => {
      const reading = analyseFormula(formula);
      if (!reading.ok) throw new Error(reading.problem.message);
      return { analysis: reading.analysis, weight };
    }),
  );
}

const lower = raw(["KAlSi3O8", 60], ["CaCO3", 20], ["SiO2", 20]);
const upper = raw(["NaAlSi3O8", 40], ["Ca2B6O11·5H2O", 40], ["SiO2", 20]);

describe("the melt of two glazes over each other", () => {
  test("is weighted by coats", () => {
    const melt = meltTogether({ raw: lower, coats: 3 }, { raw: upper, coats: 1 });
    expect(melt.upperShare).toBe(0.25);
    const mixed = findFiredChemistry(
      mixAnalyses([
        { analysis: lower, weight: 75 },
        { analysis: upper, weight: 25 },
      ]),
    );
    const off = largestDifference(
      melt.chemistry?.weightPercent ?? {},
      mixed?.weightPercent ?? { SiO2: 100 },
    );
    expect(off).toBeLessThan(1e-9);
  });

  test("is weighted by what a coat leaves, and says where that was taken as 1", () => {
    const known = meltTogether(
      { raw: lower, coats: 2, weightPerCoat: 1.5 },
      { raw: upper, coats: 2, weightPerCoat: 0.5 },
    );
    expect(known).toMatchObject({ upperShare: 0.25, isWeightAssumed: false });
    const half = meltTogether({ raw: lower, coats: 1 }, { raw: upper, coats: 1, weightPerCoat: 1 });
    expect(half).toMatchObject({ upperShare: 0.5, isWeightAssumed: true });
  });

  test("runs in tenths from the lower glaze alone to the upper alone", () => {
    const path = meltPath(lower, upper);
    expect(path.map(({ upperShare }) => upperShare)).toEqual([
      0, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 1,
    ]);
    for (const [point, end] of [
      [path[0], lower],
      [path[10], upper],
    ] as const) {
      const unity = findFiredChemistry(end)?.unity;
      expect(point?.silica).toBeCloseTo(unity?.SiO2 ?? 0, 12);
      expect(point?.alumina).toBeCloseTo(unity?.Al2O3 ?? 0, 12);
    }
  });

  test("lies on the path at its own share", () => {
    for (const { upperShare, silica, alumina } of meltPath(lower, upper)) {
      const { unity } = meltFormulaAt(lower, upper, upperShare);
      expect(silica).toBeCloseTo(unity?.SiO2 ?? 0, 10);
      expect(alumina).toBeCloseTo(unity?.Al2O3 ?? 0, 10);
    }
  });

  test("has no place on the path where there is no flux", () => {
    const clay = raw(["Al2Si2O5(OH)4", 100]);
    expect(meltPath(clay, upper).map(({ upperShare }) => upperShare)).toEqual([
      ...[0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 1],
    ]);
  });

  test("gains boric oxide steadily on the way to a glaze that holds it", () => {
    const tenths = Array.from({ length: 11 }, (_, i) => meltFormulaAt(lower, upper, i / 10));
    const boric = tenths.map(({ unity }) => unity?.B2O3 ?? 0);
    for (const [i, amount] of boric.entries())
      if (i > 0) expect(amount).toBeGreaterThan(boric[i - 1] ?? 100);
  });

  const coats = fc.integer({ min: 1, max: 9 });
  propertyTest.prop([coats, coats])("of a glaze over itself is that glaze", (under, over) => {
    const melt = meltTogether({ raw: lower, coats: under }, { raw: lower, coats: over });
    const alone = findFiredChemistry(lower);
    const off = largestDifference(
      melt.chemistry?.molePercent ?? {},
      alone?.molePercent ?? { SiO2: 100 },
    );
    expect(off).toBeLessThan(1e-9);
  });
});
