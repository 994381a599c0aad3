import { fc, test } from "@fast-check/vitest";
import { describe, expect, it } from "vitest";
import { nameColour } from "../../src/colour/name.ts";
import { linearToOklab } from "../../src/colour/oklab.ts";
import { hexToLinear } from "../../src/colour/srgb.ts";

function nameOf(hex: string): string {
  return nameColour(linearToOklab(hexToLinear(hex)));
}

describe("a colour's plain name", () => {
  /** CSS Color Module Level 4, section 6.1. */
  it.each([
    ["black", "#000000"],
    ["blue", "#0000ff"],
    ["brown", "#a52a2a"],
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
