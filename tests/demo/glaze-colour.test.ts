/**
 * Kubelka and Munk's limits (Ein Beitrag zur Optik der Farbanstriche, Zeitschrift für technische
 * Physik 12, 1931): without thickness the ground shows, without end the layer's own reflectance
 * R∞ = 1 + K/S − √((K/S)² + 2K/S), and without absorption R = (R₀ + (1 − R₀)SX) / (1 + (1 − R₀)SX).
 */
import { fc, test } from "@fast-check/vitest";
import { describe, expect } from "vitest";
import { layerOver } from "../../src/demo/glaze-colour.ts";

const share = fc.double({ min: 0.02, max: 0.95, noNaN: true });
const ratio = fc.double({ min: 0.01, max: 50, noNaN: true });

describe("a layer of glaze over a ground", () => {
  test.prop([share, ratio])("shows the ground where it has no thickness", (ground, absorbing) => {
    expect(layerOver(absorbing * 1e-6, 1e-6, ground)).toBeCloseTo(ground, 3);
  });

  test.prop([share, ratio])("hides the ground where it is thick", (ground, absorbing) => {
    const own = 1 + absorbing - Math.sqrt(absorbing ** 2 + 2 * absorbing);
    expect(layerOver(absorbing * 400, 400, ground)).toBeCloseTo(own, 6);
  });

  test.prop([share, fc.double({ min: 0.05, max: 4, noNaN: true })])(
    "whitens the ground where it only scatters",
    (ground, scattering) => {
      const white = (ground + (1 - ground) * scattering) / (1 + (1 - ground) * scattering);
      expect(layerOver(scattering * 1e-6, scattering, ground)).toBeCloseTo(white, 2);
    },
  );
});
