import { renderToString } from "preact-render-to-string";
import { describe, expect, test } from "vitest";
import type { ControlTwin } from "../../src/catalogue/kilns/control.ts";
import type { Aspect } from "../../src/likeness/make-up.ts";
import { Twins } from "../../templates/parts/control-twins.tsx";
import type { TileEntry } from "../../templates/parts/entry.ts";
import { twinsSummary } from "../../templates/words/tile/control.ts";

const twin: ControlTwin = {
  ...{ tile: "CT-02", firing: { id: "g-2", name: "g-2", url: "firings/g-2.html" } },
  ...{ on: null, kiln: null, shelf: null, cone: null, atmosphere: null, again: null, run: null },
  ...{ surface: ["satin"], effects: [], faults: [], pictured: true, colour: null },
  ...{ difference: 4.4, unlike: [], hotter: null },
};
const entry: TileEntry = {
  ...{ id: "CT-02", url: "tiles/ct-02.html", names: "Soot", picture: null, stage: "recorded" },
  view: { clay: null, texture: "smooth", lanes: [] },
  outcome: { surface: [], run: null, faults: [], again: null, fate: null },
};

function shown(difference: number | null, unknown: readonly Aspect[] = []): string {
  const trust = { difference: 6.6, tiles: 12, kinds: 5 };
  const twins = [{ twin: { ...twin, difference }, entry }];
  return renderToString(
    <Twins
      root=""
      twins={twins}
      unknown={unknown}
      control="CT-01"
      withKiln={false}
      trust={trust}
    />,
  );
}

test("how far a twin's colour differs is shown beside how far a difference can be trusted", () => {
  expect(shown(4.4)).toMatch(/ΔE\u00a04.*measured up to 7 apart here/su);
});

test("where no twin was measured nothing is said of differences", () => {
  expect(shown(null)).not.toMatch(/ΔE|apart/u);
});

test("what nobody wrote down of a control tile is told, since its twins may differ in it", () => {
  expect(shown(null, ["coats", "way"])).toContain(
    "Not recorded: how many coats and how it was put on. Twins may differ in it.",
  );
  expect(shown(null)).not.toContain("Not recorded");
});

describe("what the twins show together", () => {
  const unlike = [{ in: "colour" }] as const;
  const summary = (...hotter: readonly (number | null)[]) =>
    twinsSummary(
      hotter.map((cones, i) => ({ ...twin, tile: `CT-${i + 2}`, unlike, hotter: cones })),
      "CT-1",
    );

  test("leads to the firing where the cones differed too, and to the glaze where they did not", () => {
    expect(summary(-2)).toBe(
      "CT-2 came out differently where the cones were hotter or cooler too: look at the firing first.",
    );
    expect(summary(0)).toBe(
      "CT-2 came out differently though the cones were less than one apart: look at the glaze, its coats, the cooling and the atmosphere.",
    );
  });

  test("claims nothing of a twin without a cone to compare", () => {
    expect(summary(null, null)).toBe(
      "CT-2 and CT-3 came out differently, with no cone to compare.",
    );
  });
});
