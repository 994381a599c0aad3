import { describe, expect, test } from "vitest";
import { atomicWeights } from "../../src/terms/atomic-weights.ts";
import {
  alkalis,
  fluxes,
  fromUnicodeSubscripts,
  makeUpOf,
  oxideAmounts,
  oxides,
  presentOxides,
  subscriptPieces,
  toUnicodeSubscripts,
} from "../../src/terms/oxides.ts";
import { readReference } from "../chemistry/reference.ts";

describe("oxides", () => {
  test("stand in the order of the headings of the table of minerals", () => {
    const [first = {}] = readReference("minerals");
    const headings = Object.keys(first).filter((heading) => /O\d?_wt_pct$/u.test(heading));
    expect(oxides).toEqual(headings.map((heading) => heading.replace("_wt_pct", "")));
  });

  test("have the molar masses that the atomic weights give", () => {
    // CIAAW 2021 values, to three decimals: minerals.csv, column molar_mass_g_mol.
    const rows = readReference("minerals").filter((row) => (row.formula ?? "") in makeUpOf);
    expect(rows.length).toBeGreaterThan(15);
    for (const row of rows) {
      const { molarMass } = makeUpOf[row.formula as keyof typeof makeUpOf];
      expect(molarMass, `${row.formula}, ${row.source}`).toBeCloseTo(
        Number(row.molar_mass_g_mol),
        3,
      );
    }
  });

  test("have fluxes of the monovalent and divalent kind only, the alkalis first", () => {
    for (const flux of fluxes) expect(makeUpOf[flux].oxygens).toBe(1);
    expect(fluxes.slice(0, 3)).toEqual(alkalis);
  });

  test("are listed as present in the order of the table, zeros left out", () => {
    expect(presentOxides({ CaO: 2, SiO2: 1, K2O: 0 })).toEqual([
      ["SiO2", 1],
      ["CaO", 2],
    ]);
    expect(Object.keys(oxideAmounts((oxide) => (oxide === "MgO" ? 1 : 0)))).toEqual(["MgO"]);
  });
});

test("every atomic weight says whether it was compared with its source", () => {
  const tags = Object.values(atomicWeights).map(({ tag }) => tag);
  expect(new Set(tags)).toEqual(new Set(["checked", "from memory"]));
});

describe("a formula as it is set", () => {
  test("has its counts lowered and its coefficients on the line", () => {
    expect(subscriptPieces("K2O·Al2O3·6SiO2")).toEqual([
      { text: "K", subscript: false },
      { text: "2", subscript: true },
      { text: "O·Al", subscript: false },
      { text: "2", subscript: true },
      { text: "O", subscript: false },
      { text: "3", subscript: true },
      { text: "·6SiO", subscript: false },
      { text: "2", subscript: true },
    ]);
  });

  test("lowers what stands behind a bracket", () => {
    expect(subscriptPieces("Ca(OH)2").at(-1)).toEqual({ text: "2", subscript: true });
  });

  test("keeps every character, whatever the formula", () => {
    for (const row of readReference("minerals")) {
      const formula = row.formula ?? "";
      const pieces = subscriptPieces(formula);
      expect(pieces.map((piece) => piece.text).join("")).toBe(formula);
    }
  });

  test("has a form with Unicode subscripts for running text and search", () => {
    expect(toUnicodeSubscripts("K2O")).toBe("K₂O");
    expect(toUnicodeSubscripts("0.75Na2O·4.65SiO2")).toBe("0.75Na₂O·4.65SiO₂");
  });

  test("comes back from its Unicode form character by character", () => {
    expect(fromUnicodeSubscripts("Na₂B₄O₅(OH)₄·8H₂O")).toBe("Na2B4O5(OH)4·8H2O");
  });
});
