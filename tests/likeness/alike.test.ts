import { fc, test as property } from "@fast-check/vitest";
import { describe, expect, test } from "vitest";
import {
  areAlike,
  groupAlike,
  type Likeness,
  likenessKey,
  unknownAspects,
} from "../../src/likeness/alike.ts";
import { asGlazed, lastValue } from "../../src/likeness/make-up.ts";
import type { TileStep } from "../../src/records/archive.ts";
import { coat, fired } from "../checks/support.ts";
import { anyTile, made, makeUp } from "./make-ups.ts";

const soot = { coats: 2, by: "brush" } as const;

function steps(load: string | null, how: Partial<Parameters<typeof coat>[1]> = {}): TileStep[] {
  return [fired("b-1", "bisque"), coat("soot", { ...soot, ...how }), fired(load)];
}

const alike = (a: readonly TileStep[], b: readonly TileStep[], likeness?: Likeness) =>
  areAlike(makeUp(made(a)), makeUp(made(b)), likeness);

describe("two tiles are alike", () => {
  test("where the same was done to both, in whichever load", () => {
    expect(alike(steps("g-1"), steps("g-2"))).toBe(true);
    expect(alike(steps("g-1"), steps("g-slow"))).toBe(false);
    expect(alike(steps("g-1"), steps("g-red"))).toBe(false);
    expect(alike(steps("g-1"), steps("g-salt"))).toBe(false);
    expect(alike(steps("g-1"), steps("g-1", { by: "dip" }))).toBe(false);
    expect(alike(steps("g-1"), steps("g-1").slice(1))).toBe(false);
  });

  test("by the cone that each one's own shelf showed", () => {
    const at = (shelf: string): TileStep[] => [
      ...steps(null).slice(0, 2),
      { ...fired("g-cones"), shelf },
    ];
    expect(alike(at("bottom"), steps("g-1"))).toBe(true);
    expect(alike(at("top"), steps("g-1"))).toBe(false);
    expect(alike(at("top"), at("bottom"))).toBe(false);
  });

  test("where coats of one glaze on each other were written as one layer or as two", () => {
    const twice = [
      fired("b-1", "bisque"),
      ...[1, 1].map((coats) => coat("soot", { ...soot, coats })),
    ];
    expect(alike([...twice, fired("g-1")], steps("g-1"))).toBe(true);
    const dried = [twice[0], twice[1], { ...twice[2], dried: "wet-on-wet" }] as TileStep[];
    expect(alike([...dried, fired("g-1")], steps("g-1"))).toBe(false);
  });

  test("never where one says what the other leaves out", () => {
    for (const unwritten of ["apart", "together"] as const) {
      expect(alike(steps("g-1"), steps("g-1", { by: null }), { unwritten })).toBe(false);
      expect(alike(steps("g-1"), steps("g-1", { coats: null }), { unwritten })).toBe(false);
      expect(alike(steps("g-1"), steps("g-unwritten"), { unwritten })).toBe(false);
      expect(alike(steps("g-1"), steps("g-1", { gravity: 1.45 }), { unwritten })).toBe(false);
    }
  });

  test("where both leave something out, only if the question says that it will tell", () => {
    const unknown = steps("g-1", { by: null });
    expect(alike(unknown, [...unknown])).toBe(false);
    expect(alike(unknown, [...unknown], { unwritten: "together" })).toBe(true);
    expect(unknownAspects(makeUp(made(unknown)))).toEqual(["way"]);
  });

  test("where nobody wrote down how a load was fired, if both were in it", () => {
    expect(alike(steps("g-unwritten"), steps("g-unwritten"))).toBe(true);
    expect(alike(steps("g-unwritten"), steps("g-unwritten-too"))).toBe(false);
  });
});

test("a control tile's twins may be fired otherwise after the last layer, and not before it", () => {
  const key = (stack: readonly TileStep[]) => likenessKey(asGlazed(makeUp(made(stack))));
  expect(key(steps("g-slow"))).toBe(key(steps("g-1")));
  expect(key([...steps("g-red"), fired("g-1")])).toBe(key(steps("g-1")));
  expect(key(steps("g-1").slice(1))).not.toBe(key(steps("g-1")));
  expect(key([coat("soot", soot)])).toBe(key([coat("soot", soot), fired("g-1")]));
});

test("a make-up tells how its last firing cooled", () => {
  expect(lastValue(makeUp(made(steps("g-slow"))), "cooling")).toBe("slowed");
  expect(lastValue(makeUp(made(steps("g-1"))), "cooling")).toBe("natural");
  expect(lastValue(makeUp(made(steps("g-unwritten"))), "cooling")).toBeNull();
});

const anyLikeness = fc.record({
  unwritten: fc.constantFrom("apart" as const, "together" as const),
  leaveOut: fc.constantFrom("clay", "coats", "cooling", "nothing").map(
    (without) =>
      ({ aspect }: { readonly aspect: string }) =>
        aspect === without,
  ),
});

describe("for any tiles", () => {
  property.prop([anyTile, anyLikeness])("likeness is reflexive", (one, likeness) => {
    const own = makeUp(one);
    expect(areAlike(own, own, likeness)).toBe(true);
  });

  property.prop([anyTile, anyTile, anyLikeness])("and symmetric", (a, b, likeness) => {
    const [one, other] = [makeUp(a), makeUp(b)];
    expect(areAlike(one, other, likeness)).toBe(areAlike(other, one, likeness));
  });

  property.prop([fc.array(anyTile, { maxLength: 12 }), anyLikeness])(
    "groups hold each once, with those it is like and no other, whatever their order",
    (tiles, likeness) => {
      const all = tiles.map(makeUp);
      const groups = groupAlike(all, (one) => one, likeness);
      expect(groups.flat()).toHaveLength(all.length);
      const groupOf = new Map(groups.flatMap((group) => group.map((one) => [one, group] as const)));
      for (const a of all)
        for (const b of all)
          expect(groupOf.get(a) === groupOf.get(b)).toBe(areAlike(a, b, likeness));
      const reversed = groupAlike([...all].reverse(), (one) => one, likeness);
      const asSets = (found: typeof groups) =>
        new Set(found.map((group) => [...group.map((one) => all.indexOf(one))].sort().join()));
      expect(asSets(reversed)).toEqual(asSets(groups));
    },
  );

  property.prop([anyTile, anyTile])(
    "what is alike where nothing unknown is pooled is alike where it is",
    (a, b) => {
      const [one, other] = [makeUp(a), makeUp(b)];
      if (areAlike(one, other)) expect(areAlike(one, other, { unwritten: "together" })).toBe(true);
    },
  );
});
