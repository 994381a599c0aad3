/** What runs: every tile that ran once, the farthest first, and nothing put together that differs. */
import { fc, test as property } from "@fast-check/vitest";
import { describe, expect, test } from "vitest";
import { circumstanceKey } from "../../src/catalogue/circumstance.ts";
import { makeCatalogue } from "../../src/catalogue/make.ts";
import { isRunner, listRunners, type Runner, testShapes } from "../../src/catalogue/runners.ts";
import type { Catalogue } from "../../src/catalogue/types.ts";
import type { Tile } from "../../src/records/archive.ts";
import type { Result } from "../../src/records/tile.ts";
import {
  layersName,
  recordAgainstTile,
  tallyOfRun,
  wallAdvice,
} from "../../templates/words/glaze/runs.ts";
import { archive, clay, coat, fired, glaze, tile } from "../checks/support.ts";
import { anyFamily, anyTile, firings } from "../likeness/make-ups.ts";

const glazes = [
  glaze("soot", { name: "Soot", moves: "little" }),
  glaze("chalk", { name: "Chalk" }),
  glaze("mist", { name: "Mist" }),
];
const clays = [clay("buff", { name: "Buff" }), clay("dark", { name: "Dark" })];

function catalogueOf(tiles: readonly Tile[]): Catalogue {
  const none = { pictures: new Map(), chemistry: new Map(), heats: new Map(), notes: new Map() };
  return makeCatalogue(archive({ glazes, clays, firings, tiles }), {
    ...none,
    builtInMaterials: [],
  });
}

function runnersOf(...tiles: readonly Tile[]): readonly Runner[] {
  return listRunners(catalogueOf(tiles));
}

type About = Parameters<typeof tile>[2];

/** A tile of buff clay that stood upright, with a run. */
function upright(
  id: string,
  glazed: readonly string[],
  run: number | null,
  about: About = {},
): Tile {
  const steps = [...glazed.map((name) => coat(name, { coats: 2, by: "brush" })), fired("g-1")];
  const result = [{ ...(run !== null && { run }) } as Result];
  return tile(id, steps, { clay: "buff", shape: "upright", result, ...about });
}

const codes = (tiles: readonly { readonly id: string }[]) => tiles.map(({ id }) => id);

describe("what runs", () => {
  test("is told in the order in which glazes lie, the farthest run first", () => {
    const found = runnersOf(
      upright("A", ["soot", "chalk"], 12),
      upright("B", ["chalk", "soot"], 31),
      upright("C", ["soot"], 9),
      upright("D", ["soot", "soot"], 4),
      upright("E", ["mist", "chalk", "soot"], 20),
    );
    expect(found.map(({ layers, farthest }) => `${layersName(layers)} ${farthest}`)).toEqual([
      "Soot over Chalk 31",
      "Soot over Chalk over Mist 20",
      "Chalk over Soot 12",
      "Soot 9",
    ]);
    expect(found.map(({ page }) => page)).toEqual([
      "pairs/soot--over--chalk.html",
      null,
      "pairs/chalk--over--soot.html",
      "glazes/soot.html",
    ]);
  });

  test("says how many tiles ran and how many did not", () => {
    const one = runnersOf(
      upright("A", ["soot"], 12),
      upright("B", ["soot"], 0),
      upright("C", ["soot"], 4),
      upright("D", ["soot"], 3),
      upright("E", ["soot"], null),
      upright("F", ["soot"], 2, { clay: "dark" }),
    );
    expect(one.map(tallyOfRun)).toEqual([
      "1 of 4 tiles ran; 3 moved less than 5\u00a0mm. 1 more: run not recorded. 1 other on another clay, shape or firing: it did not run.",
    ]);
    expect(one.map(({ held }) => codes(held))).toEqual([["B", "C", "D"]]);
  });

  test("gives a wall as much bare foot as a standing tile ran, and no more coats than did not run", () => {
    const thin = tile("B", [coat("soot", { coats: 1 }), fired("g-1")], {
      ...{ clay: "buff", shape: "upright", result: [{ run: 1 } as Result] },
    });
    expect(runnersOf(upright("A", ["soot"], 12), thin).map(wallAdvice)).toEqual([
      "On an upright wall: leave at least 12\u00a0mm of the foot bare, and use a catch tray. Never more than 1 coat together: 2 ran.",
    ]);
    expect(runnersOf(upright("A", ["soot"], 12)).map(wallAdvice)).toEqual([
      "On an upright wall: leave at least 12\u00a0mm of the foot bare, and use a catch tray. 2 coats together ran: never so many near the foot.",
    ]);
  });

  test.each([
    ["a flat tile", { shape: "flat" as const }],
    ["a flat tile that leaned a little", { shape: "flat" as const, angle: 30 }],
    ["a channel, however steep", { shape: "channel" as const, angle: 80 }],
  ])("gives no measure for a wall from %s", (_, about) => {
    expect(runnersOf(upright("A", ["soot"], 40, about)).map(wallAdvice)).toEqual([
      "For an upright wall this is no measure: try a standing tile first, on a catch tray.",
    ]);
  });

  test("has what was called running though nobody measured it", () => {
    const [called] = runnersOf(
      upright("A", ["soot"], null, { result: [{ faults: ["running"] } as Result] }),
    );
    expect(called?.farthest).toBeNull();
    expect(called && wallAdvice(called)).toBe(
      "On an upright wall: leave a wide foot bare, and use a catch tray. 2 coats together ran: never so many near the foot.",
    );
  });

  test("takes the tile's word over the record's", () => {
    const [one] = runnersOf(upright("A", ["soot"], 12));
    expect(recordAgainstTile(one?.moves ?? null)).toBe(
      "Its record says that it moves little: trust the tile.",
    );
    expect([recordAgainstTile("runs"), recordAgainstTile(null)]).toEqual(["", ""]);
  });
});

const anyAbout = fc.record({
  clay: fc.constantFrom("buff", "buff", "dark"),
  shape: fc.constantFrom("flat" as const, "upright" as const),
  angle: fc.constantFrom(undefined, 80),
  run: fc.constantFrom(undefined, 0, 4, 5, 24),
  faults: fc.constantFrom(undefined, ["none"], ["running"]),
});

/** Tiles that have much in common, and any others, each with something that came of it. */
const anyTiles = fc
  .tuple(
    anyFamily,
    fc.array(anyTile, { maxLength: 4 }),
    fc.array(anyAbout, { minLength: 16, maxLength: 16 }),
  )
  .map(([family, others, abouts]) =>
    [...family, ...others].map(({ steps }, i) => {
      const { run, faults, angle, ...about } = abouts[i % abouts.length] ?? { clay: "buff" };
      const seen = { ...(run !== undefined && { run }), ...(faults && { faults }) };
      const result = [seen as unknown as Result];
      return tile(`T-${i}`, steps, { ...about, ...(angle && { angle }), result });
    }),
  );

describe("for any tiles", () => {
  property.prop([anyTiles])("each that ran is told once, and none that did not", (tiles) => {
    const catalogue = catalogueOf(tiles);
    const told = listRunners(catalogue).flatMap(({ ran }) => codes(ran));
    const ran = catalogue.tiles.filter((one) => isRunner(one) && one.top !== null);
    expect(told.toSorted()).toEqual(codes(ran).toSorted());
  });

  property.prop([anyTiles])("no clay, fire or shape is put together with another", (tiles) => {
    for (const { ran, held, layers } of runnersOf(...tiles)) {
      const alike = [...ran, ...held];
      expect(new Set(alike.map(circumstanceKey)).size).toBe(1);
      const named = layers.flatMap((layer) => codes(layer.glazes)).sort();
      for (const { glazes: on } of alike) for (const id of named) expect(on).toHaveProperty(id);
      expect(held.filter(isRunner)).toEqual([]);
    }
  });

  property.prop([anyTiles])(
    "the farthest comes first on each shape and cone, and the words agree",
    (tiles) => {
      const found = runnersOf(...tiles);
      const places = found.map(({ circumstance }) => testShapes.indexOf(circumstance.shape));
      expect(places).toEqual(places.toSorted((a, b) => a - b));
      found.forEach((runner, i) => {
        const runs = runner.ran.flatMap(({ run }) => run ?? []);
        expect(runner.farthest).toBe(runs.length > 0 ? Math.max(...runs) : null);
        const next = found[i + 1];
        const isSameTest =
          next?.circumstance.shape === runner.circumstance.shape &&
          next.circumstance.cone === runner.circumstance.cone;
        if (isSameTest) expect(runner.farthest ?? -1).toBeGreaterThanOrEqual(next.farthest ?? -1);
        const count = runner.ran.length + runner.held.length;
        expect(tallyOfRun(runner)).toContain(
          count === 1 ? "One tile, and it ran." : `${runner.ran.length} of ${count} tiles ran`,
        );
      });
    },
  );
});
