/** What came of one change. */
import { describe, expect, test } from "vitest";
import { apartFinder, besideEachOther, twoApartOf } from "../../src/catalogue/apart.ts";
import type { Findings } from "../../src/catalogue/findings.ts";
import { makeCatalogue } from "../../src/catalogue/make.ts";
import type { Archive, Tile, TileStep } from "../../src/records/archive.ts";
import type { Result } from "../../src/records/tile.ts";
import {
  changeSentence,
  tallySentence,
  twoChangesCaution,
  twoChangesSentence,
} from "../../templates/words/tile/change.ts";
import {
  archive,
  clay,
  coat,
  fired,
  glaze,
  removed,
  resist,
  set,
  tile,
} from "../checks/support.ts";
import { firings } from "../likeness/make-ups.ts";

const findings: Findings = {
  pictures: new Map(),
  chemistry: new Map(),
  heats: new Map(),
  notes: new Map(),
  builtInMaterials: [],
};

const glazes = ["soot", "chalk"].map((id) => glaze(id, { name: id === "soot" ? "Soot" : "Chalk" }));
const clays = [clay("buff", { name: "Buff" }), clay("dark", { name: "Dark" })];
const satin = { surface: ["satin"], faults: ["none"], again: "yes" } as Result;

const soot = coat("soot", { coats: 2, by: "brush" });
const chalk = coat("chalk", { coats: 1, by: "brush" });

/** A tile with a result, of buff clay. */
function made(
  id: string,
  steps: readonly TileStep[],
  about: Parameters<typeof tile>[2] = {},
): Tile {
  return tile(id, [fired("b-1", "bisque"), ...steps], { clay: "buff", result: [satin], ...about });
}

function catalogueOf(tiles: readonly Tile[], parts: Partial<Parameters<typeof archive>[0]> = {}) {
  return makeCatalogue(archive({ glazes, clays, firings, tiles, ...parts }), findings);
}

/** What is said of the second tile on the page of the first. */
function sentence(
  from: readonly TileStep[],
  to: readonly TileStep[],
  about = {},
): string | undefined {
  const catalogue = catalogueOf([made("A", from), made("B", to, about)]);
  const [a] = catalogue.tiles;
  const [apart] = a ? apartFinder(catalogue)(a) : [];
  return a && apart && changeSentence(a, apart);
}

describe("one change is said in words", () => {
  const plain = [soot, fired("g-1")];
  const at = (load: string): TileStep[] => [soot, fired(load)];

  test.each<[string, readonly TileStep[], readonly TileStep[], object?]>([
    ["The same again.", plain, plain],
    ["The same, one more coat of Soot: 3, not 2.", plain, [{ ...soot, coats: 3 }, fired("g-1")]],
    ["The same, one coat fewer of Soot: 1, not 2.", plain, [{ ...soot, coats: 1 }, fired("g-1")]],
    ["The same, 2 more coats of Soot: 4, not 2.", plain, [{ ...soot, coats: 4 }, fired("g-1")]],
    ["The same, Soot dipped, not brushed.", plain, [{ ...soot, by: "dip" }, fired("g-1")]],
    [
      "The same, Soot at the top, not all over.",
      plain,
      [{ ...soot, where: ["top"] }, fired("g-1")],
    ],
    [
      "The same, Soot put on thick, not as usual.",
      plain,
      [{ ...soot, thickness: "thick" }, fired("g-1")],
    ],
    [
      "The same, Soot put on wet on wet, not touch-dry.",
      plain,
      [{ ...soot, dried: "wet-on-wet" }, fired("g-1")],
    ],
    [
      "The same, Soot dipped for 6 seconds, not for 1 second.",
      [{ ...soot, by: "dip", seconds: 1 }],
      [{ ...soot, by: "dip", seconds: 6 }],
    ],
    [
      "The same, with Chalk instead of Soot.",
      plain,
      [{ ...soot, glazes: ["chalk"] }, fired("g-1")],
    ],
    [
      "The same, Soot as a touch-up, not as a layer.",
      plain,
      [{ ...soot, touchUp: true }, fired("g-1")],
    ],
    ["The same, with one coat of Chalk as well.", plain, [soot, chalk, fired("g-1")]],
    ["The same, without one coat of Chalk.", [soot, chalk, fired("g-1")], plain],
    ["The same, without wax resist.", [resist("wax"), ...plain], plain],
    [
      "The same, with latex resist instead of wax resist.",
      [resist("wax"), ...plain],
      [resist("latex"), ...plain],
    ],
    [
      "The same, with scraping instead of wiping.",
      [removed("wipe"), ...plain],
      [removed("scrape"), ...plain],
    ],
    ["The same, the other way round: Soot over Chalk.", [soot, chalk], [chalk, soot]],
    [
      "The same, in another order: Chalk, then wax resist, then Soot.",
      [soot, resist("wax"), chalk],
      [chalk, resist("wax"), soot],
    ],
    ["The same, cooled slowly, not left to cool.", plain, at("g-slow")],
    ["The same, left to cool, not slowly.", at("g-slow"), plain],
    ["The same, fired in reduction, not in oxidation.", plain, at("g-red")],
    ["The same, fired with salt, not where no ash or salt reaches it.", plain, at("g-salt")],
    [
      "The same, fired to cone 5, not cone 6.",
      plain,
      [soot, { ...fired("g-cones"), shelf: "top" }],
    ],
    ["The same, on Dark, not Buff.", plain, plain, { clay: "dark" }],
    ["The same, combed, not smooth.", plain, plain, { texture: "combed" }],
    ["The same, on a ring, not lying flat.", plain, plain, { shape: "ring" }],
  ])("%s", (words, from, to, about = {}) => {
    expect(sentence(from, to, about)).toBe(words);
  });
});

test("only what has a result is set beside anything, and what differs besides is named", () => {
  const catalogue = catalogueOf([
    made("A", [soot, fired("g-1")], { glazed: "2026-10-01" as never }),
    made("B", [soot, fired("g-2")], { glazed: "2026-10-08" as never }),
    tile("C", [fired("b-1", "bisque"), soot, fired("g-1")], { clay: "buff" }),
  ]);
  const [a, b, c] = catalogue.tiles;
  const find = apartFinder(catalogue);
  expect(a && find(a)).toMatchObject([{ tile: { id: "B" }, difference: "none" }]);
  expect(a && b && besideEachOther(a, b)).toMatchObject({
    uncontrolled: ["day", "load"],
    unknown: [],
  });
  expect(c && find(c)).toEqual([]);
});

test("what nobody wrote down of two tiles is named where they are compared", () => {
  const unwritten = { ...soot, by: null };
  const catalogue = catalogueOf([
    made("A", [unwritten, fired("g-1")]),
    made("B", [{ ...unwritten, coats: 3 }, fired("g-1")]),
  ]);
  const [a, b] = catalogue.tiles;
  expect(a && apartFinder(catalogue)(a)).toMatchObject([{ difference: "coats" }]);
  expect(a && b && besideEachOther(a, b).unknown).toEqual(["way"]);
});

test("makers who are not shown are not told apart", () => {
  const makers = {
    m1: { name: "Wren Ashdown", shown: "yes" },
    m2: { name: "Bram Tolliver", shown: "yes" },
    m3: { name: "Hesper Lund", shown: "no" },
  } as unknown as NonNullable<Archive["studio"]["makers"]>;
  const base = archive({
    glazes,
    clays,
    firings,
    sets: [set("S")],
    tiles: ["m1", "m2", "m3"].map((maker, i) => ({ ...made(`T-${i}`, [soot]), maker })),
  });
  const catalogue = makeCatalogue({ ...base, studio: { ...base.studio, makers } }, findings);
  const [a, , c] = catalogue.tiles;
  const told = (from: typeof a) =>
    from &&
    apartFinder(catalogue)(from).map(
      ({ tile: other }) => besideEachOther(from, other).uncontrolled,
    );
  expect(told(a)).toEqual([["maker"], []]);
  expect(told(c)).toEqual([[], []]);
});

test("like tiles say how often they came out alike", () => {
  const gloss = { surface: ["gloss"], faults: ["crawling"], again: "no" } as Result;
  const { tiles } = catalogueOf([
    made("A", [soot]),
    made("B", [soot], { result: [gloss] }),
    made("C", [soot]),
  ]);
  expect(tallySentence(tiles)).toBe(
    "3 tiles, this one among them: satin on 2, gloss on 1; no fault on 2, crawling on 1; again: yes on 2, again: no on 1.",
  );
  expect(tallySentence(tiles.slice(0, 1))).toBe(
    "1 tile, this one among them: satin on all; no fault on all; again: yes on all.",
  );
});

describe("two changes apart", () => {
  const plain = [soot, fired("g-1")];

  test("both are named, and the caution says that neither can be given the credit", () => {
    const catalogue = catalogueOf([
      made("A", plain),
      made("B", [{ ...soot, coats: 3 }, fired("g-slow")]),
      made("C", [{ ...soot, coats: 3 }, fired("g-slow")], { texture: "combed" }),
    ]);
    const [a] = catalogue.tiles;
    const found = a ? twoApartOf(catalogue)(a) : [];
    expect(found.map(({ tile: { id }, differences }) => [id, differences])).toEqual([
      ["B", ["coats", "cooling"]],
    ]);
    expect(a && found[0] && twoChangesSentence(a, found[0])).toBe(
      "The same but for two things: one more coat of Soot: 3, not 2; cooled slowly, not left to cool.",
    );
    expect(twoChangesCaution).toBe(
      "Two things differ on each of these, so nobody can say which of them made the difference.",
    );
  });

  test("are no tiles of two other glazes, which are another coat stack", () => {
    const catalogue = catalogueOf([
      made("A", [soot, chalk, fired("g-1")]),
      made("B", [{ ...soot, glazes: ["kelp"] }, { ...chalk, glazes: ["mist"] }, fired("g-1")]),
    ]);
    const [a] = catalogue.tiles;
    expect(a && twoApartOf(catalogue)(a)).toEqual([]);
  });
});
