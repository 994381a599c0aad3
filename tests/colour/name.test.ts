import { readFileSync } from "node:fs";
import { join } from "node:path";
import { fc, test } from "@fast-check/vitest";
import { parse } from "csv-parse/sync";
import { describe, expect, it } from "vitest";
import {
  type ColourName,
  families,
  familiesOf,
  nameColour,
  shareOut,
} from "../../src/colour/name.ts";
import { linearToOklab, type Oklab } from "../../src/colour/oklab.ts";
import { hexToLinear } from "../../src/colour/srgb.ts";

/**
 * R. Munroe's colour survey of 2010: names that people gave, each with the colour that it was given
 * to. CC0, open data. Left out are names that say no colour, such as “dust”. What family a name
 * means is read from its words: “greyish green” is a green that is nearly grey, “blue green” is
 * blue-green, and “teal” is too.
 */
const surveyed = parse<{ name: string; hex: string; families: string }>(
  readFileSync(join(import.meta.dirname, "../reference/surveyed-colours.csv")),
  { columns: true },
).map(({ name, hex, families: meant }) => ({
  name,
  colour: oklabOf(hex),
  meant: meant.split(" ") as ColourName[],
}));

function oklabOf(hex: string): Oklab {
  return linearToOklab(hexToLinear(hex));
}

const nameOf = (hex: string) => nameColour(oklabOf(hex));

function shareOf<T>(of: readonly T[], holds: (each: T) => boolean): number {
  return of.filter(holds).length / of.length;
}

describe("the families of a colour", () => {
  it("are those that its name in a large survey says, for 96 names in 100", () => {
    expect(surveyed.length).toBeGreaterThan(700);
    const isFound = ({ colour, meant }: (typeof surveyed)[number]) =>
      familiesOf(colour).some((name) => meant.includes(name));
    expect(shareOf(surveyed, isFound)).toBeGreaterThan(0.96);
    // Paler than any other of its kind a name may say a hue that hardly shows.
    for (const family of families) {
      const own = surveyed.filter(({ meant }) => meant[0] === family);
      expect(shareOf(own, isFound), family).toBeGreaterThan(0.8);
    }
  });

  it("begin with what the name says, for 89 names in 100", () => {
    const isFirst = ({ colour, meant }: (typeof surveyed)[number]) =>
      meant.includes(nameColour(colour));
    expect(shareOf(surveyed, isFirst)).toBeGreaterThan(0.88);
  });

  /** How many of the names that people gave to colours like one of them say each family. */
  function saidOfLike(colour: Oklab): ReadonlyMap<ColourName, number> {
    const near = surveyed
      .map((each) => ({
        ...each,
        away: Math.hypot(...colour.map((v, i) => v - (each.colour[i] ?? 0))),
      }))
      .sort((one, other) => one.away - other.away)
      .slice(0, 15);
    const said = new Map<ColourName, number>();
    for (const { meant } of near)
      for (const name of meant)
        said.set(name, (said.get(name) ?? 0) + 1 / meant.length / near.length);
    return said;
  }

  it("are what a fifth of the survey's names for colours like it say, and little else", () => {
    const told = surveyed.map(({ colour }) => ({
      found: familiesOf(colour),
      said: [...saidOfLike(colour)].filter(([, share]) => share >= 0.2).map(([name]) => name),
    }));
    const said = told.flatMap(({ found, said: of }) => of.map((name) => found.includes(name)));
    const found = told.flatMap(({ found: of, said: by }) => of.map((name) => by.includes(name)));
    expect(shareOf(said, Boolean)).toBeGreaterThan(0.77);
    expect(shareOf(found, Boolean)).toBeGreaterThan(0.86);
  });

  /** What the trade's words for glazes mean: common practice, no source. */
  it.each([
    ["iron black", "#2b1a12", "black, brown"],
    ["iron brown", "#6b3e22", "brown"],
    ["amber", "#c68e17", "amber"],
    ["celadon", "#a8c3a8", "green"],
    ["sea-green", "#5a706c", "blue-green"],
    ["a greyer sea-green", "#647572", "blue-green, grey"],
    ["copper red", "#7d1f26", "red"],
    ["cobalt blue", "#16264a", "blue"],
    ["teal", "#1f8a8a", "blue-green"],
    ["cream", "#f2ead8", "cream, white"],
    ["olive", "#6b6b2f", "olive"],
    ["buff", "#d3c69c", "cream, brown"],
    ["dove grey", "#b2b2b0", "grey"],
  ])("are what a potter would say of %s", (_, hex, named) => {
    expect(familiesOf(oklabOf(hex)).join(", ")).toBe(named);
  });

  /** CSS Color Module Level 4, section 6.1. */
  it.each([
    ["black", "#000000"],
    ["blue", "#0000ff"],
    ["blue-green", "#008080"],
    ["green", "#008000"],
    ["grey", "#808080"],
    ["orange", "#ffa500"],
    ["olive", "#808000"],
    ["pink", "#ffc0cb"],
    ["purple", "#800080"],
    ["white", "#ffffff"],
    ["yellow", "#ffff00"],
  ])("begin with %s for what CSS calls so, or like it", (name, hex) => {
    expect(nameOf(hex)).toBe(name);
  });

  test.prop([fc.integer({ min: 0, max: 255 })])("of a true grey have no hue", (code) => {
    const hex = `#${code.toString(16).padStart(2, "0").repeat(3)}`;
    expect(["black", "grey", "white"]).toEqual(
      expect.arrayContaining([...familiesOf(oklabOf(hex))]),
    );
  });

  test.prop([fc.integer({ min: 0, max: 0xffffff })])(
    "are at least one for whatever a screen can show, and the shares add to 1",
    (code) => {
      const colour = oklabOf(`#${code.toString(16).padStart(6, "0")}`);
      const shares = shareOut(colour);
      expect(shares.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 9);
      expect(familiesOf(colour).length).toBeGreaterThan(0);
    },
  );
});
