import { describe, expect, test } from "vitest";
import { differenceCiede2000 } from "../../../src/colour/difference.ts";
import { studentT95 } from "../../../src/colour/trust.ts";
import { groupAlike } from "../../../src/likeness/alike.ts";
import type { CoatStep, TileStep } from "../../../src/records/archive.ts";
import type { FiringRecord } from "../../../src/records/firing.ts";
import { clay, coat, cone, fired, firing, glaze, result, tile } from "../../checks/support.ts";
import { measuredCatalogue } from "../measured.ts";

const glazes = [glaze("soot"), glaze("chalk")];
const clays = [clay("buff"), clay("white")];
const schedule = [{ to: 1215, rate: 60 }] as unknown as FiringRecord["schedule"];
const slow = [
  { to: 1200, rate: 60 },
  { to: 900, rate: -50 },
] as unknown as FiringRecord["schedule"];
const atmosphere = "oxidation";
const firings = [
  firing("b-1", { kind: "bisque", cone: cone("06") }),
  firing("g-1", { atmosphere, cone: cone("6"), kiln: "Drum", schedule }),
  firing("g-2", { atmosphere, cone: cone("6"), kiln: "Drum", schedule }),
  firing("g-slow", { atmosphere, cone: cone("6"), kiln: "Drum", schedule: slow }),
  firing("g-other", { atmosphere, cone: cone("6"), kiln: "Wardrobe", schedule }),
  firing("g-cool", { atmosphere, cone: cone("5"), kiln: "Drum", schedule }),
  firing("g-unwritten", { cone: cone("6"), kiln: "Drum" }),
  firing("g-unwritten-too", { cone: cone("6"), kiln: "Drum" }),
];

type Steps = readonly TileStep[];

function tested(code: string, steps: Steps, about: Parameters<typeof tile>[2] = {}) {
  return tile(code, steps, { clay: "buff", result: [result()], ...about });
}

function replicatesOf(...tiles: readonly ReturnType<typeof tile>[]) {
  const { tiles: found } = measuredCatalogue({ glazes, clays, firings, tiles }, {});
  return groupAlike(
    found.filter(({ results }) => results.length > 0),
    ({ makeUp }) => makeUp,
  )
    .map((group) => group.map(({ id }) => id))
    .filter((group) => group.length > 1);
}

const steps = (load: string, coated: Partial<CoatStep> = {}): Steps => [
  fired("b-1", "bisque"),
  coat("soot", { coats: 2, by: "brush", ...coated }),
  fired(load),
];

describe("tiles are made and fired alike", () => {
  test("where coats, clay, cone, air and cooling are the same, whatever the load, kiln, maker and set", () => {
    expect(
      replicatesOf(
        tested("A", steps("g-1")),
        tested("B", [...steps("g-2").slice(0, 2), { ...fired("g-2"), shelf: "top" }]),
        tested("D", steps("g-other")),
        tile("C", steps("g-1"), { clay: "buff", result: [result()] }, { maker: "m01", set: null }),
      ),
    ).toEqual([["A", "B", "C", "D"]]);
  });

  const unlike: Readonly<Record<string, ReturnType<typeof tile>>> = {
    "another glaze": tested("B", [
      fired("b-1", "bisque"),
      coat("chalk", { coats: 2, by: "brush" }),
      fired("g-1"),
    ]),
    "more coats": tested("B", steps("g-1", { coats: 3 })),
    "another way of putting it on": tested("B", steps("g-1", { by: "dip" })),
    "another place": tested("B", steps("g-1", { where: ["top"] })),
    "another clay": tested("B", steps("g-1"), { clay: "white" }),
    "another texture": tested("B", steps("g-1"), { texture: "combed" }),
    "another shape": tested("B", steps("g-1"), { shape: "ring" }),
    "another cone": tested("B", steps("g-cool")),
    "another way down from the same cone": tested("B", steps("g-slow")),
    "no bisque": tested("B", steps("g-1").slice(1)),
    "no result": tile("B", steps("g-1"), { clay: "buff" }),
  };
  test.each(Object.entries(unlike))("but not with %s", (_, other) => {
    expect(replicatesOf(tested("A", steps("g-1")), other)).toEqual([]);
  });

  test("but not where nobody counted the coats, or wrote down the load", () => {
    const uncounted = steps("g-1", { coats: null });
    const somewhere = [...steps("g-1").slice(0, 2), fired(null)];
    for (const unknown of [uncounted, somewhere])
      expect(replicatesOf(tested("A", unknown), tested("B", unknown))).toEqual([]);
  });

  test("where nobody wrote down air and cooling, in one load and in no other", () => {
    expect(
      replicatesOf(
        tested("A", steps("g-unwritten")),
        tested("B", steps("g-unwritten")),
        tested("C", steps("g-unwritten-too")),
      ),
    ).toEqual([["A", "B"]]);
  });
});

describe("the colour difference that means nothing in a studio", () => {
  const tiles = [
    tested("A", steps("g-1")),
    tested("B", steps("g-2")),
    tested("C", steps("g-slow")),
    tested("D", steps("g-slow")),
    tested("E", steps("g-slow")),
  ];
  const labs = { A: [40, 0, 0], B: [42, 0, 0], C: [60, 10, 0], D: [60, 10, 0] } as const;

  test("is worked out from tiles made alike, and says how many it rests on", () => {
    const { trust } = measuredCatalogue({ glazes, clays, firings, tiles }, labs);
    const pair = differenceCiede2000(labs.A, labs.B);
    expect(trust).toEqual({
      difference: expect.closeTo(studentT95(2) * pair * Math.sqrt(1 / 2), 6),
      tiles: 4,
      kinds: 2,
    });
  });

  test("cannot be told where no two measured tiles are alike", () => {
    const { A } = labs;
    expect(measuredCatalogue({ glazes, clays, firings, tiles }, { A }).trust).toBeNull();
  });
});
