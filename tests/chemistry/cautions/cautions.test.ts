import { describe, expect, test } from "vitest";
import { substances } from "../../../src/chemistry/cautions/substances.ts";
import { theoreticalMaterials } from "../../../src/chemistry/minerals/minerals.ts";
import { readReference } from "../reference.ts";
import {
  about,
  base,
  blendOf,
  cautionsFor,
  cautionsOf,
  loud,
  messages,
  recipe,
} from "./recipes.ts";

describe("loud cautions", () => {
  test("tell of lead and cadmium however little a glaze holds of what is made of them", () => {
    for (const material of ["lead-bisilicate", "cadmium-sulphide"]) {
      const cautions = cautionsFor({ ...base, [material]: 0.05 });
      expect(loud(cautions).map(({ code }) => code)).toEqual(["poison"]);
      expect(cautions[0]?.isLoud).toBe(true);
    }
    // 70 × 65.003 % of 70 + 30 × 86.043 %, minerals.csv.
    expect(cautionsFor({ "lead-bisilicate": 70, kaolin: 30 })[0]).toMatchObject({
      message: "This glaze holds lead: 47 per cent of what is fired, as PbO",
      hint: "Keep the ware from food and drink, and the powder and slop from hands, lungs and children. Labels, local rules and a laboratory decide what may be done with it.",
      inShort: "holds lead",
    });
  });

  test("never print a nought for what is there", () => {
    expect(cautionsFor({ ...base, "lead-bisilicate": 0.001 })[0]?.message).toBe(
      "This glaze holds lead: less than 0.01 per cent of what is fired, as PbO",
    );
  });

  test("are quiet on a trace that an analysis states, and tell it all the same", () => {
    const clay = { analysis: { SiO2: 60, Al2O3: 28, PbO: 0.004, loss: 11.9 } };
    const cautions = cautionsFor({ ...base, clay: 20 }, { clay });
    expect(loud(cautions)).toEqual([]);
    expect(cautions.find(({ code }) => code === "trace")).toMatchObject({
      message: "There is a trace of lead in it: less than 0.01 per cent of clay",
      hint: "A trace can matter in ware for food: a leach test tells.",
    });
    const more = { analysis: { ...clay.analysis, PbO: 0.1 } };
    expect(about(loud(cautionsFor({ ...base, clay: 20 }, { clay: more })))).toEqual(["lead"]);
  });

  test("tell of a heavy load of a metal, and not of a light one", () => {
    // 8 × 71.949 % of 100 - 10.19 + 8 × 71.949 %, minerals.csv and worked-recipes.csv.
    const heavy = cautionsFor({ ...base, "copper-carbonate": 8 });
    expect(messages(loud(heavy))).toEqual([
      "This glaze holds much copper: 6 per cent of what is fired, as CuO",
    ]);
    expect(loud(cautionsFor({ ...base, "copper-carbonate": 2 }))).toEqual([]);
    expect(loud(cautionsFor({ ...base, "cobalt-carbonate": 1 }))).toEqual([]);
  });

  test("add up what several metals are beside what each may be", () => {
    const several = { "copper-oxide": 1.5, "cobalt-oxide": 0.5, "manganese-dioxide": 1 };
    expect(messages(loud(cautionsFor({ ...base, ...several })))).toEqual([
      "This glaze holds much cobalt, copper and manganese together: cobalt 0.54 per cent of what is fired, as CoO; copper 1.6 per cent of what is fired, as CuO; manganese 0.88 per cent of what is fired, as MnO",
    ]);
    for (const [material, parts] of Object.entries(several))
      expect(loud(cautionsFor({ ...base, [material]: parts }))).toEqual([]);
  });

  test("tell of each metal alone where each is beyond what often leaches", () => {
    const heavy = { "chrome-oxide": 3, "nickel-oxide": 3, "barium-carbonate": 20 };
    expect(about(loud(cautionsFor({ ...base, ...heavy })))).toEqual([
      "barium",
      "chromium",
      "nickel",
    ]);
  });
});

describe("cautions for what is in the bag", () => {
  test("name what harms, the materials that it is in, and a filter by its class", () => {
    const cautions = cautionsFor({ ...base, "barium-carbonate": 9 });
    expect(cautions.find((it) => it.about === "barium")).toMatchObject({
      message:
        "Barium (in Barium carbonate) is listed as highly toxic to breathe in as a raw material; it is poisonous to swallow where it dissolves in the stomach, as the carbonate does: it weakens the muscles and upsets the heart; it can leach from a fired glaze that has not bound it",
      hint: "Wear gloves and a fitted mask (FFP3 or P100, or what the safety sheet asks for) with the powder, clean up wet, and keep food and children away.",
    });
  });

  test("are silent on barium sulphate and on lithium in a mineral or a frit", () => {
    const frit = { name: "Lithium frit", formula: "Li2O·B2O3·4SiO2" };
    const told = about(
      cautionsFor({ ...base, "barium-sulphate": 5, spodumene: 5, frit: 5 }, { frit }),
    );
    expect(told).not.toContain("barium");
    expect(told).not.toContain("lithium");
    expect(about(cautionsFor({ ...base, "lithium-carbonate": 5 }))).toContain("lithium");
    const barite = { analysis: { BaO: 64.5, SO3: 33.7, SiO2: 1.5, loss: 0.3 } };
    expect(about(cautionsFor({ ...base, barite: 9 }, { barite }))).not.toContain("barium");
  });

  test("give each compound of cobalt its own group", () => {
    const told = (id: string) =>
      cautionsFor({ ...base, [id]: 1 }).find((it) => it.about === "cobalt")?.message;
    expect(told("cobalt-oxide")).toBe(
      "Cobalt (in Cobalt oxide, grey) is listed as highly toxic to breathe in as a raw material; it can cause eczema where it touches the skin; it is possibly carcinogenic as the oxide CoO (group 2B)",
    );
    expect(told("cobalt-carbonate")).toContain("able to cause cancer and asthma when breathed in");
    expect(told("cobalt-carbonate")).not.toContain("2A");
  });

  test("follow what a material is made of, whatever it is called", () => {
    const materials = {
      orange: { formula: "K2Cr2O7" },
      yellow: { formula: "PbCrO4" },
      soft: { formula: "Mg3Si4O10(OH)2" },
      white: { analysis: { MgO: 31, SiO2: 62, CaO: 0.5, loss: 6 } },
      table: { formula: "NaCl" },
    };
    const told = (id: string) => messages(cautionsFor({ ...base, [id]: 5 }, materials)).join("\n");
    for (const id of ["orange", "yellow"])
      expect(told(id)).toContain(`${id} is hexavalent chromium, which is carcinogenic (group 1)`);
    for (const id of ["soft", "white"])
      expect(told(id)).toContain(
        `Dust of talc (from ${id}) is probably carcinogenic to breathe in (group 2A); it can hold asbestos, depending on its deposit: ask for an assay`,
      );
    expect(told("table")).toContain("table gives off hydrogen chloride in the kiln: outdoors only");
    for (const id of ["chrome-oxide", "iron-chromate"])
      expect(told(id)).not.toContain("is hexavalent");
  });

  test("pass over traces of metals in natural materials", () => {
    const clay = { analysis: { SiO2: 60, Al2O3: 28, MnO: 0.05, BaO: 0.1, loss: 11.8 } };
    expect(cautionsFor({ clay: 100 }, { clay }).map(({ code }) => code)).toEqual([
      "silica-dust",
      "only-tests-tell",
    ]);
  });

  test("do not take a frit for crystalline silica, and tell of its own dust", () => {
    const frit = { name: "Sluice frit", analysis: { SiO2: 50, B2O3: 20, Na2O: 15, CaO: 15 } };
    expect(cautionsFor({ frit: 100 }, { frit }).map(({ code }) => code)).toEqual([
      "dust",
      "only-tests-tell",
    ]);
  });

  test("take a record's word for what is a frit, whatever it is called", () => {
    const codes = (record: object) =>
      cautionsFor({ oxbow: 100 }, { oxbow: { analysis: { SiO2: 50, B2O3: 50 }, ...record } }).map(
        ({ code }) => code,
      );
    expect(codes({ name: "Oxbow 12", frit: "yes" })).toEqual(["dust", "only-tests-tell"]);
    expect(codes({ name: "Oxbow 12" })).toContain("silica-dust");
    expect(codes({ name: "Glass sand", frit: "no" })).toContain("silica-dust");
  });

  test("repeat what a material's own record says, in its words", () => {
    const ash = {
      name: "Willow ash",
      analysis: { CaO: 60, SiO2: 20, loss: 20 },
      cautions: ["Caustic when wet; gloves and goggles."],
    };
    expect(cautionsFor({ ...base, ash: 20 }, { ash })).toContainEqual({
      code: "own-caution",
      about: "Willow ash",
      isLoud: false,
      inShort: "Willow ash: Caustic when wet; gloves and goggles",
      message: "Willow ash: Caustic when wet; gloves and goggles",
      hint: "",
      sources: [{ source: "the studio’s record of Willow ash", tag: "checked" }],
    });
  });

  test.each([
    ["arsenic", { analysis: { SiO2: 50, As2O3: 3 } }],
    ["arsenic", { formula: "As2O3" }],
    ["beryllium", { formula: "Be3Al2Si6O18" }],
    ["uranium", { formula: "U3O8" }],
    ["selenium", { analysis: { Se: 5, SiO2: 95 } }],
    ["thallium", { formula: "Tl2O" }],
    ["cadmium", { analysis: { CDO: 3, SiO2: 90 } }],
    ["lead", { analysis: { "lead oxide": 3, SiO2: 90 } }],
    ["lead", { analysis: { "Pb (total)": 3, SiO2: 90 } }],
    ["lead", { formula: "PbO•SiO2?" }],
  ])("are loud for %s in %j, whatever else cannot be reckoned", (substance, stuff) => {
    expect(about(loud(cautionsFor({ ...base, stuff: 3 }, { stuff })))).toContain(substance);
  });

  test.each([
    ["lead-chromate-yellow", ["hexavalent chromium", "lead"]],
    ["cadmium-red-stain", ["cadmium"]],
    ["lead-free-frit", []],
    ["old-leaden-jar", []],
  ])("hear what the name of “%s” speaks of where nothing else is known", (id, expected) => {
    expect(about(loud(cautionsFor({ ...base, [id]: 3 }))).sort()).toEqual(expected);
  });

  test("tell what could not be read, so that a short list is not taken for a whole one", () => {
    const told = cautionsFor(
      { sack: 5, gravel: 5 },
      { sack: { analysis: { SiO2: 50, KNaO: 8, rest: 2 } } },
    ).filter(({ code }) => code === "not-known");
    expect(messages(told)).toEqual([
      "What gravel is made of is not written down, so this archive cannot say how it may harm",
      "“KNaO”, “rest” of sack cannot be read, and may harm in ways that are not told here",
    ]);
    expect(cautionsFor(base).some(({ code }) => code === "not-known")).toBe(false);
  });

  test("say that a name is all there is", () => {
    expect(loud(cautionsFor({ ...base, "cadmium-red-stain": 3 }))[0]).toMatchObject({
      inShort: "may hold cadmium",
      message:
        "There may be cadmium in it: cadmium-red-stain is named after it, and nobody has written down what that is made of",
    });
  });
});

describe("what leaves in the kiln", () => {
  const gases = (parts: Readonly<Record<string, number>>, materials = {}) =>
    cautionsFor({ ...base, ...parts }, materials).find(({ code }) => code === "kiln-fumes")
      ?.message;

  test("is told with the material that it comes from; a carbonate gives no carbon monoxide", () => {
    expect(gases({ fluorspar: 4, gypsum: 1 })).toBe(
      "In the kiln this recipe gives off carbon dioxide (from Whiting); hydrogen fluoride and silicon fluoride (from Fluorspar); sulphur dioxide and trioxide (from Gypsum)",
    );
  });

  test("is nitrogen oxides from nitrates, ammonia from ammonium, carbon monoxide from carbon", () => {
    const told = gases(
      { nitre: 2, vanadate: 1, carbide: 1 },
      { vanadate: { formula: "NH4VO3" }, carbide: { formula: "SiC" } },
    );
    expect(told).toContain("nitrogen oxides (from Nitre)");
    expect(told).toContain("ammonia (from vanadate)");
    expect(told).toContain("carbon monoxide and carbon dioxide (from carbide)");
  });

  test("is manganese and lead as fume, and chromium that turns hexavalent in oxidation", () => {
    expect(gases({ "manganese-dioxide": 2 })).toContain(
      "fume of manganese (from Manganese dioxide)",
    );
    const green = cautionsFor({ ...base, "chrome-oxide": 1 });
    expect(green.find(({ code }) => code === "chromium-in-oxidation")).toMatchObject({
      isLoud: false,
      message:
        "Fired in oxidation, chromium that meets lime or alkalis can in part turn hexavalent, which dissolves in water and is carcinogenic (group 1) (from Chrome oxide)",
    });
  });

  test("is read from an analysis too", () => {
    const told = gases({ sack: 5 }, { sack: { analysis: { CaO: 40, SO3: 20, F: 2, CO2: 5 } } });
    expect(told).toContain("sulphur dioxide and trioxide (from sack)");
    expect(told).toContain("hydrogen fluoride and silicon fluoride (from sack)");
  });
});

describe("glazes without chemistry", () => {
  const glazes = {
    old: recipe({ "red-lead": 60, silica: 40 }),
    green: recipe({ ...base, "copper-carbonate": 8 }),
    jar: { bought: { maker: "Oxbow" }, label: ["not-for-food", "non-toxic"] },
    gritty: recipe({ "nickel-oxide": 9, gravel: 9 }),
    spoons: blendOf({ old: 1, green: 1, jar: 1 }, "volume"),
    stirred: blendOf({ green: 1, jar: 9 }, "weight"),
    twice: blendOf({ stirred: 1 }, "weight"),
  };
  const cautions = cautionsOf(glazes);

  test("inherit every caution of their parts, and say of which part it is", () => {
    expect(messages(loud(cautions("spoons")))).toEqual([
      "The label of jar, which is mixed into it, says: not for food",
      "green, which is mixed into it, holds much copper: 6 per cent of what is fired, as CuO",
      "There is lead in it, from Red lead",
    ]);
    for (const id of ["stirred", "twice"])
      expect(about(loud(cautions(id)))).toEqual(["not for food", "copper"]);
    expect(about(cautions("spoons"))).toEqual(
      expect.arrayContaining(["silica dust", "kiln fumes", "food"]),
    );
  });

  test("tell what a label says of a jar, and of its name where it speaks of a poison", () => {
    expect(cautions("jar")).toEqual([
      {
        code: "not-for-food",
        about: "not for food",
        isLoud: true,
        inShort: "not for food",
        message: "Its label says: not for food",
        hint: "That holds for whatever it is put under, over or into: the ware is for looking at.",
        sources: [{ source: "the label, by the studio’s record", tag: "checked" }],
      },
      {
        code: "not-known",
        about: "what is in jar",
        isLoud: false,
        inShort: "what is in it is not known here",
        message:
          "jar was bought, and only its maker knows what is in it, so this archive cannot say how it may harm",
        hint: "Read its label and its safety sheet before it is mixed, sprayed, sanded or fired.",
        sources: [{ source: "the studio’s record", tag: "checked" }],
      },
    ]);
    const named = cautionsOf({ jar: { name: "Cadmium dusk", bought: { maker: "Oxbow" } } })("jar");
    expect(messages(loud(named))).toEqual([
      "There may be cadmium in Cadmium dusk: it is named after it",
    ]);
  });

  test("tell amounts as far as they can be read", () => {
    expect(messages(loud(cautions("gritty")))).toEqual([
      "This glaze holds much nickel: about 50 per cent of what is fired, as NiO, by what can be read of its materials",
    ]);
  });

  test("keep every caution when a line of an analysis cannot be read", () => {
    const of = (analysis: object) =>
      cautionsOf({ g: recipe({ stuff: 50, silica: 50 }) }, { stuff: { analysis } })("g");
    const whole = of({ PbO: 40, CuO: 12, SiO2: 38, loss: 10 });
    const broken = of({ PbO: 40, CuO: 12, SiO2: 38, KNaO: 8, LOI: 10 });
    expect(about(whole)).toEqual([
      "lead",
      "copper",
      "lead",
      "copper",
      "silica dust",
      "kiln fumes",
      "food",
    ]);
    expect(about(broken).filter((it) => it !== "what is in stuff")).toEqual(about(whole));
    expect(messages(broken)).toContain(
      "“KNaO” of stuff cannot be read, and may harm in ways that are not told here",
    );
  });
});

describe("every caution", () => {
  const all = theoreticalMaterials.flatMap(({ id }) => cautionsFor({ ...base, [id]: 20 }));

  test("has a source that was read, follows from chemistry, or says that it is common practice", () => {
    for (const { sources } of all) {
      expect(sources.length).toBeGreaterThan(0);
      for (const { source, tag } of sources) {
        expect(["checked", "common practice", "derived"]).toContain(tag);
        expect(source.includes("common practice, no source")).toBe(tag === "common practice");
        expect(source).not.toMatch(/memory/u);
      }
    }
  });

  test("calls nothing safe, ends without a full stop, and has a word for a list", () => {
    for (const { message, hint, inShort } of all) {
      expect(`${message} ${hint}`).not.toMatch(/\bsafe\b/u);
      expect(message).not.toMatch(/[.]$/u);
      expect(inShort).not.toBe("");
    }
  });
});

test("every substance that is listed as highly toxic is told of, with the list as its source", () => {
  const listed = readReference("safety").filter(
    (row) => row.kind === "hazard flag" && row.item?.startsWith("listed as highly toxic"),
  );
  expect(listed.length).toBe(13);
  for (const row of listed) {
    const substance = substances.find(({ name }) => name === row.substance);
    const sources = substance?.statements.map(({ source, tag }) => `${source} (${tag})`);
    expect(sources, row.substance).toContain(`${row.source?.replace(" (seen)", "")} (${row.tag})`);
  }
});
