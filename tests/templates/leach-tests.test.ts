import { describe, expect, test } from "vitest";
import { glazeRow, tileRow } from "../../src/publish/data/rows.ts";
import { renderPage } from "../../src/publish/write-pages.ts";
import type { LeachTest } from "../../src/records/leach-test.ts";
import { whatItCovers } from "../../templates/parts/leach-tests.tsx";
import { catalogueOf, mixed } from "../catalogue/mixing/mixing-support.ts";
import { coat, glaze, tile } from "../checks/support.ts";
import { makeDataFiles } from "../support/data-files.ts";
import { listPages } from "../support/list-pages.ts";

const report = {
  on: "2026-07-03",
  laboratory: "Brackwater Laboratory",
  method: "ISO 6486-1",
  ware: "one mug of <b>buff</b>",
  fired: "g-1",
  found: [
    { element: "lead", below: 0.02, unit: "mg/L" },
    { element: "cobalt", amount: 0.3, unit: "mg/L" },
  ],
  report: "javascript:alert(1)",
} as unknown as LeachTest;

const catalogue = catalogueOf({
  glazes: [
    mixed("leaden", { "lead-bisilicate": 70, kaolin: 30 }, { leachTests: [report] }),
    glaze("soot"),
  ],
  tiles: [
    tile("A", [coat("leaden"), coat("soot")], { leachTests: [report] }),
    tile("B", [coat("leaden"), coat("soot")]),
  ],
});

function pageOf(path: string): { html: string; words: string } {
  const page = listPages(catalogue).find((each) => each.path === path);
  if (!page) throw new Error(`There is no page ${path}`);
  const html = renderPage(page);
  const main = html.slice(html.indexOf("<main"), html.indexOf("</main>"));
  return { html, words: main.replace(/<[^>]+>/gu, " ").replace(/\s+/gu, " ") };
}

describe("a laboratory’s report", () => {
  test.each(["glazes/leaden.html", "tiles/a.html"])("stands on %s with what it covers", (path) => {
    const { words } = pageOf(path);
    expect(words).toContain(
      "Leach test Tested for lead and cobalt by ISO 6486-1: one mug of &lt;b>buff&lt;/b>; fired: g-1. Brackwater Laboratory, report of 3 July 2026. Element Came off lead less than 0.02 mg/L cobalt 0.3 mg/L Report: javascript:alert(1)",
    );
    expect(words).toContain(whatItCovers);
  });

  test("leads nowhere and runs nothing, whatever it says", () => {
    expect(pageOf("glazes/leaden.html").html).not.toMatch(/href="javascript|<b>buff/u);
  });

  test("is shown on no pair, and on no tile that was not tested", () => {
    for (const path of ["pairs/soot--over--leaden.html", "tiles/b.html"])
      expect(pageOf(path).words).not.toContain("Brackwater");
  });

  test("lifts no caution", () => {
    for (const path of ["glazes/leaden.html", "tiles/a.html", "tiles/b.html"])
      expect(pageOf(path).words).toContain("This glaze holds lead: 47 per cent");
  });

  test("stands in the data of what was tested", () => {
    const files = makeDataFiles(catalogue);
    const rows = (name: string): unknown[] =>
      JSON.parse(files.find(({ path }) => path === `data/${name}.json`)?.content ?? "[]");
    const row = {
      ...report,
      found: [
        { element: "lead", amount: null, below: 0.02, unit: "mg/L" },
        { element: "cobalt", amount: 0.3, below: null, unit: "mg/L" },
      ],
    };
    const tested = (all: readonly { id: string; leachTests: unknown[] }[]) =>
      all.map(({ id, leachTests }) => [id, leachTests]);
    expect(tested(rows("glazes").map((each) => glazeRow.parse(each)))).toEqual([
      ["leaden", [row]],
      ["soot", []],
    ]);
    expect(tested(rows("tiles").map((each) => tileRow.parse(each)))).toEqual([
      ["A", [row]],
      ["B", []],
    ]);
  });
});
