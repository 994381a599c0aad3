import { fc, test as propertyTest } from "@fast-check/vitest";
import { describe, expect, test } from "vitest";
import {
  captionTiles,
  describeAsked,
  type Near,
  putNearestFirst,
  readColours,
} from "../../../src/browser/wall/near.ts";
import { findTiles, makeTable } from "../../../src/browser/wall/table.ts";
import { type Lab, linearToLab } from "../../../src/colour/cielab.ts";
import { differenceCiede2000, roundDifference } from "../../../src/colour/difference.ts";
import { hexToLinear } from "../../../src/colour/srgb.ts";
import type { Facets } from "../../../src/publish/facets-file.ts";

/** Facets of tiles that are known by their colours alone. */
function facetsOf(labs: readonly (Lab | null)[]): Facets {
  const axis = (at: 0 | 1 | 2) => labs.map((lab) => lab && Math.round(lab[at] * 100));
  const lab = [axis(0), axis(1), axis(2)];
  return { codes: labs.map((_, i) => `T-${i}`), columns: {}, lab } as unknown as Facets;
}

/** As the finder does it: what has a colour is found, and put in order. */
function order(labs: readonly (Lab | null)[], near: Near) {
  const facets = facetsOf(labs);
  const colours = readColours(facets);
  const asked = describeAsked(near, colours);
  const found = findTiles(makeTable(facets), new Map(), { near: colours.measured });
  return { asked, found, inOrder: putNearestFirst(found.tiles, asked, colours) };
}

/** To hundredths, as colours are published. */
const axis = (most: number) =>
  fc.integer({ min: -most * 100, max: most * 100 }).map((value) => value / 100);
const someLab = fc.tuple(
  fc.integer({ min: 0, max: 10_000 }).map((value) => value / 100),
  axis(60),
  axis(60),
);
/** Some of them of the very same colour. */
const someLabs = fc.array(
  fc.option(fc.oneof(someLab, fc.constantFrom<Lab>([50, 0, 0], [50, 10, 0]))),
  { minLength: 1, maxLength: 40 },
);
const someHex = fc
  .integer({ min: 0, max: 0xffffff })
  .map((number) => `#${number.toString(16).padStart(6, "0")}`);

describe("tiles in the order of a colour", () => {
  propertyTest.prop([someLabs, someHex])(
    "stand as one comparison after the other puts them, and none without a colour is there",
    (labs, hex) => {
      const asked = linearToLab(hexToLinear(hex));
      const byHand = labs
        .flatMap((lab, tile) => (lab ? [{ tile, apart: differenceCiede2000(asked, lab) }] : []))
        .sort((a, b) => a.apart - b.apart || a.tile - b.tile);
      const { found, inOrder } = order(labs, { hex });
      expect([...inOrder.tiles]).toEqual(byHand.map(({ tile }) => tile));
      expect([...inOrder.differences]).toEqual(byHand.map(({ apart }) => apart));
      expect(found.without.get("near")).toBe(labs.length);
    },
  );

  propertyTest.prop([fc.array(someLab, { minLength: 1, maxLength: 20 }), fc.nat(), fc.nat()])(
    "begin with the tile that was asked for, even where another has its colour",
    (labs, one, other) => {
      const tile = one % labs.length;
      const twin = labs.with(other % labs.length, labs[tile] ?? [0, 0, 0]);
      const { inOrder } = order(twin, { tile });
      expect(inOrder.tiles[0]).toBe(tile);
      expect(inOrder.differences[0]).toBe(0);
    },
  );

  test("leave out the tile that was asked for where it was not found", () => {
    const colours = readColours(
      facetsOf([
        [50, 0, 0],
        [60, 0, 0],
        [51, 0, 0],
      ]),
    );
    const asked = describeAsked({ tile: 0 }, colours);
    const { tiles } = putNearestFirst(Uint32Array.of(1, 2), asked, colours);
    expect([...tiles]).toEqual([2, 1]);
  });
});

describe("a colour that is asked for", () => {
  test("has its plain name and its code for a screen", () => {
    const colours = readColours(facetsOf([[53.24, 80.09, 67.2]]));
    expect(describeAsked({ hex: "#1f4fa3" }, colours)).toMatchObject({
      hex: "#1f4fa3",
      name: "blue",
    });
    // The red of sRGB in CIELAB: CSS Color Module Level 4 gives it, from memory, as here.
    expect(describeAsked({ tile: 0 }, colours)).toMatchObject({ hex: "#ff0000", name: "red" });
  });
});

describe("what is said of tiles in order", () => {
  const greys = (...lightness: number[]) => lightness.map((L): Lab => [L, 0, 0]);
  const say = (labs: readonly Lab[], near: Near, meaningless: number | null) => {
    const { asked, inOrder } = order(labs, near);
    const { at, same } = captionTiles(inOrder, asked, meaningless);
    return { same, said: Array.from(inOrder.tiles, (_, place) => at(place)) };
  };

  test("is how far each is apart, and which is the tile itself", () => {
    expect(say(greys(50, 50.4, 50, 53), { tile: 2 }, null)).toEqual({
      same: 0,
      said: ["the tile itself", "0 apart", "less than 1 apart", "3 apart"],
    });
  });

  propertyTest.prop([someLab, someHex])("is rounded as everywhere else", (lab, hex) => {
    const apart = differenceCiede2000(linearToLab(hexToLinear(hex)), lab);
    expect(say([lab], { hex }, null).said).toEqual([`${roundDifference(apart)} apart`]);
  });

  test("counts those that are as good as the same", () => {
    expect(say(greys(50, 52, 51, 70), { tile: 0 }, 3).same).toBe(3);
    expect(say(greys(50, 50, 50), { tile: 0 }, 3).same).toBe(3);
    expect(say(greys(50, 52, 51, 70), { tile: 0 }, null).same).toBe(0);
  });

  test("counts none where no other than the tile itself is as good as the same", () => {
    expect(say(greys(50, 70), { tile: 0 }, 3).same).toBe(0);
    expect(say(greys(70, 80), { hex: "#000000" }, 3).same).toBe(0);
  });
});

describe("the lines between tiles", () => {
  const at = (...differences: number[]) => ({
    tiles: Uint32Array.from(differences, (_, tile) => tile),
    differences: Float64Array.from(differences),
  });
  const asked = {
    near: { hex: "#000000" },
    lab: [0, 0, 0],
    hex: "#000000",
    name: "black",
  } as const;
  const linesOf = (differences: readonly number[], meaningless: number | null) => [
    ...captionTiles(at(...differences), asked, meaningless).lines,
  ];
  const fartherOff = "Farther off: most people would give it another name";

  test("part what is as good as the same, what is within reach, and what is farther off", () => {
    expect(linesOf([1, 2, 9, 17, 19, 60], 4)).toEqual([
      [0, "As good as the same here"],
      [2, "Further apart"],
      [4, fartherOff],
    ]);
  });

  test("stand only where there is something behind them", () => {
    expect(linesOf([1, 2], 4)).toEqual([[0, "As good as the same here"]]);
    expect(linesOf([9, 12], 4)).toEqual([]);
    expect(linesOf([30, 40], null)).toEqual([[0, fartherOff]]);
    expect(linesOf([1, 40], 4)).toEqual([
      [0, "As good as the same here"],
      [1, fartherOff],
    ]);
    expect(linesOf([1, 20, 40], 25)).toEqual([
      [0, "As good as the same here"],
      [2, "Further apart"],
    ]);
  });
});
