/** Mixed glazes beside one another, by what their tiles came out as. */
import { describe, expect, test } from "vitest";
import { companiesOf } from "../../../src/catalogue/mixing/companies.ts";
import { findFiredChemistry } from "../../../src/chemistry/fired-chemistry.ts";
import { mixFiguresOf } from "../../../src/chemistry/mix-figures.ts";
import type { LaterLook, Result } from "../../../src/records/tile.ts";
import { coat, cone, cones, fired, firing, glaze, result, tile } from "../../checks/support.ts";
import { catalogueOf, clear, mixed } from "./mixing-support.ts";

const came = (about: Partial<Result>) => ({ result: [{ ...result(), ...about } as Result] });
const slow = [
  { to: 1220, rate: 100 },
  { to: 700, rate: 50 },
];
const fast = [{ to: 1220, rate: 100 }];

const { companies, glazeById } = catalogueOf({
  glazes: [
    clear,
    mixed("fen", { "potash-feldspar": 45, kaolin: 25, whiting: 30 }),
    mixed("untold", { "potash-feldspar": 50, whiting: 50 }),
    mixed("hot", { "potash-feldspar": 50, whiting: 50 }, { cones: cones("9-10") }),
    mixed("slip", { kaolin: 90, whiting: 10 }, { kind: "slip" }),
    glaze("jar"),
  ],
  firings: [
    firing("g-1", { cone: cone("6"), unit: "C", schedule: fast } as never),
    firing("g-2", { cone: cone("6"), unit: "C", schedule: slow } as never),
    firing("g-3", { cone: cone("04"), unit: "C", schedule: fast } as never),
    firing("g-4", { cone: cone("6"), unit: "C", schedule: fast, heatedBy: "wood" } as never),
  ],
  tiles: [
    tile("A", [coat("clear"), fired("g-1")], came({ surface: ["gloss"] })),
    tile("B", [coat("clear"), fired("g-1")], {
      ...came({ surface: ["gloss", "satin"] }),
      later: [{ on: "2027-01-11", faults: ["crazing"] }] as LaterLook[],
    }),
    tile("C", [coat("clear"), fired("g-2")], came({ surface: ["matte"] })),
    tile("D", [coat("clear"), fired("g-3")], came({ surface: ["dry"] })),
    tile("E", [coat("fen"), fired("g-1")], came({ surface: ["matte"], faults: ["none"] })),
    tile("F", [coat("fen"), coat("clear"), fired("g-1")], came({ surface: ["gloss"] })),
    tile("G", [coat("untold"), fired("g-1")], came({})),
    tile("H", [coat("slip"), fired("g-1")], came({ surface: ["dry"] })),
    tile("I", [coat("jar"), fired("g-1")], came({ surface: ["gloss"] })),
    tile("J", [coat("fen"), fired("g-4")], came({ surface: ["gloss"] })),
  ],
});

const told = companies.map(({ cone: at, cooling, fire, glazes }) => [
  [at, cooling, fire].filter(Boolean).join(" "),
  glazes.map((placed) => [
    placed.glaze.id,
    placed.seen.map(({ outcome, tiles }) => `${outcome} ${tiles.join(" ")}`).join(", "),
  ]),
]);

describe("glazes in company", () => {
  test("are never pooled over cones, coolings or fires, and each outcome names its tiles", () => {
    expect(told).toEqual([
      ["04 natural", [["clear", "dry D"]]],
      [
        "6 natural",
        [
          ["clear", "gloss A B, satin B, crazed B"],
          ["fen", "matte E"],
        ],
      ],
      ["6 natural wood", [["fen", "gloss J"]]],
      ["6 slowed", [["clear", "matte C"]]],
    ]);
  });

  test("leave out slips, bought glazes, tiles of two glazes and tiles of which nobody told", () => {
    const named = companies.flatMap(({ glazes }) => glazes.map((placed) => placed.glaze.id));
    expect(new Set(named)).toEqual(new Set(["clear", "fen"]));
  });

  test("are looked for where the glaze has tiles, the largest company first", () => {
    const fen = glazeById.get("fen");
    const found = fen ? companiesOf(fen, companies) : [];
    expect(found.map(({ glazes, fire }) => [glazes.length, fire])).toEqual([
      [2, null],
      [1, "wood"],
    ]);
  });

  test("are looked for at its own cones where it has no tile that tells, and nowhere else", () => {
    const at = (id: string) => {
      const found = glazeById.get(id);
      return found ? companiesOf(found, companies).map((company) => company.cone) : [];
    };
    expect(at("untold")).toEqual(["6", "6", "6"]);
    expect(at("hot")).toEqual([]);
  });
});

describe("what a mixer looks for first", () => {
  const of = (oxides: Parameters<typeof findFiredChemistry>[0]["oxides"]) => {
    const fired = findFiredChemistry({ oxides, loss: 0, fluorine: 0 });
    return fired && mixFiguresOf(fired);
  };

  test("of Seger's cone 4 is its formula: 8 of silica to 1 of alumina, 0.3 to 0.7, no boron", () => {
    // seger-cones: 0.3 K2O 0.7 CaO, 0.5 Al2O3, 4 SiO2 (H. A. Seger, Collected Writings, checked).
    const found = of({
      K2O: 0.3 * 94.196,
      CaO: 0.7 * 56.077,
      Al2O3: 0.5 * 101.961,
      SiO2: 4 * 60.083,
    });
    expect(found?.silicaToAlumina).toBeCloseTo(8, 2);
    expect(found?.alkaliToEarth).toBeCloseTo(0.3, 3);
    expect(found?.boron).toBe(0);
  });

  test("leaves zinc and lead out of alkaline earths, and counts boron to all fluxes", () => {
    const found = of({ Na2O: 61.979, CaO: 56.077, ZnO: 2 * 81.379, B2O3: 69.617, SiO2: 300 });
    expect(found?.alkaliToEarth).toBeCloseTo(0.5, 3);
    expect(found?.boron).toBeCloseTo(0.25, 3);
    expect(found?.silicaToAlumina).toBeNull();
  });

  test("has no figure where there is nothing to tell it from", () => {
    expect(of({ SiO2: 100 })).toEqual({ silicaToAlumina: null, alkaliToEarth: null, boron: null });
  });
});
