/** The pages for a glaze mixer, rendered whole from small catalogues. */
import { describe, expect, test } from "vitest";
import type { Catalogue } from "../../../src/catalogue/types.ts";
import { renderPage } from "../../../src/publish/write-pages.ts";
import type { LaterLook, Result } from "../../../src/records/tile.ts";
import { blend, catalogueOf, clear, mixed } from "../../catalogue/mixing/mixing-support.ts";
import {
  clay,
  coat,
  cone,
  cones,
  fired,
  firing,
  glaze,
  material,
  result,
  set,
  tile,
} from "../../checks/support.ts";
import { listPages } from "../../support/list-pages.ts";

/** A page's markup, and its words without the markup. */
function pageOf(catalogue: Catalogue, path: string): { html: string; words: string } {
  const page = listPages(catalogue).find((each) => each.path === path);
  if (!page) throw new Error(`There is no page ${path}`);
  const html = renderPage(page);
  const main = html.slice(html.indexOf("<main"), html.indexOf("</main>"));
  return { html, words: main.replace(/<[^>]+>/gu, " ").replace(/\s+/gu, " ") };
}

const kiln = firing("g-1", { cone: cone("6") });
const saw = (about: Partial<Result>): Result[] => [{ ...result(), ...about } as Result];
const lead = mixed("leaden", { "lead-bisilicate": 70, kaolin: 30 });

describe("the page of a mixed glaze", () => {
  const catalogue = catalogueOf({
    glazes: [
      mixed(
        "blue",
        { "our-spar": 40, silica: 30, whiting: 20, kaolin: 10 },
        { additions: [{ material: "cobalt-carbonate", parts: 1 }] },
      ),
    ],
    materials: [material("our-spar", { name: "Our spar", formula: "KAlSi3O8", price: 2 })],
    clays: [
      clay("buff", {
        name: "Buff",
        cones: cones("5-7"),
        expansion: { mean: 6.4, between: [20, 500] },
      }),
      clay("red", {
        name: "Red",
        cones: cones("06-03"),
        expansion: { mean: 7, between: undefined },
      }),
    ],
    firings: [kiln],
    tiles: [
      tile("A", [coat("blue"), fired("g-1")], {
        clay: "buff",
        result: saw({ faults: ["crazing"] }),
      }),
      tile("B", [coat("blue"), fired("g-1")], {
        clay: "buff",
        result: saw({ faults: ["none"] }),
        later: [{ on: "2027-01-11", faults: ["crazing"] }] as LaterLook[],
      }),
      tile("C", [coat("blue"), fired("g-1")], { clay: "buff", result: saw({ faults: ["none"] }) }),
    ],
  });
  const { html, words } = pageOf(catalogue, "glazes/blue.html");

  test("has its unity formula to three figures, oxides with true subscripts", () => {
    expect(html).toMatch(/<span class="formula">SiO<sub>2<\/sub><\/span><\/th><td>3\.71<\/td>/u);
    expect(html).toMatch(/<span class="formula">K<sub>2<\/sub>O<\/span><\/th><td>0\.26\d<\/td>/u);
    expect(words).toContain("Silica to alumina, by moles 9.1");
  });

  test("is weighed out by the readings for 100 g, 1 kg and 5 kg without a script", () => {
    expect(words).toMatch(/100 g 1 kg 5 kg Material/u);
    expect(words).toMatch(/ 40 \+ 40 400 \+ 400 2,000 \+ 2,000 Our spar 40 parts /u);
    expect(words).toMatch(
      / 101 \+ 1 1,010 \+ 10 5,050 \+ 50 Cobalt carbonate addition, 1 part; a small amount: weigh it by itself on a fine scale, then tip it in /u,
    );
    expect(html.match(/<svg class="pail"/gu)).toHaveLength(5);
  });

  test("costs what its prices say, and says what they leave out", () => {
    // 40 of 101 parts at 2 a kilogram.
    expect(words).toContain("A dry kilogram costs at least 0.79 : no price is");
  });

  test("states Brongniart's relation, the dry density of this recipe, and how sure it is", () => {
    // 1000 × 0.45 × 2.63 / 1.63 = 726; 1450 / 726 - 1 = 0.997.
    expect(words).toContain("1.45 730 g 1,000 ml");
    expect(words).toContain(
      "Dry density d: 2.63 g/cm³ (2.61 to 2.65), worked out from this recipe and the densities of its minerals. So a litre at SG 1.45 holds 720 to 730 g of dry glaze.",
    );
    expect(words).toContain("= 1000 (gravity − 1) d ÷ (d − 1)");
    expect(words).toContain("keep about 5 per cent (common practice, no source)");
  });

  test("tells every set's expansion with its error, and averages nothing", () => {
    for (const name of ["Appen", "English & Turner", "Winkelmann & Schott", "Mayer & Havas"])
      expect(words.replaceAll("&amp;", "&")).toMatch(new RegExp(`${name}[^±]*±\\d\\.\\d`, "u"));
    expect(words).toContain("averaging them would bring them no nearer the truth");
  });

  test("tells the fit as a tendency beside what tiles did, and of no clay of other cones", () => {
    expect(words).toMatch(/On Buff Measured: 6\.4 × 10⁻⁶ per kelvin, between 20 and 500 °C\./u);
    expect(words).toContain(
      "Of 3 tiles with this glaze alone on it: A; B (seen on 11 January 2027) crazed. 1 tile (C) was looked at and showed no crazing, dunting or shivering.",
    );
    expect(words).toMatch(/Not compared with Red : it has no cone in common with blue\./u);
    expect(words).not.toMatch(/will (craze|shiver|fit)|fits? (well|the clay)/u);
  });

  test("carries the cautions of its materials with their sources", () => {
    expect(words).toMatch(/Caution Cobalt \(in Cobalt carbonate\) is listed as highly toxic/u);
    expect(words).toMatch(/Source: Western Carolina University/u);
  });

  test("leads to the map that it stands on", () => {
    expect(html).toContain('href="../maps/6.html"');
  });
});

describe("a recipe with lead", () => {
  const catalogue = catalogueOf({
    glazes: [
      lead,
      clear,
      blend("half", { leaden: 1, clear: 1 }),
      blend("more", { leaden: 2, clear: 1 }),
    ],
    firings: [kiln],
    tiles: ["leaden", "half", "more"].map((id) =>
      tile(`T-${id}`, [coat(id), fired("g-1")], { result: saw({ surface: ["gloss"] }) }),
    ),
  });

  test.each([
    ["glazes/index.html", /leaden ⚠\uFE0E holds lead/u],
    ["materials/index.html", /Lead bisilicate ⚠\uFE0E holds lead/u],
    ["materials/lead-bisilicate.html", /leaden ⚠\uFE0E holds lead/u],
    ["maps/6.html", /leaden ⚠\uFE0E holds lead/u],
    ["blends/index.html", /leaden to clear ⚠\uFE0E holds lead/u],
    ["blends/clear--leaden.html", /half ⚠\uFE0E holds lead/u],
  ])("never stands on %s without its caution", (path, flagged) => {
    expect(pageOf(catalogue, path).words).toMatch(flagged);
  });

  test("has it at the head of its page and again on its weighing sheet", () => {
    for (const id of ["leaden", "half", "more"]) {
      const { html } = pageOf(catalogue, `glazes/${id}.html`);
      const places = [...html.matchAll(/This glaze holds lead/gu)].map(({ index }) => index);
      expect(places[0]).toBeLessThan(html.indexOf('class="wall"'));
      expect(places.at(-1)).toBeGreaterThan(html.indexOf('id="weighing"'));
    }
  });

  test("has it on the pages of its tiles", () => {
    const { words } = pageOf(catalogue, "tiles/t-half.html");
    expect(words).toMatch(/half: This glaze holds lead/u);
  });
});

describe("a glaze without a recipe", () => {
  const catalogue = catalogueOf({
    glazes: [glaze("jar"), clear, blend("spoons", { jar: 1, clear: 1 }, { by: "volume" })],
    tiles: [],
  });

  test("has neither sheet nor fit, and loads no script for one", () => {
    for (const id of ["jar", "spoons"]) {
      const { html } = pageOf(catalogue, `glazes/${id}.html`);
      expect(html).not.toContain('id="weighing"');
      expect(html).not.toContain('id="fit"');
      expect(html).not.toContain("weighing.js");
    }
  });
});

describe("the page of a pair", () => {
  const blue = mixed("blue", { "soda-feldspar": 60, dolomite: 20, silica: 20 });
  const pair = "pairs/blue--over--clear.html";
  const tiles = [
    tile("A", [coat("clear", { coats: 2 }), coat("blue"), fired("g-1")], {
      result: saw({ surface: ["gloss"] }),
    }),
  ];

  test("tells the melt of both, with the range where a coat's weight is not known", () => {
    const { words } = pageOf(catalogueOf({ glazes: [clear, blue], firings: [kiln], tiles }), pair);
    expect(words).toContain(
      "1 coat over 2 (A): 33 % of the dry weight is blue if coats weigh the same; 14 % to 60 %",
    );
    expect(words).toMatch(/The path at every tenth blue .* 0 % 3\.71 0\.407 9\.1 10 %/u);
  });

  test("tells the weights it rests on where they are known", () => {
    const [known, heavy] = [clear, blue].map((each) => ({
      ...each,
      record: { ...each.record, weightPerCoat: each === blue ? 2 : 1 },
    }));
    if (!known || !heavy) throw new Error("two glazes");
    const { words } = pageOf(catalogueOf({ glazes: [known, heavy], firings: [kiln], tiles }), pair);
    expect(words).toContain(
      "50 % of the dry weight is blue, by the weight that a coat of each leaves.",
    );
    expect(words).not.toContain("The range stands beneath");
  });

  test("says nothing of the kind where one was bought", () => {
    const { html } = pageOf(
      catalogueOf({ glazes: [clear, glaze("blue")], firings: [kiln], tiles }),
      pair,
    );
    expect(html).not.toContain('id="overlap"');
  });
});

describe("the page of a blend", () => {
  const parts = { "soda-feldspar": 60, dolomite: 20, silica: 20 };
  const glazes = [
    clear,
    mixed("blue", parts),
    mixed("iron", { ...parts, "red-iron-oxide": 8 }),
    blend("cb1", { clear: 2, blue: 1 }),
    blend("cb2", { clear: 1, blue: 2 }),
    blend("all", { clear: 1, blue: 1, iron: 1 }),
  ];
  const tiles = glazes.map(({ id }, i) =>
    tile(`T-${i}`, [coat(id), fired("g-1")], { result: saw({}) }, { set: "tests" }),
  );

  test("lays a line out in the order of its blends, each with its shares and its formula", () => {
    const line = glazes.filter(({ id }) => id !== "all" && id !== "iron");
    const { words } = pageOf(
      catalogueOf({ glazes: line, firings: [kiln], tiles, sets: [set("tests")] }),
      "blends/blue--clear.html",
    );
    expect(words).toMatch(/T-0 100 : 0 clear T-3 67 : 33 cb1 T-4 33 : 67 cb2 T-1 0 : 100 blue/u);
    expect(words).toMatch(/clear 100 : 0 3\.71 0\.407/u);
  });

  test("lays a triangle out by its corners, the first that its blends list on top", () => {
    const { html } = pageOf(
      catalogueOf({ glazes, firings: [kiln], tiles, sets: [set("tests")] }),
      "blends/blue--clear--iron.html",
    );
    const places = new Map(
      [
        ...html.matchAll(
          /aria-label="(T-\d)[^"]*"><rect class="ground" x="([\d.]+)" y="([\d.]+)"/gu,
        ),
      ].map(([, code = "", x, y]) => [code, { x: Number(x), y: Number(y) }]),
    );
    const [top, left, right, middle] = ["T-0", "T-1", "T-2", "T-5"].map((code) => places.get(code));
    expect(top?.y).toBe(0);
    expect(left?.y).toBe(right?.y);
    expect(left?.x).toBeLessThan(right?.x ?? 0);
    expect(middle?.x).toBeCloseTo(((left?.x ?? 0) + (right?.x ?? 0)) / 2, 0);
    expect(middle?.x).toBeCloseTo(top?.x ?? 0, 0);
  });
});

test("a map has the published lines with their source, and what came out against them", () => {
  const catalogue = catalogueOf({
    glazes: [clear],
    firings: [kiln],
    tiles: [tile("A", [coat("clear"), fired("g-1")], { result: saw({ surface: ["matte"] }) })],
  });
  const { html, words } = pageOf(catalogue, "maps/6.html");
  expect(words).toMatch(
    /old guidance, not a rule.* 0\.3 K 2 O and 0\.7 CaO.*cone 11.*\(from memory\)/u,
  );
  expect(words).toContain("From 6 up the lines say gloss; here: 1 matte.");
  expect(words).toMatch(/1 clear 9\.1 3\.71 3\.71 0\.407 matte gloss , not so here/u);
  expect(html).toContain('aria-label="1, clear: silica to alumina 9.1, glass formers 3.71; matte"');
});

test("no page for a glaze mixer calls anything safe", () => {
  const catalogue = catalogueOf({
    glazes: [
      clear,
      lead,
      blend("half", { leaden: 1, clear: 1 }),
      blend("h2", { leaden: 2, clear: 1 }),
    ],
    clays: [clay("buff", { expansion: { mean: 6.4, between: [20, 500] } })],
    firings: [kiln],
    tiles: [tile("A", [coat("clear"), coat("leaden"), fired("g-1")], { clay: "buff" })],
  });
  const pages = listPages(catalogue).filter(({ path }) =>
    /^(glazes|materials|maps|blends|pairs)/u.test(path),
  );
  expect(pages.length).toBeGreaterThan(10);
  for (const page of pages)
    expect(renderPage(page).replace(/safety sheets?|Ceramics safety/giu, "")).not.toMatch(
      /\bsafe(ly|ty)?\b/iu,
    );
});
