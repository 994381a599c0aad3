import { describe, expect, test } from "vitest";
import { type Caution, findCautions } from "../../src/chemistry/cautions/cautions.ts";
import { cautionsOfGlazes } from "../../src/chemistry/cautions/cautions-of-glazes.ts";
import { oxideHazards } from "../../src/chemistry/cautions/hazards.ts";
import { findFiredChemistry } from "../../src/chemistry/fired-chemistry.ts";
import { chemistryOfGlazes } from "../../src/chemistry/glazes.ts";
import { materialFinder } from "../../src/chemistry/materials.ts";
import { theoreticalMaterials } from "../../src/chemistry/minerals/minerals.ts";
import { mixAnalyses } from "../../src/chemistry/mix.ts";
import { glazeSchema } from "../../src/records/glaze.ts";
import { readAs, type SourceMap } from "../../src/records/read.ts";
import { readReference } from "./reference.ts";

const findMaterial = materialFinder([]);

function cautionsFor(recipe: Readonly<Record<string, number>>): readonly Caution[] {
  const parts = Object.entries(recipe).map(([id, weight]) => {
    const found = findMaterial(id);
    if (!found.ok) throw new Error(found.reasons[0].message);
    return { material: found.material, weight };
  });
  const raw = mixAnalyses(parts.map(({ material, weight }) => ({ ...material, weight })));
  return findCautions(
    parts.map(({ material }) => material),
    findFiredChemistry(raw) ?? null,
  );
}

const loud = (cautions: readonly Caution[]) => cautions.filter(({ isLoud }) => isLoud);
const base = { "potash-feldspar": 40, silica: 30, whiting: 20, kaolin: 10 };

describe("the cautions for a recipe", () => {
  test("are loud for lead and cadmium however little there is", () => {
    for (const material of ["lead-bisilicate", "cadmium-sulphide"]) {
      const cautions = cautionsFor({ ...base, [material]: 0.05 });
      expect(loud(cautions).map(({ code }) => code)).toEqual(["lead-or-cadmium"]);
      expect(cautions[0]?.isLoud).toBe(true);
    }
    // 70 × 65.003 % of 70 + 30 × 86.043 %, minerals.csv.
    expect(cautionsFor({ "lead-bisilicate": 70, kaolin: 30 })[0]?.message).toBe(
      "This glaze holds lead: 47.49 per cent of what is fired, as PbO",
    );
  });

  test("are loud for lead where nobody knows how much of it there is", () => {
    const found = findMaterial("lead-bisilicate");
    if (!found.ok) throw new Error("no lead");
    const [first] = findCautions([found.material], null);
    expect(first).toMatchObject({ code: "lead-or-cadmium", isLoud: true, inShort: "holds lead" });
    expect(first?.message).toBe("There is lead in it, from Lead bisilicate");
  });

  test("are loud for a heavy load of a harmful colourant, and quiet for a light one", () => {
    // 8 × 71.949 % of 100 - 10.19 + 8 × 71.949 %, minerals.csv and worked-recipes.csv.
    const heavy = cautionsFor({ ...base, "copper-carbonate": 8 });
    expect(loud(heavy).map(({ message }) => message)).toEqual([
      "This glaze holds much copper: 6.02 per cent of what is fired, as CuO",
    ]);
    expect(loud(cautionsFor({ ...base, "copper-carbonate": 2 }))).toEqual([]);
    expect(loud(cautionsFor({ ...base, "cobalt-carbonate": 1 }))).toEqual([]);
  });

  test("name what is harmful in the bag, and the materials that it is in", () => {
    const messages = cautionsFor({ ...base, "cobalt-carbonate": 1, "barium-carbonate": 9 }).map(
      ({ message }) => message,
    );
    expect(messages).toContainEqual(expect.stringMatching(/^Cobalt \(in Cobalt carbonate\) is/u));
    expect(messages).toContainEqual(expect.stringMatching(/^Barium \(in .*poisonous to swallow/u));
  });

  test("pass over traces in natural materials", () => {
    const own = materialFinder([
      {
        id: "clay",
        name: "Clay",
        analysis: { SiO2: 60, Al2O3: 28, MnO: 0.05, BaO: 0.1, loss: 11.8 },
      },
    ])("clay");
    if (!own.ok) throw new Error("no clay");
    const codes = findCautions([own.material], null).map(({ code }) => code);
    expect(codes).toEqual(["silica-dust"]);
  });

  test("tell what leaves in the kiln and from which material", () => {
    const fumes = cautionsFor({ ...base, fluorspar: 4, gypsum: 1 }).find(
      ({ code }) => code === "kiln-fumes",
    );
    expect(fumes?.message).toBe(
      "In the kiln this recipe gives off carbon dioxide and carbon monoxide (from Whiting); hydrogen fluoride and silicon fluoride (from Fluorspar); sulphur dioxide and trioxide (from Gypsum)",
    );
  });

  test("warn of silica dust and of computed formulas with every glaze", () => {
    const codes = cautionsFor(base).map(({ code }) => code);
    expect(codes).toContain("silica-dust");
    expect(codes.at(-1)).toBe("only-tests-tell");
  });

  test("speak of hexavalent chromium, asbestos and salt by the material", () => {
    const text = (id: string) =>
      cautionsFor({ ...base, [id]: 5 })
        .map((c) => c.message)
        .join(" ");
    expect(text("potassium-dichromate")).toContain("hexavalent chromium");
    expect(text("talc")).toContain("asbestos");
    expect(text("salt")).toContain("outdoors only");
  });

  test("each have a source, and never call anything safe", () => {
    for (const { id } of theoreticalMaterials) {
      for (const { message, hint, sources } of cautionsFor({ ...base, [id]: 20 })) {
        expect(sources.length).toBeGreaterThan(0);
        expect(`${message} ${hint}`).not.toMatch(/\bsafe\b/u);
      }
    }
  });
});

describe("the hazards", () => {
  const rows = readReference("safety").filter((row) => row.kind === "hazard flag");
  /** No oxide of theirs is counted, so a formula that holds them has no analysis to caution on. */
  const withoutOxide = ["arsenic", "beryllium", "uranium"];

  test("hold every substance that is listed as highly toxic, with source and tag", () => {
    const listed = rows.filter((row) => row.item?.startsWith("listed as highly toxic"));
    expect(listed.length).toBe(13);
    for (const row of listed) {
      if (withoutOxide.includes(row.substance ?? "")) continue;
      const hazard = oxideHazards.find(({ substance }) => substance === row.substance);
      const sources = hazard?.statements.map(({ source, tag }) => `${source} (${tag})`);
      const source = row.source?.replace(" (seen)", "");
      expect(sources, row.substance).toContain(`${source} (${row.tag})`);
    }
  });
});

test("every glaze of an archive has its cautions, with chemistry or without", () => {
  const glaze = (id: string, source: SourceMap) => {
    const reading = readAs(glazeSchema, { name: id, kind: "glaze", ...source });
    if (!reading.ok) throw new Error(reading.faults[0]?.message);
    return [id, { id, file: `${id}.md`, record: reading.record, notes: "" }] as const;
  };
  const archive = {
    glazes: new Map([
      glaze("old", {
        ingredients: [
          { material: "red-lead", parts: "60" },
          { material: "silica", parts: "40" },
        ],
      }),
      glaze("unknown", {
        ingredients: [
          { material: "nickel-oxide", parts: "9" },
          { material: "gravel", parts: "9" },
        ],
      }),
      glaze("spoons", {
        by: "volume",
        blend: [
          { glaze: "Old", parts: "1" },
          { glaze: "jar", parts: "1" },
        ],
      }),
      glaze("jar", { bought: { maker: "Oxbow" } }),
    ]),
    materials: new Map(),
  };
  const cautions = cautionsOfGlazes(archive, chemistryOfGlazes(archive));
  const codes = (id: string) => cautions.get(id)?.map(({ code }) => code);
  expect(codes("old")).toEqual([
    "lead-or-cadmium",
    "raw-material",
    "silica-dust",
    "only-tests-tell",
  ]);
  expect(codes("unknown")).toEqual(["raw-material"]);
  expect(codes("spoons")).toEqual(["lead-or-cadmium", "raw-material", "silica-dust"]);
  expect(codes("jar")).toEqual([]);
});
