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

                              as it was  as it would be
      Potash feldspar             40.0            43.9
      Silica (quartz, flint)      30.0            19.7
      Whiting                     20.0                –
      Kaolin (china clay)         10.0            11.0
      Wollastonite                    –           25.5   new
      Parts by weight in 100, additions included.

             as it was  as it would be  apart
      SiO2       3.71            3.71   0.000
      Al2O3      0.407           0.407  0.000
      K2O        0.264           0.264  0.000
      CaO        0.736           0.736  0.000
      Unity formula: moles to one mole of all fluxes together.

      No oxide differs by as much as 0.001 mole. Every oxide is reached.

      Caution: Dust of silica is carcinogenic to breathe in where it is crystalline, as in quartz, and in clays and feldspars that hold some (group 1). Weigh where the air is drawn off, or wear a fitted mask (FFP3 or P100). Mix wet, wipe wet, and never sweep.

      Caution: A computed formula, or a limit that it keeps, is no evidence for food: only a leach test on the fired ware is. Ask a laboratory where the ware is to hold food or drink. The usual tests are for lead and cadmium alone: name the other metals that the glaze holds.

      Equal formulas need not melt alike: grain, frits and what clays bring along all count. Fire a test tile before mixing a bucket."
    `);
  });

  test("tells which oxide cannot be reached, and what would bring it", async () => {
    const { code, out } = await rework("BORON", "--without", "colemanite");
    expect(code).toBe(0);
    expect(out).toMatch(/^B2O3 cannot be reached: 0\.000 instead of 0\.\d{3}\. .*\bulexite\b/mu);
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
    expect(told.out).toMatch(/^CaO would come with .*wollastonite/mu);
    const { out: json } = await tilebook("rework", "pair", ...args, "--format", "json");
    expect(JSON.parse(json)).toMatchObject({
      portions: null,
      largestDifference: null,
      unreached: null,
      unity: [
        { oxide: "SiO2", reached: null },
        { oxide: "CaO", wanted: 1, reached: null },
      ],
    });
  });

  test("is JSON and nothing else for programs", async () => {
    const { out } = await rework("boron", "--without", "colemanite", "--format", "json");
    const found = JSON.parse(out);
    expect(found).toMatchObject({
      glaze: "boron",
      without: "colemanite",
      largestDifference: { oxide: "B2O3", difference: expect.any(Number) },
      unreached: expect.arrayContaining([
        { oxide: "B2O3", wanted: expect.any(Number), reached: 0 },
      ]),
    });
    const total = found.portions.reduce(
      (sum: number, { parts }: { parts: number }) => sum + parts,
      0,
    );
    expect(total).toBeCloseTo(100, 4);
    expect(found.portions.find((p: { material: string }) => p.material === "silica")).toMatchObject(
      { partsBefore: 30 },
    );
    expect(found.brought.map((b: { oxide: string }) => b.oxide)).toContain("B2O3");
    expect(found.cautions.map((c: { loud: boolean }) => c.loud)).not.toContain(undefined);
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
