import { describe, expect, test } from "vitest";
import type { TileFiring } from "../../../../src/catalogue/kilns/tile-firings.ts";
import type { CatalogueTile } from "../../../../src/catalogue/tiles.ts";
import type { Shape } from "../../../../src/terms/choices.ts";
import {
  count,
  formatDay,
  formatDays,
  grouped,
  listed,
} from "../../../../templates/words/english/numbers.ts";
import {
  firingSentence,
  lookWords,
  pieceName,
  pieceWithTexture,
  textureInOwnWords,
  tileSentence,
} from "../../../../templates/words/tile/outcome.ts";
import { cone } from "../../../checks/support.ts";

const firing = {
  kind: "glaze",
  cone: cone("6"),
  atmosphere: "oxidation",
  heatedBy: "electric",
  kiln: "The Wardrobe",
  shelf: "middle",
  on: "2026-10-18",
} as TileFiring;

describe("what the kiln did", () => {
  test("is one sentence of all that is known", () => {
    expect(firingSentence(firing)).toBe(
      "Glaze fired to cone 6 in oxidation in The Wardrobe (electric), middle shelf, 18 October 2026",
    );
  });

  test("says no more than is known", () => {
    const nothing = { cone: null, atmosphere: null, heatedBy: null, kiln: null, shelf: null };
    expect(firingSentence({ ...firing, ...nothing, kind: "bisque", on: null })).toBe(
      "Bisque fired",
    );
    expect(firingSentence({ ...firing, ...nothing, heatedBy: "wood", on: null })).toBe(
      "Glaze fired by wood",
    );
  });
});

describe("what came out", () => {
  test("tells surface, effects, faults and how far it ran", () => {
    const look = {
      surface: ["satin"],
      effects: ["breaking", "pooling"],
      faults: ["too-thin"],
      run: 3,
    };
    expect(lookWords(look)).toBe("satin; breaking and pooling; fault: too thin; ran 3\u00a0mm");
  });

  test("keeps “looked and found nothing” apart from “nobody looked”", () => {
    expect(lookWords({ faults: ["none"], run: 0 })).toBe("no fault found; did not run");
    expect(lookWords({})).toBe("");
  });
});

describe("a tile in a sentence", () => {
  const tile = {
    shape: "flat",
    texture: "stamped",
    clay: { id: "buff", name: "Levels Buff", url: "" },
    maker: null,
    glazed: null,
  } as CatalogueTile;

  test("puts a texture of the trade before it, and a maker's own words after it", () => {
    expect(tileSentence(tile)).toBe("A stamped flat tile of Levels Buff.");
    expect(tileSentence({ ...tile, texture: "pressed with a fork" })).toBe(
      "A flat tile of Levels Buff, pressed with a fork.",
    );
  });

  test("calls pots and rings what they are", () => {
    expect(tileSentence({ ...tile, texture: "impressed", shape: "pot", clay: null })).toBe(
      "An impressed pot.",
    );
  });
});

describe("numbers in words", () => {
  test("count, group, list and date", () => {
    expect([count(1, "tile"), count(12, "tile"), grouped(10301)]).toEqual([
      "1 tile",
      "12 tiles",
      "10,301",
    ]);
    expect([listed([]), listed(["a"]), listed(["a", "b", "c"])]).toEqual(["", "a", "a, b and c"]);
    expect(formatDay("2026-02-01")).toBe("1 February 2026");
    expect(formatDays("2025-10-04", "2025-10-13")).toBe("4 to 13 October 2025");
    expect(formatDays("2026-09-29", "2026-12-08")).toBe("29 September to 8 December 2026");
    expect(formatDays("2025-10-04", "2026-01-13")).toBe("4 October 2025 to 13 January 2026");
    expect(formatDays("2026-02", "2026-03")).toBe("February to March 2026");
    expect(formatDays("2026-02-01", "2026-02-01")).toBe("1 February 2026");
  });
});

test("a tile is named by its shape as a potter says it", () => {
  expect(["flat", "l-shape", "ring"].map((shape) => pieceName(shape as Shape))).toEqual([
    "flat tile",
    "L-shaped tile",
    "ring",
  ]);
});

describe("the piece that a card asks for", () => {
  const tile = { shape: "flat", texture: "smooth" } as CatalogueTile;

  test("has its texture and its shape", () => {
    expect(pieceWithTexture(tile)).toBe("a smooth flat tile");
    expect(pieceWithTexture({ ...tile, texture: "pierced", shape: "l-shape" })).toBe(
      "a pierced L-shaped tile",
    );
  });

  test("has a texture in the maker's own words after it", () => {
    const pressed = { ...tile, texture: "pressed with a coot's foot" };
    expect(pieceWithTexture(pressed)).toBe("a flat tile");
    expect(textureInOwnWords(pressed)).toBe("pressed with a coot's foot");
    expect(textureInOwnWords(tile)).toBeNull();
  });
});
