import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { runChecks } from "../../src/checks/all.ts";
import { degreesHotter } from "../../src/firing/degrees.ts";
import type { Witness } from "../../src/records/firing.ts";
import { chartedCones, compareCones } from "../../src/terms/cones.ts";
import {
  archive,
  clay,
  coat,
  codesIn,
  cone,
  cones,
  fired,
  firing,
  glaze,
  loaded,
  nothing,
  removed,
  result,
  tell,
  tile,
} from "./support.ts";

const clays = [
  clay("red", { name: "Brickyard Red", cones: cones("06-03") }),
  clay("buff", { name: "Levels Buff", cones: cones("5-7") }),
];
const glazes = [
  glaze("snow", { name: "Snow", cones: cones("06-04") }),
  glaze("soot", { name: "Soot", cones: cones("5-6") }),
  glaze("plain"),
];
const firings = [
  firing("b-1", { kind: "bisque", cone: cone("06"), on: "2026-10-01" }),
  firing("g-6", { cone: cone("6"), on: "2026-10-20" }),
  firing("g-04", { cone: cone("04"), on: "2026-10-20" }),
];
const bisqued = fired("b-1", "bisque");
const readAt = (name: string): Witness => ({ read: "cone", cone: cone(name) });
const bentAt = (bends: Record<string, "standing" | "bending" | "bent" | "down">): Witness => ({
  read: "bends",
  bends: new Map(Object.entries(bends).map(([name, bend]) => [cone(name), bend])),
});

describe("a tile without result or fate", () => {
  it("low-fire clay that names a firing to cone 6 is an error", () => {
    const red = tile("TB-014", [bisqued, coat("plain"), fired("g-6")], { clay: "red" });
    expect(tell({ tiles: [red], clays, glazes, firings })).toMatchInlineSnapshot(`
      "error may-melt tiles/TB-014.md › layers › 2 › fired
      TB-014 may melt onto the shelf: its clay Brickyard Red is for cones 06–03, and firing g-6 is aimed at cone 6: 8 cones hotter, about 130 °C (235 °F)
      Keep it out of firing g-6; if it has been through it, write down its result or fate. If a cone was mistyped (06 is far cooler than 6), mend recipes/clays/red.md or tiles/firings/g-6.md."
    `);
  });

  it("low-fire clay that a load list puts into a firing to cone 6 is an error in that list", () => {
    const load = { top: [["TB-001"], ["TB-012", "TB-013", "tb-014"]] };
    const loads = [firings[0], firing("g-6", { cone: cone("6"), tiles: load })].flatMap(
      (each) => each ?? [],
    );
    const red = tile("TB-014", [bisqued, coat("plain"), loaded("g-6", "top")], { clay: "red" });
    expect(tell({ tiles: [red], clays, glazes, firings: loads })).toMatchInlineSnapshot(`
      "error may-melt tiles/firings/g-6.md › tiles › top › 1
      TB-014 may melt onto the shelf: its clay Brickyard Red is for cones 06–03, and firing g-6 is aimed at cone 6: 8 cones hotter, about 130 °C (235 °F)
      Keep it out of firing g-6; if it has been through it, write down its result or fate. If a cone was mistyped (06 is far cooler than 6), mend recipes/clays/red.md or tiles/firings/g-6.md."
    `);
  });

  it("a low-fire glaze is as dangerous as a low-fire clay", () => {
    const buff = tile("TB-014", [bisqued, coat("snow"), fired("g-6")], { clay: "buff" });
    expect(tell({ tiles: [buff], clays, glazes, firings })).toMatchInlineSnapshot(`
      "error may-melt tiles/TB-014.md › layers › 2 › fired
      TB-014 may melt onto the shelf: its glaze Snow is for cones 06–04, and firing g-6 is aimed at cone 6: 9 cones hotter, about 155 °C (280 °F)
      Keep it out of firing g-6; if it has been through it, write down its result or fate. If a cone was mistyped (06 is far cooler than 6), mend recipes/glazes/snow.md or tiles/firings/g-6.md."
    `);
  });

  it("witness cones that were hotter than the aim are what counts", () => {
    const hot = firing("g-x", {
      cone: cone("04"),
      witness: { top: readAt("04"), low: readAt("6") },
    });
    const red = tile("TB-014", [coat("plain"), fired("g-x")], { clay: "red" });
    expect(tell({ tiles: [red], clays, glazes, firings: [hot] })).toMatchInlineSnapshot(`
      "error may-melt tiles/TB-014.md › layers › 1 › fired
      TB-014 may melt onto the shelf: its clay Brickyard Red is for cones 06–03, and the witness cones of firing g-x show cone 6: 8 cones hotter, about 130 °C (235 °F)
      Keep it out of firing g-x; if it has been through it, write down its result or fate. If a cone was mistyped (06 is far cooler than 6), mend recipes/clays/red.md or tiles/firings/g-x.md."
    `);
  });

  it("reclaimed clay is as low-firing as the studio's lowest", () => {
    const bin = clay("bin", { name: "Slop Bin", reclaim: true });
    const slop = tile("TB-014", [coat("plain"), fired("g-6")], { clay: "bin" });
    expect(tell({ tiles: [slop], clays: [...clays, bin], glazes, firings })).toMatchInlineSnapshot(`
      "error may-melt tiles/TB-014.md › layers › 1 › fired
      TB-014 may melt onto the shelf: its reclaimed clay Slop Bin counts as the lowest-firing clay of the studio, which is for cones 06–03, and firing g-6 is aimed at cone 6: 8 cones hotter, about 130 °C (235 °F)
      Keep it out of firing g-6; if it has been through it, write down its result or fate. If a cone was mistyped (06 is far cooler than 6), mend recipes/clays/red.md or tiles/firings/g-6.md. If nothing low-firing can be in the clay, take “reclaim” out of its record and write its cones."
    `);
  });

  it("clay and glazes inside their ranges are no error", () => {
    const buff = tile("TB-014", [bisqued, coat("soot"), fired("g-6")], { clay: "buff" });
    const red = tile("TB-015", [bisqued, coat("snow"), fired("g-04")], { clay: "red" });
    expect(codesIn({ tiles: [buff, red], clays, glazes, firings })).toEqual([]);
  });

  it("clay 56 °C over its range is a note and no error, 74 °C is an error", () => {
    // Orton cone chart at 60 °C an hour: 04 is down at 1063 °C, 01 at 1119 and 1 at 1137.
    const near = firing("near", { cone: cone("03"), witness: { top: readAt("01") } });
    const far = firing("far", { cone: cone("1") });
    const low = clay("low", { cones: cones("04") });
    const at = (id: string) => tile(id, [fired(id)], { clay: "low" });
    expect(codesIn({ tiles: [at("near")], clays: [low], firings: [near] })).toEqual([
      "hotter-than-range",
    ]);
    expect(codesIn({ tiles: [at("far")], clays: [low], firings: [far] })).toEqual(["may-melt"]);
  });
});

describe("06 written for 6, or 6 for 06", () => {
  const red = (steps: Parameters<typeof tile>[1]) => tile("TB-014", steps, { clay: "red" });
  const slip = (tiles: ReturnType<typeof tile>[], own = firings, bodies = clays) =>
    codesIn({ tiles, clays: bodies, glazes, firings: own });

  it.each(["bisque", "glaze", "onglaze", "once", "raku"] as const)(
    "is caught in a firing of the kind %s",
    (kind) => {
      const own = [firing("x", { kind, cone: cone("6") })];
      expect(slip([red([coat("plain"), fired("x", kind)])], own)).toEqual(["may-melt"]);
      expect(slip([red([coat("plain"), loaded("x", "top", kind)])], own)).toEqual(["may-melt"]);
    },
  );

  it.each([
    ["as what the cone was", { top: readAt("6") }],
    ["as a half cone", { top: readAt("5½") }],
    ["on one shelf of several", { top: readAt("06"), bottom: readAt("6") }],
    ["by a cone that is down", { top: bentAt({ "5": "down", "6": "standing" }) }],
    ["by a cone that has bent", { top: bentAt({ "06": "down", "6": "bent" }) }],
    ["by a cone that has only begun to bend", { top: bentAt({ "6": "bending" }) }],
  ])("is caught in the witness %s", (_, witness) => {
    const aimed = [firing("x", { cone: cone("06"), witness })];
    const unaimed = [firing("x", { witness })];
    for (const own of [aimed, unaimed])
      expect(slip([red([coat("plain"), fired("x")])], own)).toEqual(["may-melt"]);
  });

  it("a cone that stayed standing was not reached", () => {
    const own = [firing("x", { cone: cone("06"), witness: { top: bentAt({ "6": "standing" }) } })];
    expect(slip([red([coat("plain"), fired("x")])], own)).toEqual([]);
  });

  it("a witness cooler than the aim does not cool what was aimed at", () => {
    const own = [firing("x", { cone: cone("6"), witness: { top: readAt("06") } })];
    expect(slip([red([coat("plain"), fired("x")])], own)).toEqual(["may-melt"]);
  });

  it("is caught whichever way round a range is written, and across 01 and 1", () => {
    for (const range of ["06-03", "03-06", "06", "01-1", "1 to 06"]) {
      const bodies = [clay("red", { cones: cones(range) })];
      expect(slip([red([coat("plain"), fired("g-6")])], firings, bodies)).toEqual(["may-melt"]);
    }
  });

  it("is caught in the clay's record: 06 where 6 was meant makes every load to cone 6 an error", () => {
    const bodies = [clay("red", { cones: cones("06") })];
    expect(slip([red([fired("g-6")])], firings, bodies)).toEqual(["may-melt"]);
  });

  it("is told where 6 was written for 06 in the clay's record: the firing is then too cool", () => {
    const bodies = [clay("red", { cones: cones("6") })];
    expect(slip([red([fired("g-04")])], firings, bodies)).toEqual(["cooler-than-range"]);
  });

  it("is caught whatever the case of the ids", () => {
    const shouted = tile("TB-014", [coat("PLAIN"), fired("G-6")], { clay: "RED" });
    expect(slip([shouted])).toEqual(["may-melt"]);
  });

  it("is caught in a touch-up, in either end of a fade, and under other layers", () => {
    const on = (...steps: Parameters<typeof tile>[1][number][]) =>
      tile("TB-014", [...steps, fired("g-6")], { clay: "buff" });
    expect(slip([on(coat("soot"), coat("snow", { touchUp: true }))])).toEqual(["may-melt"]);
    expect(slip([on(coat(["snow", "soot"]))])).toEqual(["may-melt"]);
    expect(slip([on(coat(["soot", "snow"]))])).toEqual(["may-melt"]);
    expect(slip([on(coat("snow"), coat("soot"), removed("wipe"))])).toEqual(["may-melt"]);
  });

  it("is caught in every firing of a tile, not only in the last", () => {
    const both = [coat("plain"), fired("g-6"), coat("plain"), fired("g-04")];
    expect(slip([red(both)])).toEqual(["may-melt"]);
    const twice = [coat("plain"), fired("g-6"), fired("g-6")];
    expect(slip([red(twice)])).toEqual(["may-melt", "may-melt"]);
  });

  it("a glaze that was taken off before the firing does not count, the clay does", () => {
    const again = [coat("snow"), bisqued, removed("all"), coat("soot"), fired("g-6")];
    expect(slip([tile("TB-014", again, { clay: "buff" })])).toEqual([]);
    expect(slip([red(again)])).toEqual(["may-melt"]);
  });

  it("a glaze that went on after the firing does not count", () => {
    const later = [coat("soot"), fired("g-6"), coat("snow"), fired("g-04")];
    expect(slip([tile("TB-014", later, { clay: "buff" })])).toEqual([]);
  });
});

describe("what has happened", () => {
  const steps = [bisqued, coat("plain"), fired("g-6")];

  it("a tile with a result is told with a loud caution", () => {
    const red = tile("TB-014", steps, { clay: "red", result: [result()] });
    expect(tell({ tiles: [red], clays, glazes, firings })).toMatchInlineSnapshot(`
      "warning fired-far-over-range tiles/TB-014.md › layers › 2 › fired
      Do not repeat this: the clay Brickyard Red is for cones 06–03, and firing g-6 is aimed at cone 6: 8 cones hotter, about 130 °C (235 °F). What is fired so far over its range can melt, run and bond to the shelf
      If a cone was mistyped, mend it in the record of the firing or of what was fired: 06 is far cooler than 6. (Common practice, no published source.)"
    `);
  });

  it("a fate ends the danger as a result does", () => {
    const red = tile("TB-014", steps, { clay: "red", fate: "stuck" });
    expect(codesIn({ tiles: [red], clays, glazes, firings })).toEqual(["fired-far-over-range"]);
  });

  const refired = [bisqued, coat("plain"), fired("g-04"), loaded("g-6", "top")];
  const refire = (on: string | undefined, ...results: ReturnType<typeof result>[]) =>
    codesIn({
      tiles: [tile("TB-014", refired, { clay: "red", result: results })],
      clays,
      glazes,
      firings: [...firings, firing("g-6", { cone: cone("6"), ...(on && { on }) })],
    });

  it("a result of an earlier firing does not make a later, hotter one history", () => {
    expect(refire("2026-10-27", result("g-04"))).toEqual(["may-melt"]);
    expect(refire("2026-10-27", result("g-04"), result("g-6"))).toEqual(["fired-far-over-range"]);
  });

  it("a result that names no firing is none of a firing that has no day yet", () => {
    expect(refire(undefined, result())).toEqual(["may-melt"]);
    expect(refire("2026-10-27", result())).toEqual(["fired-far-over-range"]);
  });

  it("a result that names no firing is of the only one, with or without a day", () => {
    const undated = [firing("g-6", { cone: cone("6") })];
    const red = tile("TB-014", [coat("plain"), fired("g-6")], { clay: "red", result: [result()] });
    expect(codesIn({ tiles: [red], clays, glazes, firings: undated })).toEqual([
      "fired-far-over-range",
    ]);
  });
});

describe("any clay in any firing", () => {
  const anyCone = fc.constantFrom(...chartedCones);
  const anyRange = fc
    .tuple(anyCone, anyCone)
    .map(([a, b]) => (compareCones(a, b) <= 0 ? { from: a, to: b } : { from: b, to: a }));
  const severities = (
    range: { from: (typeof chartedCones)[number]; to: (typeof chartedCones)[number] },
    aim: (typeof chartedCones)[number],
    results: ReturnType<typeof result>[] | undefined,
  ) => {
    const parts = {
      tiles: [tile("T", [fired("x")], { clay: "c", ...(results && { result: results }) })],
      clays: [clay("c", { cones: range })],
      firings: [firing("x", { cone: aim })],
    };
    return runChecks(archive(parts), nothing).map(({ severity }) => severity);
  };

  it("is an error from 60 °C over its range, and never below", () => {
    fc.assert(
      fc.property(anyRange, anyCone, (range, aim) => {
        const dangerous = degreesHotter(aim, range.to) >= 60;
        expect(severities(range, aim, undefined).includes("error")).toBe(dangerous);
      }),
    );
  });

  it("has its error turned into a warning by a result", () => {
    fc.assert(
      fc.property(anyRange, anyCone, (range, aim) => {
        const before = severities(range, aim, undefined);
        const after = severities(range, aim, [result()]);
        expect(after).toEqual(before.map(() => "warning"));
      }),
    );
  });
});
