/** What a potter types, and what is found by it. */
import { describe, expect, test } from "vitest";
import type { CatalogueGlaze } from "../../src/catalogue/glazes.ts";
import { makeCatalogue } from "../../src/catalogue/make.ts";
import { chemistryOfGlazes } from "../../src/chemistry/glazes.ts";
import { carriedMaterials } from "../../src/chemistry/minerals/minerals.ts";
import { linearToLab } from "../../src/colour/cielab.ts";
import { hexToLinear } from "../../src/colour/srgb.ts";
import { wordsOfGlaze, wordsOfTile } from "../../src/publish/pages/search-words.ts";
import { measured } from "../catalogue/measured.ts";
import { archive, coat, fired, firing, glaze, result, tile } from "../checks/support.ts";

const ingredients = [
  { material: "potash-feldspar", parts: 40 },
  { material: "silica", parts: 30 },
  { material: "whiting", parts: 20 },
];

const made = archive({
  glazes: [
    glaze("reed", {
      name: "Reed",
      ingredients,
      additions: [{ material: "copper-carbonate", parts: 3 }],
    }),
    glaze("plain", { name: "Plain", ingredients }),
  ],
  firings: [firing("g-1")],
  tiles: [
    tile("T-1", [coat("reed"), fired("g-1")], { result: [result()] }),
    tile("T-2", [coat("plain"), fired("g-1")], { result: [result()] }),
  ],
});

function catalogueWith(colours: Readonly<Record<string, string>>) {
  const pictures = Object.entries(colours).map(([id, hex]) => {
    const colour = measured(linearToLab(hexToLinear(hex)));
    return [`tiles/${id}.jpg`, { colour, files: [] } as never] as const;
  });
  return makeCatalogue(made, {
    pictures: new Map(pictures),
    chemistry: chemistryOfGlazes(made),
    heats: new Map(),
    notes: new Map(),
    builtInMaterials: carriedMaterials,
  });
}

const { tiles, glazeById } = catalogueWith({ "T-1": "#1f7a7a", "T-2": "#f6f4ee" });
const glazeOf = (id: string): CatalogueGlaze => {
  const found = glazeById.get(id);
  if (!found) throw new Error(`no glaze ${id}`);
  return found;
};
const [teal = "", white = ""] = tiles.map((each) => wordsOfTile(each, ""));

describe("a tile is found", () => {
  test("by its family of colour and by the trade's narrower word for it", () => {
    expect(teal).toMatch(/\bblue-green\b.*\bteal\b/u);
    expect(white).toMatch(/\bwhite\b/u);
    expect(white).not.toMatch(/\bteal\b/u);
  });

  test("by a metal that its glaze holds", () => {
    expect(teal).toMatch(/\bcopper\b/u);
    expect(white).not.toMatch(/\bcopper\b/u);
  });
});

test("a glaze is found by the everyday names of its metals, and not by a trace of one", () => {
  expect(wordsOfGlaze(glazeOf("reed"))).toMatch(/\bcopper\b/u);
  expect(wordsOfGlaze(glazeOf("plain"))).not.toMatch(/\bcopper\b|\biron\b/u);
});
