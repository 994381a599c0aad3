import { describe, expect, it } from "vitest";
import { makeChart } from "../../src/demo/chart.ts";
import { fireTile } from "../../src/demo/fired-skin.ts";
import { makeForm } from "../../src/demo/forms.ts";
import type { Skin } from "../../src/demo/skin.ts";
import type { TilePlan } from "../../src/demo/tile-plan.ts";
import { black, coat, fire, plan } from "./trial-plan.ts";

/** Points to a millimetre: enough for what is looked at here. */
const PER_MM = 3;

function skinOf(of: TilePlan): Skin {
  const { face, margin } = makeForm(of.shape, of.code, false, of.angle);
  return fireTile(makeChart(face, margin, PER_MM), of);
}

/** Mean red, 0 to 1, of a band of the face so many millimetres from its top. */
function redBelowTop({ chart, red }: Skin, from: number, to: number): number {
  const row = (mm: number) => Math.round((chart.extent.top - chart.face.top + mm) * PER_MM);
  const middle = Math.round(chart.width / 2);
  const seen: number[] = [];
  for (let r = row(from); r < row(to); r++)
    for (let c = middle - 30; c < middle + 30; c++) seen.push(red.data[r * chart.width + c] ?? 0);
  return seen.reduce((sum, value) => sum + value, 0) / seen.length;
}

const runny = { ...black, flow: 0.8 };
const glossy: Partial<TilePlan> = { surfaces: ["gloss"] };

describe("glaze that ran", () => {
  it("a long way leaves the upper part of the tile all but bare", () => {
    const ran = skinOf(plan([coat("all", runny), fire], { ...glossy, run: 41 }));
    expect(redBelowTop(ran, 3, 12)).toBeGreaterThan(4 * redBelowTop(ran, 50, 60));
  });

  it("a little leaves it covered", () => {
    const stayed = skinOf(plan([coat("all", runny), fire], { ...glossy, run: 4 }));
    expect(redBelowTop(stayed, 5, 12)).toBeLessThan(1.5 * redBelowTop(stayed, 50, 60));
  });
});

describe("a fault that the record names", () => {
  it("crazing, lies in the glass and leaves its surface as it was", () => {
    const whole = skinOf(plan([coat("all"), fire], glossy));
    const crazed = skinOf(plan([coat("all"), fire], { ...glossy, faults: ["crazing"] }));
    expect(crazed.height.data).toEqual(whole.height.data);
    expect(crazed.red.data.some((red, i) => red < 0.8 * (whole.red.data[i] ?? 0))).toBe(true);
  });

  it("crawling, stands up in a roll where the glaze ends", () => {
    const highest = ({ height }: Skin) => height.data.reduce((a, b) => Math.max(a, b), 0);
    const whole = skinOf(plan([coat("all"), fire]));
    const crawled = skinOf(plan([coat("all"), fire], { faults: ["crawling"] }));
    expect(highest(crawled)).toBeGreaterThan(highest(whole) + 0.15);
  });

  it("overfired, boiled on no two tiles alike", () => {
    const [one, other] = ["ZZ-1", "ZZ-2"].map((code) => {
      const [boiled, whole] = [["overfired"], []].map((faults) =>
        skinOf(plan([coat("all"), fire], { ...glossy, code, faults })),
      );
      return boiled?.height.data.map((high, i) => high - (whole?.height.data[i] ?? 0));
    });
    expect(one?.some((high) => Math.abs(high) > 0.01)).toBe(true);
    expect(one).not.toEqual(other);
  });
});
