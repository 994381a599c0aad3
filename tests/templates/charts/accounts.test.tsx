import { render } from "preact-render-to-string";
import { describe, expect, it } from "vitest";
import type { FiringAccount } from "../../../src/catalogue/kilns/story.ts";
import { AccountsChart } from "../../../templates/charts/accounts-chart.tsx";
import { coneLine } from "../../../templates/charts/cone-line.ts";
import { ConePack } from "../../../templates/charts/cone-pack.tsx";
import { kilnColumns } from "../../../templates/charts/kiln-columns.ts";
import { cone } from "../../checks/support.ts";
import { catalogueOf, coneSix, firingOf, load } from "../support/firings.ts";

const accountsOf = (fields: Record<string, unknown>) => firingOf(fields).story.accounts;

describe("the line of cones", () => {
  it("has the aim in a band of one cone on either side", () => {
    const line = coneLine(accountsOf({ cone: "6", witness: { top: "5" } }));
    const places = new Map(line?.cones.map(({ cone: name, x }) => [name as string, x]));
    expect(line?.aim).toBeCloseTo(places.get("6") ?? 0, 9);
    expect(line?.band?.x).toBeCloseTo(places.get("5") ?? 0, 9);
    expect((line?.band?.x ?? 0) + (line?.band?.width ?? 0)).toBeCloseTo(places.get("7") ?? 0, 9);
  });

  it("reaches from 06 to 6 where both were told, and still names the aim", () => {
    const line = coneLine(accountsOf({ cone: "6", witness: { top: "06" } }));
    const named = (line?.cones ?? []).filter((each) => each.named).map((each) => each.cone);
    expect(named).toContain("6");
    expect(named.length).toBeLessThanOrEqual(8);
    expect(line?.cones.map((each) => each.cone)).toContain("06");
  });

  it("holds at its ends what has no end", () => {
    const open = accountsOf({ cone: "6", witness: { top: { "6": "down" } } });
    const line = coneLine(open);
    expect(line?.clamp(Number.POSITIVE_INFINITY)).toBe(100);
    expect(line?.clamp(Number.NEGATIVE_INFINITY)).toBe(0);
  });

  it("is nothing where no place is known", () => {
    const nowhere: FiringAccount = {
      of: "shelf",
      shelf: "top",
      low: Number.NEGATIVE_INFINITY,
      high: Number.POSITIVE_INFINITY,
      modelled: null,
      reached: null,
    };
    expect(coneLine([nowhere])).toBeUndefined();
    expect(coneLine([])).toBeUndefined();
  });
});

describe("accounts side by side", () => {
  it("are told in words beside their marks", () => {
    const html = render(
      <AccountsChart
        accounts={accountsOf({ cone: "6", schedule: coneSix, witness: { bottom: "4½", top: "6" } })}
      />,
    );
    expect(html.replace(/<svg.*?<\/svg>/gu, "").replace(/<[^>]+>/gu, " ")).toMatch(
      /Aim\s+cone 6\s+Programme\s+cone 6\s+Top shelf\s+cone 6\s+Bottom shelf\s+cone 4½/u,
    );
  });
});

it("a pack of cones stands from the coolest to the hottest, each bent as it was seen", () => {
  const html = render(
    <ConePack
      bends={
        new Map([
          [cone("7"), "standing"],
          [cone("5"), "down"],
          [cone("6"), "bent"],
        ])
      }
    />,
  );
  expect(
    html
      .replace(/<[^>]+>/gu, " ")
      .trim()
      .split(/\s+/u),
  ).toEqual(["5", "6", "7"]);
  const drawn = [...html.matchAll(/class="body" d="([^"]+)"/gu)].map(([, d]) => d);
  expect(new Set(drawn).size).toBe(3);
});

describe("the columns of a kiln's chart", () => {
  const about = { kiln: "Drum", cone: "6" };
  const [kiln] = catalogueOf([
    load("g-1", { ...about, on: "2026-01-01", witness: { bottom: "5", top: "6" } }),
    load("g-2", { ...about, on: "2026-01-02", witness: { middle: "06" } }),
    load("g-3", { ...about, on: "2026-01-03", witness: { top: { "6": "down" } } }),
    load("g-4", { on: "2026-01-04", kiln: "Drum", witness: { top: "6" } }),
  ]).kilns;
  const view = kilnColumns(kiln?.firings ?? []);

  it("stand in the order of days, without firings of which nothing can be compared", () => {
    expect(view?.columns.map(({ id }) => id)).toEqual(["g-1", "g-2", "g-3"]);
  });

  it("put a shelf a cone cooler than the aim a cone beneath it", () => {
    const marks = view?.columns[0]?.marks.map(({ shape, y }) => [shape, y]);
    expect(marks).toEqual([
      ["up", -0],
      ["down", 36],
    ]);
  });

  it("tell in figures what lies far beyond the rest", () => {
    expect(view?.reach).toBe(2);
    expect(view?.columns[1]?.beyond).toEqual({ hot: false, cones: "11" });
  });

  it("leave open what the cones leave open", () => {
    expect(view?.columns[2]?.marks).toMatchObject([{ y: -18, open: "up" }]);
  });
});
