/** What a set found out: told of the tiles that say so, and of none that were made otherwise. */
import { expect, test } from "vitest";
import { foundOutBy, lessons } from "../../src/catalogue/found-out.ts";
import type { CatalogueTile } from "../../src/catalogue/tiles.ts";
import type { Again, Fate } from "../../src/terms/choices.ts";
import { firedOn, foundOutSentence, restsOn } from "../../templates/words/tile/found-out.ts";
import { type Alone, alone, colouredCatalogue, grey } from "./colours/colour-support.ts";

interface Said extends Alone {
  readonly again?: Again;
  readonly fate?: Fate;
}

/** Tiles of one glaze alone, made alike unless said, with what their makers say of them. */
function foundOut(tiles: Readonly<Record<string, Said>>) {
  const made = Object.entries(tiles).map(([id, { again, fate, ...about }]) => {
    const tile = alone(id, about);
    const { result = [] } = tile.record;
    const said = result.map((each) => ({ ...each, again }));
    const record = { ...tile.record, ...(again && { result: said }), ...(fate && { fate }) };
    return [{ ...tile, record }, grey(50)] as const;
  });
  return foundOutBy(colouredCatalogue(made).tiles);
}

const codes = (tiles: readonly CatalogueTile[]) => tiles.map(({ id }) => id).join(" ");

const told = (tiles: Readonly<Record<string, Said>>) => {
  const found = foundOut(tiles);
  return Object.fromEntries(
    lessons.map((lesson) => [lesson, found[lesson].map(({ tiles: own }) => codes(own))]),
  );
};

test("a verdict is told by the tile that has it, the same glaze at another cone or on another clay apart", () => {
  expect(
    told({
      A: { again: "yes" },
      B: { again: "yes", cone: "10" },
      C: { again: "yes", clay: "red" },
      D: { again: "changed", coats: 3 },
      E: { again: "no", coats: 1 },
    }),
  ).toEqual({ repeat: ["A", "B", "C"], change: ["D"], avoid: ["E"] });
});

test("tiles that were made alike are one line, which tells of those that say otherwise", () => {
  const found = foundOut({ A: { again: "yes" }, B: { again: "no" }, C: { again: "yes" } });
  expect(found.repeat.map(({ tiles }) => codes(tiles))).toEqual(["A C"]);
  expect(found.avoid.map(({ tiles }) => codes(tiles))).toEqual(["B"]);
  const [line] = found.repeat;
  expect(line && restsOn(line)).toBe(
    "3 tiles made alike: surface not recorded on all; faults not recorded on all; again: yes on 2, again: no on 1.",
  );
});

test("where nobody wrote down how it was put on, no two tiles are told together", () => {
  const unknown = { again: "yes", coat: { by: null } } as const;
  expect(told({ A: unknown, B: unknown }).repeat).toEqual(["A", "B"]);
});

test("faults without a verdict and what came of a tile in the kiln are to be avoided; a lost tile says nothing", () => {
  expect(
    told({
      A: { faults: ["crawling"] },
      B: { again: "yes", fate: "stuck", coats: 1 },
      C: { again: "yes", fate: "broken", coats: 3 },
      D: { faults: ["crazing"], again: "yes", coats: 4 },
      E: { faults: ["none"], coats: 5 },
    }),
  ).toEqual({ repeat: ["C", "D"], change: [], avoid: ["A", "B"] });
});

test("a set of two results says so, and what its lines are true of", () => {
  expect(foundOutSentence({ told: 2 }, 5)).toBe(
    "Of 5 tiles, 2 say what came of them. Each line is true of the tiles it names: at another cone, on another clay or with other coats the same glaze is another thing.",
  );
  expect(foundOutSentence({ told: 1 }, 1)).toMatch(/^Of 1 tile, 1 says what came of it\. /u);
  const [line] = foundOut({ A: { again: "yes" } }).repeat;
  expect(line && restsOn(line)).toBe("One tile.");
  expect(line && firedOn(line.tiles[0] as CatalogueTile)).toBe("Cone 6, oxidation, on Buff.");
});
