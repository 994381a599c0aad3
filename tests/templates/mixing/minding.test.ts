/** That a caution goes wherever the glaze goes: its own page, tiles, cards, pairs, blends, loads, data. */
import { describe, expect, test } from "vitest";
import type { Catalogue } from "../../../src/catalogue/types.ts";
import { renderPage } from "../../../src/publish/write-pages.ts";
import { blend, catalogueOf, mixed } from "../../catalogue/mixing/mixing-support.ts";
import { coat, fired, firing, glaze, material, tile } from "../../checks/support.ts";
import { makeDataFiles } from "../../support/data-files.ts";
import { listPages } from "../../support/list-pages.ts";

const catalogue: Catalogue = catalogueOf({
  materials: [
    material("stove-ash", {
      name: "Stove ash",
      analysis: { CaO: 60, SiO2: 20, loss: 20 },
      cautions: ["Caustic when wet; gloves and goggles."],
    }),
  ],
  glazes: [
    mixed("willow", { "stove-ash": 40, "potash-feldspar": 40, silica: 18, "chrome-oxide": 2 }),
    glaze("moonshell", { name: "Moonshell", label: ["not-for-food"] }),
    blend("spoons", { willow: 1, moonshell: 1 }, { by: "volume" }),
    blend("more", { willow: 2, moonshell: 1 }, { by: "volume" }),
  ],
  firings: [
    firing("g-air", { atmosphere: "oxidation" }),
    firing("g-smoke", { atmosphere: "reduction" }),
  ],
  tiles: [
    tile("T-1", [coat("willow"), coat("moonshell"), fired("g-air")]),
    tile("T-2", [coat("willow"), fired("g-smoke")]),
    tile("T-3", [coat("spoons")]),
  ],
});

function wordsOf(path: string): string {
  const page = listPages(catalogue).find((each) => each.path === path);
  if (!page) throw new Error(`There is no page ${path}`);
  const html = renderPage(page);
  const main = html.slice(html.indexOf("<main"), html.indexOf("</main>"));
  return main.replace(/<[^>]+>/gu, " ").replace(/\s+/gu, " ");
}

const ash = "Stove ash: Caustic when wet; gloves and goggles";

describe("what a material’s record warns of", () => {
  test.each([
    "glazes/willow.html",
    "glazes/spoons.html",
    "tiles/t-1.html",
    "tiles/t-3.html",
    "pairs/moonshell--over--willow.html",
    "blends/moonshell--willow--by-volume.html",
  ])("stands on %s", (path) => {
    expect(wordsOf(path)).toContain(ash);
  });

  test("stands in the data of the glaze and of the tile", () => {
    const files = makeDataFiles(catalogue);
    const rows = (name: string) =>
      JSON.parse(files.find(({ path }) => path === `data/${name}.json`)?.content ?? "[]");
    const cautions = (name: string, id: string): string =>
      rows(name)
        .find((row: { id: string }) => row.id === id)
        .cautions.join("\n");
    for (const id of ["willow", "spoons"]) expect(cautions("glazes", id)).toContain(ash);
    for (const id of ["T-1", "T-3"]) expect(cautions("tiles", id)).toContain(ash);
    for (const id of ["moonshell", "spoons"])
      expect(cautions("glazes", id)).toContain("not for food");
  });
});

describe("a label that says not for food", () => {
  test.each([
    ["glazes/moonshell.html", "Caution Its label says: not for food."],
    ["glazes/index.html", "Moonshell ⚠\uFE0E not for food"],
    ["tiles/t-1.html", "Caution Moonshell: Its label says: not for food."],
    [
      "tiles/t-3.html",
      "spoons: The label of Moonshell, which is mixed into it, says: not for food.",
    ],
    ["pairs/moonshell--over--willow.html", "Caution Moonshell: Its label says: not for food."],
    ["blends/moonshell--willow--by-volume.html", "spoons ⚠\uFE0E not for food"],
  ])("stands on %s", (path, told) => {
    expect(wordsOf(path)).toContain(told);
  });

  test("stands on the card of every tile with it", () => {
    const card = (path: string) => wordsOf(path).split("To do it again")[1];
    for (const path of ["tiles/t-1.html", "tiles/t-3.html"])
      expect(card(path)).toContain("⚠\uFE0E not for food");
    expect(card("tiles/t-2.html")).not.toContain("not for food");
  });
});

describe("quiet hazards", () => {
  test("are told in full on a glaze’s page whether or not it can be weighed out", () => {
    for (const path of ["glazes/willow.html", "glazes/spoons.html"])
      expect(wordsOf(path)).toMatch(/Caution Dust of silica is carcinogenic.* Source: IARC/u);
  });

  test("are told on a tile’s card in short, chromium in oxidation only where it was fired in air", () => {
    const oxidised = "chromium that can turn hexavalent in oxidation";
    expect(wordsOf("tiles/t-1.html")).toContain(oxidised);
    expect(wordsOf("tiles/t-2.html")).not.toContain(oxidised);
    expect(wordsOf("tiles/t-3.html")).toContain(oxidised);
    expect(wordsOf("tiles/t-2.html")).toContain("silica dust");
  });

  test("that speak of the kiln are told of its load", () => {
    const told = "What the glazes of this load give off in the kiln, as far as it is known";
    expect(wordsOf("firings/g-air.html")).toContain(
      `${told} chromium that can turn hexavalent in oxidation ( willow )`,
    );
    expect(wordsOf("firings/g-smoke.html")).not.toContain(told);
  });
});
