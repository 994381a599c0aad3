import { describe, expect, test } from "vitest";
import { cautionsOfGlazes } from "../../src/chemistry/cautions/cautions-of-glazes.ts";
import { chemistryOfGlazes } from "../../src/chemistry/glazes.ts";
import { materialFinder, materialIdFinder } from "../../src/chemistry/materials.ts";
import {
  carriedMaterials,
  carriedWords,
  findCarriedMaterial,
} from "../../src/chemistry/minerals/minerals.ts";
import { typicalMaterials } from "../../src/chemistry/minerals/typical.ts";
import { sumOfOxides } from "../../src/chemistry/oxide-sums.ts";
import { findIdFault, idKey } from "../../src/terms/ids.ts";
import { archive, glaze, material } from "../checks/support.ts";
import { cell, readReference } from "./reference.ts";

function analysisOf(id: string) {
  const found = materialFinder([])(id);
  if (!found.ok) throw new Error(`${id} is not carried`);
  return found.material.analysis;
}

describe("the materials that are carried", () => {
  test("have one id or trade name each, which a file could have too", () => {
    const keys = carriedWords.map(idKey);
    expect(keys.filter((key, i) => keys.indexOf(key) !== i)).toEqual([]);
    expect(carriedWords.flatMap((word) => findIdFault(word) ?? [])).toEqual([]);
  });

  test("can all be analysed, and come to a hundred within what analyses of one sample err", () => {
    for (const { id } of carriedMaterials) {
      const { oxides, loss, fluorine } = analysisOf(id);
      const total = sumOfOxides(oxides) + loss + fluorine - fluorine * 0.4211;
      expect(Math.abs(total - 100), id).toBeLessThan(0.7);
    }
  });

  test("say where their figures come from", () => {
    for (const { id, source } of carriedMaterials) expect(source, id).toMatch(/\S{4}/u);
  });

  test("are all there that a first clear of cone 6 asks for", () => {
    const asked = [
      ...["nepheline-syenite", "silica", "whiting", "kaolin", "wollastonite", "ball-clay"],
      ...["calcium-borosilicate-frit", "talc", "zinc-oxide", "colemanite", "bentonite"],
      ...["strontium-carbonate", "dolomite", "zircon", "bone-ash", "spodumene", "petalite"],
      ...["lepidolite", "cornish-stone", "ulexite", "borax", "magnesium-carbonate", "fireclay"],
    ];
    expect(asked.filter((id) => !findCarriedMaterial(id))).toEqual([]);
  });
});

/**
 * Published figures beside those that are carried. The tolerance is what samples of one pit differ
 * by, so that a slipped point or a swapped line is found.
 */
describe("a typical analysis is that of its source", () => {
  // H. van Olphen and J. J. Fripiat, Data Handbook for Clay Materials (1979), KGa-1, as reprinted by
  // The Clay Minerals Society (compared): SiO2 44.2, Al2O3 39.7, TiO2 1.39, Fe2O3 0.13, FeO 0.08;
  // loss 12.6 to 550 °C and 1.18 from there to 1000 °C.
  test("kaolin as sold", () => {
    const { oxides, loss } = analysisOf("kaolin-as-sold");
    expect(oxides).toMatchObject({ SiO2: 44.2, Al2O3: 39.7, TiO2: 1.39 });
    expect(oxides.Fe2O3).toBeCloseTo(0.13 + 0.08 * 1.1113, 3);
    expect(loss + 0.08 * 0.1113).toBeCloseTo(12.6 + 1.18, 2);
  });

  // G. H. Cook, Geology of New Jersey (1868), p. 683, as reprinted (compared); it adds to 99.95 there.
  test("stoneware clay", () => {
    const { oxides, loss } = analysisOf("stoneware-clay");
    expect(sumOfOxides(oxides) + loss).toBeCloseTo(99.95, 2);
  });

  // Data sheet quoted on a potters' mailing list in 1998 (compared), with its unity formula of
  // K2O 0.358, Na2O 0.419, CaO 0.198, MgO 0.025, Al2O3 1.134 and SiO2 9.220.
  test("Cornish stone has the unity formula that was printed with it", () => {
    const stone = glaze("stone", { ingredients: [{ material: "china-stone", parts: 100 }] });
    const found = chemistryOfGlazes(archive({ glazes: [stone] })).get("stone");
    if (!found?.ok) throw new Error("no chemistry");
    const { unity } = found.chemistry;
    const printed = { K2O: 0.358, Na2O: 0.419, CaO: 0.198, MgO: 0.025, Al2O3: 1.134, SiO2: 9.22 };
    for (const [oxide, moles] of Object.entries(printed))
      expect(unity?.[oxide as keyof typeof printed], oxide).toBeCloseTo(
        moles,
        oxide === "SiO2" ? 1 : 2,
      );
  });

  // Seger cone 022 after Hecht: tests/reference/seger-cones.csv (from memory).
  test("lead borosilicate frit is the melt of Seger cone 022", () => {
    const cone = readReference("seger-cones").find((row) => row.cone === "022");
    if (!cone) throw new Error("no cone 022");
    const { oxides } = analysisOf("lead-borosilicate-frit");
    for (const oxide of ["SiO2", "B2O3", "Na2O", "PbO"] as const)
      expect(oxides[oxide], oxide).toBeCloseTo(cell(cone, `${oxide}_wt_pct`), 1);
  });

  // What makes the rock worth selling: alumina above 23, alkalis above 15 per cent, from a geologist's
  // report on a deposit at Table Mountain, Oregon (2008, compared).
  test("nepheline syenite is rich in alumina and alkalis", () => {
    const { oxides } = analysisOf("nepheline-syenite");
    expect(oxides.Al2O3).toBeGreaterThan(23);
    expect((oxides.Na2O ?? 0) + (oxides.K2O ?? 0)).toBeGreaterThan(15);
  });
});

describe("a word in a recipe", () => {
  test.each([
    ["flint", "silica"],
    ["Quartz", "silica"],
    ["chalk", "whiting"],
    ["calcium-carbonate", "whiting"],
    ["iron-oxide-red", "red-iron-oxide"],
    ["china-clay", "kaolin"],
    ["french-chalk", "talc"],
    ["zircon-opacifier", "zircon"],
  ])("%s leads to %s", (word, id) => {
    expect(materialIdFinder([])(word)).toBe(id);
    const found = materialFinder([])(word);
    expect(found.ok && found.material.id).toBe(id);
  });

  test("leads to the archive's own record of that id before any trade name", () => {
    expect(materialIdFinder(["flint"])("flint")).toBe("flint");
    expect(materialIdFinder(["Flint"])("flint")).toBe("Flint");
    const find = materialFinder([{ id: "flint", name: "Beach flint", formula: "SiO2·CaCO3" }]);
    const found = find("flint");
    expect(found.ok && found.material.name).toBe("Beach flint");
  });

  test("leads by its trade name to the archive's record of the material that it is", () => {
    const find = materialFinder([{ id: "silica", name: "Sand", analysis: { SiO2: 98, loss: 2 } }]);
    const found = find("flint");
    expect(found.ok && found.material.name).toBe("Sand");
    expect(found.ok && found.material.basis).toBe("analysis");
  });

  test("that differs from studio to studio leads nowhere", () => {
    for (const word of ["feldspar", "frit", "alumina", "ochre", "ash", "crocus-martis"])
      expect(findCarriedMaterial(word), word).toBeUndefined();
  });
});

describe("a glaze made of typical materials", () => {
  test("says so, once for each, and a blend of it too", () => {
    const clear = glaze("clear", {
      ingredients: [
        { material: "nepheline-syenite", parts: 50 },
        { material: "whiting", parts: 50 },
      ],
      additions: [{ material: "nepheline-syenite", parts: 1 }],
    });
    const blend = glaze("half", { blend: [{ glaze: "clear", parts: 1 }] });
    const all = chemistryOfGlazes(archive({ glazes: [clear, blend] }));
    for (const id of ["clear", "half"]) {
      const found = all.get(id);
      expect(found?.ok && found.chemistry.notes).toEqual([
        {
          code: "typical",
          material: "nepheline-syenite",
          message: "Nepheline syenite is reckoned by a typical analysis, not by that of your bag",
        },
      ]);
    }
  });

  test("does not once the archive has the supplier's figures", () => {
    for (const { id, name } of typicalMaterials) {
      const find = materialFinder([{ id, name, formula: "SiO2" }]);
      const found = find(id);
      expect(found.ok && found.material.notes, id).toEqual([]);
    }
  });
});

describe("the cautions of a glaze", () => {
  const cautionsOf = (word: string, materials: readonly ReturnType<typeof material>[] = []) => {
    const glazes = [glaze("one", { ingredients: [{ material: word, parts: 1 }] })];
    return (cautionsOfGlazes(archive({ glazes, materials })).get("one") ?? []).map(
      ({ message }) => message,
    );
  };

  test("are read from typical analyses and through trade names", () => {
    expect(cautionsOf("lead-borosilicate-frit")[0]).toMatch(/lead/u);
    expect(cautionsOf("minium")[0]).toMatch(/lead/u);
    expect(cautionsOf("ball-clay")).toContainEqual(expect.stringMatching(/^Dust of silica/u));
    expect(cautionsOf("alkali-frit")).not.toContainEqual(expect.stringMatching(/^Dust of silica/u));
  });

  test("hold what the archive's own record says, whichever word a recipe uses", () => {
    const own = material("silica", { name: "Sand", cautions: ["From the quarry; wear a mask."] });
    for (const word of ["silica", "flint", "QUARTZ"])
      expect(cautionsOf(word, [own]), word).toContainEqual(
        expect.stringMatching(/From the quarry; wear a mask/u),
      );
  });
});
