import { describe, expect, test } from "vitest";
import type { Portion } from "../../src/chemistry/recipe.ts";
import { reworkGlaze } from "../../src/chemistry/rework-glaze.ts";
import { tellReasons } from "../../src/chemistry/why-no-chemistry.ts";
import { glazeSchema } from "../../src/records/glaze.ts";
import { materialSchema } from "../../src/records/material.ts";
import { readAs, type SourceMap } from "../../src/records/read.ts";

function glaze(id: string, source: SourceMap) {
  const reading = readAs(glazeSchema, { name: id, kind: "glaze", ...source });
  if (!reading.ok) throw new Error(reading.faults[0]?.message);
  return [id, { id, file: `${id}.md`, record: reading.record, notes: "" }] as const;
}

function material(id: string, source: SourceMap) {
  const reading = readAs(materialSchema, { name: id, ...source });
  if (!reading.ok) throw new Error(reading.faults[0]?.message);
  return [id, { id, file: `${id}.md`, record: reading.record, notes: "" }] as const;
}

const recipe = (parts: Readonly<Record<string, number>>) =>
  Object.entries(parts).map(([name, n]) => ({ material: name, parts: String(n) }));

const archive = {
  glazes: new Map([
    glaze("clear", {
      ingredients: recipe({ "potash-feldspar": 42, whiting: 18, kaolin: 13, silica: 27 }),
      additions: recipe({ "red-iron-oxide": 2 }),
    }),
    glaze("other", { ingredients: recipe({ wollastonite: 50, "lead-bisilicate": 50 }) }),
    glaze("calcia", { ingredients: recipe({ wollastonite: 70, silica: 20, kaolin: 10 }) }),
    glaze("clay-slip", { ingredients: recipe({ kaolin: 60, silica: 40 }) }),
    glaze("jar", { bought: { maker: "Oxbow" } }),
  ]),
  materials: new Map([material("hill-spar", { formula: "KAlSi3O8" })]),
};

function rework(id: string, without: string, withOthers?: readonly string[]) {
  const found = reworkGlaze(archive, id, { without, withOthers });
  if (!found.ok) throw new Error(tellReasons(found.reasons));
  const [nearest] = found.proposals;
  if (!nearest) throw new Error("no recipe");
  return { ...found, ...nearest };
}

const idsOf = (portions: readonly Portion[]) => portions.map(({ material: m }) => m);

describe("a glaze reworked", () => {
  test("without one material is made from the rest and from what the studio has", () => {
    const { rework: found, base, additions, sources } = rework("clear", "Whiting");
    expect(idsOf(base)).toContain("wollastonite");
    expect(idsOf(base)).not.toContain("whiting");
    expect(additions).toEqual([{ material: "red-iron-oxide", parts: 2 }]);
    expect(found.unreached).toEqual([]);
    expect(sources).toEqual([]);
  });

  test("takes a material from the archive's own records", () => {
    const used = rework("clear", "potash-feldspar").rework.portions.map(({ material: m }) => m);
    expect(used).toContain("hill-spar");
  });

  test("takes nothing but what was named, where something was", () => {
    const { rework: found, cautions } = rework("clear", "whiting", ["talc"]);
    const used = found.portions.map(({ material: m }) => m);
    expect(used).toContain("talc");
    expect(used).not.toContain("wollastonite");
    expect(used).not.toContain("hill-spar");
    expect(cautions.map(({ message }) => message)).toContainEqual(
      expect.stringMatching(
        /^Dust of talc \(from Talc\) is probably carcinogenic .* can hold asbestos/u,
      ),
    );
  });

  test("has lead only where it was asked for by name, and then a loud caution with it", () => {
    const { rework: found, cautions } = rework("clear", "whiting", ["lead-bisilicate"]);
    expect(found.portions.map(({ material: m }) => m)).toContain("lead-bisilicate");
    expect(cautions[0]).toMatchObject({ code: "poison", isLoud: true });
  });

  test("has the cautions of what could be bought told as well", () => {
    const bare = { glazes: archive.glazes, materials: new Map() };
    const found = reworkGlaze(bare, "calcia", { without: "silica", withOthers: [] });
    if (!found.ok) throw new Error(tellReasons(found.reasons));
    expect(found.sources.map(({ material: m }) => m)).toContain("pyrophyllite");
    const told = found.cautions.map(({ code }) => code);
    expect(told).toContain("silica-dust");
  });

  test("is told against the recipe as it is written, base and additions apart", () => {
    const { before } = rework("clear", "whiting");
    expect(idsOf(before.base)).toEqual(["potash-feldspar", "whiting", "kaolin", "silica"]);
    expect(before.base.reduce((sum, { parts }) => sum + parts, 0)).toBeCloseTo(100, 10);
    expect(before.additions).toEqual([{ material: "red-iron-oxide", parts: 2 }]);
  });

  test("cannot be made without a flux, and is told what would bring one", () => {
    const bare = { glazes: archive.glazes, materials: new Map() };
    const found = reworkGlaze(bare, "calcia", { without: "wollastonite", withOthers: ["kaolin"] });
    if (!found.ok) throw new Error(tellReasons(found.reasons));
    expect(found.proposals).toEqual([]);
    expect(found.sources.map(({ oxide }) => oxide)).toContain("CaO");
    expect(found.sources[0]).toMatchObject({ oxide: "CaO", material: "whiting" });
    expect(found.sources.map(({ material: m }) => m)).not.toContain("wollastonite");
  });

  test("takes no more than two materials that nobody named, and half a part of each at least", () => {
    const wide = {
      glazes: new Map([
        ...archive.glazes,
        glaze("many", {
          ingredients: recipe({
            ...{ "soda-feldspar": 10, talc: 10, dolomite: 10, "zinc-oxide": 10, colemanite: 10 },
            ...{ "strontium-carbonate": 10, "ball-clay": 10, "bone-ash": 10, "tin-oxide": 10 },
          }),
        }),
        glaze("lead-clear", { ingredients: recipe({ "lead-bisilicate": 70, kaolin: 30 }) }),
      ]),
      materials: archive.materials,
    };
    for (const [id, without] of [
      ["clear", "whiting"],
      ["clear", "potash-feldspar"],
      ["lead-clear", "lead-bisilicate"],
    ] as const) {
      const found = reworkGlaze(wide, id, { without });
      if (!found.ok || found.proposals.length === 0)
        throw new Error(`${id} without ${without}: no recipe`);
      for (const { base } of found.proposals) {
        const held = idsOf(found.before.base);
        const added = base.filter(({ material: m }) => !held.includes(m));
        expect(added.length, `${id} without ${without}`).toBeLessThanOrEqual(2);
        for (const { parts } of added) expect(parts).toBeGreaterThanOrEqual(0.5);
      }
    }
  });

  test("brings no barium, lithium or colouring metal into a glaze that held none, unless named", () => {
    const barium = {
      glazes: new Map([
        ...archive.glazes,
        glaze("matte", { ingredients: recipe({ "barium-carbonate": 50, spodumene: 50 }) }),
      ]),
      materials: new Map(),
    };
    const used = (withOthers?: readonly string[]) => {
      const found = reworkGlaze(barium, "clear", { without: "whiting", withOthers });
      return found.ok ? found.proposals.flatMap(({ base }) => idsOf(base)) : [];
    };
    expect(used()).not.toContain("barium-carbonate");
    expect(used()).not.toContain("spodumene");
    expect(used(["barium-carbonate"])).toContain("barium-carbonate");
  });

  test("is the same whether its recipe says flint or silica", () => {
    const named = (word: string) => {
      const glazes = new Map([
        glaze("clear", { ingredients: recipe({ "potash-feldspar": 50, whiting: 20, [word]: 30 }) }),
      ]);
      const found = reworkGlaze({ glazes, materials: new Map() }, "clear", {
        without: "chalk",
        withOthers: ["wollastonite"],
      });
      return found.ok ? [found.before, found.proposals] : [];
    };
    expect(named("flint")).toEqual(named("silica"));
    expect(named("flint")).not.toEqual([]);
  });

  test("never has lead brought in", () => {
    for (const without of ["whiting", "potash-feldspar", "silica", "kaolin"]) {
      const { base, sources } = rework("clear", without);
      const named = [...idsOf(base), ...sources.map(({ material: m }) => m)];
      expect(named.filter((id) => id.startsWith("lead"))).toEqual([]);
    }
  });

  test("keeps its additions as they were written, and says how much stronger they are", () => {
    const found = rework("clear", "whiting", ["wollastonite"]);
    for (const { additions } of found.proposals)
      expect(additions).toEqual([{ material: "red-iron-oxide", parts: 2 }]);
    // Wollastonite loses nothing in the fire, so the same two parts are thinner.
    expect(found.additionStrength).toBeGreaterThan(0.9);
    expect(found.additionStrength).toBeLessThan(1);
  });

  test("whose missing material is added on top keeps its base, and is told so", () => {
    const found = rework("clear", "red-iron-oxide", ["black-iron-oxide"]);
    expect(found.lostAddition).toEqual({ material: "red-iron-oxide", parts: 2 });
    expect(found.proposals.map(({ kind }) => kind)).toEqual(["addition", "bare"]);
    // Two of Fe2O3, in Fe3O4: 2 × (231.53 / 3) / (159.69 / 2), by the molar masses of minerals.csv.
    expect(found.additions).toEqual([
      { material: "black-iron-oxide", parts: expect.closeTo(1.933, 3) },
    ]);
    expect(found.base.find(({ material: m }) => m === "whiting")?.parts).toBeCloseTo(18, 10);
    const bare = reworkGlaze({ ...archive, materials: new Map() }, "clear", {
      without: "red-iron-oxide",
    });
    if (!bare.ok) throw new Error(tellReasons(bare.reasons));
    expect(bare.sources[0]).toMatchObject({ oxide: "Fe2O3", material: "black-iron-oxide" });
  });

  test("says which typical analyses each proposal rests on", () => {
    const found = rework("clear", "kaolin", ["ball-clay"]);
    expect(found.figures.typical).toEqual(["ball-clay"]);
    expect(rework("clear", "whiting", ["wollastonite"]).figures.typical).toEqual([]);
  });

  test("costs what its prices come to, and no more is said than is known", () => {
    const priced = {
      ...archive,
      materials: new Map([
        ...["potash-feldspar", "kaolin", "silica", "red-iron-oxide"].map((id) =>
          material(id, { price: "2" }),
        ),
      ]),
    };
    const found = reworkGlaze(priced, "clear", {
      without: "whiting",
      withOthers: ["wollastonite"],
    });
    if (!found.ok) throw new Error(tellReasons(found.reasons));
    expect(found.before.figures.cost.unpriced).toEqual(["whiting"]);
    const [nearest] = found.proposals;
    expect(nearest?.figures.cost.unpriced).toEqual(["wollastonite"]);
    expect(nearest?.figures.cost.known).toBeLessThan(2);
  });

  test("is refused with the reason where it cannot be", () => {
    const reason = (id: string, without: string) => {
      const found = reworkGlaze(archive, id, { without });
      return found.ok ? "" : tellReasons(found.reasons);
    };
    expect(reason("jar", "whiting")).toBe("jar is not weighed out of materials.");
    expect(reason("ghost", "whiting")).toBe("There is no glaze “ghost”.");
    expect(reason("clay-slip", "silica")).toBe(
      "clay-slip holds no flux, so it has no unity formula to come near to.",
    );
  });
});
