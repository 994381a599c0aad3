import { describe, expect, test } from "vitest";
import { familiesOnTile, largeColours } from "../../src/colour/large-colours.ts";
import { type ColourName, families } from "../../src/colour/name.ts";
import { linearToOklab } from "../../src/colour/oklab.ts";
import { hexToLinear } from "../../src/colour/srgb.ts";
import { tradeWords, tradeWordsFor } from "../../src/colour/trade-words.ts";
import { metals } from "../../src/terms/metals.ts";

const wordsFor = (hex: string) => tradeWordsFor(linearToOklab(hexToLinear(hex)));

describe("the large colours of a tile", () => {
  test("are each that covers a fifth of it, never the mean, which is nowhere on it", () => {
    const islands = {
      hex: "#80808a",
      palette: [
        { hex: "#161514", share: 0.55 },
        { hex: "#f6f4ee", share: 0.38 },
        { hex: "#9a2a20", share: 0.07 },
      ],
    };
    expect(familiesOnTile(islands)).toEqual(["black", "white"]);
    expect(largeColours(islands).map(({ hex }) => hex)).toEqual(["#161514", "#f6f4ee"]);
  });

  test("are at least the largest, and where there is no palette the mean", () => {
    const shares = [0.19, 0.18, 0.17, 0.16, 0.15, 0.15];
    const palette = shares.map((share) => ({ hex: "#1d3f8a", share }));
    expect(largeColours({ hex: "#1d3f8a", palette })).toHaveLength(1);
    expect(familiesOnTile({ hex: "#1d3f8a", palette: [] })).toEqual(["blue"]);
  });
});

describe("words of the trade", () => {
  /** Common practice, no source. */
  test.each([
    ["teal", "#1f7a7a"],
    ["turquoise", "#38b2ac"],
    ["celadon", "#a8c3a8"],
    ["oxblood", "#6b1a1c"],
    ["honey", "#c68e17"],
    ["navy", "#16264a"],
    ["cobalt", "#1f3fa0"],
    ["buff", "#d3c69c"],
    ["moss", "#5a6b34"],
    ["rust", "#a44a1e"],
    ["chocolate", "#3e2417"],
  ])("find what a potter means by %s", (word, hex) => {
    expect(wordsFor(hex)).toContain(word);
  });

  test("do not find what has another hue, or is far darker or paler", () => {
    expect(wordsFor("#a03030")).not.toContain("teal");
    expect(wordsFor("#dff5f2")).not.toContain("teal");
    expect(wordsFor("#dfe8f7")).not.toContain("navy");
  });

  test("stand each once, in the order of the alphabet, for families that there are", () => {
    const words = tradeWords.map(({ word }) => word);
    expect(words).toEqual([...new Set(words)].sort());
    const meant = new Set(tradeWords.flatMap(({ families: of }) => of));
    expect([...meant].filter((name: ColourName) => !families.includes(name))).toEqual([]);
  });

  test("stand in the docs with what they mean", async () => {
    const span = (of: readonly [number, number] | undefined) =>
      of === undefined ? "any" : `${of[0]} to ${of[1]}`;
    const rows = tradeWords.map(
      ({ word, families: of, lightness, strength }) =>
        `| ${word} | ${of.join(", ")} | ${span(lightness)} | ${span(strength)} |`,
    );
    const metalRows = metals.map(
      ({ words, oxides, from }) => `| ${words.join(", ")} | ${oxides.join(", ")} | ${from} |`,
    );
    const page = [
      "# Words for colours, and for metals",
      "",
      `A tile is found under the families that people would put its large colours into: ${families.join(", ")}.`,
      "The search finds it by these narrower words as well. What they mean here is common practice, no",
      "source. Lightness and strength (chroma) are those of OKLab, from 0 to 1. This page is written from",
      "`src/colour/trade-words.ts` and `src/terms/metals.ts` (`npm test -- -u`).",
      "",
      "| word | families | lightness | strength |",
      "|---|---|---|---|",
      ...rows,
      "",
      "A glaze with a recipe, and each tile with it, is found by the names of the metals in it. Less than",
      "this, in per cent of the fired glaze, is a trace that clays and feldspars bring along (common",
      "practice, no source); chemistry and cautions count it all the same.",
      "",
      "| words | oxides | from |",
      "|---|---|---|",
      ...metalRows,
      "",
    ].join("\n");
    await expect(page).toMatchFileSnapshot("../../docs/colours.md");
  });
});
