/** What the catalogue holds for a glaze mixer. */
import { describe, expect, test } from "vitest";
import type { LaterLook, Result } from "../../../src/records/tile.ts";
import type { archive } from "../../checks/support.ts";
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
import { blend, catalogueOf, clear, mixed, parts } from "./mixing-support.ts";

const kiln = firing("g-1", { cone: cone("6") });

const saw = (faults: Result["faults"], about: Partial<Result> = {}): Result =>
  ({ ...result(), faults, ...about }) as Result;

const looked = (on: string, faults: LaterLook["faults"]) => [{ on, faults }] as LaterLook[];

function onClay(id: string, of: string, about: Parameters<typeof tile>[2]) {
  return tile(id, [coat("clear"), fired("g-1")], { clay: of, ...about }, { clay: of });
}

describe("the fit of a mixed glaze", () => {
  const buff = clay("buff", { cones: cones("4-7"), expansion: { mean: 6.4, between: [20, 500] } });
  const { glazeById } = catalogueOf({
    glazes: [clear, glaze("jar"), mixed("slip", { kaolin: 90, whiting: 10 }, { kind: "slip" })],
    clays: [
      clay("plain", { cones: cones("4-7") }),
      clay("white", { cones: cones("6"), expansion: { mean: 3, between: undefined } }),
      buff,
      clay("red", { cones: cones("06-03"), expansion: { mean: 7, between: [20, 500] } }),
    ],
    firings: [kiln],
    tiles: [
      onClay("A", "buff", { result: [saw(["crazing", "running"])] }),
      onClay("B", "buff", { result: [saw(["none"])], later: looked("2027-02-01", ["crazing"]) }),
      onClay("C", "buff", { result: [saw(["pinholing"])] }),
      onClay("D", "buff", { result: [saw(undefined)] }),
      onClay("E", "buff", {}),
      onClay("F", "plain", { result: [saw(["crazing"])] }),
      tile("G", [coat("clear"), coat("jar"), fired("g-1")], {
        clay: "buff",
        result: [saw(["shivering"])],
      }),
    ],
  });
  const fits = glazeById.get("clear")?.fits ?? [];

  test("stands beside each clay of known expansion, those it was tried on first", () => {
    expect(fits.map((fit) => fit.clay.id)).toEqual(["buff", "white"]);
    expect(fits[0]).toMatchObject({ mean: 6.4, between: [20, 500] });
    expect(fits[1]).toMatchObject({ mean: 3, between: null });
    for (const { fits: bySet, mean } of fits) {
      // Mayer & Havas share the factors of Winkelmann & Schott: one witness.
      expect(bySet.map(({ model }) => model)).toEqual([
        ...["appen", "english-turner", "winkelmann-schott"],
      ]);
      const expansions = glazeById.get("clear")?.chemistry?.expansion ?? [];
      for (const [i, fit] of bySet.entries())
        expect(fit.difference).toBeCloseTo((expansions[i]?.perKelvin ?? 0) - mean * 1e-6, 12);
    }
  });

  test("is not told with a clay of other cones, which is named", () => {
    expect(glazeById.get("clear")?.apart.map(({ id }) => id)).toEqual(["red"]);
  });

  test("is told with a clay of other cones where some tile has both", () => {
    const low = clay("red", { cones: cones("06-03"), expansion: { mean: 7, between: [20, 500] } });
    const tiles = [onClay("A", "red", { result: [saw(["none"])] })];
    const found = catalogueOf({ glazes: [clear], clays: [low], firings: [kiln], tiles });
    expect(found.glazeById.get("clear")?.fits.map((fit) => fit.clay.id)).toEqual(["red"]);
  });

  test("stands beside what tiles of the two did, delayed crazing included", () => {
    expect(fits[0]?.seen).toEqual({
      tiles: ["A", "B", "C", "D"],
      faults: [
        {
          fault: "crazing",
          tiles: [
            { tile: "A", later: null },
            { tile: "B", later: "2027-02-01" },
          ],
        },
      ],
      without: ["C"],
    });
    expect(fits[1]?.seen).toEqual({ tiles: [], faults: [], without: [] });
  });

  test("is not told of what was bought, nor of a slip", () => {
    expect(glazeById.get("jar")?.fits).toEqual([]);
    expect(glazeById.get("slip")?.chemistry).not.toBeNull();
    expect(glazeById.get("slip")?.fits).toEqual([]);
  });
});

describe("the overlap of two mixed glazes", () => {
  const blue = mixed("blue", { "soda-feldspar": 60, dolomite: 20, silica: 20 });
  const heavy = { ...blue, record: { ...blue.record, weightPerCoat: 1.5 } };
  const known = { ...clear, record: { ...clear.record, weightPerCoat: 0.5 } };
  const tiles = [
    tile("A", [
      coat("clear", { coats: 1 }),
      coat("clear", { coats: 1 }),
      coat("blue"),
      fired("g-1"),
    ]),
    tile("B", [coat("clear", { coats: 2 }), coat("blue"), fired("g-1")]),
    tile("C", [coat("clear", { coats: 1 }), coat("blue", { coats: 3 }), fired("g-1")]),
    tile("D", [coat("clear", { coats: null }), coat("blue"), fired("g-1")]),
    tile("E", [
      coat("clear", { coats: 1, where: ["left"] }),
      coat("clear", { coats: 4, where: ["right"] }),
      coat("blue", { where: ["right"] }),
    ]),
    tile("F", [
      coat("clear", { coats: 1, where: ["left"] }),
      coat("clear", { coats: 4, where: ["right"] }),
      coat("blue"),
    ]),
    tile("G", [coat("clear"), coat("blue"), coat("clear")]),
  ];
  const overlapOf = (glazes: Parameters<typeof archive>[0]["glazes"]) =>
    catalogueOf({ glazes: glazes ?? [], firings: [kiln], tiles }).pairs.find(
      ({ over }) => over.id === "blue",
    )?.overlap;

  test("is told for every number of coats, one that adds up from several layers included", () => {
    const overlap = overlapOf([clear, blue]);
    expect(overlap?.coats.map(({ over, under, tiles: on }) => ({ over, under, on }))).toEqual([
      { over: 1, under: 2, on: ["A", "B"] },
      { over: 1, under: 4, on: ["E"] },
      { over: 3, under: 1, on: ["C"] },
    ]);
    expect(overlap?.unknown).toEqual(["D", "F", "G"]);
  });

  test("has a range from one third to three where the weight of a coat is not known", () => {
    for (const glazes of [
      [clear, blue],
      [known, blue],
      [clear, heavy],
    ]) {
      const one = overlapOf(glazes)?.coats[0];
      expect(one?.melt.upperShare).toBeCloseTo(1 / 3, 12);
      expect(one?.range?.map((melt) => melt.upperShare)).toEqual([
        expect.closeTo(1 / 3 / (2 + 1 / 3), 12),
        expect.closeTo(3 / 5, 12),
      ]);
    }
  });

  test("is weighted by what a coat of each weighs where both are known", () => {
    const one = overlapOf([known, heavy])?.coats[0];
    expect(one?.melt.upperShare).toBeCloseTo(1.5 / (1.5 + 2 * 0.5), 12);
    expect(one?.range).toBeNull();
  });

  test("has a path from the lower glaze itself to the upper, at every tenth", () => {
    const { path = [] } = overlapOf([clear, blue]) ?? {};
    expect(path.map(({ upperShare }) => upperShare)).toEqual([
      ...[0, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 1],
    ]);
    const { glazeById } = catalogueOf({ glazes: [clear, blue] });
    for (const [id, point] of [
      ["clear", path[0]],
      ["blue", path[10]],
    ] as const) {
      const unity = glazeById.get(id)?.chemistry?.unity;
      expect(point?.silica).toBeCloseTo(unity?.SiO2 ?? 0, 10);
      expect(point?.alumina).toBeCloseTo(unity?.Al2O3 ?? 0, 10);
    }
  });

  test("is not told where one of the two was bought, or is no glaze", () => {
    expect(overlapOf([clear, glaze("blue")])).toBeNull();
    expect(overlapOf([clear, { ...blue, record: { ...blue.record, kind: "slip" } }])).toBeNull();
  });
});

describe("blends of the same ends", () => {
  const glazes = [
    clear,
    glaze("jar"),
    blend("spoon-1", { clear: 2, jar: 1 }, { by: "volume" }),
    blend("spoon-2", { clear: 1, jar: 2 }, { by: "volume" }),
  ];
  const { blends, glazeById } = catalogueOf({
    glazes,
    sets: [set("autumn"), set("spring")],
    tiles: [
      tile("A1", [coat("clear")], {}, { set: "autumn" }),
      tile("A2", [coat("spoon-1")], {}, { set: "autumn" }),
      tile("A3", [coat("jar")], {}, { set: "autumn" }),
      tile("S1", [coat("clear")], {}, { set: "spring" }),
      tile("S2", [coat("jar")], {}, { set: "spring" }),
      tile("L1", [coat("spoon-2")]),
      tile("L2", [coat("spoon-2"), coat("jar")]),
    ],
  });

  test("are laid out for every set that shows some of them", () => {
    expect(blends).toMatchObject([
      {
        name: "clear to jar",
        url: "blends/clear--jar--by-volume.html",
        kind: "line",
        by: "volume",
        members: [
          { glaze: { id: "clear" }, shares: [1, 0] },
          { glaze: { id: "spoon-1" } },
          { glaze: { id: "spoon-2" } },
          { glaze: { id: "jar" }, shares: [0, 1] },
        ],
        layouts: [{ set: { id: "autumn" }, tiles: ["A1", "A2", null, "A3"] }],
      },
    ]);
  });

  test("are linked from each of their glazes", () => {
    for (const { id } of glazes)
      expect(glazeById.get(id)?.blends.map(({ url }) => url)).toEqual([
        "blends/clear--jar--by-volume.html",
      ]);
  });
});

describe("a map", () => {
  const matte = mixed("matte", { "potash-feldspar": 30, kaolin: 45, whiting: 25 });
  const { maps } = catalogueOf({
    glazes: [clear, matte, glaze("jar"), mixed("slip", { kaolin: 60, talc: 40 }, { kind: "slip" })],
    firings: [kiln, firing("g-2", { cone: cone("10") })],
    tiles: [
      tile("A", [coat("clear"), fired("g-1")], {
        result: [saw(["running"], { surface: ["gloss"] })],
      }),
      tile("B", [coat("clear"), fired("g-1")], { result: [saw(["none"], { surface: ["gloss"] })] }),
      tile("C", [coat("clear"), fired("g-2")], { result: [saw(["none"], { surface: ["satin"] })] }),
      tile("D", [coat("matte"), fired("g-1")], { result: [saw(["none"], { surface: ["gloss"] })] }),
      tile("E", [coat("jar"), fired("g-1")], { result: [saw(["none"])] }),
      tile("F", [coat("slip"), fired("g-1")], { result: [saw(["none"])] }),
      tile("G", [coat("matte"), coat("clear"), fired("g-2")], { result: [saw(["none"])] }),
    ],
  });

  test("stands for each cone that a mixed glaze was fired to alone", () => {
    expect(
      maps.map(({ cone: at, url, marks }) => ({ at, url, on: marks.map((m) => m.glaze.id) })),
    ).toEqual([
      { at: "6", url: "maps/6.html", on: ["clear", "matte"] },
      { at: "10", url: "maps/10.html", on: ["clear"] },
    ]);
  });

  test("places a glaze by its unity formula and shows a tile of it without fault", () => {
    const [mark] = maps[0]?.marks ?? [];
    // worked-recipes.csv, base-100 (derived).
    expect(mark?.silica).toBeCloseTo(3.712, 2);
    expect(mark?.alumina).toBeCloseTo(0.407, 2);
    expect(mark?.ratio).toBeCloseTo(3.712 / 0.407, 1);
    // No boron and no phosphorus are in it: silica alone makes its glass.
    expect(mark?.glass).toBe(mark?.silica);
    expect(mark).toMatchObject({ tiles: ["A", "B"], shown: "B", isIncomplete: false });
  });

  test("says of a glaze that an analysis of it does not add up, and counts boron among its glass", () => {
    const found = catalogueOf({
      glazes: [mixed("odd", { "our-frit": 60, kaolin: 40 })],
      materials: [material("our-frit", { analysis: { SiO2: 50, B2O3: 20, Na2O: 20, LOI: 0 } })],
      firings: [firing("g-1", { cone: cone("6") })],
      tiles: [tile("A", [coat("odd"), fired("g-1")], { result: [result()] })],
    });
    const [mark] = found.maps[0]?.marks ?? [];
    expect(mark?.isIncomplete).toBe(true);
    expect(mark?.glass).toBeGreaterThan(mark?.silica ?? Number.POSITIVE_INFINITY);
  });

  test("tells where the studio's tiles disagree with the old lines", () => {
    const told = maps.flatMap(({ marks }) => marks.map((m) => [m.glaze.id, m.region, m.disagrees]));
    expect(told).toEqual([
      ["clear", "bright", false],
      ["matte", "matte", true],
      ["clear", "bright", true],
    ]);
  });
});

describe("what a glaze is weighed out of", () => {
  const iron = mixed("iron", { "Our-Spar": 80, gravel: 20 }, { additions: parts({ silica: 5 }) });
  const { glazeById, materials } = catalogueOf({
    glazes: [iron, clear, glaze("jar"), blend("half", { clear: 1, iron: 1 })],
    materials: [
      material("our-spar", { name: "Our spar", formula: "KAlSi3O8", price: 2.5 }),
      material("gravel", { name: "Gravel" }),
    ],
  });

  test("has its page and its price where they are known", () => {
    expect(glazeById.get("iron")?.batch).toEqual([
      {
        id: "our-spar",
        name: "Our spar",
        url: "materials/our-spar.html",
        parts: 80,
        isAddition: false,
        price: 2.5,
      },
      {
        id: "gravel",
        name: "Gravel",
        url: "materials/gravel.html",
        parts: 20,
        isAddition: false,
        price: null,
      },
      {
        id: "silica",
        name: "Silica (quartz, flint)",
        url: "materials/silica.html",
        parts: 5,
        isAddition: true,
        price: null,
      },
    ]);
  });

  test("is raw materials for a blend, and nothing for a jar", () => {
    expect(glazeById.get("half")?.batch?.map(({ id }) => id)).toContain("our-spar");
    expect(glazeById.get("jar")?.batch).toBeNull();
  });

  test("is told of each material: its analysis and its cautions, or why there is none", () => {
    const gravel = materials.find(({ id }) => id === "gravel");
    expect(gravel).toMatchObject({ analysis: null, hazards: [{ code: "not-known" }] });
    expect(gravel?.whyNoAnalysis).toContain("has no formula and no analysis");
    const silica = materials.find(({ id }) => id === "silica");
    expect(silica?.analysis?.oxides.SiO2).toBeCloseTo(100, 6);
    expect(silica?.hazards.map(({ code }) => code)).toEqual(["silica-dust"]);
  });
});

test("a glaze with lead is never without its caution, nor a tile that has it, nor its blends", () => {
  const { glazes, tiles, materials } = catalogueOf({
    glazes: [
      mixed("leaden", { "lead-bisilicate": 70, kaolin: 30 }),
      clear,
      blend("leaden-spoon", { leaden: 1, clear: 1 }, { by: "volume" }),
    ],
    tiles: [tile("A", [coat("leaden-spoon"), coat("clear")]), tile("B", [coat("clear")])],
  });
  const loud = (list: readonly { isLoud: boolean; inShort?: string }[]) =>
    list.filter(({ isLoud }) => isLoud).map(({ inShort }) => inShort);
  expect(glazes.map(({ id, hazards }) => [id, loud(hazards)])).toEqual([
    ["clear", []],
    ["leaden", ["holds lead"]],
    ["leaden-spoon", ["holds lead"]],
  ]);
  expect(tiles.map(({ cautions }) => cautions.map(({ message }) => message))).toEqual([
    ["leaden-spoon: There is lead in it, from Lead bisilicate"],
    [],
  ]);
  expect(loud(materials.find(({ id }) => id === "lead-bisilicate")?.hazards ?? [])).toEqual([
    "holds lead",
  ]);
});
