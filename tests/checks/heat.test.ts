import { describe, expect, it } from "vitest";
import { coneSteps } from "../../src/checks/heat-words.ts";
import {
  clay,
  coat,
  codesIn,
  cone,
  cones,
  fired,
  firing,
  glaze,
  loaded,
  removed,
  result,
  tell,
  tile,
} from "./support.ts";

const clays = [
  clay("red", { name: "Brickyard Red", cones: cones("06-03") }),
  clay("buff", { name: "Levels Buff", cones: cones("5-7") }),
  clay("bin", { name: "Slop Bin", reclaim: true, cones: cones("5-6") }),
  clay("found"),
];
const glazes = [
  glaze("snow", { name: "Snow", cones: cones("06-04") }),
  glaze("soot", { name: "Soot", cones: cones("5-6") }),
  glaze("gilt", { name: "Gilt", kind: "onglaze", cones: cones("018") }),
  glaze("plain"),
];
const firings = [
  firing("b-06", { kind: "bisque", cone: cone("06") }),
  firing("b-02", { kind: "bisque", cone: cone("02") }),
  firing("g-04", { cone: cone("04") }),
  firing("g-02", { cone: cone("02") }),
  firing("g-6", { cone: cone("6") }),
  firing("g-7", { cone: cone("7") }),
  firing("o-018", { kind: "onglaze", cone: cone("018") }),
  firing("bonfire"),
];
const bisqued = fired("b-06", "bisque");
const told = (...tiles: ReturnType<typeof tile>[]) => tell({ tiles, clays, glazes, firings });
const found = (...tiles: ReturnType<typeof tile>[]) => codesIn({ tiles, clays, glazes, firings });

describe("hotter than a range", () => {
  it("a glaze fired a cone over its range is told at its layer", () => {
    expect(told(tile("TB-1", [bisqued, coat("soot"), fired("g-7")]))).toMatchInlineSnapshot(`
      "warning hotter-than-range tiles/TB-1.md › layers › 1 › glaze
      The glaze Soot is for cones 5–6, and firing g-7 is aimed at cone 7: 1 cone hotter, about 15 °C (30 °F)
      Watch for running, and for colours and textures that fire out; stand it on something that catches drips. (Common practice, no published source.)"
    `);
  });

  it("a clay fired a cone over its range is told at the firing", () => {
    const red = tile("TB-1", [bisqued, coat("plain"), fired("g-02")], { clay: "red" });
    expect(told(red)).toMatchInlineSnapshot(`
      "warning hotter-than-range tiles/TB-1.md › layers › 2 › fired
      The clay Brickyard Red is for cones 06–03, and firing g-02 is aimed at cone 02: 1 cone hotter, about 15 °C (25 °F)
      Watch for slumping, bloating and sticking; stand it on something that may be lost. (Common practice, no published source.)"
    `);
  });

  it("a bisque after the layer counts", () => {
    expect(found(tile("TB-1", [coat("snow"), fired("b-02", "bisque"), fired("g-04")]))).toEqual([
      "hotter-than-range",
    ]);
  });

  it("a bisque before the layer does not count", () => {
    expect(found(tile("TB-1", [fired("b-02", "bisque"), coat("snow"), fired("g-04")]))).toEqual([]);
  });

  it("a touch-up counts, a glaze that was taken off before does not", () => {
    const touched = [bisqued, coat("plain"), coat("soot", { touchUp: true }), fired("g-7")];
    const restarted = [coat("soot"), removed("all"), coat("plain"), fired("g-7")];
    expect(found(tile("TB-1", touched))).toEqual(["hotter-than-range"]);
    expect(found(tile("TB-1", restarted))).toEqual([]);
  });

  it("several layers of one glaze are told once, at the first", () => {
    const twice = tile("TB-1", [bisqued, coat("soot"), coat("soot"), fired("g-7")]);
    expect(found(twice)).toEqual(["hotter-than-range"]);
  });

  it("an end of a fade is told at that end", () => {
    expect(told(tile("TB-1", [coat(["plain", "soot"]), fired("g-7")]))).toMatchInlineSnapshot(`
      "warning hotter-than-range tiles/TB-1.md › layers › 0 › fade › to
      The glaze Soot is for cones 5–6, and firing g-7 is aimed at cone 7: 1 cone hotter, about 15 °C (30 °F)
      Watch for running, and for colours and textures that fire out; stand it on something that catches drips. (Common practice, no published source.)"
    `);
  });

  it("what a load list's firing did is told at the tile's layers", () => {
    const red = tile("TB-1", [coat("plain"), loaded("g-02", "top")], { clay: "red" });
    expect(told(red)).toContain("warning hotter-than-range tiles/TB-1.md › layers\n");
  });

  it("nothing is said where the clay, the cones or the firing are not known", () => {
    expect(found(tile("TB-1", [coat("plain"), fired("g-7")], { clay: "found" }))).toEqual([]);
    expect(found(tile("TB-1", [coat("soot"), fired("bonfire")], { clay: "buff" }))).toEqual([]);
    expect(found(tile("TB-1", [coat("soot"), fired(null)], { clay: "buff" }))).toEqual([]);
  });
});

describe("cooler than a range", () => {
  it("a glaze whose hottest firing was too cool is told at its layer", () => {
    expect(told(tile("TB-1", [bisqued, coat("soot"), fired("g-04")]))).toMatchInlineSnapshot(`
      "warning cooler-than-range tiles/TB-1.md › layers › 1 › glaze
      The glaze Soot is for cones 5–6, and firing g-04 is aimed at cone 04: 8 cones cooler, about 125 °C (220 °F)
      Expect it dry, rough or not melted; fire the next one to its range. (Common practice, no published source.)"
    `);
  });

  it("a clay whose hottest firing was too cool is told at the firing", () => {
    const buff = tile("TB-1", [bisqued, coat("snow"), fired("g-04")], { clay: "buff" });
    expect(told(buff)).toMatchInlineSnapshot(`
      "warning cooler-than-range tiles/TB-1.md › layers › 2 › fired
      The clay Levels Buff is for cones 5–7, and firing g-04 is aimed at cone 04: 8 cones cooler, about 125 °C (220 °F)
      Expect the clay softer and more absorbent than when mature, and glazes that craze on it. (Common practice, no published source.)"
    `);
  });

  it("one firing that was hot enough is enough, before or after a cooler one", () => {
    const buff = { clay: "buff" };
    const onglazed = [bisqued, coat("soot"), fired("g-6"), coat("gilt"), fired("o-018", "onglaze")];
    const bisquedAfter = [coat("soot"), bisqued, fired("g-6")];
    expect(found(tile("TB-1", onglazed, buff), tile("TB-2", bisquedAfter, buff))).toEqual([]);
  });

  it("a layer that went on after the hot firing is judged by the firings it met itself", () => {
    const late = [bisqued, coat("soot"), fired("g-6"), coat("soot"), fired("g-04")];
    expect(found(tile("TB-1", late))).toEqual(["cooler-than-range"]);
  });

  it("nothing is said while the glaze firing is still to come", () => {
    const onRaw = [coat("soot"), bisqued];
    expect(found(tile("TB-1", onRaw, { clay: "buff" }))).toEqual([]);
    expect(found(tile("TB-1", [...onRaw, fired(null)], { clay: "buff" }))).toEqual([]);
  });

  it("a result says that a bisque was all there will be", () => {
    const buff = tile("TB-1", [coat("soot"), bisqued], { clay: "buff", result: [result()] });
    expect(found(buff)).toEqual(["cooler-than-range", "cooler-than-range"]);
  });

  it("what was taken off is not judged", () => {
    expect(
      found(tile("TB-1", [coat("soot"), removed("all"), coat("snow"), fired("g-04")])),
    ).toEqual([]);
  });
});

describe("reclaimed clay", () => {
  it("fired over the range of the studio's lowest-firing clay, it is told", () => {
    const slop = tile("TB-1", [coat("plain"), fired("g-02")], { clay: "bin" });
    expect(told(slop)).toMatchInlineSnapshot(`
      "warning reclaim-too-hot tiles/TB-1.md › layers › 1 › fired
      The reclaimed clay Slop Bin counts as the lowest-firing clay of the studio, which is for cones 06–03, and firing g-02 is aimed at cone 02: 1 cone hotter, about 15 °C (25 °F)
      Fire reclaimed clay no hotter than the lowest-firing clay in the studio, for some of it may be in there; stand it on something that may be lost. (Common practice, no published source.)"
    `);
  });

  it("inside that range nothing is said, though its own cones are hotter", () => {
    expect(found(tile("TB-1", [coat("plain"), fired("g-04")], { clay: "bin" }))).toEqual([]);
  });

  it("its own cones count where they are the lowest of all", () => {
    const own = [clay("bin", { name: "Slop Bin", reclaim: true, cones: cones("06-04") })];
    const slop = tile("TB-1", [coat("plain"), fired("g-02")], { clay: "bin" });
    expect(tell({ tiles: [slop], clays: own, glazes, firings })).toMatchInlineSnapshot(`
      "warning reclaim-too-hot tiles/TB-1.md › layers › 1 › fired
      The reclaimed clay Slop Bin is for cones 06–04, and firing g-02 is aimed at cone 02: 2 cones hotter, about 40 °C (70 °F)
      Fire reclaimed clay no hotter than the lowest-firing clay in the studio, for some of it may be in there; stand it on something that may be lost. (Common practice, no published source.)"
    `);
  });

  it("the lowest-firing clay is the one with the coolest hot end", () => {
    const wide = clay("wide", { name: "Wide", cones: cones("010-6") });
    const slop = tile("TB-1", [coat("plain"), fired("g-02")], { clay: "bin" });
    expect(tell({ tiles: [slop], clays: [wide, ...clays], glazes, firings })).toContain(
      "counts as the lowest-firing clay of the studio, which is for cones 06–03",
    );
  });

  it("nothing is known where no clay of the studio has cones", () => {
    const slop = tile("TB-1", [coat("plain"), fired("g-6")], { clay: "bin" });
    expect(codesIn({ tiles: [slop], clays: [clay("bin", { reclaim: true })], firings })).toEqual(
      [],
    );
  });
});

describe("cones apart", () => {
  it.each([
    [0.5, "half a cone"],
    [1, "1 cone"],
    [-1.5, "1½ cones"],
    [8, "8 cones"],
  ])("%d reads as %s", (distance, words) => {
    expect(coneSteps(distance)).toBe(words);
  });
});
