/** Load lists, the firing a tile waits for, and what a studio writes each time. */
import { fc, test as propertyTest } from "@fast-check/vitest";
import { describe, expect, test } from "vitest";
import { awaitedBy, awaits } from "../../src/loads/awaited.ts";
import { changedEntries, entriesOf } from "../../src/loads/entries.ts";
import { kilnsOf, lastOf, nextFiringId } from "../../src/loads/kiln-habits.ts";
import type { Tile } from "../../src/records/archive.ts";
import { findCodes, idKey } from "../../src/terms/ids.ts";
import { read, record, tile } from "./archive.ts";

const code = fc
  .tuple(fc.constantFrom("A-", "B", "EV-1."), fc.integer({ min: 0, max: 12 }), fc.boolean())
  .map(([stem, number, padded]) => stem + (padded ? String(number).padStart(2, "0") : number));
const codes = fc.uniqueArray(code, { maxLength: 12, selector: idKey });

describe("codes in a load list", () => {
  test("are a range where three or more follow each other", () => {
    expect(entriesOf(["A-1", "A-2", "A-3", "B-7", "B-8", "A-09", "A-10", "A-11", "A-12"])).toEqual([
      ...["A-1..A-3", "B-7", "B-8", "A-09..A-12"],
    ]);
  });

  propertyTest.prop([codes])("are the same codes in the same order", (all) => {
    expect(entriesOf(all).flatMap((entry) => findCodes(entry) ?? [])).toEqual(all);
  });

  test("change where a code comes or goes, and nowhere else", () => {
    expect(
      changedEntries(
        ["A-1..A-5", "b-2", "C-1..C-3"],
        ["A-1", "A-2", "A-4", "A-5", "B-2", "C-1", "C-2", "C-3", "C-4"],
      ),
    ).toEqual([["A-1", "A-2", "A-4", "A-5"], "b-2", "C-1..C-4"]);
    expect(changedEntries(["A-1", "b-2"], ["B-2", "Z-1"])).toEqual([[], ["b-2", "Z-1"]]);
  });

  propertyTest.prop([codes, codes])("are then those that were asked for", (before, after) => {
    fc.pre(before.length > 0);
    const now = changedEntries(entriesOf(before), after).flat();
    const named = now.flatMap((entry) => findCodes(entry) ?? []).map(idKey);
    expect(named.toSorted()).toEqual(after.map(idKey).toSorted());
  });
});

describe("the firing that a tile waits for", () => {
  const archive = read({
    "tiles/A-1.md": record("layers: [{glaze: soot}]"),
    "tiles/A-2.md": record("layers: [{fired: bisque}]"),
    "tiles/A-3.md": tile("{glaze: soot}, {fired: raku}"),
    "tiles/A-4.md": tile("{glaze: soot}"),
    "tiles/A-5.md": tile("{glaze: soot}", "result: {surface: satin}"),
    "tiles/A-6.md": tile("{glaze: soot}, {fired: glaze}, {glaze: gilt}"),
    "tiles/A-7.md": tile("{glaze: soot}", "fate: lost"),
    "tiles/A-8.md": tile("{glaze: soot}"),
    "tiles/firings/g-261020.md": record("on: 2026-10-20", "kind: glaze", "tiles: {top: A-5}"),
    "tiles/firings/g-261201.md": record("kind: glaze", "tiles: {top: A-8}"),
  });

  test("is told by its record, or by what was done to it last", () => {
    const told = [...archive.tiles.values()].map((one) => {
      const awaited = awaitedBy(archive, one);
      return [one.id, awaited && [awaited.kind, awaited.isWritten, awaited.listedIn]];
    });
    expect(Object.fromEntries(told)).toEqual({
      "A-1": ["glaze", false, null],
      "A-2": ["bisque", true, null],
      "A-3": ["raku", true, null],
      "A-4": ["glaze", false, null],
      "A-5": null,
      "A-6": ["onglaze", false, null],
      "A-7": null,
      "A-8": ["glaze", false, "g-261201"],
    });
  });

  test.each([
    ["bisque", ["A-2"]],
    ["glaze", ["A-1", "A-4", "A-8"]],
    ["once", ["A-1", "A-4", "A-8"]],
    ["raku", ["A-1", "A-3", "A-4", "A-8"]],
    ["onglaze", ["A-6"]],
  ] as const)("is a %s for some", (kind, ids) => {
    const isFor = (one: Tile) => {
      const awaited = awaitedBy(archive, one);
      return awaited !== null && awaits(awaited, kind);
    };
    expect([...archive.tiles.values()].filter(isFor).map(({ id }) => id)).toEqual(ids);
  });
});

describe("what a studio writes each time", () => {
  const firings = (...texts: readonly (readonly [string, ...string[]])[]) =>
    read(
      Object.fromEntries(
        texts.map(([id, ...lines]) => [`tiles/firings/${id}.md`, record(...lines)]),
      ),
    );

  test("is offered from the kiln's last firing of that kind", () => {
    const archive = firings(
      ["g-1", "on: 2026-10-25", "kind: glaze", "kiln: Wardrobe", "cone: 5"],
      ["b-1", "on: 2026-10-28", "kind: bisque", "kiln: BIG ELECTRIC", "cone: 06"],
      ["g-2", "kind: glaze", "kiln: Drum"],
    );
    expect(kilnsOf(archive)).toEqual(["Drum", "BIG ELECTRIC", "Wardrobe"]);
    expect(lastOf(archive, "glaze", "big electric")?.id).toBe("g-261020");
    expect(lastOf(archive, "glaze", undefined)?.id).toBe("g-1");
    expect(lastOf(archive, "glaze", "Drum")).toBeUndefined();
  });

  test.each([
    ["g-261021", "2026-10-21", "g-261130"],
    ["glaze-2026-10-21", "2026-10-21", "glaze-2026-11-30"],
    ["F1021", "2026-10-21", "F1130"],
    ["kiln-9", "2026-10-21", "kiln-10"],
    ["load-099", "2026-10-21", "load-100"],
    ["autumn", "2026-10-21", "g-261130"],
  ])("makes the id after %s of %s the id %s", (id, on, next) => {
    const archive = firings(
      [id, `on: ${on}`, "kind: glaze"],
      ["old", "on: 2026-01-01", "kind: glaze"],
    );
    expect(nextFiringId(archive, "glaze", "2026-11-30")).toBe(next);
  });

  test("gives a second firing on a day a letter", () => {
    const archive = firings(["g-261130", "on: 2026-11-30", "kind: glaze"]);
    expect(nextFiringId(archive, "glaze", "2026-11-30")).toBe("g-261130b");
    expect(nextFiringId(archive, "bisque", "2026-11-30")).toBe("b-261130");
  });
});
