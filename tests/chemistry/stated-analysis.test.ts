import { describe, expect, test } from "vitest";
import { readStatedAnalysis, type StatedAnalysis } from "../../src/chemistry/stated-analysis.ts";

function read(stated: StatedAnalysis) {
  const reading = readStatedAnalysis(stated);
  if (!reading.ok) throw new Error(reading.problem.message);
  return reading;
}

function notesOf(stated: StatedAnalysis) {
  return read(stated).notes.map(({ code, message }) => `${code}: ${message}`);
}

describe("a stated analysis", () => {
  // NBS/NIST SRM 70a potash feldspar, certificate of analysis (from memory: worked-recipes.csv).
  const feldspar = {
    SiO2: 67.1,
    Al2O3: 17.9,
    Fe2O3: 0.075,
    TiO2: 0.01,
    CaO: 0.11,
    BaO: 0.02,
    Na2O: 2.55,
    K2O: 11.8,
    loss: 0.4,
  };

  test("is taken as it stands where it adds to about 100", () => {
    const { analysis, notes } = read(feldspar);
    const { loss, ...oxides } = feldspar;
    expect(analysis).toEqual({ oxides, loss, fluorine: 0 });
    expect(notes).toEqual([]);
  });

  test("that does not add to 100 is used as written, and a note says so", () => {
    const { analysis } = read({ ...feldspar, SiO2: 60 });
    expect(analysis.oxides.SiO2).toBe(60);
    expect(analysis.loss).toBe(0.4);
    expect(notesOf({ ...feldspar, SiO2: 60 })).toMatchInlineSnapshot(`
      [
        "analysis-sum: The oxides and the loss add to 92.9 per cent, not 100: they are used as written",
      ]
    `);
  });

  test("without a loss counts what is left open as lost, and a note says so", () => {
    expect(read({ SiO2: 46.5, Al2O3: 39.5 }).analysis.loss).toBeCloseTo(14, 9);
    expect(notesOf({ SiO2: 46.5, Al2O3: 39.5 })).toMatchInlineSnapshot(`
      [
        "loss-taken-as-rest: No loss is given: the 14 per cent that the oxides leave open is counted as lost in the fire",
      ]
    `);
  });

  test("without a loss that adds to more than 100 loses nothing", () => {
    expect(read({ SiO2: 100.4 }).analysis.loss).toBe(0);
    expect(notesOf({ SiO2: 90, K2O: 15 })).toEqual([
      "analysis-sum: The oxides and the loss add to 105 per cent, not 100: they are used as written",
    ]);
  });

  test("restates iron, cobalt and manganese as they are when fired, and says so", () => {
    const { analysis } = read({ FeO: 10, Fe2O3: 20, Co3O4: 30, MnO2: 40, loss: 0 });
    // Ratios of molar masses: Fe2O3 / 2 FeO = 1.1113, 3 CoO / Co3O4 = 0.9336, MnO / MnO2 = 0.8160.
    expect(analysis.oxides.Fe2O3).toBeCloseTo(20 + 11.113, 3);
    expect(analysis.oxides.CoO).toBeCloseTo(30 * 0.93356, 3);
    expect(analysis.oxides.MnO).toBeCloseTo(40 * 0.81597, 3);
    expect(analysis.oxides.FeO).toBeUndefined();
    expect(notesOf({ FeO: 10, SiO2: 90, loss: 0 })).toEqual([
      "restated: FeO 10 is stated as Fe2O3 11.1, as it is when fired",
    ]);
  });

  test("keeps its sum when it is restated: the loss pays for the oxygen", () => {
    const { analysis } = read({ FeO: 10, Co3O4: 30, SiO2: 58, loss: 2 });
    const { Fe2O3 = 0, CoO = 0, SiO2 = 0 } = analysis.oxides;
    expect(Fe2O3 + CoO + SiO2 + analysis.loss).toBeCloseTo(100, 9);
  });

  test("counts gases as loss, and says so", () => {
    expect(read({ CaO: 32.6, SO3: 46.5, H2O: 20.9 }).analysis.loss).toBeCloseTo(67.4, 9);
    expect(notesOf({ SiO2: 98, SO3: 1, loss: 1 })).toEqual([
      "counted-as-loss: SO3 1 is counted as loss",
    ]);
  });

  test("leaves out oxides that no glaze is stated in, and says so", () => {
    expect(notesOf({ ...feldspar, Rb2O: 0.06 })).toEqual([
      "oxide-not-counted: Rb2O 0.06 is left out: Tilebook counts no oxide of Rb",
    ]);
    expect(read({ ...feldspar, Rb2O: 0.06 }).analysis).toEqual(read(feldspar).analysis);
  });

  test("keeps fluorine apart, and its sum allows for the oxygen that fluorine replaces", () => {
    // Fluorspar: 71.825 CaO and 48.667 F, minerals.csv (derived).
    const { analysis, notes } = read({ CaO: 71.825, F: 48.667 });
    expect(analysis.fluorine).toBe(48.667);
    expect(analysis.loss).toBeCloseTo(0, 2);
    expect(notes).toEqual([]);
  });

  test.each(["Al203", "sio2", "alumina", "Si", "K2CO3", "KNaO", "", "Na20", "O2"])(
    "with a line “%s” is a problem, since that is no oxide",
    (key) => {
      expect(readStatedAnalysis({ SiO2: 50, [key]: 40 })).toMatchObject({
        ok: false,
        problem: { key },
      });
    },
  );

  test.each(["loss", "Loss", "LOI", "loi", "L.O.I."])("reads its loss under “%s”", (key) => {
    expect(read({ SiO2: 60, Al2O3: 30, [key]: 10 })).toMatchObject({
      analysis: { loss: 10 },
      notes: [],
    });
  });

  test("with two lines for the loss is a problem, since one of them would be dropped", () => {
    const reading = readStatedAnalysis({ SiO2: 90, loss: 5, LOI: 6 });
    expect(reading).toEqual({
      ok: false,
      problem: {
        key: "LOI",
        message: "“LOI” is a second line for the loss",
        hint: "Keep one of them: loss and LOI are the same.",
      },
    });
  });

  test("has a problem that says what to write", () => {
    const reading = readStatedAnalysis({ Al203: 40 });
    expect(reading).toMatchInlineSnapshot(`
      {
        "ok": false,
        "problem": {
          "hint": "Write oxygen with the letter O, not with a zero.",
          "key": "Al203",
          "message": "“Al203” is no oxide",
        },
      }
    `);
  });
});
