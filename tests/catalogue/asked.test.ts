/** What a set asked, counted and said no surer than it is. */
import { describe, expect, test } from "vitest";
import { askedAmong } from "../../src/catalogue/asked.ts";
import { didSentence, questionWords } from "../../templates/words/tile/asked.ts";
import { alone, colouredCatalogue, grey } from "./colours/colour-support.ts";

const trust = { difference: 5, tiles: 4, kinds: 2 };

describe("a set of tiles", () => {
  test("asks what differs while the rest is the same, what most take part in first", () => {
    const { tiles } = colouredCatalogue([
      [alone("A", { cone: "6" }), grey(50)],
      [alone("B", { cone: "10" }), grey(80)],
      [alone("C", { cone: "4" }), grey(51)],
      [alone("D", { cone: "6", coats: 3 }), grey(50)],
    ]);
    const asked = askedAmong(tiles, trust);
    expect(asked.map(({ aspect }) => questionWords(aspect))).toEqual(["how hot", "how many coats"]);
    const [hot] = asked;
    expect(hot?.values).toEqual(["4", "6", "10"]);
    expect(hot?.rows.map(({ cells }) => cells.map((cell) => cell.map(({ id }) => id)))).toEqual([
      [["C"], ["A"], ["B"]],
    ]);
    expect(hot?.did).toMatchObject({ comparisons: 2, colour: { changed: 1, of: 2 } });
  });

  test("says what changed between neighbours, out of those that say what came out", () => {
    const { tiles } = colouredCatalogue([
      [alone("A", { faults: ["none"] }), grey(50)],
      [alone("B", { coats: 3, faults: ["crawling"] }), grey(52)],
    ]);
    const [asked] = askedAmong(tiles, trust);
    expect(asked && didSentence(asked)).toBe(
      "From one to the next, the faults changed in 1 of 1. The colour (as near as tiles made alike come here) stayed the same. That is one comparison: it may be chance.",
    );
  });

  test("says what nobody wrote down", () => {
    const { tiles } = colouredCatalogue([
      [alone("A", { coat: { by: null } }), null],
      [alone("B", { coats: 3, coat: { by: null } }), null],
    ]);
    const [asked] = askedAmong(tiles, null);
    expect(asked && didSentence(asked)).toBe(
      "Nobody wrote down what came of both. That is one comparison: it may be chance. Not recorded: how it was put on.",
    );
  });

  test("asks nothing where all of it differs, or none", () => {
    const { tiles } = colouredCatalogue([
      [alone("A"), grey(50)],
      [alone("B"), grey(50)],
      [alone("C", { coats: 3, cone: "10" }), grey(50)],
    ]);
    expect(askedAmong(tiles, trust)).toEqual([]);
  });
});
