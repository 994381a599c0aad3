/** Strips of a glaze: what stands in one, in which order, and what is said of it. */
import { fc, test as property } from "@fast-check/vitest";
import { describe, expect, test } from "vitest";
import { stripFinder } from "../../src/catalogue/strips.ts";
import { changeBetween, partsOf } from "../../src/likeness/change.ts";
import { stripName, stripSentences } from "../../templates/words/tile/strip.ts";
import {
  type Alone,
  alone,
  type Coloured,
  colouredCatalogue,
  grey,
} from "./colours/colour-support.ts";

const trust = { difference: 5, tiles: 4, kinds: 2 };

const stripsOf = (...tiles: readonly Coloured[]) => stripFinder(colouredCatalogue(tiles))("soot");

const firstOf = (...tiles: readonly Coloured[]) => {
  const [strip] = stripsOf(...tiles);
  if (!strip) throw new Error("there is a strip");
  return strip;
};

describe("a glaze's strips", () => {
  const byCone = firstOf(
    [alone("A", { cone: "10" }), grey(80)],
    [alone("B", { cone: "4" }), grey(51)],
    [alone("C", { cone: "6" }), grey(50)],
    [alone("D", { cone: "6" }), grey(50)],
    [alone("E", { cone: "6", glaze: "kelp" }), grey(50)],
    [alone("F", { cone: "8", clay: "red" }), grey(50)],
  );

  test("go in the order of what differs, tiles made alike in one place, and hold nothing else", () => {
    expect(byCone).toMatchObject({ aspect: "cone", uncontrolled: ["load"] });
    expect(byCone.places.map(({ value, tiles }) => [value, tiles.map(({ id }) => id)])).toEqual([
      ["4", ["B"]],
      ["6", ["C", "D"]],
      ["10", ["A"]],
    ]);
  });

  test("say what changes along them, and what was not held equal", () => {
    expect(stripSentences(byCone, trust).join(" ")).toBe(
      "Surface not recorded. Run not recorded. Faults not recorded. Colours, each from the one before: less than 1 and 25 apart; tiles made alike differ by up to 5 here. 1 to 2 tiles of each: a hint, no rule. Also different: the load.",
    );
    expect(stripName(byCone)).toBe("soot (2 coats, brushed), Buff, in oxidation");
  });

  test("say on how many tiles made alike a thing came out, and where nobody wrote it down", () => {
    const coats = firstOf(
      [alone("A", { coats: 1, faults: ["none"] }), null],
      [alone("B", { coats: 2, faults: ["crawling"] }), null],
      [alone("C", { coats: 2, faults: ["none"] }), null],
      [alone("D", { coats: 3 }), null],
    );
    expect(stripSentences(coats, null).join(" ")).toBe(
      "Surface not recorded. Run not recorded. No fault found with 1 coat, crawling on 1 and no fault found on 1 with 2 coats; faults not recorded with 3 coats. 1 to 2 tiles of each: a hint, no rule.",
    );
    expect(stripName(coats)).toBe("soot (brushed), Buff, cone 6, in oxidation");
  });

  test("of coats are those of the glaze whose coats they are", () => {
    expect(
      stripsOf(
        [alone("A", { glaze: "kelp" }), null],
        [alone("B", { glaze: "kelp", coats: 3 }), null],
      ),
    ).toEqual([]);
  });
});

const anyAbout: fc.Arbitrary<Alone> = fc.record({
  clay: fc.constantFrom("buff", "red", null),
  cone: fc.constantFrom("4", "6", "10"),
  coats: fc.constantFrom(1, 2, 3, null),
  loads: fc.constantFrom(undefined, ["6-slow"]),
}) as fc.Arbitrary<Alone>;

property.prop([fc.array(anyAbout, { maxLength: 9 })], { numRuns: 40 })(
  "two tiles of a strip differ in its one thing or in nothing, and every place has a tile of its own",
  (abouts) => {
    for (const { aspect, step, places } of stripsOf(
      ...abouts.map((about, i): Coloured => [alone(`T-${i}`, about), null]),
    )) {
      const all = places.flatMap(({ value, tiles }) => tiles.map((tile) => ({ value, tile })));
      expect(new Set(all.map(({ tile }) => tile)).size).toBe(all.length);
      expect(places.length).toBeGreaterThan(1);
      for (const a of all)
        for (const b of all)
          expect(changeBetween(partsOf(a.tile.makeUp), partsOf(b.tile.makeUp))).toEqual(
            a.value === b.value
              ? { kind: "none" }
              : { kind: "facet", aspect, step, from: a.value, to: b.value },
          );
    }
  },
);
