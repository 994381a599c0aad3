import { describe, expect, test } from "vitest";
import type { Files } from "../support/archive-folder.ts";
import { archiveWith } from "./archives.ts";
import { tilebook } from "./tilebook.ts";

const recipe = (name: string, parts: Readonly<Record<string, number>>) =>
  [
    "---",
    `name: ${name}`,
    "kind: glaze",
    "ingredients:",
    ...Object.entries(parts).map(([id, n]) => `  - {material: ${id}, parts: ${n}}`),
    "---",
  ].join("\n");

const recipes: Files = {
  "recipes/glazes/boron.md": recipe("Boron clear", {
    "soda-feldspar": 40,
    colemanite: 25,
    whiting: 5,
    silica: 30,
  }),
  "recipes/materials/our-talc.md": "---\nname: Our talc\nformula: Mg3Si4O10(OH)2\n---\n",
};

async function rework(glaze: string, ...args: readonly string[]) {
  return tilebook("rework", glaze, "--archive", await archiveWith(recipes), ...args);
}

describe("rework", () => {
  test("tells new parts beside the old, both formulas, and that every oxide is reached", async () => {
    const { code, out } = await rework("liner", "--without", "whiting", "--with", "wollastonite");
    expect(code).toBe(0);
    expect(out).toMatchInlineSnapshot(`
      "Liner without Whiting

      1 of 2, the nearest: with Wollastonite, the rest weighed anew

                              as it was  as it would be
      Potash feldspar             40.0            43.9
      Silica (quartz, flint)      30.0            19.7
      Whiting                     20.0                –
      Kaolin (china clay)         10.0            11.0
      Wollastonite                    –           25.5   new
      Parts by weight in 100.
      New: Wollastonite brings calcium with silica.

             as it was  as it would be  apart
      SiO2       3.71            3.71   0.000
      Al2O3      0.407           0.407  0.000
      K2O        0.264           0.264  0.000
      CaO        0.736           0.736  0.000
      Unity formula: moles to one mole of all fluxes together.

      No oxide differs by as much as 0.001 mole. Every oxide is reached.
      Silica to alumina: 9.1; it was 9.1.
      Expansion by the factors of Appen: 6.2 ± 0.8; it was 6.2 ± 0.8, × 10⁻⁶/°C: too small a difference to tell.
      Cost of a kilogram, dry: not known; it was not known. No price is known for Kaolin (china clay), Potash feldspar, Silica (quartz, flint) and Wollastonite.

      2 of 2, the simplest: Wollastonite for Whiting, mole for mole

                              as it was  as it would be
      Potash feldspar             40.0            38.8
      Silica (quartz, flint)      30.0            29.1
      Whiting                     20.0                –
      Kaolin (china clay)         10.0             9.69
      Wollastonite                    –           22.5   new
      Parts by weight in 100.
      23.2 parts of Wollastonite bring as many moles of CaO as 20 of Whiting. Everything else stays as it is written.
      New: Wollastonite brings calcium with silica.

             as it was  as it would be   apart
      SiO2       3.71            4.45   +0.736
      Al2O3      0.407           0.407   0.000
      K2O        0.264           0.264   0.000
      CaO        0.736           0.736   0.000
      Unity formula: moles to one mole of all fluxes together.

      The largest difference is +0.736 moles of SiO2.
      Too much SiO2: 4.45 instead of 3.71. The other materials bring it in.
      Silica to alumina: 10.9; it was 9.1.
      Expansion by the factors of Appen: 5.6 ± 0.8; it was 6.2 ± 0.8, × 10⁻⁶/°C: too small a difference to tell.
      Cost of a kilogram, dry: not known; it was not known. No price is known for Kaolin (china clay), Potash feldspar, Silica (quartz, flint) and Wollastonite.

      Caution: Dust of silica is carcinogenic to breathe in where it is crystalline, as in quartz, and in clays and feldspars that hold some (group 1). Weigh where the air is drawn off, or wear a fitted mask (FFP3 or P100). Mix wet, wipe wet, and never sweep.

      Caution: A computed formula, or a limit that it keeps, is no evidence for food: only a leach test on the fired ware is. Ask a laboratory where the ware is to hold food or drink. The usual tests are for lead and cadmium alone: name the other metals that the glaze holds.

      Equal formulas need not melt alike: grain, frits and what clays bring along all count. Fire a test tile before mixing a bucket."
    `);
  });

  test("tells which oxide cannot be reached, and what would bring it", async () => {
    const { code, out } = await rework("BORON", "--without", "colemanite");
    expect(code).toBe(0);
    expect(out).toMatch(/^Too little B2O3: 0\.000 instead of 0\.\d{3}\.$/mu);
    expect(out).toMatch(/^B2O3 from calcium-borosilicate-frit \(brings boron with calcium, /mu);
    expect(out).toMatch(/^The largest difference is −0\.\d{3} moles of B2O3\.$/mu);
  });

  test("that can make nothing says what is lacking", async () => {
    const archive = await archiveWith({
      "recipes/glazes/pair.md": recipe("Pair", { whiting: 50, silica: 50 }),
    });
    const args = ["--without", "whiting", "--with", "kaolin", "--archive", archive];
    const told = await tilebook("rework", "pair", ...args);
    expect(told.code).toBe(0);
    expect(told.out).toContain("none of them holds a flux");
    expect(told.out).toMatch(
      /^CaO would come with wollastonite \(brings calcium with silica\) or dolomite /mu,
    );
    const { out: json } = await tilebook("rework", "pair", ...args, "--format", "json");
    expect(JSON.parse(json)).toMatchObject({
      proposals: [],
      sources: expect.arrayContaining([
        { oxide: "CaO", material: "wollastonite", why: "brings calcium with silica" },
      ]),
    });
  });

  test("is JSON and nothing else for programs", async () => {
    const { out } = await rework("boron", "--without", "colemanite", "--format", "json");
    const found = JSON.parse(out);
    expect(found).toMatchObject({
      glaze: "boron",
      without: "colemanite",
      before: { base: expect.any(Array), additions: [], typical: [] },
      lostAddition: null,
    });
    const [nearest] = found.proposals;
    expect(nearest).toMatchObject({
      largestDifference: { oxide: "B2O3", difference: expect.any(Number) },
      unreached: expect.arrayContaining([
        { oxide: "B2O3", wanted: expect.any(Number), reached: 0 },
      ]),
      costOfKilogram: null,
      expansion: expect.arrayContaining([expect.objectContaining({ model: "appen" })]),
    });
    const total = nearest.base.reduce(
      (sum: number, { parts }: { parts: number }) => sum + parts,
      0,
    );
    expect(total).toBeCloseTo(100, 4);
    expect(found.before.base).toContainEqual({ material: "silica", parts: 30 });
    expect(found.sources.map((source: { oxide: string }) => source.oxide)).toContain("B2O3");
    expect(nearest.cautions.map((c: { loud: boolean }) => c.loud)).not.toContain(undefined);
  });

  test("never gives lead without its caution", async () => {
    const { out } = await rework("liner", "--without", "whiting", "--with", "lead-bisilicate");
    expect(out).toMatch(/^CAUTION: This glaze holds lead/mu);
  });
});

describe("rework is used wrongly", () => {
  test.each([
    [
      ["lyner", "--without", "silica"],
      "There is no glaze “lyner” in this archive. Did you mean “liner”?",
    ],
    [["Liner White", "--without", "silica"], "There is no glaze “Liner White” in this archive."],
    [
      ["liner", "--without", "sillica"],
      "There is no material “sillica” in this archive. Did you mean “silica”?",
    ],
    [
      ["liner", "--without", "Our talk"],
      "There is no material “Our talk” in this archive. Did you mean “our-talc”, the id of “Our talc”?",
    ],
    [
      ["liner", "--without", "dolomite"],
      "Liner holds no dolomite. It holds potash-feldspar, silica, whiting, kaolin.",
    ],
    [
      ["liner", "--without", "silica", "--with", "kaolin,silika"],
      "There is no material “silika” in this archive. Did you mean “silica”?",
    ],
    [
      ["liner", "--without", "silica", "--with", "talc,Silica"],
      "silica cannot be both what there is and what there is not.",
    ],
    [
      ["liner", "--without", "silica", "--with", "flint"],
      "silica cannot be both what there is and what there is not.",
    ],
    [["soot", "--without", "silica"], "Soot is not weighed out of materials."],
  ] as const)("by %j and says how", async ([glaze, ...args], said) => {
    const { code, out, err } = await rework(glaze, ...args);
    expect({ code, out, err }).toEqual({ code: 2, out: "", err: said });
  });

  test("without saying without what", async () => {
    expect((await rework("liner")).code).toBe(2);
    expect((await rework("liner", "--without", "silica", "--with", "talc,,")).code).toBe(2);
    expect((await rework("liner", "--without", "silica", "--format", "github")).code).toBe(2);
  });

  test("in an archive whose recipes have errors, and is told them", async () => {
    const files = { "recipes/glazes/bad.md": "---\nname: Bad\nkind: gaze\n---\n" };
    const args = ["--without", "silica", "--archive", await archiveWith(files)];
    const { code, out, err } = await tilebook("rework", "liner", ...args, "--format", "json");
    expect({ code, out }).toEqual({ code: 1, out: "" });
    expect(err).toContain("recipes/glazes/bad.md:3:7");
  });

  test("in an archive whose folder of recipes has a capital, and is told its errors all the same", async () => {
    const files = { "Recipes/glazes/bad.md": "---\nname: Bad\nkind: gaze\n---\n" };
    const args = ["--without", "silica", "--archive", await archiveWith(files)];
    const { code, out, err } = await tilebook("rework", "liner", ...args);
    expect({ code, out }).toEqual({ code: 1, out: "" });
    expect(err).toContain("Recipes/glazes/bad.md:3:7");
  });

  test("in a folder that is no archive", async () => {
    const args = ["--without", "silica", "--archive", "/nowhere/at/all"];
    expect((await tilebook("rework", "liner", ...args)).code).toBe(1);
  });

  test("says that a glaze without the flux that melts it does not melt as it did", async () => {
    const { code, out } = await rework("boron", "--without", "colemanite", "--with", "talc");
    expect(code).toBe(0);
    expect(out).toMatch(
      /IT WILL NOT MELT AS IT DID: boron melts this glaze at its cone, and 0\.\d+ of 0\.\d+ moles of it would be gone\./u,
    );
  });
});
