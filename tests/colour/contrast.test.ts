import { readFileSync } from "node:fs";
import { join } from "node:path";
import { fc, test } from "@fast-check/vitest";
import { wcagContrast } from "culori";
import { describe, expect, it } from "vitest";
import {
  contrast,
  contrastOfMarks,
  contrastOnPapers,
  isSeenOnBoth,
  nearestSeen,
  papers,
} from "../../src/colour/contrast.ts";
import { linearToOklab } from "../../src/colour/oklab.ts";
import { hexToLinear } from "../../src/colour/srgb.ts";

const hex = fc
  .integer({ min: 0, max: 0xffffff })
  .map((code) => `#${code.toString(16).padStart(6, "0")}`);

const styles = readFileSync(join(import.meta.dirname, "../../templates/styles/tokens.css"), "utf8");

describe("contrast", () => {
  it("is 21 between black and white and 1 between equals (WCAG 2.2, “contrast ratio”)", () => {
    expect(contrast(hexToLinear("#000000"), hexToLinear("#ffffff"))).toBeCloseTo(21, 6);
    expect(contrast(hexToLinear("#a0522d"), hexToLinear("#a0522d"))).toBe(1);
  });

  test.prop([hex, hex])("is what culori, a general-purpose library, says", (one, other) => {
    const own = contrast(hexToLinear(one), hexToLinear(other));
    expect(own).toBeCloseTo(wcagContrast(one, other), 2);
  });

  it("is reckoned on the paper that the styles have", () => {
    const found = [...styles.matchAll(/--paper: oklch\((\d+)% 0 0\)/gu)].map(([, l]) => Number(l));
    expect(found).toEqual([100 * papers.light, 100 * papers.dark]);
  });
});

describe("the nearest shade that is seen", () => {
  test.prop([hex])("is seen on both papers, and is the colour itself where that is", (colour) => {
    const near = nearestSeen(colour);
    const { light, dark } = contrastOnPapers(near);
    expect(Math.min(light, dark)).toBeGreaterThanOrEqual(contrastOfMarks);
    if (isSeenOnBoth(colour)) expect(near).toBe(colour);
  });

  it.each(["#102040", "#ffe08a", "#8b0000", "#d8f0e0"])("has the hue of %s", (colour) => {
    const hue = (of: string) => {
      const [, a, b] = linearToOklab(hexToLinear(of));
      return Math.atan2(b, a);
    };
    expect(Math.abs(hue(nearestSeen(colour)) - hue(colour))).toBeLessThan(0.1);
  });
});
