import { describe, expect, test } from "vitest";
import type { Expansion } from "../../src/chemistry/expansion/expansion.ts";
import { compareFit } from "../../src/chemistry/fit.ts";

const glaze = (perKelvin: number, outside: Expansion["outside"] = []): Expansion => ({
  model: "appen",
  perKelvin,
  between: [20, 400],
  outside,
});

describe("the fit of a glaze and a clay", () => {
  test("is tension where the glaze shrinks more, and tends towards crazing", () => {
    const fit = compareFit(glaze(7.4e-6), { perKelvin: 6.5e-6, between: [20, 400] });
    expect(fit.tendency).toBe("tension");
    expect(fit.difference).toBeCloseTo(0.9e-6, 12);
    expect(fit.message).toMatchInlineSnapshot(
      `"By Appen the glaze shrinks 0.9 × 10⁻⁶ per kelvin more than the clay as they cool: the clay holds it stretched, which tends towards crazing"`,
    );
  });

  test("is compression where the glaze shrinks less, and tends towards shivering if great", () => {
    const fit = compareFit(glaze(5.2e-6), { perKelvin: 6.5e-6, between: [20, 400] });
    expect(fit.tendency).toBe("compression");
    expect(fit.difference).toBeCloseTo(-1.3e-6, 12);
    expect(fit.message).toMatchInlineSnapshot(
      `"By Appen the glaze shrinks 1.3 × 10⁻⁶ per kelvin less than the clay as they cool: the clay squeezes it, which glazes bear better than being stretched; a great deal of it tends towards shivering"`,
    );
  });

  test("is undecided where the difference is smaller than the error of the factors", () => {
    const fit = compareFit(glaze(6.7e-6), { perKelvin: 6.5e-6, between: [20, 400] });
    expect(fit.tendency).toBe("undecided");
    expect(fit.message).toMatchInlineSnapshot(
      `"By Appen glaze and clay differ by 0.2 × 10⁻⁶ per kelvin, less than these factors err (0.3 × 10⁻⁶ per kelvin): the numbers do not say which way it tends"`,
    );
  });

  test("says what keeps the numbers from comparing, and that fired tests decide", () => {
    const reservations = (between?: [number, number], outside: Expansion["outside"] = []) =>
      compareFit(glaze(7e-6, outside), { perKelvin: 6.5e-6, between }).reservations;
    expect(reservations([20, 400])).toEqual([
      "Thickness, what the glaze takes from the clay, and the firing all change the fit: fired tests on this clay decide",
    ]);
    expect(reservations(undefined)[0]).toBe(
      "It is not recorded between which temperatures the clay was measured",
    );
    expect(reservations([20, 500], ["Cr2O3"]).slice(0, 2)).toEqual([
      "The clay was measured between 20 and 500 °C, and the factors are meant for 20 to 400 °C: such numbers compare roughly",
      "The factors of Appen do not cover all of this glaze: Cr2O3",
    ]);
  });

  test("is never called good, bad, safe or right", () => {
    for (const perKelvin of [5e-6, 6.4e-6, 6.6e-6, 9e-6]) {
      const { message, reservations } = compareFit(glaze(perKelvin), { perKelvin: 6.5e-6 });
      expect([message, ...reservations].join(" ")).not.toMatch(/\b(good|bad|safe|right|fits)\b/u);
    }
  });
});
