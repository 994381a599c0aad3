import { readFileSync } from "node:fs";
import { join } from "node:path";
import { fc, test } from "@fast-check/vitest";
import { parse } from "csv-parse/sync";
import { describe, expect, it } from "vitest";
import { nameColour } from "../../src/colour/name.ts";
import { linearToOklab } from "../../src/colour/oklab.ts";
import { hexToLinear } from "../../src/colour/srgb.ts";

/** R. Munroe's colour survey of 2010: every name that ends in a basic term. CC0, open data. */
const SURVEYED: { term: string; hex: string }[] = parse(
  readFileSync(join(import.meta.dirname, "../reference/surveyed-colours.csv")),
  { columns: true },
);

function nameOf(hex: string): string {
  return nameColour(linearToOklab(hexToLinear(hex)));
}

function shareAlike(term: string): number {
  const own = SURVEYED.filter((row) => row.term === term);
  return own.filter(({ hex }) => nameOf(hex) === term).length / own.length;
}

describe("a colour's plain name", () => {
  /** CSS Color Module Level 4, section 6.1. */
  it.each([
    ["black", "#000000"],
    ["blue", "#0000ff"],
    ["green", "#008000"],
    ["grey", "#808080"],
    ["orange", "#ffa500"],
    ["pink", "#ffc0cb"],
    ["purple", "#800080"],
    ["red", "#ff0000"],
    ["white", "#ffffff"],
    ["yellow", "#ffff00"],
  ])("is %s for what CSS calls so", (name, hex) => {
    expect(nameOf(hex)).toBe(name);
  });

  it("is red for what CSS calls brown, as people say of it", () => {
    expect(nameOf("#a52a2a")).toBe("red");
  });

  it("is what people in a large survey say of most of their colours, whatever the term", () => {
    expect(SURVEYED.length).toBeGreaterThan(500);
    const alike = SURVEYED.filter(({ term, hex }) => nameOf(hex) === term);
    expect(alike.length / SURVEYED.length).toBeGreaterThan(0.84);
    // A bluish or greenish grey is called by its hue here, so that it is found with its like.
    for (const term of new Set(SURVEYED.map((row) => row.term)))
      expect(shareAlike(term), term).toBeGreaterThan(term === "grey" ? 0.3 : 0.55);
  });

  /** What the trade's words for glazes mean: common practice, no source. */
  it.each([
    ["iron black", "#2b1a12", "black"],
    ["iron brown", "#6b3e22", "brown"],
    ["amber", "#c68e17", "brown"],
    ["celadon", "#a8c3a8", "green"],
    ["copper red", "#7d1f26", "red"],
    ["cobalt blue", "#16264a", "blue"],
    ["cream", "#f2ead8", "white"],
    ["ash grey", "#b8b0a0", "grey"],
  ])("is what a potter would say of %s", (_, hex, name) => {
    expect(nameOf(hex)).toBe(name);
  });

  test.prop([fc.integer({ min: 0, max: 255 })])("is a neutral's for every grey", (code) => {
    const hex = `#${code.toString(16).padStart(2, "0").repeat(3)}`;
    expect(["black", "grey", "white"]).toContain(nameOf(hex));
  });
});
