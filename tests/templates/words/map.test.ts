import { describe, expect, test } from "vitest";
import { ratioRegion } from "../../../src/chemistry/stull.ts";
import type { Surface } from "../../../src/terms/choices.ts";
import {
  boundarySentences,
  markKey,
  markWords,
  seenSentence,
} from "../../../templates/words/mixing/map.ts";

const mark = (name: string, ratio: number | null, surface: Surface[], disagrees = false) => ({
  glaze: { id: name, name, url: `glazes/${name}.html` },
  ratio,
  glass: 3,
  region: ratio === null ? null : ratioRegion(ratio),
  surface,
  disagrees,
  isIncomplete: false,
  colour: "#888888",
});

describe("what a map says", () => {
  const marks = [
    mark("Eider", 6.5, ["matte", "satin"], true),
    mark("Heron", 8.5, ["gloss"]),
    mark("Moss", 8, ["gloss"]),
    mark("Peat", 5.5, ["satin"]),
    mark("Ash", 4, []),
  ];

  test("counts what came out on each side of the lines, and names what came out otherwise", () => {
    expect(boundarySentences(marks)).toEqual([
      "From 5 to 6 the lines say semi-matte; here: 1 satin.",
      "From 6 up the lines say gloss; here: 2 gloss, 1 matte and satin.",
      "1 of 4 glazes came out otherwise than the lines say, at least once: Eider. Trust the tiles.",
    ]);
    expect(boundarySentences(marks.slice(1))).toContain("All 3 glazes came out as the lines say.");
    expect(boundarySentences([mark("Ash", 4, [])])).toEqual([
      "No surface is recorded yet to compare with them.",
    ]);
  });

  test("tells where each surface was seen", () => {
    expect(seenSentence(marks)).toBe(
      "Seen here: gloss from 8.0 to 8.5, satin from 5.5 to 6.5, matte at 6.5.",
    );
    expect(seenSentence([mark("Ash", 4, [])])).toBe("");
  });

  test("reads a mark out with its figures and its caution", () => {
    const one = { ...mark("Eider", 6.5, ["matte"]), number: 3, loud: "⚠ holds lead" };
    expect(markWords({ ...one, isIncomplete: true })).toBe(
      "3, Eider: silica to alumina 6.5, glass formers 3.00; matte; analysis incomplete; ⚠ holds lead",
    );
  });

  test("explains a dashed outline, a bare mark and a missing ratio only where they are", () => {
    expect(markKey(marks)).not.toMatch(/dashed|Without/u);
    const odd = { ...mark("Ash", null, []), isIncomplete: true, colour: null };
    expect(markKey([odd])).toMatch(
      / A mark without colour was not measured\. A dashed outline: an analysis that it rests on does not add up, or leaves something out\. Without alumina there is no ratio: Ash is only in the table\.$/u,
    );
  });
});
