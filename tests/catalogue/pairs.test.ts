/** Two glazes on each other: set out side by side, and what changing their order did. */
import { fc, test as property } from "@fast-check/vitest";
import { describe, expect, test } from "vitest";
import { circumstanceKey, circumstanceOf } from "../../src/catalogue/circumstance.ts";
import { makeCatalogue } from "../../src/catalogue/make.ts";
import { orderOf } from "../../src/catalogue/pairs-order.ts";
import { pairTable } from "../../src/catalogue/pairs-table.ts";
import type { Catalogue } from "../../src/catalogue/types.ts";
import { makeUpDifferences } from "../../src/likeness/differences.ts";
import type { Tile, TileStep } from "../../src/records/archive.ts";
import type { Result } from "../../src/records/tile.ts";
import { onTopSentence, orderSentence } from "../../templates/words/glaze/pair.ts";
import { archive, clay, coat, fired, glaze, tile } from "../checks/support.ts";
import { anyFamily, anyTile, firings, makeUp } from "../likeness/make-ups.ts";

const glazes = ["soot", "chalk"].map((id) => glaze(id, { name: id === "soot" ? "Soot" : "Chalk" }));
const clays = [clay("buff", { name: "Buff" }), clay("dark", { name: "Dark" })];
const names = { over: "Soot", under: "Chalk" };

function catalogueOf(tiles: readonly Tile[]): Catalogue {
  const none = { pictures: new Map(), chemistry: new Map(), heats: new Map(), notes: new Map() };
  return makeCatalogue(archive({ glazes, clays, firings, tiles }), {
    ...none,
    builtInMaterials: [],
  });
}

/** A pair of a catalogue, and the tiles that have it the other way round. */
function pairOf(catalogue: Catalogue, over: string) {
  const pair = catalogue.pairs.find((each) => each.over.id === over);
  const reverse = catalogue.pairs.find((each) => each.over.id !== over);
  return { pair, reversed: reverse?.tiles ?? [] };
}

const [soot, chalk] = [coat("soot", { coats: 2, by: "brush" }), coat("chalk", { by: "brush" })];
const onChalk = [chalk, soot, fired("g-1")];
const onSoot = [soot, chalk, fired("g-1")];
const saw = (about: object) => ({ clay: "buff", result: [about as Result] });

function orderSaid(...tiles: readonly Tile[]): string {
  const catalogue = catalogueOf(tiles);
  const { pair, reversed } = pairOf(catalogue, "soot");
  if (!pair) throw new Error("No tile has soot over chalk");
  return orderSentence(orderOf(catalogue, pair, reversed), names, reversed.length);
}

describe("what changing the order did", () => {
  test("is told of two tiles that differ in nothing else, as strongly as one comparison allows", () => {
    const tiles = [
      tile("A", onChalk, saw({ surface: ["gloss"], faults: ["running"], run: 24, again: "no" })),
      tile("B", onSoot, saw({ surface: ["matte"], faults: ["none"], run: 2 })),
    ];
    expect(orderSaid(...tiles)).toBe(
      "One tile of each order, alike in all else that was written down: it may be chance.",
    );
    const [a] = catalogueOf(tiles).tiles;
    expect(a && onTopSentence("Soot", a)).toBe(
      "Soot on top: gloss; fault: running; ran 24\u00a0mm. Again: no.",
    );
  });

  test("counts several, and says what came out the same", () => {
    const [gloss, matte] = [
      saw({ surface: ["gloss"], run: 8 }),
      saw({ surface: ["matte"], run: 6 }),
    ];
    const tiles = [tile("A", onChalk, gloss), tile("B", onSoot, matte), tile("C", onSoot, matte)];
    expect(orderSaid(...tiles)).toBe(
      "Where only the order differs, the surface changed in 2 of 2. How far it ran stayed the same. That is 2 comparisons: a hint, not a rule.",
    );
  });

  test("is not known where something else differs, and that is named", () => {
    const other = { ...saw({ surface: ["matte"] }), clay: "dark" };
    const thin = [{ ...soot, coats: 1 }, chalk, fired("g-slow")];
    expect(orderSaid(tile("A", onChalk, saw({ surface: ["gloss"] })), tile("B", thin, other))).toBe(
      "Not known: no two tiles differ in the order alone. The nearest are A and B, but they also differ in the clay, how many coats and how the kiln cooled.",
    );
  });

  test("is not known where one says what the other leaves out", () => {
    const uncounted = [{ ...soot, coats: null }, chalk, fired("g-1")];
    const gloss = saw({ surface: ["gloss"] });
    expect(orderSaid(tile("A", onChalk, gloss), tile("B", uncounted, gloss))).toBe(
      "Not known: no two tiles differ in the order alone. The nearest are A and B, but they do not both say how many coats.",
    );
  });

  test("is not known where nobody tried the other way round", () => {
    expect(orderSaid(tile("A", onChalk, saw({ surface: ["gloss"] })))).toBe(
      "Not known: Chalk over Soot has not been tested yet.",
    );
  });
});

/** Tiles of few steps and the like of them, on two clays, flat and upright, with a result each. */
const anyTiles = anyFamily.chain((family) =>
  fc
    .array(
      fc.record({
        clay: fc.constantFrom("buff", "buff", "dark"),
        shape: fc.constantFrom("flat" as const, "upright" as const),
        run: fc.constantFrom(0, 3, 24),
      }),
      { minLength: family.length, maxLength: family.length },
    )
    .map((about) =>
      family.map(({ steps }, i) => {
        const { clay: on = "buff", shape = "flat", run = 0 } = about[i] ?? {};
        return tile(`T-${i}`, steps, { clay: on, shape, result: [{ run } as Result] });
      }),
    ),
);

describe("for any tiles", () => {
  property.prop([anyTiles])("what the order did is the same seen from either side", (tiles) => {
    const catalogue = catalogueOf(tiles);
    const [one, other] = [pairOf(catalogue, "soot"), pairOf(catalogue, "chalk")];
    if (!one.pair || !other.pair) return;
    const codes = (order: ReturnType<typeof orderOf>) =>
      order.swaps.map(({ tile: a, other: b }) => [a.id, b.id]);
    const forth = codes(orderOf(catalogue, one.pair, one.reversed));
    const back = codes(orderOf(catalogue, other.pair, other.reversed));
    expect(back.map(([a, b]) => `${b} ${a}`).sort()).toEqual(
      forth.map(([a, b]) => `${a} ${b}`).sort(),
    );
    const differ = forth.map(([a, b]) => {
      const [tileA, tileB] = [a, b].map((id) => catalogue.tiles.find((each) => each.id === id));
      return tileA && tileB && makeUpDifferences(tileA.makeUp, tileB.makeUp);
    });
    for (const nothing of differ) expect(nothing).toEqual({ differ: [], unknown: [] });
  });

  property.prop([anyTiles])(
    "a table has every tile of a pair once, and none beside one of another clay, fire or shape",
    (tiles) => {
      const catalogue = catalogueOf(tiles);
      for (const pair of catalogue.pairs) {
        const { reversed } = pairOf(catalogue, pair.over.id);
        const table = pairTable(catalogue, pair, reversed);
        const rows = table.flatMap((each) => each.rows);
        const all = (of: "asNamed" | "reversed") => rows.flatMap((row) => row[of]);
        expect(
          all("asNamed")
            .map(({ id }) => id)
            .sort(),
        ).toEqual([...pair.tiles].sort());
        expect(
          all("reversed")
            .map(({ id }) => id)
            .sort(),
        ).toEqual([...reversed].sort());
        for (const { circumstance, rows: alike } of table) {
          const here = alike.flatMap(({ asNamed, reversed: other, overAlone, underAlone }) => [
            ...[...asNamed, ...other, ...overAlone.here, ...underAlone.here],
          ]);
          expect(new Set(here.map(circumstanceKey)).size).toBe(1);
          for (const one of here) expect(circumstanceOf(one)).toEqual(circumstance);
        }
      }
    },
  );

  property.prop([anyTile, anyTile])("differences are the same both ways", (a, b) => {
    const [there, back] = [
      [a, b],
      [b, a],
    ].map(([one, other]) =>
      one && other ? makeUpDifferences(makeUp(one), makeUp(other)) : undefined,
    );
    expect(new Set(there?.differ)).toEqual(new Set(back?.differ));
    expect(new Set(there?.unknown)).toEqual(new Set(back?.unknown));
  });

  property.prop([anyTile, fc.nat()])("no order of steps makes a difference", (one, seed) => {
    const turned = one.steps.map((_, i) => one.steps[(i + seed) % one.steps.length]) as TileStep[];
    const [a, b] = [makeUp(one), makeUp({ ...one, steps: turned })];
    if (a.steps === b.steps && isEachStepOnce(one.steps))
      expect(makeUpDifferences(a, b)).toEqual({ differ: [], unknown: [] });
  });
});

/** Which of two layers of one glaze is which, nobody can tell. */
function isEachStepOnce(steps: readonly TileStep[]): boolean {
  const kinds = steps.map((step) => (step.step === "coat" ? step.glazes.join() : step.step));
  return new Set(kinds).size === kinds.length;
}
