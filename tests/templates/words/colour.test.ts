import { describe, expect, it } from "vitest";
import { roundDifference, trustSentence } from "../../../templates/words/colour.ts";

describe("how far a colour difference can be trusted", () => {
  it("is said with what it rests on", () => {
    expect(trustSentence({ difference: 6.6, tiles: 12, kinds: 5 })).toBe(
      "Tiles made and fired alike were measured up to 7 apart here (CIEDE2000; 12 tiles of 5 kinds): a smaller difference means nothing.",
    );
  });

  it("is said to be unknown where no tile was made twice", () => {
    expect(trustSentence(null)).toContain("nobody can say");
  });

  it("is given in whole units, and never as nothing where there is something", () => {
    expect([0, 0.3, 1.4, 6.6].map(roundDifference)).toEqual(["0", "less than 1", "1", "7"]);
  });
});
