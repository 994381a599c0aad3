import { describe, expect, test } from "vitest";
import type { TileStep } from "../../../src/records/archive.ts";
import { findRestart } from "../../../src/records/coat-stack.ts";
import { type CoatLane, layerView } from "../../../templates/drawing/layer-view.ts";
import { intersect, spansOf, subtract } from "../../../templates/drawing/spans.ts";
import { coat, fired, removed, resist } from "../../checks/support.ts";
import { withCones } from "../support/layers.ts";

const paint = { name: "Soot", kind: "glaze", colour: "#445566", measured: null } as const;

function viewOf(steps: readonly TileStep[], cones: readonly string[] = []) {
  return layerView({
    texture: "smooth",
    clay: "buff",
    steps: withCones(steps, cones),
    restart: findRestart(steps),
    paintOf: () => paint,
  });
}

function coatsOf(steps: readonly TileStep[]): readonly CoatLane[] {
  return viewOf(steps).lanes.filter((lane) => lane.lane === "coat");
}

const motif = spansOf(["motif"]);
const around = subtract([[0, 1]], motif);

describe("the view of a coat stack", () => {
  test("has a lane for each step, in their order", () => {
    const steps = [fired(null, "bisque"), resist("wax", ["motif"]), coat("a"), fired("g-1")];
    expect(viewOf(steps).lanes.map(({ lane }) => lane)).toEqual([
      "firing",
      "resist",
      "coat",
      "firing",
    ]);
  });

  test("counts a unit for each coat, and one where nobody wrote them down", () => {
    const lanes = coatsOf([coat("a", { coats: 3 }), coat("b", { coats: null })]);
    expect(lanes.map(({ units }) => units)).toEqual([3, 1]);
  });

  test("leaves a layer as short as the part that it covers", () => {
    const [lane] = coatsOf([coat("a", { where: ["left"] })]);
    expect(lane?.spans).toEqual([[0, 0.5]]);
  });

  test("gives each firing the cone of its place, and none where none is known", () => {
    const steps = [fired(null, "bisque"), coat("a"), fired("g-1")];
    expect(viewOf(steps, ["06", "6"]).lanes).toMatchObject([
      { cone: "06" },
      { lane: "coat" },
      { cone: "6" },
    ]);
    expect(viewOf(steps).lanes[0]).toEqual({ lane: "firing", cone: null });
  });

  test("keeps two paints for a fade", () => {
    const [lane] = coatsOf([coat(["plum", "sky"])]);
    expect(lane?.paints).toEqual([paint, paint]);
  });
});

describe("what was kept off", () => {
  test("is a gap in every later layer until the resist is peeled", () => {
    const lanes = coatsOf([
      coat("below"),
      resist("tape", ["motif"]),
      coat("over"),
      removed("peel", ["motif"]),
      coat("after"),
    ]);
    expect(lanes.map(({ spans }) => spans)).toEqual([[[0, 1]], around, [[0, 1]]]);
    expect(lanes.map(({ kept }) => kept)).toEqual([[], motif, []]);
  });

  test("is burnt away by a firing", () => {
    const lanes = coatsOf([resist("wax", ["motif"]), coat("a"), fired("g-1"), coat("b")]);
    expect(lanes.map(({ spans }) => spans)).toEqual([around, [[0, 1]]]);
  });
});

describe("what was taken off", () => {
  test("is gone from every layer that had not been fired, and from no other", () => {
    const lanes = coatsOf([
      coat("fired"),
      fired("g-1"),
      coat("raw"),
      coat("raw too"),
      removed("scrape", ["motif"]),
    ]);
    expect(lanes.map(({ spans }) => spans)).toEqual([[[0, 1]], around, around]);
  });

  test("is a few narrow cuts where it was scratched through", () => {
    const [lane] = coatsOf([coat("a"), removed("sgraffito", ["motif"])]);
    const cut = subtract([[0, 1]], lane?.spans ?? []);
    expect(cut.length).toBeGreaterThan(1);
    expect(intersect(cut, motif).length).toBe(cut.length);
  });

  test("stays in the hollows where it was wiped", () => {
    const [lane] = coatsOf([coat("a"), removed("wipe", ["raised"])]);
    expect(lane?.spans).toEqual([[0, 1]]);
    expect(lane?.wiped).toEqual(spansOf(["raised"]));
  });

  test("leaves a trace where the tile was begun again", () => {
    const lanes = coatsOf([coat("wrong"), removed("all"), coat("right")]);
    expect(lanes.map(({ gone }) => gone)).toEqual([true, false]);
    expect(lanes[0]?.spans).toEqual([[0, 1]]);
  });

  test("does not reach what went on after it", () => {
    const lanes = coatsOf([coat("a"), removed("wash-off", ["right"]), coat("b")]);
    expect(lanes.map(({ spans }) => spans)).toEqual([[[0, 0.5]], [[0, 1]]]);
  });
});
