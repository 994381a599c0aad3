import { fc, test as propertyTest } from "@fast-check/vitest";
import { describe, expect, test } from "vitest";
import { chemistryOfGlazes, type GlazeChemistryResult } from "../../src/chemistry/glazes.ts";
import { sumOfOxides } from "../../src/chemistry/oxide-sums.ts";
import { tellReasons } from "../../src/chemistry/why-no-chemistry.ts";
import type { Filed } from "../../src/records/archive.ts";
import { type GlazeRecord, glazeSchema } from "../../src/records/glaze.ts";
import { type MaterialRecord, materialSchema } from "../../src/records/material.ts";
import { readAs, type SourceMap } from "../../src/records/read.ts";
import { idKey } from "../../src/terms/ids.ts";
import { largestDifference } from "./reference.ts";

function filed<T>(id: string, record: T): [string, Filed<T>] {
  return [idKey(id), { id, file: `recipes/${id}.md`, record, notes: "" }];
}

function glaze(id: string, source: SourceMap): [string, Filed<GlazeRecord>] {
  const reading = readAs(glazeSchema, { name: id, kind: "glaze", ...source });
  if (!reading.ok) throw new Error(reading.faults.map(({ message }) => message).join("; "));
  return filed(id, reading.record);
}

function material(id: string, source: SourceMap): [string, Filed<MaterialRecord>] {
  const reading = readAs(materialSchema, { name: id, ...source });
  if (!reading.ok) throw new Error(reading.faults.map(({ message }) => message).join("; "));
  return filed(id, reading.record);
}

const of = (name: string, parts: number): SourceMap => ({ material: name, parts: String(parts) });
const part = (name: string, parts: number): SourceMap => ({ glaze: name, parts: String(parts) });

function work(
  glazes: readonly [string, Filed<GlazeRecord>][],
  materials: readonly [string, Filed<MaterialRecord>][] = [],
): ReadonlyMap<string, GlazeChemistryResult> {
  return chemistryOfGlazes({ glazes: new Map(glazes), materials: new Map(materials) });
}

function chemistryOf(results: ReadonlyMap<string, GlazeChemistryResult>, id: string) {
  const result = results.get(id);
  if (!result?.ok) throw new Error(result ? tellReasons(result.reasons) : `no glaze ${id}`);
  return result.chemistry;
}

function reasonsOf(results: ReadonlyMap<string, GlazeChemistryResult>, id: string) {
  const result = results.get(id);
  if (!result || result.ok) throw new Error(`${id} has chemistry`);
  return { codes: result.reasons.map(({ code }) => code), text: tellReasons(result.reasons) };
}

// B. Leach, A Potter's Book (1940), cone 8 glaze 4:3:2:1, from memory: worked-recipes.csv.
const leach = [of("potash-feldspar", 40), of("silica", 30), of("whiting", 20), of("kaolin", 10)];

describe("a glaze mixed from materials", () => {
  test("has the chemistry of its recipe", () => {
    const chemistry = chemistryOf(work([glaze("clear", { ingredients: leach })]), "clear");
    expect(chemistry.unity?.K2O).toBeCloseTo(0.2645, 4);
    expect(chemistry.unity?.CaO).toBeCloseTo(0.7355, 4);
    expect(chemistry.silicaToAlumina).toBeCloseTo(9.114, 3);
    expect(chemistry.alkaliShare).toBeCloseTo(0.2645, 4);
    expect(chemistry.lossOnIgnition).toBeCloseTo(10.19, 3);
    expect(sumOfOxides(chemistry.weightPercent)).toBeCloseTo(100, 9);
    expect(sumOfOxides(chemistry.molePercent)).toBeCloseTo(100, 9);
  });

  test("counts its additions per 100 of the ingredients, in analysis and loss", () => {
    const half = [of("potash-feldspar", 20), of("silica", 15), of("whiting", 10), of("kaolin", 5)];
    const additions = [of("red-iron-oxide", 8), of("copper-carbonate", 2)];
    const whole = chemistryOf(work([glaze("a", { ingredients: leach, additions })]), "a");
    const halved = chemistryOf(work([glaze("a", { ingredients: half, additions })]), "a");
    // Raw 110, of which 10.190 and 2 × 28.051 % (minerals.csv) are lost.
    expect(whole.lossOnIgnition).toBeCloseTo((10.19 + 2 * 0.28051) / 1.1, 3);
    const fired = 110 - 10.19 - 2 * 0.28051;
    expect(whole.weightPercent.Fe2O3).toBeCloseTo(800 / fired, 3);
    expect(largestDifference(whole.weightPercent, halved.weightPercent)).toBeLessThan(1e-9);
  });

  test("states its iron as Fe2O3 and its cobalt as CoO", () => {
    const additions = [of("siderite", 5), of("black-cobalt-oxide", 1), of("iron-chromate", 1)];
    const results = work([glaze("dark", { ingredients: leach, additions })]);
    const { weightPercent, unity } = chemistryOf(results, "dark");
    expect(weightPercent).toHaveProperty("Fe2O3");
    expect(weightPercent).toHaveProperty("CoO");
    expect(weightPercent).not.toHaveProperty("FeO");
    const { K2O = 0, CaO = 0, ...others } = unity ?? {};
    expect(K2O + CaO).toBeCloseTo(1, 9);
    expect(others.CoO).toBeGreaterThan(0);
  });

  test("without a flux has no unity formula, and without alumina no ratio", () => {
    const results = work([
      glaze("clay", { ingredients: [of("kaolin", 1)] }),
      glaze("wash", { ingredients: [of("red-iron-oxide", 1)] }),
    ]);
    const clay = chemistryOf(results, "clay");
    expect(clay.unity).toBeNull();
    expect(clay.alkaliShare).toBeNull();
    expect(clay.silicaToAlumina).toBeCloseTo(2, 9);
    expect(chemistryOf(results, "wash").silicaToAlumina).toBeNull();
  });

  test("uses the archive's own material before the theoretical one of the same id", () => {
    const ingredients = [of("Potash-Feldspar", 40), of("whiting", 20)];
    const own = material("potash-feldspar", {
      formula: "0.75Na2O·0.25K2O·1.11Al2O3·4.65SiO2",
    });
    const { unity } = chemistryOf(work([glaze("a", { ingredients })], [own]), "a");
    expect(unity?.Na2O).toBeGreaterThan(unity?.K2O ?? 1);
  });

  test("takes a material's record with a price alone as the mineral of its name, and says so", () => {
    const own = material("whiting", { name: "Whiting", price: "1.20" });
    const results = work([glaze("clear", { ingredients: leach })], [own]);
    expect(chemistryOf(results, "clear").unity?.CaO).toBeCloseTo(0.7355, 4);
    expect(chemistryOf(results, "clear").notes.map(({ code }) => code)).toEqual(["theoretical"]);
  });

  test("carries the notes on its materials, each once and by name", () => {
    const own = material("frit", { name: "Frit", analysis: { SiO2: "50", Na2O: "40", loss: "0" } });
    const mixed = glaze("a", { ingredients: [of("frit", 50), of("frit", 20), of("silica", 30)] });
    const { notes } = chemistryOf(work([mixed], [own]), "a");
    expect(notes.map(({ message }) => message)).toEqual([
      "Frit: The oxides and the loss add to 90 per cent, not 100: they are used as written",
    ]);
  });
});

describe("a glaze without chemistry", () => {
  test("says that it was bought", () => {
    const results = work([glaze("jar", { name: "Soot", bought: { maker: "Oxbow" } })]);
    expect(reasonsOf(results, "jar").text).toBe(
      "Soot was bought, and only its maker knows what is in it.",
    );
  });

  test("names every material that is missing, unexplained or wrongly written", () => {
    const ingredients = [of("ash", 40), of("gravel", 20), of("stone", 10), of("slag", 10)];
    const results = work(
      [glaze("a", { ingredients })],
      [
        material("ash", { name: "Orchard ash" }),
        material("stone", { name: "Stone", formula: "K2O.Al2O3.6SiO2" }),
        material("slag", { name: "Slag", analysis: { Al203: "40" } }),
      ],
    );
    expect(reasonsOf(results, "a")).toMatchInlineSnapshot(`
      {
        "codes": [
          "material-not-analysed",
          "no-such-material",
          "formula-unreadable",
          "analysis-unreadable",
        ],
        "text": "Orchard ash has no formula and no analysis. There is no material “gravel”. The formula of Stone cannot be read at character 4: a “.” in a formula is a decimal point, and read so this one does not hold together. The analysis of Slag cannot be used: “Al203” is no oxide.",
      }
    `);
  });

  test("says so where nothing would be left after the fire", () => {
    const own = material("water", { name: "Water", formula: "H2O" });
    const results = work([glaze("a", { name: "Wash", ingredients: [of("water", 1)] })], [own]);
    expect(reasonsOf(results, "a").codes).toEqual(["nothing-left"]);
  });
});

describe("a blend", () => {
  const clear = glaze("clear", { ingredients: leach });
  const frost = glaze("frost", { ingredients: [of("silica", 50), of("borax", 50)] });

  test("is by dry weight of the raw glazes", () => {
    // 70 parts of the first with 10.19 % loss, 30 of the second with half of 47.24 % (Webmineral).
    const blend = [part("clear", 70), part("FROST", 30)];
    const results = work([clear, frost, glaze("both", { blend })]);
    const { lossOnIgnition, weightPercent } = chemistryOf(results, "both");
    expect(lossOnIgnition).toBeCloseTo(0.7 * 10.19 + 0.3 * 0.5 * 47.24, 2);
    const boric = (30 * 0.5 * 0.3651) / (100 - lossOnIgnition);
    expect(weightPercent.B2O3).toBeCloseTo(100 * boric, 2);
  });

  test("may hold other blends", () => {
    const results = work([
      glaze("outer", { blend: [part("inner", 50), part("clear", 50)] }),
      glaze("inner", { blend: [part("clear", 1), part("frost", 1)] }),
      clear,
      frost,
      glaze("direct", { blend: [part("clear", 75), part("frost", 25)] }),
    ]);
    const [outer, direct] = [chemistryOf(results, "outer"), chemistryOf(results, "direct")];
    expect(largestDifference(outer.weightPercent, direct.weightPercent)).toBeLessThan(1e-9);
  });

  test("that comes back to itself tells the way round", () => {
    const results = work([
      clear,
      glaze("one", { blend: [part("two", 1), part("clear", 1)] }),
      glaze("two", { blend: [part("three", 1)] }),
      glaze("three", { blend: [part("one", 1)] }),
      glaze("beside", { blend: [part("two", 1)] }),
    ]);
    expect(reasonsOf(results, "one").text).toBe(
      "The blend of one leads back to itself: one → two → three → one.",
    );
    for (const id of ["two", "three", "beside"])
      expect(reasonsOf(results, id).codes).toEqual(["blend-of-itself"]);
    expect(results.get("clear")?.ok).toBe(true);
  });

  test("of itself alone is told as well", () => {
    const results = work([glaze("me", { blend: [part("me", 1)] })]);
    expect(reasonsOf(results, "me").text).toContain("me → me");
  });

  test("by volume, with a bought glaze or one that does not exist gives the reason", () => {
    const results = work([
      clear,
      glaze("jar", { name: "Soot", bought: { maker: "Oxbow" } }),
      glaze("spoons", { blend: [part("clear", 1), part("frost", 1)], by: "volume" }),
      glaze("both", { blend: [part("clear", 1), part("jar", 1), part("ghost", 2)] }),
      glaze("on", { blend: [part("spoons", 1), part("clear", 3)] }),
    ]);
    expect(reasonsOf(results, "spoons").codes).toEqual(["blended-by-volume"]);
    expect(reasonsOf(results, "both").codes).toEqual(["bought", "no-such-glaze"]);
    expect(reasonsOf(results, "on").text).toContain("spoons was blended by volume");
  });
});

describe("whatever the recipe", () => {
  const names = ["potash-feldspar", "silica", "whiting", "kaolin", "talc", "borax", "zinc-oxide"];
  const portion = fc.record({
    name: fc.constantFrom(...names),
    parts: fc.integer({ min: 1, max: 5000 }).map((n) => n / 50),
  });
  const recipe = fc.array(portion, { minLength: 1, maxLength: 8 });
  const list = (portions: readonly { name: string; parts: number }[], times = 1) =>
    portions.map(({ name, parts }) => of(name, Number((parts * times).toPrecision(15))));

  propertyTest.prop([recipe, fc.constantFrom(0.1, 2, 7.5, 1000)])(
    "scaling it changes nothing",
    (portions, times) => {
      const results = work([
        glaze("a", { ingredients: list(portions), additions: [of("rutile", 3)] }),
        glaze("b", { ingredients: list(portions, times), additions: [of("rutile", 3)] }),
      ]);
      const [a, b] = [chemistryOf(results, "a"), chemistryOf(results, "b")];
      expect(largestDifference(a.molePercent, b.molePercent)).toBeLessThan(1e-9);
      expect(b.lossOnIgnition).toBeCloseTo(a.lossOnIgnition, 9);
    },
  );

  propertyTest.prop([recipe])("the order of its ingredients does not matter", (portions) => {
    const results = work([
      glaze("a", { ingredients: list(portions) }),
      glaze("b", { ingredients: list(portions.toReversed()) }),
    ]);
    const [a, b] = [chemistryOf(results, "a"), chemistryOf(results, "b")];
    expect(largestDifference(a.weightPercent, b.weightPercent)).toBeLessThan(1e-9);
    expect(largestDifference(a.unity ?? {}, b.unity ?? {})).toBeLessThan(1e-9);
  });

  propertyTest.prop([recipe, fc.integer({ min: 1, max: 99 })])(
    "blending it with itself changes nothing, and its parts add to 100",
    (portions, parts) => {
      const results = work([
        glaze("a", { ingredients: list(portions) }),
        glaze("b", { blend: [part("a", parts), part("a", 100 - parts)] }),
      ]);
      const [a, b] = [chemistryOf(results, "a"), chemistryOf(results, "b")];
      expect(largestDifference(a.weightPercent, b.weightPercent)).toBeLessThan(1e-9);
      expect(b.lossOnIgnition).toBeCloseTo(a.lossOnIgnition, 9);
      expect(sumOfOxides(a.weightPercent)).toBeCloseTo(100, 9);
      expect(sumOfOxides(a.molePercent)).toBeCloseTo(100, 9);
      expect(sumOfOxides(a.raw.oxides) + a.raw.loss).toBeCloseTo(100, 9);
    },
  );
});
