import { describe, expect, test } from "vitest";
import type { Expansion } from "../../src/chemistry/expansion/expansion.ts";
import { type ClayExpansion, compareFit, compareFits } from "../../src/chemistry/fit.ts";

const glaze = (perKelvin: number, outside: Expansion["outside"] = []): Expansion => ({
  model: "appen",
  perKelvin,
  doubt: 0.75e-6,
  between: [20, 400],
  outside,
});

function fitOf(expansion: Expansion, clay: ClayExpansion) {
  const fit = compareFit(expansion, clay);
  if (!fit) throw new Error("a figure can be compared");
  return fit;
}

describe("the fit of a glaze and a clay", () => {
  test("is tension where the glaze shrinks more, and tends towards crazing", () => {
    const fit = fitOf(glaze(8.4e-6), { perKelvin: 6.5e-6, between: [20, 400] });
    expect(fit.tendency).toBe("tension");
    expect(fit.difference).toBeCloseTo(1.9e-6, 12);
    expect(fit.message).toMatchInlineSnapshot(
      `"By Appen the glaze shrinks 1.9 × 10⁻⁶ per kelvin more than the clay as they cool: the clay holds it stretched, which tends towards crazing"`,
    );
  });

  test("is compression where the glaze shrinks less, and tends towards shivering if great", () => {
    const fit = fitOf(glaze(4.7e-6), { perKelvin: 6.5e-6, between: [20, 400] });
    expect(fit.tendency).toBe("compression");
    expect(fit.difference).toBeCloseTo(-1.8e-6, 12);
    expect(fit.message).toMatchInlineSnapshot(
      `"By Appen the glaze shrinks 1.8 × 10⁻⁶ per kelvin less than the clay as they cool: the clay squeezes it, which glazes bear better than being stretched; a great deal of it tends towards shivering"`,
    );
  });

  test("is undecided where the difference is no more than twice the doubt", () => {
    const fit = fitOf(glaze(7.9e-6), { perKelvin: 6.5e-6, between: [20, 400] });
    expect(fit.tendency).toBe("undecided");
    expect(fit.message).toMatchInlineSnapshot(
      `"By Appen glaze and clay differ by 1.4 × 10⁻⁶ per kelvin, less than twice what such a figure may be off (0.8 × 10⁻⁶ per kelvin): the numbers do not say which way it tends"`,
    );
  });

  test("says what keeps the numbers from comparing, and that fired tests decide", () => {
    const reservations = (between?: [number, number], outside: Expansion["outside"] = []) =>
      fitOf(glaze(7e-6, outside), { perKelvin: 6.5e-6, between }).reservations;
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
      const { message, reservations } = fitOf(glaze(perKelvin), { perKelvin: 6.5e-6 });
      expect([message, ...reservations].join(" ")).not.toMatch(/\b(good|bad|safe|right|fits)\b/u);
    }
  });

  test("is none where a set has no figure", () => {
    expect(
      compareFit({ ...glaze(1), perKelvin: null, doubt: null }, { perKelvin: 6e-6 }),
    ).toBeNull();
  });

  test("is told once by sets that share their factors", () => {
    const by = (model: Expansion["model"], perKelvin: number | null): Expansion => ({
      ...glaze(0),
      model,
      perKelvin,
      doubt: perKelvin === null ? null : 1e-6,
    });
    const told = (expansions: readonly Expansion[]) =>
      compareFits(expansions, { perKelvin: 6.5e-6 }).map((fit) => fit.by);
    const jena = "Winkelmann & Schott and Mayer & Havas";
    const shared = [by("appen", 6e-6), by("winkelmann-schott", 8e-6), by("mayer-havas", 8.1e-6)];
    expect(told(shared)).toEqual(["Appen", jena]);
    expect(told([by("winkelmann-schott", null), by("mayer-havas", 8e-6)])).toEqual([jena]);
  });
});
