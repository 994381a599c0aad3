import { describe, expect, test } from "vitest";
import type { Findings } from "../../src/catalogue/findings.ts";
import { catalogueMaker, makeCatalogue } from "../../src/catalogue/make.ts";
import { onlySet, withoutUnlistedSets } from "../../src/catalogue/select.ts";
import { chemistryOfGlazes } from "../../src/chemistry/glazes.ts";
import { carriedMaterials, carriedWords } from "../../src/chemistry/minerals/minerals.ts";
import { heatOfFirings } from "../../src/firing/of-archive.ts";
import { followReferences } from "../../src/reader/follow-references.ts";
import type { Archive } from "../../src/records/archive.ts";
import { makeLargeArchive } from "../bench/large-archive.ts";
import { archive, coat, glaze, material, set, tile } from "../checks/support.ts";

function findingsOf(whole: Archive): Findings {
  return {
    pictures: new Map(),
    chemistry: chemistryOfGlazes(whole),
    heats: heatOfFirings(whole),
    notes: new Map(),
    builtInMaterials: carriedMaterials,
  };
}

function growing(tiles: number): Archive {
  const { records, files } = makeLargeArchive(tiles);
  const around = { files, logs: new Map(), builtInMaterials: carriedWords };
  const { studio } = records;
  if (!studio) throw new Error("The archive has no studio");
  return { studio, ...followReferences(records, around).archive };
}

const weighed = (id: string, ...materials: readonly string[]) =>
  glaze(id, { ingredients: materials.map((word) => ({ material: word, parts: 1 })) });

/** Materials by their trade names, one that a record stands for, one that only a hidden set has. */
const byTradeNames = archive({
  glazes: [weighed("open", "flint", "whiting"), weighed("hidden", "silica", "own-ash", "chalk")],
  materials: [
    material("silica", { name: "Our silica", cautions: ["Keep the lid on"] }),
    material("own-ash", { name: "Orchard ash", formula: "CaCO3" }),
  ],
  sets: [set("class"), set("secret", { listed: false })],
  tiles: [
    tile("A", [coat("open")], {}, { set: "class" }),
    tile("B", [coat("hidden"), coat("open")], {}, { set: "secret" }),
  ],
});

describe("what the sites of an archive have in common", () => {
  test.each([
    ["one that grows with its tiles", growing(400)],
    ["one with materials by their trade names", byTradeNames],
  ])("is on each site what that site's own records would give: %s", (_, whole) => {
    const findings = findingsOf(whole);
    const makeShared = catalogueMaker(whole, findings);
    const shown = [
      withoutUnlistedSets(whole),
      ...[...whole.sets.values()].map(({ id }) => onlySet(whole, id)),
    ];
    expect(shown.length).toBeGreaterThan(2);
    for (const part of shown) expect(makeShared(part)).toEqual(makeCatalogue(part, findings));
  });

  test("tells no site of a material that it does not show", () => {
    const open = catalogueMaker(
      byTradeNames,
      findingsOf(byTradeNames),
    )(withoutUnlistedSets(byTradeNames));
    const told = JSON.stringify({ ...open, glazeById: [...open.glazeById] });
    expect(told).toContain("Our silica");
    expect(told).not.toMatch(/own-ash|Orchard/u);
  });
});
