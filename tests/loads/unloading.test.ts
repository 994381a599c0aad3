/** A load as it is taken out: its order, what each tile lacks, and where a result is written. */
import { describe, expect, test } from "vitest";
import { outcomeFields, outcomeOf } from "../../src/loads/outcome.ts";
import { placeOfResult } from "../../src/loads/result-place.ts";
import { missingOf, tilesOut } from "../../src/loads/unloading.ts";
import { type Archive, type Firing, findById, type Tile } from "../../src/records/archive.ts";
import { read, record, tile } from "./archive.ts";

test("a load is taken out shelf by shelf as its list says, and tells what each tile lacks", () => {
  const archive = read({
    "tiles/a/set.md": record("name: Evening", "codes: B-9"),
    "tiles/a/A-1.md": tile("{glaze: soot}"),
    "tiles/a/A-2.md": tile("{glaze: soot}", "result: {surface: satin}"),
    "tiles/a/A-2.jpg": "",
    "tiles/a/A-3.md": tile("{glaze: soot}", "fate: stuck"),
    "tiles/a/A-4.md": tile("{glaze: soot}, {fired: g-261020, shelf: door}"),
    "tiles/firings/g-261020.md": record(
      "on: 2026-10-20",
      "kind: glaze",
      "tiles: {low: [A-3, B-9], top: A-1..A-2}",
    ),
  });
  const firing = findById(archive.firings, "g-261020") as Firing;
  const lacks = tilesOut(archive, firing).map(({ code: id, shelf, tile: found }) => {
    const { result, photograph } = missingOf(found, firing);
    return [id, shelf, result, photograph];
  });
  expect(lacks).toEqual([
    ["A-3", "low", false, false],
    ["B-9", "low", false, false],
    ["A-1", "top", true, true],
    ["A-2", "top", false, false],
    ["A-4", "door", true, true],
  ]);
});

describe("a result", () => {
  const placeIn = (layers: string, result: string, firing: string, said?: string) => {
    const archive: Archive = read({
      "tiles/A-1.md": tile(layers, result),
      "tiles/firings/g-1.md": record("on: 2026-10-01", "kind: glaze"),
      "tiles/firings/g-2.md": record("on: 2026-11-01", "kind: glaze"),
    });
    const { at, known, after, unclear } = placeOfResult(
      findById(archive.tiles, "A-1") as Tile,
      firing,
      said,
    );
    return {
      at,
      known: known?.surface?.[0],
      after: after.map(({ path, value }) => `${path[1]} ${value}`),
      unclear,
    };
  };
  const twice = "{glaze: soot}, {fired: g-1}, {glaze: slide}, {fired: g-2}";

  test("needs no firing's name where there was but one", () => {
    expect(placeIn("{glaze: soot}, {fired: g-1}", "clay: buff", "g-1")).toEqual({
      ...{ at: 0, known: undefined, after: [], unclear: [] },
    });
    expect(placeIn("{glaze: soot}, {fired: g-1}", "result: {surface: dry}", "g-1")).toMatchObject({
      ...{ at: 0, known: "dry" },
    });
  });

  test("names its firing where there were two", () => {
    expect(placeIn(twice, "clay: buff", "g-2")).toMatchObject({ at: 0, after: ["0 g-2"] });
    expect(placeIn(twice, "result: {after: g-1, surface: dry}", "g-2")).toMatchObject({
      ...{ at: 1, known: undefined, after: ["1 g-2"] },
    });
    expect(
      placeIn(twice, "result: [{after: g-1}, {after: g-2, surface: dry}]", "g-2"),
    ).toMatchObject({
      ...{ at: 1, known: "dry", after: [] },
    });
  });

  test("that names none is of one firing or of another only once somebody said so", () => {
    const before = "result: {surface: dry}";
    expect(placeIn(twice, before, "g-2").unclear).toEqual(["g-1", "g-2"]);
    expect(placeIn(twice, before, "g-2", "g-1")).toEqual({
      ...{ at: 1, known: undefined, after: ["0 g-1", "1 g-2"], unclear: [] },
    });
    expect(placeIn(twice, before, "g-2", "g-2")).toEqual({
      ...{ at: 0, known: "dry", after: ["0 g-2"], unclear: [] },
    });
  });

  test("is written field by field, and only what is other than before", () => {
    const none = outcomeOf(undefined, undefined);
    const first = { at: 1, after: [{ path: ["result", 1, "after"] as const, value: "g-2" }] };
    expect(
      outcomeFields(
        {
          ...none,
          surface: ["satin"],
          effects: ["breaking", "pooling"],
          faults: ["none"],
          run: "2.5",
          again: "yes",
        },
        none,
        first,
      ).map(({ path, value }) => `${path.join(".")} = ${value}`),
    ).toEqual([
      ...[
        "result.1.after = g-2",
        "result.1.surface = satin",
        "result.1.effects = breaking,pooling",
      ],
      ...["result.1.faults = none", "result.1.run = 2.5", "result.1.again = yes"],
    ]);
    const before = { ...none, surface: ["satin" as const], run: "2" };
    expect(outcomeFields({ ...before, run: null }, before, { at: 0, after: [] })).toEqual([
      { path: ["result", 0, "run"], value: null },
    ]);
    expect(outcomeFields({ ...none, fate: "stuck" }, none, first)).toEqual([
      { path: ["fate"], value: "stuck" },
    ]);
    expect(outcomeFields(before, before, first)).toEqual([]);
  });
});
