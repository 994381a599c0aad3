import { describe, expect, test } from "vitest";
import { firingsOf } from "../../../src/catalogue/kilns/tile-firings.ts";
import { makeCatalogue } from "../../../src/catalogue/make.ts";
import type { Catalogue } from "../../../src/catalogue/types.ts";
import type { Lab } from "../../../src/colour/cielab.ts";
import { heatOfFirings } from "../../../src/firing/of-archive.ts";
import type { Firing } from "../../../src/records/archive.ts";
import { firingSchema } from "../../../src/records/firing.ts";
import { accountWords, reachedWords } from "../../../templates/words/firing/cones.ts";
import { unlikeWords } from "../../../templates/words/tile/control.ts";
import { archive, coat, fired, firing, glaze, result, set, tile } from "../../checks/support.ts";
import { measured } from "../measured.ts";

/** A load as the archive reads it: every scalar is text. */
function load(id: string, fields: Readonly<Record<string, unknown>>, log?: string): Firing {
  const record = firingSchema.parse({ kind: "glaze", ...fields });
  return {
    ...firing(id, record),
    log: log === undefined ? null : { file: `tiles/firings/${id}.csv`, text: log },
  };
}

function catalogueOf(parts: Parameters<typeof archive>[0]): Catalogue {
  const whole = archive(parts);
  return makeCatalogue(whole, {
    pictures: new Map(),
    chemistry: new Map(),
    heats: heatOfFirings(whole),
    notes: new Map(),
    builtInMaterials: [],
  });
}

const schedule = [
  { to: "1100", rate: "150" },
  { to: "1210", rate: "60", hold: "15" },
];

const log = [
  "minutes,°C",
  ...Array.from({ length: 240 }, (_, i) => `${i * 5},${20 + i * 5}`),
  ...Array.from({ length: 200 }, (_, i) => `${1196 + i},${1215 - i * 5}`),
].join("\n");

describe("a firing", () => {
  const { firings } = catalogueOf({
    firings: [
      load(
        "g-1",
        { on: "2026-10-18", cone: "6", schedule, witness: { bottom: "5½", top: "6" } },
        log,
      ),
      load("g-2", { on: "2026-10-25", cone: "6", schedule }),
      load("g-3", { on: "2026-11-01", cone: "6" }),
    ],
  });
  const [bare, programmed, logged] = firings;

  test("has the heat of its log, else of its programme, else none", () => {
    expect(logged?.heat).toMatchObject({ from: "log", peak: 1215 });
    expect(logged?.heat && reachedWords(logged.heat)).toBe("just under cone 6");
    expect(programmed?.heat).toMatchObject({ from: "programme", peak: 1210, hold: 15 });
    expect(bare).toMatchObject({ heat: null, programme: null, log: null });
  });

  test("has its programme in °C", () => {
    expect(programmed?.programme?.segments).toEqual([
      { to: 1100, rate: 150 },
      { to: 1210, rate: 60, hold: 15 },
    ]);
  });

  test("has curves that are thinned, and keep first, last and hottest point", () => {
    const curve = logged?.log?.curve ?? [];
    expect(curve.length).toBeLessThan(60);
    expect(curve[0]).toEqual({ minutes: 0, celsius: 20 });
    expect(Math.max(...curve.map(({ celsius }) => celsius))).toBe(1215);
    expect(curve.at(-1)).toEqual({ minutes: 1395, celsius: 220 });
  });

  test("has its accounts in order: aim, programme, log, then the shelves from the top", () => {
    const told = logged?.story.accounts.map((account) => [
      account.shelf ?? account.of,
      accountWords(account),
    ]);
    expect(told).toEqual([
      ["aim", "cone 6"],
      ["programme", "cone 6"],
      ["log", "just under cone 6"],
      ["top", "cone 6"],
      ["bottom", "cone 5½"],
    ]);
  });

  test("has the cones of the published chart beside it, at the rate it climbed at", () => {
    expect(programmed?.coneScale.ratePerHour).toBe(60);
    // Self-supporting cone 6 at 60 °C an hour: 1222 °C on the published chart.
    expect(programmed?.coneScale.steps.find(({ cone }) => cone === "6")?.celsius).toBe(1222);
    expect(bare?.coneScale.ratePerHour).toBe(60);
  });
});

test("a tile has a small curve of its firing, and what its own shelf showed", () => {
  const { tiles } = catalogueOf({
    glazes: [glaze("soot")],
    firings: [load("g-1", { cone: "6", schedule, witness: { bottom: "4" } }, log)],
    tiles: [tile("A", [coat("soot"), { ...fired("g-1"), shelf: "bottom" }])],
  });
  const [firing] = firingsOf(tiles[0]?.steps ?? []);
  expect(firing).toMatchObject({
    cone: "4",
    aim: "6",
    witness: { low: 3, high: 3 },
    reached: { from: "log", atLeast: false, openRange: null },
    agreement: "differs",
  });
  expect(firing?.reached && reachedWords(firing.reached)).toBe("just under cone 6");
  expect(firing?.curve?.length).toBeGreaterThan(2);
  expect(firing?.curve?.length).toBeLessThanOrEqual(60);
});

describe("a kiln", () => {
  const { kilns, firings } = catalogueOf({
    firings: [
      load("g-3", { kiln: "The wardrobe", cone: "6", schedule }),
      load("g-1", {
        on: "2026-01-01",
        kiln: "The Wardrobe",
        "heated-by": "electric",
        cone: "6",
        witness: { bottom: "5", top: "6" },
      }),
      load("g-2", {
        on: "2026-02-01",
        kiln: "The Wardrobe",
        cone: "06",
        witness: { top: { "06": "down" }, bottom: { "07": "bent", "06": "standing" } },
      }),
      load("g-4", { on: "2026-02-01", kiln: "***", cone: "6", witness: { top: "6" } }),
      load("g-5", { on: "2026-02-01", cone: "6" }),
    ],
  });
  const [unnamed, wardrobe] = kilns;

  test("gathers its firings whatever the case of its name, in the order of their days", () => {
    expect(kilns.map(({ name, url }) => [name, url])).toEqual([
      ["***", "kilns/kiln.html"],
      ["The Wardrobe", "kilns/the-wardrobe.html"],
    ]);
    expect(wardrobe?.firings.map(({ firing: { id } }) => id)).toEqual(["g-1", "g-2", "g-3"]);
    expect(unnamed?.firings).toHaveLength(1);
    expect(firings.map(({ id, kiln }) => [id, kiln?.name ?? null])).toEqual([
      ["g-3", "The Wardrobe"],
      ["g-2", "The Wardrobe"],
      ["g-4", "***"],
      ["g-5", null],
      ["g-1", "The Wardrobe"],
    ]);
  });

  test("tells shelf by shelf how many cones hotter than the aim it was", () => {
    expect(wardrobe?.firings[0]?.shelves).toEqual([
      { shelf: "top", off: { low: 0, high: 0 } },
      { shelf: "bottom", off: { low: -1, high: -1 } },
    ]);
    expect(wardrobe?.firings[1]?.shelves[0]?.off).toEqual({ low: 0.5, high: Infinity });
    expect(wardrobe?.shelves).toEqual([
      { shelf: "top", firings: 2, median: 0.25, coolest: 0, hottest: 0.5 },
      { shelf: "bottom", firings: 2, median: -1, coolest: -1, hottest: -1 },
    ]);
  });

  test("compares its shelves firing by firing", () => {
    expect(wardrobe?.tilt).toEqual({
      hotter: "top",
      cooler: "bottom",
      firings: 2,
      times: 2,
      most: 1.5,
    });
    expect(unnamed?.tilt).toBeNull();
  });
});

describe("a control tile", () => {
  const glazes = [glaze("tidewrack")];
  const layers = [coat("tidewrack", { coats: 2 })];
  const about = (surface: string, run: number, faults: readonly string[] = ["none"]) =>
    ({ result: [{ ...result(), surface: [surface], run, faults }] }) as never;
  const { controls } = catalogueOf({
    glazes,
    firings: [
      load("g-1", { on: "2026-01-01", kiln: "Drum", cone: "6", witness: { middle: "6" } }),
      load("g-2", { on: "2026-02-01", kiln: "Drum", cone: "6", witness: { middle: "4" } }),
      load("g-3", { on: "2026-03-01", kiln: "Drum", cone: "6", witness: { middle: "6" } }),
    ],
    sets: [set("autumn", { control: "CT-1" }), set("spring", { control: "CT-1" }), set("bare")],
    tiles: [
      tile("CT-1", [...layers, { ...fired("g-1"), shelf: "middle" }], about("gloss", 3)),
      tile(
        "CT-2",
        [...layers, { ...fired("g-2"), shelf: "middle" }],
        about("satin", 0, ["underfired"]),
      ),
      tile("CT-3", [...layers, { ...fired("g-3"), shelf: "middle" }], about("gloss", 12)),
      tile("X-1", [coat("tidewrack", { coats: 3 }), fired("g-3")], about("gloss", 9)),
    ],
  });

  test("gathers its twins load by load, and the sets that name it", () => {
    expect(controls.map(({ tile, sets }) => [tile, sets.map(({ id }) => id)])).toEqual([
      ["CT-1", ["autumn", "spring"]],
    ]);
    expect(controls[0]?.twins.map(({ tile, firing: { id } }) => [tile, id])).toEqual([
      ["CT-1", "g-1"],
      ["CT-2", "g-2"],
      ["CT-3", "g-3"],
    ]);
  });

  test("tells what is unlike it, and how much hotter or cooler that shelf was", () => {
    const told = controls[0]?.twins.map(({ unlike, hotter }) => [unlike.map(unlikeWords), hotter]);
    expect(told).toEqual([
      [[], 0],
      [["satin, not gloss", "underfired"], -2],
      [["ran 12 mm, not 3"], 0],
    ]);
  });

  test("fired twice is told of each load, with the colour of the last alone", () => {
    const colour = { lab: [50, 0, 0], hex: "#777777", spread: 1, palette: [] };
    const twice = tile("CT-1", [...layers, fired("g-1"), fired("g-3")], {
      result: [
        { ...result("g-1"), surface: ["dry"] },
        { ...result("g-3"), surface: ["gloss"] },
      ],
    } as never);
    const parts = {
      glazes,
      firings: [load("g-1", { on: "2026-01-01" }), load("g-3", { on: "2026-03-01" })],
      sets: [set("autumn", { control: "ct-1" })],
      tiles: [twice],
    };
    const whole = archive(parts);
    const { controls: found } = makeCatalogue(whole, {
      pictures: new Map([["tiles/CT-1.jpg", { colour, files: [] } as never]]),
      chemistry: new Map(),
      heats: new Map(),
      notes: new Map(),
      builtInMaterials: [],
    });
    expect(found[0]?.twins.map((twin) => [twin.surface, twin.colour?.hex ?? null])).toEqual([
      [["dry"], null],
      [["gloss"], "#777777"],
    ]);
  });

  test("is told from a twin of another colour, however much that one adds to the scatter", () => {
    const lab: Record<string, Lab> = {
      ...{ "CT-1": [50, 0, 0], "CT-2": [51, 0, 0], "CT-3": [70, 20, 0], "CT-4": [49, 0, 1] },
    };
    const whole = archive({
      glazes,
      firings: ["1", "2", "3", "4"].map((n) => load(`g-${n}`, { on: `2026-0${n}-01` })),
      sets: [set("autumn", { control: "CT-1" })],
      tiles: Object.keys(lab).map((id) =>
        tile(id, [...layers, fired(`g-${id.slice(-1)}`)], about("gloss", 3)),
      ),
    });
    const pictures = Object.entries(lab).map(
      ([id, value]) =>
        [`tiles/${id}.jpg`, { colour: measured(value), files: [] } as never] as const,
    );
    const { controls: found } = makeCatalogue(whole, {
      pictures: new Map(pictures),
      chemistry: new Map(),
      heats: new Map(),
      notes: new Map(),
      builtInMaterials: [],
    });
    expect(found[0]?.twins.map(({ tile: id, unlike }) => [id, unlike.map(unlikeWords)])).toEqual([
      ["CT-1", []],
      ["CT-2", []],
      ["CT-3", ["another colour"]],
      ["CT-4", []],
    ]);
  });
});
