/** Practice notes yield to what tiles show. */
import { beforeAll, describe, expect, it } from "vitest";
import { readArchive } from "../../src/archive/read-archive.ts";
import { runChecks } from "../../src/checks/all.ts";
import { notesByFile } from "../../src/checks/notes.ts";
import { heatOfFirings } from "../../src/firing/of-archive.ts";
import type { Archive } from "../../src/records/archive.ts";
import type { Problem } from "../../src/records/problem.ts";
import type { Result } from "../../src/records/tile.ts";
import { project } from "../house/files.ts";
import {
  clay,
  coat,
  codesIn,
  cone,
  cones,
  fired,
  firing,
  glaze,
  nothing,
  result,
  set,
  tell,
  tile,
} from "./support.ts";

const glazes = [
  glaze("soot", { name: "Soot", tone: "dark", cover: "opaque", cones: cones("5-6") }),
  glaze("chalk", { name: "Chalk", tone: "light", cover: "opaque" }),
  glaze("tar", { name: "Tar", tone: "dark", cover: "opaque", moves: "runs" }),
  glaze("mist", { name: "Mist", tone: "light", cover: "milky", moves: "runs" }),
];
const clays = [clay("buff", { cones: cones("4-8") })];
const firings = [
  firing("g-8", { cone: cone("8"), on: "2026-10-01" }),
  firing("g-6", { cone: cone("6"), on: "2026-10-02" }),
];
const seen = (about: Partial<Result>): Result => ({ ...result(), ...about });
const well = [seen({ again: "yes", faults: ["none"] })];
const codes = (...tiles: ReturnType<typeof tile>[]) =>
  codesIn({
    tiles,
    glazes,
    clays,
    firings,
    sets: [set("hidden", { listed: false, link: "k7w2m9x4p3q8r5t6" })],
  });

describe("a tile's own verdict", () => {
  const hot = [coat("soot"), fired("g-8")];

  it("is not spoken against where it is to be made again and has no fault", () => {
    expect(codes(tile("A", hot, { result: well, clay: "buff" }))).toEqual([]);
    expect(codes(tile("A", [coat("soot"), coat("chalk")], { result: well }))).toEqual([]);
    const wet = [coat("chalk"), coat("chalk", { dried: "wet-on-wet" })];
    expect(codes(tile("A", wet, { result: well }))).toEqual([]);
    const deep = [coat("mist", { coats: 4 })];
    expect(codes(tile("A", deep, { result: well, shape: "pot" }))).toEqual([]);
  });

  it("leaves the note where it has what the note warns of, or is not to be made again", () => {
    const ran = [seen({ again: "yes", faults: ["running"] })];
    expect(codes(tile("A", hot, { result: ran }))).toEqual(["hotter-than-range"]);
    expect(codes(tile("A", hot, { result: [seen({ again: "no" })] }))).toEqual([
      "hotter-than-range",
    ]);
  });

  it("leaves it where a fault of that kind was seen later, and where the tile stuck", () => {
    const later = [{ on: "2027-01-01", faults: ["overfired"] }] as never;
    expect(codes(tile("A", hot, { result: well, later }))).toEqual(["hotter-than-range"]);
    expect(codes(tile("A", hot, { result: well, fate: "stuck" }))).toEqual(["hotter-than-range"]);
  });
});

describe("a twin's verdict", () => {
  const hot = [coat("soot", { by: "brush" }), fired("g-8")];

  it("speaks for a tile that has none of its own", () => {
    expect(
      codes(tile("A", hot, { clay: "buff" }), tile("B", hot, { clay: "buff", result: well })),
    ).toEqual([]);
  });

  it("does not where another twin has the fault, where it is none, or where it is hidden", () => {
    const bad = tile("C", hot, {
      clay: "buff",
      result: [seen({ again: "no", faults: ["running"] })],
    });
    expect(
      codes(tile("A", hot, { clay: "buff" }), tile("B", hot, { clay: "buff", result: well }), bad),
    ).toEqual(["hotter-than-range", "hotter-than-range"]);
    const unlike = tile("B", hot, { clay: "buff", result: well, texture: "carved" });
    expect(codes(tile("A", hot, { clay: "buff" }), unlike)).toEqual(["hotter-than-range"]);
    const hidden = tile("B", hot, { clay: "buff", result: well }, { set: "hidden" });
    expect(codes(tile("A", hot, { clay: "buff" }), hidden)).toEqual(["hotter-than-range"]);
  });

  it("of a pair is that of any tile with the two, one directly over the other", () => {
    const pair = [coat("soot"), coat("chalk")];
    const other = tile("B", [coat("soot", { coats: 2 }), coat("chalk")], { result: well });
    expect(codes(tile("A", pair), other)).toEqual([]);
    expect(codes(tile("A", pair))).toEqual(["light-over-dark"]);
  });
});

describe("two glazes that run", () => {
  const steps = [coat("tar", { coats: 2 }), coat("mist", { coats: 2 })];

  it("count together, and neither way round is recommended", () => {
    const stuck = [seen({ again: "no", faults: ["running"], run: 55 })];
    const tiles = [tile("A", steps, { shape: "l-shape", result: stuck, fate: "stuck" })];
    expect(tell({ tiles, glazes, clays, firings })).toMatchInlineSnapshot(`
      "warning runs-off tiles/A.md › layers › 0 › glaze
      Tar and Mist run, and 4 coats of them are on a piece that stands upright; this one ran 55 mm and stuck to the shelf
      Keep the foot bare, put fewer coats near it, and stand the piece on something that catches drips; a run of glaze breaks off sharp. Do not put one glaze that runs over another there, whichever is on top. (Common practice, no published source.)

      warning light-over-dark tiles/A.md › layers › 1 › glaze
      Mist, light and milky, is over Tar, which is dark
      The dark one often bleeds through and muddies the light one; try another glaze underneath. (Common practice, no published source.)"
    `);
  });

  it("are no danger where each lies on its own side", () => {
    const apart = [
      coat("tar", { coats: 2, where: ["left"] }),
      coat("mist", { coats: 2, where: ["right"] }),
    ];
    expect(codes(tile("A", apart, { shape: "l-shape" }))).toEqual([]);
  });

  it("is recommended the other way round only where no tile speaks against it", () => {
    const turned = tile("B", [coat("chalk"), coat("soot")], { result: [seen({ again: "no" })] });
    const hint = (...tiles: ReturnType<typeof tile>[]) =>
      tell({ tiles: [tile("A", [coat("soot"), coat("chalk")]), ...tiles], glazes, clays, firings });
    expect(hint()).toContain("try them the other way round, dark over light.");
    expect(hint(turned)).not.toContain("the other way round");
  });
});

describe("raku", () => {
  it("fires a clay below its range on purpose", () => {
    const raku = [coat("chalk"), fired("r", "raku")];
    const low = firing("r", { kind: "raku", cone: cone("06"), on: "2026-10-01" });
    const tiles = [tile("A", raku, { clay: "buff", result: [result()] })];
    expect(codesIn({ tiles, glazes, clays, firings: [low] })).toEqual([]);
  });
});

describe("a tile that came through far over its range", () => {
  it("is told with the caution, but not against its verdict", () => {
    const low = [clay("red", { cones: cones("06-04") })];
    const tiles = [tile("A", [coat("chalk"), fired("g-6")], { clay: "red", result: well })];
    expect(tell({ tiles, glazes, clays: low, firings })).toMatchInlineSnapshot(`
      "warning fired-far-over-range tiles/A.md › layers › 1 › fired
      This one came through, another may not: the clay red is for cones 06–04, and firing g-6 is aimed at cone 6: 9 cones hotter, about 155 °C (280 °F). What is fired so far over its range can melt, run and bond to the shelf
      If a cone was mistyped, mend it in the record of the firing or of what was fired: 06 is far cooler than 6. (Common practice, no published source.)"
    `);
  });
});

describe("the demonstration", () => {
  let archive: Archive;
  let notes: ReadonlyMap<string, readonly Problem[]>;

  beforeAll(async () => {
    const read = await readArchive(project, { builtInMaterials: [] });
    archive = read.archive as Archive;
    notes = notesByFile(runChecks(archive, { ...nothing, heats: heatOfFirings(archive) }));
  });

  it("has no note on a tile that is to be made again and has no fault", () => {
    const good = [...archive.tiles.values()].filter(({ record }) => {
      const last = record.result?.at(-1);
      return last?.again === "yes" && (last.faults ?? ["none"]).every((one) => one === "none");
    });
    expect(good.length).toBeGreaterThan(20);
    expect(good.filter(({ file }) => notes.has(file)).map(({ id }) => id)).toEqual([]);
  });

  it("tells of GR-57, two runners stuck to the shelf, and does not send anyone back there", () => {
    const told = notes.get("tiles/over-and-under/GR-57.md") ?? [];
    expect(told.map(({ code }) => code)).toEqual(["runs-off", "light-over-dark"]);
    expect(told[0]?.message).toBe(
      "Oilskin and Mist run, and 4 coats of them are on a piece that stands upright; this one ran 55 mm and stuck to the shelf",
    );
    expect(told.map(({ hint }) => hint).join(" ")).not.toContain("the other way round");
  });
});
