import { describe, expect, it } from "vitest";
import { chartValues } from "../../src/firing/chart.ts";
import {
  type ConeKinetics,
  coneKinetics,
  type EndPoint,
  fitConeKinetics,
  modelledTemperature,
} from "../../src/firing/kinetics.ts";
import { chartedCones } from "../../src/terms/cones.ts";
import { cone, readReference } from "./reference.ts";

/**
 * A fit of the same model to the same chart by other code (tests/reference/heatwork.csv, tag
 * "derived"): energy in kJ/mol, threshold, residual and leave-one-out error in °C by rate.
 */
const published = readReference("heatwork").filter((row) => row.kind === "fit per cone");
const rates = [15, 60, 150];

function numbersAfter(label: string, detail: string): number[] {
  const found = new RegExp(`${label} ([-+0-9./]+)`, "u").exec(detail)?.[1] ?? "";
  return found.split("/").map(Number);
}

/** Molar gas constant in J/(mol K), exact: SI Brochure, 9th edition (2019). */
const gasConstant = 8.314462618;

/** In kJ/mol. */
function apparentEnergy({ kelvin }: ConeKinetics): number {
  return (kelvin * gasConstant) / 1000;
}

function endPoints(name: string): readonly EndPoint[] {
  return chartValues(cone(name));
}

function fitOf(name: string): ConeKinetics {
  const found = coneKinetics.find((fit) => fit.cone === cone(name));
  if (!found) throw new Error(`no fit for ${name}`);
  return found;
}

/** Model minus chart for a rate that the fit was not shown. */
function leaveOneOut(name: string, rate: number): number {
  const shown = endPoints(name).filter((point) => point.ratePerHour !== rate);
  const hidden = endPoints(name).find((point) => point.ratePerHour === rate);
  return modelledTemperature(fitConeKinetics(cone(name), shown), rate) - (hidden?.celsius ?? NaN);
}

const rootMeanSquare = (values: readonly number[]) =>
  Math.sqrt(values.reduce((sum, value) => sum + value ** 2, 0) / values.length);

describe("the fit of each cone", () => {
  it("is there for every charted cone, and for 35 of them can be compared", () => {
    expect(coneKinetics.map((fit) => fit.cone)).toEqual(chartedCones);
    expect(published).toHaveLength(35);
  });

  it.each(published.map((row) => [row.cone ?? "", row]))("agrees for cone %s", (name, row) => {
    const fit = fitOf(name as string);
    const detail = (row as Record<string, string>).detail ?? "";
    expect(apparentEnergy(fit)).toBeCloseTo(Number((row as Record<string, string>).value), -0.4);
    expect(fit.lnThreshold).toBeCloseTo(numbersAfter("ln C\\(h\\)", detail)[0] ?? NaN, 2);
    const residuals = numbersAfter("residual at 15/60/150 C/h", detail);
    const errors = numbersAfter("leave-one-out error", detail);
    rates.forEach((rate, i) => {
      const chart = endPoints(name as string)[i]?.celsius ?? NaN;
      expect(modelledTemperature(fit, rate) - chart).toBeCloseTo(residuals[i] ?? NaN, 1);
      expect(Math.abs(leaveOneOut(name as string, rate) - (errors[i] ?? NaN))).toBeLessThan(0.1);
    });
  });

  it("keeps its energies within the published spread", () => {
    const energies = published.map((row) => apparentEnergy(fitOf(row.cone ?? "")));
    energies.sort((a, b) => a - b);
    expect(energies[0]).toBeGreaterThan(252.5);
    expect(energies[34]).toBeLessThan(1565);
    expect(energies[17]).toBeCloseTo(801, -0.4);
  });

  it("takes 020 to 022 from the two rates the chart has, and meets both exactly", () => {
    for (const name of ["022", "021", "020"]) {
      expect(endPoints(name)).toHaveLength(2);
      for (const { ratePerHour, celsius } of endPoints(name))
        expect(modelledTemperature(fitOf(name), ratePerHour)).toBeCloseTo(celsius, 6);
    }
  });

  it("cannot be made from one rate", () => {
    expect(() => fitConeKinetics(cone("6"), endPoints("6").slice(0, 1))).toThrow(/two rates/u);
  });
});

describe("the model's error", () => {
  // tests/reference/heatwork.csv, "fit summary": leave-one-out, root mean square over 35 cones.
  it.each([
    [15, 6.7],
    [60, 2.8],
    [150, 4.7],
  ])("at %d °C an hour, left out of the fit, is %d °C", (rate, expected) => {
    const errors = published.map((row) => leaveOneOut(row.cone ?? "", rate));
    expect(rootMeanSquare(errors)).toBeCloseTo(expected, 0.9);
  });

  it("at the chart's own rates is 1.3 °C and never above 3.8", () => {
    const residuals = published.flatMap((row) =>
      endPoints(row.cone ?? "").map(
        (point) => modelledTemperature(fitOf(row.cone ?? ""), point.ratePerHour) - point.celsius,
      ),
    );
    expect(rootMeanSquare(residuals)).toBeCloseTo(1.3, 1);
    expect(Math.max(...residuals.map(Math.abs))).toBeLessThan(3.85);
  });
});
