import { fc, test as propertyTest } from "@fast-check/vitest";
import { describe, expect, test } from "vitest";
import { parseFormula } from "../../src/chemistry/formula.ts";
import { readReference } from "./reference.ts";

function elementsOf(written: string) {
  const reading = parseFormula(written);
  return reading.ok ? reading.formula.elements : reading.problem;
}

function problemOf(written: string) {
  const reading = parseFormula(written);
  if (reading.ok) throw new Error(`${written} was read`);
  const { code, position, message, hint } = reading.problem;
  return { code, position, text: `${message}. ${hint}` };
}

describe("a formula", () => {
  test("may be a row of oxide groups", () => {
    expect(elementsOf("K2O·Al2O3·6SiO2")).toEqual({ K: 2, Al: 2, Si: 6, O: 16 });
  });

  test("may be written with asterisks, spaces round the dots, or Unicode subscripts", () => {
    const expected = elementsOf("K2O·Al2O3·6SiO2");
    expect(elementsOf("K2O*Al2O3*6SiO2")).toEqual(expected);
    expect(elementsOf(" K2O · Al2O3 * 6 SiO2 ")).toEqual(expected);
    expect(elementsOf("K₂O·Al₂O₃·6SiO₂")).toEqual(expected);
    expect(elementsOf("K2O⋅Al2O3•6SiO2")).toEqual(expected);
  });

  test("may hold brackets, one inside the other, and water", () => {
    expect(elementsOf("Na2B4O5(OH)4·8H2O")).toEqual({ Na: 2, B: 4, O: 17, H: 20 });
    expect(elementsOf("Mg5(CO3)4(OH)2·4H2O")).toEqual({ Mg: 5, C: 4, O: 18, H: 10 });
    expect(elementsOf("Ca((PO3)(OH))2")).toEqual({ Ca: 1, P: 2, O: 8, H: 2 });
    expect(elementsOf("2(PbO·SiO2)·SiO2")).toEqual(elementsOf("2PbO·3SiO2"));
  });

  test("may have decimal coefficients and decimal counts", () => {
    const reading = parseFormula("0.75Na2O·0.25K2O·1.11Al2O3·4.65SiO2");
    if (!reading.ok) throw new Error(reading.problem.message);
    expect(reading.formula.elements.Na).toBeCloseTo(1.5, 12);
    expect(reading.formula.elements.Al).toBeCloseTo(2.22, 12);
    expect(reading.formula.elements.O).toBeCloseTo(0.75 + 0.25 + 3.33 + 9.3, 12);
    expect(reading.formula.balanced).toBe(true);
    expect(elementsOf("KLi1.5Al1.5AlSi3O10F2")).toMatchObject({ Li: 1.5, Al: 2.5 });
    expect(elementsOf("CaSO4·0.5H2O")).toEqual({ Ca: 1, S: 1, O: 4.5, H: 1 });
  });

  test("of every mineral in the table is read, balances, and weighs what the table says", () => {
    for (const row of readReference("minerals")) {
      const reading = parseFormula(row.formula ?? "");
      if (!reading.ok) throw new Error(`${row.formula}: ${reading.problem.message}`);
      expect(reading.formula.balanced, row.formula).toBe(true);
      // Given to three decimals, so half a unit of the last: minerals.csv, CIAAW 2021 weights.
      const off = Math.abs(reading.formula.molarMass - Number(row.molar_mass_g_mol));
      expect(off, `${row.formula}: ${row.source}`).toBeLessThan(0.00051);
    }
  });

  test("that cannot balance says so", () => {
    const reading = parseFormula("K2O·Al2O36SiO2");
    expect(reading).toMatchObject({ ok: true, formula: { balanced: false } });
  });
});

describe("a point", () => {
  test("between groups is an error that shows the formula with ·", () => {
    expect(problemOf("K2O.Al2O3.6SiO2")).toMatchInlineSnapshot(`
      {
        "code": "point-between-groups",
        "position": 4,
        "text": "A “.” in a formula is a decimal point, and read so this one does not hold together. Write · or * between groups: K2O·Al2O3·6SiO2.",
      }
    `);
  });

  test("between groups is found even where it could be a decimal point", () => {
    expect(problemOf("Al2O3.2SiO2").text).toContain("Al2O3·2SiO2");
    expect(problemOf("CaSO4.2H2O").text).toContain("CaSO4·2H2O");
    expect(problemOf("Al2Si2O5(OH)4.2H2O").text).toContain("Al2Si2O5(OH)4·2H2O");
    expect(problemOf("3MgCO3.Mg(OH)2.3H2O").text).toContain("3MgCO3·Mg(OH)2·3H2O");
    expect(problemOf("CaO.SiO2").text).toContain("CaO·SiO2");
  });

  test("between groups is told from the decimals beside it", () => {
    expect(problemOf("0.3K2O.0.7CaO.0.5Al2O3.4SiO2").text).toContain(
      "0.3K2O·0.7CaO·0.5Al2O3·4SiO2",
    );
    expect(problemOf("Na0.33Al1.67Mg0.33Si4O10(OH)2.2H2O").text).toContain(
      "Na0.33Al1.67Mg0.33Si4O10(OH)2·2H2O",
    );
  });

  test("that is a decimal point stays one", () => {
    expect(elementsOf("Na0.33Al1.67Mg0.33Si4O10(OH)2")).toMatchObject({ Na: 0.33, Al: 1.67 });
    expect(elementsOf("Fe0.95O")).toEqual({ Fe: 0.95, O: 1 });
  });

  test("is never read as the weight of another formula", () => {
    // A general parser reads K2O.Al2O3.6SiO2 as 265.84; the feldspar weighs 556.65.
    const reading = parseFormula("K2O·Al2O3·6SiO2");
    expect(reading.ok && reading.formula.molarMass).toBeCloseTo(556.65, 2);
    expect(parseFormula("K2O.Al2O3.6SiO2").ok).toBe(false);
  });
});

describe("what is wrong with a formula", () => {
  test("is told with its place and what to do", () => {
    expect(problemOf("Al2(SiO3")).toMatchInlineSnapshot(`
      {
        "code": "bracket-not-closed",
        "position": 4,
        "text": "This bracket is never closed. Close it with a “)” where its part of the formula ends.",
      }
    `);
    expect(problemOf("Ca(OH))2")).toMatchInlineSnapshot(`
      {
        "code": "bracket-not-opened",
        "position": 7,
        "text": "This bracket was never opened. Take it out, or put a “(” before what belongs in it.",
      }
    `);
    expect(problemOf("SiO2·Xx2O")).toMatchInlineSnapshot(`
      {
        "code": "unknown-element",
        "position": 6,
        "text": "“Xx” is no element with an atomic weight here. Elements begin with one capital letter: Si, Al, Ca, K. Mind capitals: CO is carbon and oxygen, Co is cobalt.",
      }
    `);
    expect(problemOf("sio2")).toMatchInlineSnapshot(`
      {
        "code": "stray-character",
        "position": 1,
        "text": "“s” has no place in a formula. Elements begin with a capital letter: SiO2, not sio2.",
      }
    `);
    expect(problemOf("0,75Na2O")).toMatchInlineSnapshot(`
      {
        "code": "stray-character",
        "position": 2,
        "text": "“,” has no place in a formula. Write decimals with a point, 0.75, and · between groups.",
      }
    `);
    expect(problemOf("K2O Al2O3")).toMatchInlineSnapshot(`
      {
        "code": "space-between-groups",
        "position": 5,
        "text": "A space does not join the parts of a formula. Write · or * between groups, K2O·Al2O3·6SiO2, and no space inside one.",
      }
    `);
    expect(problemOf("Al0O3")).toMatchInlineSnapshot(`
      {
        "code": "count-out-of-range",
        "position": 3,
        "text": "“0” is no number that a formula can hold. Write oxygen with the letter O: SiO2.",
      }
    `);
    expect(problemOf("SiO2·")).toMatchInlineSnapshot(`
      {
        "code": "nothing-between-dots",
        "position": 6,
        "text": "An element is missing here. Write elements before and after every ·, and between every pair of brackets.",
      }
    `);
  });

  test.each([
    ["", "empty-formula"],
    ["   ", "empty-formula"],
    ["·", "nothing-between-dots"],
    ["()", "nothing-between-dots"],
    ["K2O··SiO2", "nothing-between-dots"],
    ["2 3SiO2", "number-out-of-place"],
    ["6", "nothing-between-dots"],
    ["Si O2", "space-between-groups"],
    ["SiO 2", "space-between-groups"],
    ["SiO99999", "count-out-of-range"],
    [".75Na2O", "point-between-groups"],
    ["Ca[OH]2", "stray-character"],
    ["Si02", "count-out-of-range"],
    ["H2O😀", "stray-character"],
    ["SiO2; DROP", "stray-character"],
    ["(".repeat(100), "nothing-between-dots"],
    ["SiO2·".repeat(60), "formula-too-long"],
    ["A".repeat(201), "formula-too-long"],
  ])("in %j is %s", (written, code) => {
    expect(problemOf(written).code).toBe(code);
  });

  propertyTest.prop([fc.oneof(fc.string({ maxLength: 300 }), fc.string({ unit: "grapheme" }))])(
    "is a result whatever is typed, never an exception, with a place inside the text",
    (written) => {
      const reading = parseFormula(written);
      if (reading.ok) {
        expect(reading.formula.molarMass).toBeGreaterThan(0);
        expect(Number.isFinite(reading.formula.molarMass)).toBe(true);
      } else {
        expect(reading.problem.position).toBeGreaterThanOrEqual(1);
        expect(reading.problem.position).toBeLessThanOrEqual(written.length + 1);
      }
    },
  );

  const pieces = ["K", "Al", "Si", "O", "OH", "2", "3", "6", "0.5", "(", ")", "·", ".", "*", " "];
  propertyTest.prop([fc.array(fc.constantFrom(...pieces), { maxLength: 40 })])(
    "is a result for every jumble of the right pieces",
    (jumble) => {
      const reading = parseFormula(jumble.join(""));
      expect(reading.ok ? reading.formula.molarMass : reading.problem.position).toBeGreaterThan(0);
    },
  );
});

describe("groups", () => {
  const group = fc.record({
    coefficient: fc.constantFrom("", "2", "0.25", "1.11", "6"),
    oxide: fc.constantFrom("SiO2", "Al2O3", "K2O", "CaO", "Mg(OH)2", "H2O"),
  });

  propertyTest.prop([fc.array(group, { minLength: 1, maxLength: 6 }), fc.infiniteStream(fc.nat())])(
    "may stand in any order",
    (groups, order) => {
      const texts = groups.map(({ coefficient, oxide }) => coefficient + oxide);
      const shuffled = texts
        .map((text) => ({ text, key: order.next().value }))
        .sort((a, b) => a.key - b.key)
        .map(({ text }) => text);
      const a = parseFormula(texts.join("·"));
      const b = parseFormula(shuffled.join("·"));
      if (!a.ok || !b.ok) throw new Error("a formula of whole groups was not read");
      expect(b.formula.molarMass).toBeCloseTo(a.formula.molarMass, 9);
      expect(Object.keys(b.formula.elements).sort()).toEqual(
        Object.keys(a.formula.elements).sort(),
      );
    },
  );

  propertyTest.prop([fc.array(group, { minLength: 1, maxLength: 4 })])(
    "in brackets weigh as often as the number behind them says",
    (groups) => {
      const inside = groups.map(({ coefficient, oxide }) => coefficient + oxide).join("·");
      const once = parseFormula(inside);
      const thrice = parseFormula(`3(${inside})`);
      if (!once.ok || !thrice.ok) throw new Error("a formula of whole groups was not read");
      expect(thrice.formula.molarMass).toBeCloseTo(3 * once.formula.molarMass, 9);
    },
  );
});
