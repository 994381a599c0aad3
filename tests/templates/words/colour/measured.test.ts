import { describe, expect, it } from "vitest";
import { roundDifference } from "../../../../src/colour/difference.ts";
import type { MeasuredColour } from "../../../../src/colour/measure.ts";
import {
  colourSentence,
  spreadSentences,
  trustSentence,
} from "../../../../templates/words/colour/measured.ts";

describe("how far a colour difference can be trusted", () => {
  it("is said with what it rests on", () => {
    expect(trustSentence({ difference: 6.6, tiles: 12, kinds: 5 })).toBe(
      "Tiles made and fired alike were measured up to 7 apart here (CIEDE2000; 12 tiles of 5 kinds), so a smaller difference means nothing.",
    );
  });

  it("is said to be unknown where no tile was made twice", () => {
    expect(trustSentence(null)).toContain("nobody can say");
  });

  it("is given in whole units, and never as nothing where there is something", () => {
    expect([0, 0.3, 1.4, 6.6].map(roundDifference)).toEqual(["0", "less than 1", "1", "7"]);
  });
});

const brown: MeasuredColour = {
  lab: [42, 12, 20],
  hex: "#7f5b43",
  name: "brown",
  spread: 3.6,
  palette: [],
  accepted: 0.9,
  clipped: 0,
  greyCard: null,
};

describe("a measured colour in words", () => {
  it("says that nothing corrects it where there is no grey card", () => {
    expect(colourSentence(brown)).toBe(
      "Brown, as photographed, with no grey card to correct it by.",
    );
  });

  it("says between which names a colour lies, and which colours there are where they are several", () => {
    const of = (...hexes: string[]) =>
      colourSentence({
        ...brown,
        palette: hexes.map((hex) => ({ hex, share: 1 / hexes.length })),
        greyCard: { used: true, exposure: "as-taken" },
      });
    expect(of("#647572")).toBe("Between blue-green and grey, its hue corrected to the grey card.");
    expect(of("#161514", "#f6f4ee")).toBe(
      "Several colours (black; white), its hue corrected to the grey card.",
    );
    expect(of("#647572", "#566d68")).toBe(
      "Between blue-green and grey, its hue corrected to the grey card.",
    );
    expect(of("#1d3f8a", "#1d3f92")).toBe("Blue, its hue corrected to the grey card.");
  });

  it("says how far it was corrected to the grey card", () => {
    const used = (exposure: "as-taken" | "corrected" | "not-a-grey-cards") =>
      colourSentence({ ...brown, greyCard: { used: true, exposure } });
    expect(used("as-taken")).toBe("Brown, its hue corrected to the grey card.");
    expect(used("corrected")).toBe("Brown, its hue and brightness corrected to the grey card.");
    expect(used("not-a-grey-cards")).toContain("its brightness not");
  });

  it("says why a grey card was of no use", () => {
    const without = (because: "burnt-out" | "coloured" | "dark") =>
      colourSentence({ ...brown, greyCard: { used: false, because } });
    expect(without("burnt-out")).toBe("Brown, as photographed: the grey card is burnt out.");
    expect(without("coloured")).toContain("is not grey");
    expect(without("dark")).toContain("in the dark");
  });

  it("tells how even it is, and what the camera could not tell", () => {
    expect(spreadSentences(brown)).toEqual(["Average variation across the glaze: 4."]);
    expect(spreadSentences({ ...brown, clipped: 0.08 })[1]).toContain("8 per cent");
  });
});
