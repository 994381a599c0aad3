import { fc, test as property } from "@fast-check/vitest";
import { describe, expect, test } from "vitest";
import {
  type Change,
  changeBetween as changeOfParts,
  partsOf,
  twoChangesBetween,
  unknownOfBoth,
} from "../../src/likeness/change.ts";
import type { MakeUp } from "../../src/likeness/make-up.ts";
import { neighbourFinder } from "../../src/likeness/neighbours.ts";
import { twoApartFinder } from "../../src/likeness/two-apart.ts";
import type { TileStep } from "../../src/records/archive.ts";
import { coat, fired, resist } from "../checks/support.ts";
import { anyFamily, anyTile, made, makeUp } from "./make-ups.ts";

const soot = coat("soot", { coats: 2, by: "brush" });
const chalk = coat("chalk", { coats: 1, by: "brush" });
const bisque = fired("b-1", "bisque");

const changeBetween = (a: MakeUp, b: MakeUp) => changeOfParts(partsOf(a), partsOf(b));

type About = Parameters<typeof made>[1];

const change = (a: readonly TileStep[], b: readonly TileStep[], of: About = {}, to: About = of) =>
  changeBetween(makeUp(made(a, of)), makeUp(made(b, to)));

const facet = (aspect: string, step: number | null, from: string, to: string) =>
  ({ kind: "facet", aspect, step, from, to }) as Change;

describe("one change apart are two tiles", () => {
  const plain = [bisque, soot, fired("g-1")];

  test("that differ in one facet of one layer", () => {
    expect(change(plain, [bisque, { ...soot, coats: 3 }, fired("g-1")])).toEqual(
      facet("coats", 1, "2", "3"),
    );
    expect(change(plain, [bisque, { ...soot, where: ["top"] }, fired("g-1")])).toMatchObject({
      aspect: "area",
      step: 1,
    });
    expect(change(plain, [bisque, { ...soot, glazes: ["chalk"] }, fired("g-1")])).toMatchObject({
      aspect: "what",
      step: 1,
    });
  });

  test("in the way a layer was put on, whether or not somebody counted how long one was dipped", () => {
    const dipped = { ...soot, by: "dip" as const, seconds: 3 };
    const way = facet("way", 1, "brush", "dip");
    expect(change(plain, [bisque, dipped, fired("g-1")])).toEqual(way);
    expect(change(plain, [bisque, { ...dipped, seconds: null }, fired("g-1")])).toEqual(way);
    const longer = [bisque, { ...dipped, seconds: 6 }, fired("g-1")];
    expect(change([bisque, dipped, fired("g-1")], longer)).toMatchObject({ aspect: "dipping" });
  });

  test("in what the kiln did: its cooling, its atmosphere", () => {
    const cooled = facet("cooling", 2, "natural", "slowed");
    expect(change(plain, [bisque, soot, fired("g-slow")])).toEqual(cooled);
    const reduced = facet("atmosphere", 2, "oxidation", "reduction");
    expect(change(plain, [bisque, soot, fired("g-red")])).toEqual(reduced);
  });

  test("in the clay, or in the texture", () => {
    expect(change(plain, plain, { clay: "buff" }, { clay: "dark" })).toEqual(
      facet("clay", null, "buff", "dark"),
    );
    expect(change(plain, plain, {}, { texture: "combed" })).toEqual(
      facet("texture", null, "smooth", "combed"),
    );
  });

  test("of which one has a step more, be it a layer, a resist or the bisque firing", () => {
    const more = [bisque, soot, chalk, fired("g-1")];
    expect(change(plain, more)).toEqual({ kind: "more", step: 2 });
    expect(change(more, plain)).toEqual({ kind: "fewer", step: 2 });
    expect(change(plain, plain.slice(1))).toEqual({ kind: "fewer", step: 0 });
    const waxed = [bisque, resist("wax"), soot, fired("g-1")];
    expect(change(plain, waxed)).toEqual({ kind: "more", step: 1 });
  });

  test("on which two layers changed places, or one went on at another time", () => {
    const order = { kind: "order", steps: [1, 2] };
    expect(change([bisque, soot, chalk], [bisque, chalk, soot])).toEqual(order);
    const between = [bisque, soot, resist("wax"), chalk];
    expect(change(between, [bisque, chalk, resist("wax"), soot])).toEqual({
      kind: "order",
      steps: [1, 3],
    });
    expect(change(between, [bisque, resist("wax"), chalk, soot])).toEqual({
      kind: "order",
      steps: [1, 3],
    });
  });

  test("on which nothing differs that anybody wrote down", () => {
    expect(change(plain, [bisque, soot, fired("g-2")])).toEqual({ kind: "none" });
  });
});

describe("not one change apart are two tiles", () => {
  const plain = [bisque, soot, fired("g-1")];

  test("where two things differ", () => {
    expect(change(plain, [bisque, { ...chalk, coats: 3 }, fired("g-1")])).toBeNull();
    expect(change(plain, [bisque, soot, chalk, fired("g-slow")])).toBeNull();
    expect(change(plain, plain, {}, { clay: "dark", texture: "combed" })).toBeNull();
  });

  test("where one says what the other leaves out", () => {
    expect(change(plain, [bisque, { ...soot, by: null }, fired("g-1")])).toBeNull();
    expect(change(plain, [bisque, soot, fired("g-unwritten")])).toBeNull();
  });
});

test("what is unknown of both is told, but for what one load made the same", () => {
  const [here, there] = ["g-unwritten", "g-unwritten-too"].map((load) =>
    makeUp(made([{ ...soot, by: null }, fired(load)])),
  );
  if (!here || !there) throw new Error("two make-ups were made");
  expect(unknownOfBoth(here, there)).toEqual(["way", "atmosphere", "fire", "cooling"]);
  expect(unknownOfBoth(here, here)).toEqual(["way"]);
});

const reverse = (change: Change | null): Change | null => {
  switch (change?.kind) {
    case "facet":
      return { ...change, from: change.to, to: change.from };
    case "more":
      return { ...change, kind: "fewer" };
    case "fewer":
      return { ...change, kind: "more" };
    default:
      return change;
  }
};

describe("for any tiles", () => {
  property.prop([anyFamily], { numRuns: 400 })("a change is its own reverse", (tiles) => {
    const [one, ...others] = tiles.map(makeUp);
    for (const other of others)
      if (one) expect(changeBetween(other, one)).toEqual(reverse(changeBetween(one, other)));
  });

  property.prop([anyTile])("nothing changed from a tile to itself", (one) => {
    expect(changeBetween(makeUp(one), makeUp(one))).toEqual({ kind: "none" });
  });

  property.prop([fc.oneof(anyFamily, fc.array(anyTile, { maxLength: 14 }))], { numRuns: 600 })(
    "neighbours are all that one change leads to, and no others, and never the tile itself",
    (tiles) => {
      const all = tiles.map(makeUp);
      const find = neighbourFinder(all, (one) => one);
      for (const one of all) {
        const compared = all
          .filter((other) => other !== one)
          .flatMap((other) => {
            const change = changeBetween(one, other);
            return change ? [{ other, change }] : [];
          });
        expect(find(one)).toEqual(compared);
      }
    },
  );
});

describe("two changes apart", () => {
  property.prop([fc.oneof(anyFamily, fc.array(anyTile, { maxLength: 14 }))], { numRuns: 150 })(
    "are all tiles that differ in exactly two facets, and no others, both ways and never itself",
    (tiles) => {
      const all = tiles.map(makeUp);
      const find = twoApartFinder(all, (one) => one);
      for (const one of all) {
        const compared = all.flatMap((other) => {
          const changes = twoChangesBetween(partsOf(one), partsOf(other));
          return changes ? [{ other, changes }] : [];
        });
        const found = find(one);
        expect(found).toEqual(compared);
        expect(found.map(({ other }) => other)).not.toContain(one);
        for (const { other, changes } of found) {
          expect(changeBetween(one, other)).toBeNull();
          const back = find(other).find((each) => each.other === one);
          expect(back?.changes).toEqual(changes.map(reverse));
        }
      }
    },
  );

  test("are not tiles on which two layers changed places, which is one change", () => {
    const a: readonly TileStep[] = [bisque, soot, chalk];
    const b: readonly TileStep[] = [
      bisque,
      { ...soot, glazes: ["chalk"] },
      { ...chalk, glazes: ["soot"] },
    ];
    const between = (one: readonly TileStep[], other: readonly TileStep[]) =>
      twoChangesBetween(partsOf(makeUp(made(one))), partsOf(makeUp(made(other))));
    expect(between(a, b)?.map(({ aspect }) => aspect)).toEqual(["what", "what"]);
    expect(between(a, [bisque, chalk, soot])).toBeNull();
    expect(between([bisque, soot], [bisque, { ...soot, coats: null, by: "dip" }])).toBeNull();
  });
});
