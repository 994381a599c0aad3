import { fc, test } from "@fast-check/vitest";
import { describe, expect, it } from "vitest";
import { labToLinear, linearToLab } from "../../src/colour/cielab.ts";
import { linearToOklab, oklabToLinear } from "../../src/colour/oklab.ts";
import { hexToLinear, linearToHex } from "../../src/colour/srgb.ts";
import { publishedColours } from "./reference.ts";

const anyHex = fc
  .integer({ min: 0, max: 0xffffff })
  .map((value) => `#${value.toString(16).padStart(6, "0")}`);

function worst(found: readonly number[], wanted: readonly number[]): number {
  return Math.max(...found.map((value, at) => Math.abs(value - (wanted[at] ?? Number.NaN))));
}

describe("conversions agree with the standards' values", () => {
  const cielab = publishedColours("CIELAB D65/2deg");
  const oklab = publishedColours("OKLab");

  it("of which there are enough to tell", () => {
    expect(cielab.length).toBeGreaterThanOrEqual(12);
    expect(oklab.length).toBe(cielab.length);
  });

  it.each(cielab)("$hex in CIELAB under D65", ({ hex, colour }) => {
    expect(worst(linearToLab(hexToLinear(hex)), colour)).toBeLessThan(0.01);
  });

  it.each(oklab)("$hex in OKLab", ({ hex, colour }) => {
    expect(worst(linearToOklab(hexToLinear(hex)), colour)).toBeLessThan(0.0001);
  });

  it("18 per cent of white's light is mid grey, L* 49.5 (CIE 15:2018, section 8.2.1)", () => {
    expect(linearToLab([0.18, 0.18, 0.18])[0]).toBeCloseTo(49.496, 3);
  });
});

describe("every colour of sRGB survives the way there and back", () => {
  test.prop([anyHex])("by CIELAB", (hex) => {
    expect(linearToHex(labToLinear(linearToLab(hexToLinear(hex))))).toBe(hex);
  });

  test.prop([anyHex])("by OKLab", (hex) => {
    expect(linearToHex(oklabToLinear(linearToOklab(hexToLinear(hex))))).toBe(hex);
  });
});

it("a colour that sRGB cannot show is brought to its edge", () => {
  expect(linearToHex([1.4, 0.5, -0.2])).toBe("#ffbc00");
});

it("only a colour like #a0522d is read", () => {
  expect(() => hexToLinear("sienna")).toThrow(RangeError);
});
