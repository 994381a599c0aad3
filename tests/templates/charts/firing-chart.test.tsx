import fc from "fast-check";
import { render } from "preact-render-to-string";
import { describe, expect, it } from "vitest";
import { celsiusAt, curvePaths, minutesAt } from "../../../templates/charts/curve-shape.ts";
import { firingChart, plotHeight } from "../../../templates/charts/firing-chart.ts";
import { FiringFigure } from "../../../templates/charts/firing-figure.tsx";
import { coneSix, firingOf, logTo } from "../support/firings.ts";

const good = firingOf({ cone: "6", schedule: coneSix, witness: { top: "6" } }, logTo(1215));

describe("a curve", () => {
  const scales = { x: (minutes: number) => minutes, y: (celsius: number) => -celsius };

  it("is drawn whole where its times are known, and broken where they are not", () => {
    const curve = [
      { minutes: 0, celsius: 20 },
      { minutes: 0, celsius: 600, untimed: true },
      { minutes: 60, celsius: 700 },
    ];
    expect(curvePaths(curve, scales)).toEqual({
      timed: "M0,-600L60,-700",
      untimed: "M0,-20L0,-600",
    });
  });

  it("gives the temperature at a time, and the time of a temperature", () => {
    const curve = [
      { minutes: 0, celsius: 0 },
      { minutes: 100, celsius: 1000 },
      { minutes: 200, celsius: 500 },
    ];
    expect([0, 50, 100, 150, 200, 201].map((at) => celsiusAt(curve, at))).toEqual([
      0,
      500,
      1000,
      750,
      500,
      undefined,
    ]);
    expect(minutesAt(curve, 750)).toBe(75);
    expect(minutesAt(curve, 750, 100)).toBe(150);
    expect(minutesAt(curve, 400, 100)).toBeUndefined();
  });
});

describe("a firing's chart", () => {
  it("names the aim and no cones so close that nobody could read them", () => {
    const chart = firingChart(good, "celsius");
    const named = (chart?.cones ?? []).filter((cone) => cone.named);
    expect(named.find(({ aim }) => aim)?.words).toBe("6");
    const heights = named.map(({ y }) => y).toSorted((a, b) => a - b);
    heights.slice(1).forEach((y, i) => {
      expect(y - (heights[i] ?? 0)).toBeGreaterThanOrEqual(15);
    });
  });

  it("puts the aim where the published chart has its cone", () => {
    const chart = firingChart(good, "celsius");
    const thousand = chart?.temperatures.find(({ words }) => words === "1000")?.y ?? 0;
    const perDegree = (plotHeight - thousand) / 1000;
    // Self-supporting cone 6 at 60 °C an hour: 1222 °C.
    expect((plotHeight - (chart?.aim?.y ?? 0)) / perDegree).toBeCloseTo(1222, 0);
  });

  it("reads in °F where the studio does", () => {
    const chart = firingChart(good, "fahrenheit");
    expect(chart?.temperatures.map(({ words }) => words)).toContain("2000");
    expect(chart?.labels.map(({ words }) => words)).toContain("2219 °F");
  });

  it("has hours that end within it, seven marks at the most", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 9000 }), (minutes) => {
        const log = `minutes,°C\n0,20\n${minutes},900`;
        const hours = firingChart(firingOf({}, log), "celsius")?.hours ?? [];
        expect(hours.length).toBeGreaterThan(0);
        expect(hours.length).toBeLessThanOrEqual(7);
        for (const { x } of hours) expect(x).toBeLessThanOrEqual(100);
      }),
      { numRuns: 40 },
    );
  });

  it("is nothing where there is nothing to draw", () => {
    expect(firingChart(firingOf({ cone: "6" }), "celsius")).toBeNull();
    expect(firingChart(firingOf({ schedule: [{ to: "1000" }] }), "celsius")).toBeNull();
    expect(FiringFigure({ firing: firingOf({ cone: "6" }), unit: "celsius" })).toBeNull();
  });
});

describe("the figure of a firing", () => {
  const html = render(<FiringFigure firing={good} unit="celsius" />);

  it("has a table of the same, hour by hour, for whoever cannot see it", () => {
    expect(html).toContain('<th scope="col">Programme</th><th scope="col">Log</th>');
    expect(html).toContain('<th scope="row">1</th><td>170 °C</td><td>80 °C</td>');
  });

  it("says at which rate its cones are meant", () => {
    expect(html).toContain("climbed at 60 °C an hour (108 °F)");
  });

  it("carries no style of its own, which the site's policy forbids", () => {
    expect(html).not.toMatch(/ style=|<style/u);
  });

  it("says of parts without a time that they have none", () => {
    const open = firingOf({ schedule: [{ to: "600" }, { to: "1210", rate: "60" }] });
    const drawn = render(<FiringFigure firing={open} unit="celsius" />);
    expect(drawn).toContain('class="told untimed"');
    expect(drawn).toContain("Broken line: how long that part took is not known.");
  });
});
