import { fc, test as property } from "@fast-check/vitest";
import { describe, expect, test } from "vitest";
import { clayColour } from "../../../src/catalogue/colours/clay-colour.ts";
import { mainChange } from "../../../src/catalogue/colours/colour-findings.ts";
import { arrangeByClay } from "../../../src/catalogue/colours/glaze-colours.ts";
import { measureAlone } from "../../../src/catalogue/colours/measured-alone.ts";
import { differenceCiede2000 } from "../../../src/colour/difference.ts";
import type { TileStep } from "../../../src/records/archive.ts";
import { coat, fired, removed, resist, result, tile } from "../../checks/support.ts";
import {
  type Alone,
  alone,
  type Coloured,
  colouredCatalogue,
  grey,
  sootOf,
} from "./colour-support.ts";

describe("a glaze's colours", () => {
  test("stand by clay and fire, then by cone from cool to hot, then by coats", () => {
    const { onClays } = sootOf(
      [alone("A", { clay: "red" }), grey(50)],
      [alone("B", { cone: "10", atmosphere: "reduction" }), grey(50)],
      [alone("C", { cone: "10" }), grey(50)],
      [alone("D", { cone: "06", coats: 3 }), grey(50)],
      [alone("E", { cone: "06", coats: null }), grey(50)],
      [alone("F", { cone: "06", coats: 1 }), grey(50)],
      [alone("G", { loads: ["nowhere"] }), grey(50)],
      [alone("H", { clay: null }), grey(50)],
    );
    const told = onClays.map(({ clay, atmosphere, measured }) => [
      clay?.id ?? null,
      atmosphere,
      measured.map((one) => one.tile.id).join(),
    ]);
    expect(told).toEqual([
      ["buff", "oxidation", "F,D,E,C"],
      ["buff", "reduction", "B"],
      ["buff", null, "G"],
      ["red", "oxidation", "A"],
      [null, "oxidation", "H"],
    ]);
  });

  test("leave out tiles that were not measured, and those with another glaze besides", () => {
    const both = tile("B", [coat("soot"), coat("kelp"), fired("6-oxidation")], {
      clay: "buff",
      result: [result()],
    });
    const soot = sootOf([alone("A"), null], [both, grey(50)]);
    expect(soot.tiles).toEqual(["A", "B"]);
    expect(soot.onClays).toEqual([]);
    expect(soot.shownAs).toBeNull();
  });

  test("tell raku and wood from a fire that leaves nothing on the glaze", () => {
    const { onClays } = sootOf(
      [alone("A", { loads: ["raku"] }), grey(50)],
      [alone("B", { loads: ["wood"] }), grey(50)],
      [alone("C"), grey(50)],
    );
    expect(onClays.map(({ fire }) => fire).sort()).toEqual([null, "raku", "wood"].sort());
  });

  const anyTile = fc.record({
    clay: fc.constantFrom("buff", "red", null),
    cone: fc.constantFrom("06", "6", "10"),
    atmosphere: fc.constantFrom("oxidation" as const, "reduction" as const),
    coats: fc.constantFrom(1, 2, 3, null),
    coat: fc.constantFrom<NonNullable<Alone["coat"]>>({}, { cover: "dense" }, { where: ["top"] }),
  });
  property.prop([fc.array(anyTile, { maxLength: 12 })])(
    "hold every measured tile exactly once, with like tiles alone",
    (abouts) => {
      const tiles = abouts.map((about, i) => [alone(`T-${i}`, about), grey(40 + i)] as const);
      const measured = colouredCatalogue(tiles).tiles.flatMap((one) => measureAlone(one) ?? []);
      const groups = arrangeByClay(measured);
      const placed = groups.flatMap((group) => group.measured.map(({ tile: { id } }) => id));
      expect([...placed].sort()).toEqual(tiles.map(([{ id }]) => id).sort());
      for (const { clay, atmosphere, measured: own } of groups)
        for (const one of own) expect([one.clay, one.atmosphere]).toEqual([clay, atmosphere]);
    },
  );
});

describe("how a glaze lies", () => {
  function lieOf(...steps: readonly TileStep[]) {
    const made = tile("A", [...steps, fired("6-oxidation")], { clay: "buff", result: [result()] });
    const [first] = sootOf([made, grey(50)]).onClays;
    return [first?.measured[0]?.lie, first?.measured[0]?.coats];
  }

  test("is even where every layer goes all over, and their coats add up", () => {
    expect(lieOf(coat("soot", { coats: 2 }), coat("soot", { coats: 1 }))).toEqual(["even", 3]);
    expect(lieOf(coat("soot", { coats: 2 }), coat("soot", { coats: null }))).toEqual([
      "even",
      null,
    ]);
  });

  test("is uneven where a layer more lies on a part, and no number of coats is told", () => {
    expect(lieOf(coat("soot", { coats: 2 }), coat("soot", { where: ["left"] }))).toEqual([
      "uneven",
      null,
    ]);
  });

  test.each([
    ["an area alone", [coat("soot", { where: ["top"] })]],
    ["two areas of their own", [coat("soot", { where: ["left", "right"], coats: 2 })]],
    ["a cover", [coat("soot", { coats: null, cover: "dense" })]],
    ["dots", [coat("soot", { by: "dot" })]],
    ["a resist", [resist("wax", ["motif"]), coat("soot")]],
    ["a wiped part", [coat("soot"), removed("wipe", ["raised"])]],
  ] as const)("is in part with %s", (_, steps) => {
    expect(lieOf(...steps)).toEqual(["partial", null]);
  });

  test("is told of what came after everything was washed off", () => {
    const begun = [coat("soot", { where: ["top"] }), removed("all"), coat("soot", { coats: 2 })];
    expect(lieOf(...begun)).toEqual(["even", 2]);
  });

  test("a second glaze firing counts as fired again, one still to come does not", () => {
    const again = (loads: readonly string[]) =>
      sootOf([alone("A", { loads }), grey(50)]).onClays[0]?.measured[0]?.firedAgain;
    expect(again(["4-oxidation", "6-oxidation"])).toBe(true);
    expect(again(["6-oxidation", "to come"])).toBe(false);
    expect(again(["6-oxidation"])).toBe(false);
  });
});

describe("what the measurements say", () => {
  /** Three made alike, one from the next as far apart as `scatter` in lightness. */
  const alike = (scatter: number) =>
    [0, 1, 2].map(
      (i) => [alone(`T-${i}`, { glaze: "kelp" }), grey(50 + (i * scatter) / 2)] as const,
    );
  const findings = (...tiles: readonly Coloured[]) =>
    sootOf(...tiles, ...alike(1)).colourFindings.map(({ along, from, to, verdict, pairs }) => [
      along,
      `${from.tile.id} to ${to.tile.id}`,
      verdict,
      pairs,
    ]);

  test("a difference beyond what tiles made alike show means something, a smaller one nothing", () => {
    expect(
      findings([alone("A", { coats: 1 }), grey(30)], [alone("B", { coats: 3 }), grey(60)]),
    ).toEqual([["coats", "A to B", "apart", 1]]);
    expect(
      findings([alone("A", { coats: 1 }), grey(30)], [alone("B", { coats: 3 }), grey(31)]),
    ).toEqual([["coats", "A to B", "alike", 1]]);
  });

  test("nobody can say so where no two tiles were made alike", () => {
    const soot = sootOf([alone("A", { coats: 1 }), grey(30)], [alone("B", { coats: 3 }), grey(60)]);
    expect(soot.colourFindings.map(({ verdict }) => verdict)).toEqual(["unjudged"]);
    expect(soot.colourFindings[0]?.difference).toBe(differenceCiede2000(grey(30), grey(60)));
  });

  const somehow = { coat: { by: null } };

  /** Two that stand in one place, put on in a way that nobody wrote down. */
  const scattered = [
    [alone("B", { coats: 3, ...somehow }), grey(30)],
    [alone("C", { coats: 3, faults: ["crazing"], ...somehow }), grey(60)],
  ] as const;

  test("where tiles of one place differ as much, a difference means nothing, and they are named", () => {
    expect(findings([alone("A", { coats: 1, ...somehow }), grey(40)], ...scattered)).toEqual([
      ["coats", "A to B", "scattered", 1],
      ["nothing", "B to C", "apart", 1],
    ]);
  });

  test("a difference wider than theirs still means something", () => {
    expect(findings([alone("A", { coats: 1, ...somehow }), grey(90)], ...scattered)[0]).toEqual([
      "coats",
      "A to B",
      "apart",
      1,
    ]);
  });

  test("how a kiln cooled is a difference of its own, and never pooled with another way down", () => {
    const slow = [alone("B", { coats: 3, loads: ["6-slow"] }), grey(60)] as const;
    expect(findings([alone("A", { coats: 3 }), grey(30)], slow)).toEqual([
      ["cooling", "A to B", "apart", 1],
    ]);
    expect(findings([alone("A", { coats: 1 }), grey(30)], slow)).toEqual([]);
  });

  test("of coats and cones the ends are compared, of clays and airs every two", () => {
    const cones = (["4", "6", "8"] as const).map(
      (to, i) => [alone(to, { cone: to }), grey(30 + 15 * i)] as const,
    );
    expect(findings(...cones)).toEqual([["cone", "4 to 8", "apart", 1]]);
    const clays = (["buff", "red", "cream"] as const).map(
      (clay, i) => [alone(clay, { clay }), grey(30 + 15 * i)] as const,
    );
    expect(findings(...clays)).toEqual([
      ["clay", "buff to cream", "apart", 1],
      ["clay", "buff to red", "apart", 1],
      ["clay", "cream to red", "apart", 1],
    ]);
    expect(
      findings(
        [alone("A", { cone: "10" }), grey(30)],
        [alone("B", { cone: "10", atmosphere: "reduction" }), grey(60)],
      ),
    ).toEqual([["atmosphere", "A to B", "apart", 1]]);
  });

  test("of several such pairs on one clay the widest is told", () => {
    expect(
      findings(
        [alone("A", { coats: 1, cone: "4" }), grey(30)],
        [alone("B", { coats: 3, cone: "4" }), grey(50)],
        [alone("C", { coats: 1, cone: "6" }), grey(30)],
        [alone("D", { coats: 3, cone: "6" }), grey(70)],
      ),
    ).toContainEqual(["coats", "C to D", "apart", 2]);
  });

  test.each<[string, Alone]>([
    ["put on in another way", { coats: 3, coat: { by: "dip" } }],
    ["over another texture", { coats: 3, texture: "combed" }],
    ["whose coats nobody counted", { coats: null }],
    ["on a part alone", { coats: 3, coat: { where: ["top"] } }],
    ["fired again", { coats: 3, loads: ["4-oxidation", "6-oxidation"] }],
    ["on a clay that is not named", { coats: 3, clay: null }],
  ])("a tile %s is compared with none", (_, other) => {
    expect(findings([alone("A", { coats: 1 }), grey(30)], [alone("B", other), grey(60)])).toEqual(
      [],
    );
  });
});

describe("what changes most", () => {
  test.each([
    ["lighter", [50, 0, 0], [60, 0, 0]],
    ["darker", [50, 10, 0], [40, 12, 0]],
    ["stronger", [50, 10, 0], [52, 30, 0]],
    ["greyer", [50, 0, -30], [52, 0, -10]],
    ["hue", [50, 20, 0], [52, 0, 20]],
  ] as const)("is told as %s", (change, from, to) => {
    expect(mainChange({ lab: from }, { lab: to })).toBe(change);
  });
});

test("a clay's colour is the first word of it that is known", () => {
  expect(clayColour("Off-white, speckled brown")).toBe(clayColour("off-white"));
  expect(clayColour("grey, toasted brown in reduction")).toBe(clayColour("grey"));
  expect(clayColour("anyone's guess")).toBeNull();
  expect(clayColour(null)).toBeNull();
});

test("a clay's colour is never read out of the middle of a word", () => {
  expect(clayColour("Standard White")).toBe(clayColour("white"));
  expect(clayColour("as fired")).toBeNull();
  expect(clayColour("titanium-bearing, creamy")).toBeNull();
  expect(clayColour("Off white")).toBe(clayColour("off-white"));
  expect(clayColour("reddish")).toBe(clayColour("red"));
  expect(clayColour("grey-brown")).toBe(clayColour("grey"));
});
