import { describe, expect, test } from "vitest";
import { archiveWith } from "./archives.ts";
import { tilebook } from "./tilebook.ts";

const own = {
  "recipes/materials/nepheline-syenite.md":
    "---\nname: Off our sack\nanalysis: {SiO2: 60, Al2O3: 24, Na2O: 10, K2O: 5, loss: 1}\n---\n",
};

interface Row {
  readonly id: string;
  readonly tradeNames: readonly string[];
  readonly basis: string;
  readonly source: string;
  readonly cautions: readonly string[];
  readonly overriddenBy: string | null;
}

describe("materials", () => {
  test("tells of each its words, figures, source and cautions, and what the archive has instead", async () => {
    const archive = await archiveWith(own);
    const { code, out } = await tilebook("materials", "--archive", archive);
    expect(code).toBe(0);
    const told = (id: string) => out.split("\n\n").find((block) => block.startsWith(`${id}: `));
    expect(told("nepheline-syenite")).toMatchInlineSnapshot(`
      "nepheline-syenite: Nepheline syenite
        not used here: the archive has its own, Off our sack
        also nepheline-sy, neph-sy
        SiO2 60.2, Al2O3 23.5, Na2O 10.6, K2O 5.1, CaO 0.30, MgO 0.10, Fe2O3 0.08, lost in firing 0.40
        typical: what handbooks of industrial minerals print of the rock from Ontario; that from Norway holds more potash, about 7.5 to 9 per cent (from memory, not compared)
        caution: Dust of silica is carcinogenic to breathe in where it is crystalline, as in quartz, and in clays and feldspars that hold some (group 1)"
    `);
    expect(told("talc")).toMatchInlineSnapshot(`
      "talc: Talc
        also french-chalk, magnesium-silicate, soapstone, steatite
        Mg3Si4O10(OH)2
        SiO2 63.4, MgO 31.9, lost in firing 4.8
        the pure mineral: formula from Webmineral, computed with the CIAAW 2021 atomic weights
        to be minded: ask for an assay: some deposits hold asbestos
        caution: Dust of talc (from Talc) is probably carcinogenic to breathe in (group 2A); it can hold asbestos, depending on its deposit: ask for an assay
        caution: Dust of silica is carcinogenic to breathe in where it is crystalline, as in quartz, and in clays and feldspars that hold some (group 1)"
    `);
    expect(told("calcium-borosilicate-frit")).toMatchInlineSnapshot(`
      "calcium-borosilicate-frit: Calcium borosilicate frit, without alumina
        0.3Na2O·0.7CaO·0.6B2O3·1.5SiO2
        SiO2 47.5, B2O3 22.0, CaO 20.7, Na2O 9.8
        typical: the type in round numbers, common practice, no published source
        to be minded: a type and no product: only the supplier's sheet says what the bag holds
        caution: The dust of Calcium borosilicate frit, without alumina is ground glass, which hurts eyes, nose and lungs"
    `);
    expect(out.split("\n\n").slice(-3).join("\n\n")).toMatchInlineSnapshot(`
      "A recipe may name any of these by the first word or by what it is also called. The figures are
      those of a pure mineral, of one published sample or of a type of frit, not those of the bag on your
      shelf. To reckon with your supplier's own, write recipes/materials/ID.md:

        ---
        name: Ball clay
        analysis: {SiO2: 54.0, Al2O3: 29.0, K2O: 2.1, loss: 10.2}
        ---

      It is used instead, in every recipe. Labels, safety sheets and local rules decide what to mind."
    `);
  });

  test("gives programs one row for each, with the same fields", async () => {
    const archive = await archiveWith(own);
    const { code, out } = await tilebook("materials", "--archive", archive, "--format", "json");
    expect(code).toBe(0);
    const rows: readonly Row[] = JSON.parse(out);
    expect(new Set(rows.map((row) => Object.keys(row).join())).size).toBe(1);
    expect(rows.filter((row) => row.overriddenBy !== null)).toMatchObject([
      { id: "nepheline-syenite", overriddenBy: "Off our sack", basis: "typical" },
    ]);
    const silica = rows.find(({ id }) => id === "silica");
    expect(silica).toMatchObject({ formula: "SiO2", analysis: { SiO2: 100 }, loss: 0 });
    expect(silica?.tradeNames).toContain("flint");
    const lead = rows.find(({ id }) => id === "lead-bisilicate");
    expect(lead?.cautions[0]).toMatch(/^There is lead in it/u);
  });

  test("says what is wrong where the archive cannot be read", async () => {
    const archive = await archiveWith({ "recipes/materials/x.md": "---\nformula: SiO2\n---\n" });
    const { code, out, err } = await tilebook("materials", "--archive", archive);
    expect(code).toBe(1);
    expect(out).toBe("");
    expect(err).toContain("recipes/materials/x.md");
  });
});

describe("a recipe with a material that nobody knows", () => {
  const glaze = (ids: readonly string[]) =>
    [
      "---\nname: New clear\nkind: glaze\ningredients:",
      ...ids.map((id) => `  - {material: ${id}, parts: 20}`),
      "---\n",
    ].join("\n");

  test("is warned of once, with the nearest that is carried, and stops nothing", async () => {
    const archive = await archiveWith({
      "recipes/glazes/new.md": glaze(["hill-feldspar", "moon-dust", "flint", "chalk"]),
    });
    const { code, out } = await tilebook("check", "--archive", archive, "--format", "json");
    expect(code).toBe(0);
    const { problems } = JSON.parse(out) as { problems: readonly Record<string, unknown>[] };
    const told = problems.filter(({ file }) => file === "recipes/glazes/new.md");
    expect(
      told.map(({ severity, code: c, message, hint }) => [severity, c, message, hint]),
    ).toMatchInlineSnapshot(`
      [
        [
          "warning",
          "unknown-material",
          "There is no material “hill-feldspar”",
          "Did you mean “lime-feldspar”, “potash-feldspar” or “soda-feldspar”? Otherwise write a record of it in recipes/materials, with its formula or the analysis from its supplier's sheet. Until then this glaze has no chemistry, and nobody is warned of what this material holds.",
        ],
        [
          "warning",
          "unknown-material",
          "There is no material “moon-dust”",
          "Write a record of it in recipes/materials, with its formula or the analysis from its supplier's sheet. Until then this glaze has no chemistry, and nobody is warned of what this material holds.",
        ],
      ]
    `);
  });

  test("is reckoned by trade names as by ids", async () => {
    const archive = await archiveWith({
      "recipes/glazes/new.md": glaze(["potash-spar", "flint", "chalk", "china-clay"]),
    });
    const { code, out } = await tilebook("check", "--archive", archive, "--format", "json");
    expect(code).toBe(0);
    const { problems } = JSON.parse(out) as { problems: readonly Record<string, unknown>[] };
    expect(problems.filter(({ file }) => file === "recipes/glazes/new.md")).toEqual([]);
  });
});
