/** Our conversions against those of culori, a colour library written by others. */
import { converter, differenceCiede2000 as culoriDifference, type Rgb } from "culori";
import fc from "fast-check";
import { expect, test } from "vitest";
import { linearToLab } from "../../src/colour/cielab.ts";
import { differenceCiede2000 } from "../../src/colour/difference.ts";
import { linearToOklab } from "../../src/colour/oklab.ts";
import { type LinearRgb, srgbToLinear } from "../../src/colour/srgb.ts";

const toLab = converter("lab65");
const toOklab = converter("oklab");

const anyCodes = fc.tuple(...([0, 1, 2] as const).map(() => fc.integer({ min: 0, max: 255 })));

function both(codes: readonly number[]): { ours: LinearRgb; theirs: Rgb } {
  const [r = 0, g = 0, b = 0] = codes;
  return {
    ours: [srgbToLinear(r / 255), srgbToLinear(g / 255), srgbToLinear(b / 255)],
    theirs: { mode: "rgb", r: r / 255, g: g / 255, b: b / 255 },
  };
}

test("every sRGB colour has the CIELAB (D65) that culori gives it", () => {
  fc.assert(
    fc.property(anyCodes, (codes) => {
      const { ours, theirs } = both(codes);
      const { l, a, b } = toLab(theirs) ?? { l: 0, a: 0, b: 0 };
      const lab = linearToLab(ours);
      expect(lab[0]).toBeCloseTo(l, 2);
      expect(lab[1]).toBeCloseTo(a, 2);
      expect(lab[2]).toBeCloseTo(b, 2);
    }),
  );
});

test("every sRGB colour has the OKLab that culori gives it", () => {
  fc.assert(
    fc.property(anyCodes, (codes) => {
      const { ours, theirs } = both(codes);
      const { l, a, b } = toOklab(theirs) ?? { l: 0, a: 0, b: 0 };
      const lab = linearToOklab(ours);
      expect(lab[0]).toBeCloseTo(l, 4);
      expect(lab[1]).toBeCloseTo(a, 4);
      expect(lab[2]).toBeCloseTo(b, 4);
    }),
  );
});

test("two colours differ by the CIEDE2000 that culori gives them", () => {
  const difference = culoriDifference();
  fc.assert(
    fc.property(anyCodes, anyCodes, (one, other) => {
      const [a, b] = [both(one), both(other)];
      const ours = differenceCiede2000(linearToLab(a.ours), linearToLab(b.ours));
      expect(ours).toBeCloseTo(difference(a.theirs, b.theirs), 2);
    }),
  );
});
